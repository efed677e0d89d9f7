using System.Collections.Immutable;

namespace TemplateForge.Geometry;

/// <summary>Chords in place of arcs, for readers that know only points.</summary>
/// <remarks>All points lie on the arcs, so that the chords run inside of every bend: a disc loses area, a round hole does too.</remarks>
public static class Flattening
{
    /// <summary>The vertices, and between those of an arc as many points as keep its chords within the tolerance. The first is not repeated.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The tolerance is not more than 0.</exception>
    public static ImmutableArray<Point> Flattened(this Contour contour, double tolerance) =>
        [.. contour.Segments.SelectMany(s => FromStart(s, tolerance))];

    /// <summary>The vertices, both ends among them, and between those of an arc as many points as keep its chords within the tolerance.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The tolerance is not more than 0.</exception>
    public static ImmutableArray<Point> Flattened(this Path path, double tolerance) =>
        [.. path.Segments.SelectMany(s => FromStart(s, tolerance)), path.End];

    private static IEnumerable<Point> FromStart(Segment segment, double tolerance)
    {
        if (!(tolerance > 0)) throw new ArgumentOutOfRangeException(nameof(tolerance), tolerance, "A tolerance is more than 0.");
        if (segment.IsLine) return [segment.Start];
        // A chord over the angle θ stands off its arc by R (1 − cos θ/2) = 2 R sin² θ/4.
        var step = 4 * Math.Asin(Math.Min(1, Math.Sqrt(tolerance / (2 * segment.Radius))));
        var chords = Math.Max(1, (int)Math.Ceiling(Math.Abs(segment.Sweep.Radians) / step - 1e-9));
        return Enumerable.Range(0, chords).Select(i => segment.At((double)i / chords));
    }
}
