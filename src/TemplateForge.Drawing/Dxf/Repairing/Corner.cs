using System.Collections.Immutable;
using TemplateForge.Geometry;

namespace TemplateForge.Drawing;

/// <summary>The corner at which two ends were meant to meet.</summary>
/// <remarks>
/// <code>
///     ─────────── a   P      a line runs on along itself, an arc along its circle; where both reach P and it is near
///                            (no further from either end than twice the gap a b), P is the corner and nothing is skewed.
///                     b      Else it is the middle of a and b.
///                     │
/// </code>
/// Twice the gap is the corner of ends that stop equally short of an angle of 29°: sin(29°/2) = 1/4.
/// </remarks>
internal static class Corner
{
    private const double FurthestInGaps = 2;

    /// <param name="last">The line or arc whose end is open.</param>
    /// <param name="first">That which is to go on from it, whose start is open.</param>
    public static Point Between(Segment last, Segment first)
    {
        var (a, b) = (last.End, first.Start);
        var reach = FurthestInGaps * a.DistanceTo(b);
        return Common(last, first)
            .Where(p => p.DistanceTo(a) <= reach && p.DistanceTo(b) <= reach && CanRunOn(last, p) && CanRunOn(first.Reversed(), p))
            .OrderBy(p => p.DistanceTo(a) + p.DistanceTo(b))
            .FirstOrDefault(a.MidpointTo(b));
    }

    /// <summary>The segment with another end: on its line or circle if the end lies there, else with the bulge that it had.</summary>
    public static Segment WithEnd(Segment segment, Point end) =>
        Segment.Arc(segment.Start, end, !segment.IsLine && LiesOnCircle(segment, end) ? Math.Tan(SweepTo(segment, end) / 4) : segment.Bulge);

    public static Segment WithStart(Segment segment, Point start) => WithEnd(segment.Reversed(), start).Reversed();

    private static bool LiesOnCircle(Segment arc, Point p) => Math.Abs(p.DistanceTo(arc.Centre) - arc.Radius) <= Tolerance.Length;

    private static double SweepTo(Segment arc, Point end)
    {
        var (from, to) = (arc.End - arc.Centre, end - arc.Centre);
        return arc.Sweep.Radians + Math.Atan2(from.Cross(to), from.Dot(to));
    }

    // Neither more than half of it is taken away, nor does an arc become more than half a circle or turn the other way.
    private static bool CanRunOn(Segment segment, Point end)
    {
        if (segment.IsLine) return (end - segment.Start).Dot(segment.StartDirection) > segment.Length / 2;
        var share = SweepTo(segment, end) / segment.Sweep.Radians;
        return share > 0.5 && Math.Abs(segment.Sweep.Radians) * share <= Math.PI;
    }

    private static ImmutableArray<Point> Common(Segment one, Segment other) => (one.IsLine, other.IsLine) switch
    {
        (true, true) => OfLines(one, other),
        (true, false) => OfLineAndCircle(one, other.Centre, other.Radius),
        (false, true) => OfLineAndCircle(other, one.Centre, one.Radius),
        _ => OfCircles(one.Centre, one.Radius, other.Centre, other.Radius),
    };

    private static ImmutableArray<Point> OfLines(Segment one, Segment other)
    {
        var (u, v) = (one.StartDirection, other.StartDirection);
        var sine = u.Cross(v);
        return Math.Abs(sine) < 1e-9 ? [] : [one.Start + u * ((other.Start - one.Start).Cross(v) / sine)];
    }

    private static ImmutableArray<Point> OfLineAndCircle(Segment line, Point centre, double radius)
    {
        var foot = line.Start + line.StartDirection * (centre - line.Start).Dot(line.StartDirection);
        var square = radius * radius - (centre - foot).LengthSquared;
        if (square < 0) return [];
        var half = line.StartDirection * Math.Sqrt(square);
        return [foot + half, foot - half];
    }

    private static ImmutableArray<Point> OfCircles(Point centre, double radius, Point other, double otherRadius)
    {
        var between = other - centre;
        if (between.Length <= Tolerance.Merge) return [];
        var along = (between.LengthSquared + radius * radius - otherRadius * otherRadius) / (2 * between.Length);
        var square = radius * radius - along * along;
        if (square < 0) return [];
        var (foot, half) = (centre + between.Unit * along, between.Left.Unit * Math.Sqrt(square));
        return [foot + half, foot - half];
    }
}
