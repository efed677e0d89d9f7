using System.Collections.Immutable;
using TemplateForge.Geometry;

namespace TemplateForge.Fabrication;

/// <summary>A folding brake with a nose bar or fingers, seen from its end: the sheet lies on the table, the leaf turns up what stands out.</summary>
/// <remarks>
/// <code>
///        .-----------.
///        |  nose    /        the front of the nose leans back, its angle from the table
///        |_________/
///     ======================  sheet
///     [   table    ][ leaf ]
/// </code>
/// Lengths in mm.
/// </remarks>
/// <param name="Name">As it is printed.</param>
/// <param name="Length">The longest bend that it makes.</param>
/// <param name="TableDepth">From the bend line back: what hangs below the sheet must lie behind it.</param>
/// <param name="LeafWidth">From the bend line forward: what hangs below the sheet must lie beyond it.</param>
/// <param name="NoseDepth">From the bend line back to the back of the nose or finger: what stands up must stand behind it.</param>
/// <param name="NoseHeight">From the sheet to the top of the nose and the beam over it.</param>
/// <param name="NoseAngle">Between the table and the front of the nose; what it leaves of 180° is as far as the brake can bend.</param>
public sealed record Brake(
    string Name, double Length, double TableDepth, double LeafWidth, double NoseDepth, double NoseHeight, Angle NoseAngle)
{
    /// <summary>The thickest sheet that it bends, in mm; without end where nobody has said.</summary>
    public double GreatestThickness { get; init; } = double.PositiveInfinity;

    /// <summary>Radius of the edge of the nose bar, in mm: the least inside radius that it makes.</summary>
    public double NoseRadius { get; init; }

    // No leg passes below the table.
    private const double Deep = 1e4;

    /// <summary>As far as a leg can be turned before it lies against the nose.</summary>
    public Angle Steepest => Angle.HalfTurn - NoseAngle;

    internal ImmutableArray<Segment> Nose(double thickness)
    {
        var back = Math.Min(NoseDepth, NoseHeight / NoseAngle.Tan);
        var (foot, top) = (thickness, thickness + NoseHeight);
        return NoseDepth - back > Tolerance.Length
            ? Closed(new(0, foot), new(-back, top), new(-NoseDepth, top), new(-NoseDepth, foot))
            : Closed(new(0, foot), new(-NoseDepth, thickness + NoseDepth * NoseAngle.Tan), new(-NoseDepth, foot));
    }

    internal ImmutableArray<Segment> Table => Box(-TableDepth, 0);

    internal ImmutableArray<Segment> Leaf => Box(0, LeafWidth);

    private static ImmutableArray<Segment> Box(double from, double to) =>
        Closed(new(from, -Deep), new(to, -Deep), new(to, 0), new(from, 0));

    private static ImmutableArray<Segment> Closed(params Point[] corners) =>
        [.. corners.Select((c, i) => Segment.Line(c, corners[(i + 1) % corners.Length]))];
}
