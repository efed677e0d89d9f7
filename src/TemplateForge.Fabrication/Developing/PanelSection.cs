using System.Collections.Immutable;
using TemplateForge.Geometry;

namespace TemplateForge.Fabrication;

/// <summary>A panel that is curved one way only, as it was measured, and how it is looked at.</summary>
/// <remarks>
/// <code>
///     height        . - ' ' - .          outside
///       ▲      . '              ' .
///       │   .'      the section     '.   a straight line along the rulings, square to the paper, through each of its points
///       └─────────────┼──────────────▶ across, along the straight edge
///                   datum
/// </code>
/// The drawing is a view of the outside. Its rulings lie along <see cref="Rulings"/>; the line of the drawing through [0, 0] along them is the
/// datum line, which lies on the panel where the section passes <see cref="Datum"/>. Lengths in mm.
/// </remarks>
public sealed record PanelSection
{
    /// <summary>The section on the face on which it was measured: across to the right, outside above it. Drawn either way.</summary>
    public required Path Section { get; init; }

    public PanelFace MeasuredOn { get; init; }

    /// <summary>Thickness of the sheet, more than 0.</summary>
    public required double Thickness { get; init; }

    /// <summary>How far across the datum line lies.</summary>
    public double Datum { get; init; }

    /// <summary>The direction of the rulings in the drawing; across is a quarter turn to the left of it.</summary>
    public Angle Rulings { get; init; }

    /// <summary>How far the view is turned about the rulings, above 0 so that one looks square at what rises across.</summary>
    public Angle Tilt { get; init; }

    /// <summary>The place across at which one looks square at the panel instead; none, an empty list, if the tilt says it.</summary>
    public ImmutableArray<double> SquareAt { get; init; } = [];

    /// <summary>The face that the flat pattern is held to.</summary>
    public PanelFace LiesOn { get; init; }

    public ThroughCut Cut { get; init; }
}

/// <summary>A face of the sheet.</summary>
public enum PanelFace
{
    /// <summary>The face that one sees who looks at the panel: the upper side of its section.</summary>
    Outside,

    /// <summary>The face behind it.</summary>
    Inside,
}

/// <summary>How an opening goes through a curved sheet.</summary>
public enum ThroughCut
{
    /// <summary>Square to the sheet everywhere.</summary>
    Square,

    /// <summary>Straight on along the line of sight, so that what has the opening's shape passes through it.</summary>
    Straight,
}
