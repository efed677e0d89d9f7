using System.Collections.Immutable;
using TemplateForge.Geometry;

namespace TemplateForge.Fabrication;

/// <summary>What a piece asks of whoever cuts it on a machine. Lengths in mm.</summary>
public sealed record CuttingWishes
{
    public static CuttingWishes None { get; } = new();

    /// <summary>How many tabs hold each outline, evenly spread; 0 for none.</summary>
    public int Tabs { get; init; }

    /// <summary>Where tabs are wanted, each on the cut that is nearest.</summary>
    public ImmutableArray<Point> TabsAt { get; init; } = [];

    /// <summary>Diameter of the hole that is drilled at every inside corner before it is cut, so that no crack starts there; 0 for none.</summary>
    public double StopHole { get; init; }

    /// <summary>Round holes up to this diameter are drilled, whatever the machine can do; 0 for none.</summary>
    public double DrillUpTo { get; init; }
}
