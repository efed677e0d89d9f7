using System.Collections.Immutable;
using TemplateForge.Geometry;

namespace TemplateForge.Fabrication;

/// <summary>A tube or a cone laid flat, as one looks at its outside with the upper end up; angles round it run to the right.</summary>
public sealed record WrapPattern
{
    /// <summary>The outline with its lap and its holes.</summary>
    public required Region Shape { get; init; }

    /// <summary>From the seam on, the line on which the other edge comes to lie last where there is a lap.</summary>
    public required ImmutableArray<Generator> Generators { get; init; }

    public required ImmutableArray<EdgeName> EdgeNames { get; init; }

    /// <summary>Where something else is to stand: outlines to mark and not to cut.</summary>
    public ImmutableArray<GuideLine> Footprints { get; init; } = [];

    public required ImmutableArray<DistanceCheck> Checks { get; init; }
    public required ImmutableArray<string> Notes { get; init; }

    /// <summary>Diameter in mm that the pattern goes round once: of the outside and half a sheet of paper on both sides, or of the middle of
    /// the sheet that is rolled. Of a cone at its base.</summary>
    public required double NeutralDiameter { get; init; }
}
