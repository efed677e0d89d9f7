using System.Collections.Immutable;
using TemplateForge.Geometry;

namespace TemplateForge.Drawing;

/// <summary>A stretch along which two segments lie in the same place, within <see cref="DxfCheck.Same"/>.</summary>
/// <param name="From">Where it begins, on the second.</param>
/// <param name="To">Where it ends.</param>
/// <param name="Length">How long it is along the second, in mm.</param>
/// <param name="IsWhole">Whether it is all of both.</param>
internal readonly record struct Overlap(Point From, Point To, double Length, bool IsWhole)
{
    public static bool TryFind(Segment first, Segment second, out Overlap overlap)
    {
        overlap = default;
        // What overlaps begins and ends with an end of one or the other.
        var common = new List<Point>();
        foreach (var end in (ImmutableArray<Point>)[first.Start, first.End])
            if (second.DistanceTo(end) <= DxfCheck.Same) common.Add(second.Nearest(end));
        foreach (var end in (ImmutableArray<Point>)[second.Start, second.End])
            if (first.DistanceTo(end) <= DxfCheck.Same) common.Add(end);
        if (common.Count < 2) return false;
        var (from, to) = common.SelectMany(a => common.Select(b => (a, b))).MaxBy(p => p.a.DistanceTo(p.b));
        if (from.DistanceTo(to) <= 2 * DxfCheck.Same) return false;
        if (!LiesOn(first, second, from, to)) return false;
        var isWhole = Ends(first, from, to) && Ends(second, from, to);
        overlap = new(from, to, Math.Abs(ShareOf(second, to) - ShareOf(second, from)) * second.Length, isWhole);
        return true;
    }

    private static bool Ends(Segment segment, Point from, Point to) =>
        (segment.Start.DistanceTo(from) <= 2 * DxfCheck.Same && segment.End.DistanceTo(to) <= 2 * DxfCheck.Same)
        || (segment.Start.DistanceTo(to) <= 2 * DxfCheck.Same && segment.End.DistanceTo(from) <= 2 * DxfCheck.Same);

    // Two arcs, or an arc and its chord, have ends in common without lying in the same place.
    private static bool LiesOn(Segment first, Segment second, Point from, Point to)
    {
        var (one, other) = (ShareOf(second, from), ShareOf(second, to));
        return Enumerable.Range(1, 7).All(i => first.DistanceTo(second.At(one + (other - one) * i / 8)) <= DxfCheck.Same);
    }

    /// <summary>How far along a segment a point on it lies, as a share of its length.</summary>
    public static double ShareOf(Segment segment, Point on)
    {
        if (segment.IsLine) return Math.Clamp((on - segment.Start).Dot(segment.StartDirection) / segment.Length, 0, 1);
        // Half the angle at the start between the chord to the point and the tangent is what the arc turns by to get there.
        var chord = on - segment.Start;
        if (chord.Length <= Tolerance.Merge) return 0;
        var turn = 2 * Math.Atan2(segment.StartDirection.Cross(chord), segment.StartDirection.Dot(chord));
        return Math.Clamp(turn / segment.Sweep.Radians, 0, 1);
    }
}
