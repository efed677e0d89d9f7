using TemplateForge.Geometry;

namespace TemplateForge.Fabrication;

/// <summary>Places on one outline of a transition that follow from the other.</summary>
internal static class TransitionMarks
{
    private const int Samples = 16;

    // What is so near to 0, in mm, that rounding may have made it.
    private const double None = 1e-7;

    /// <summary>Where a plane that lies on a straight side of the other outline touches an arc of this one: there the fans of two corners meet.</summary>
    /// <returns>Distances along this outline.</returns>
    public static IEnumerable<double> TouchedByLines(TransitionEnd end, TransitionEnd other)
    {
        foreach (var line in other.Outline.Where(s => s.IsLine))
        {
            var (on, along) = (other.InSpace(line.Start), other.InSpace(line.StartDirection));
            foreach (var distance in Touched(end, on, along)) yield return distance;
        }
    }

    /// <summary>Where the rulings through a place on an outline may reach the other one.</summary>
    /// <param name="end">The outline with the place.</param>
    /// <param name="at">The place, as a distance along it.</param>
    /// <param name="other">The other outline.</param>
    /// <returns>Distances along the other outline.</returns>
    public static IEnumerable<double> Across(TransitionEnd end, double at, TransitionEnd other)
    {
        var (own, otherEnds) = (SegmentAt(end, at, out var share), TransitionEdge.EndsOf(other));
        var (on, along) = (end.InSpace(own.At(share)), end.InSpace(own.DirectionAt(share)));
        foreach (var distance in Touched(other, on, along)) yield return distance;
        if (!own.IsLine) yield break;
        // Beside a side that lies in one plane with this one: as far along it.
        for (var i = 0; i < other.Outline.Length; i++)
        {
            var beside = other.Outline[i];
            if (!beside.IsLine) continue;
            var (there, direction) = (other.InSpace(beside.Start), other.InSpace(beside.StartDirection));
            if (direction.Dot(along) > 0 && Math.Abs(along.Cross((there - on).Unit).Dot(direction)) < 1e-6) yield return otherEnds[i] + share * beside.Length;
        }
    }

    /// <summary>How far along the outline the place is that lies nearest to a point.</summary>
    public static double Nearest(TransitionEnd end, Point to)
    {
        var ends = TransitionEdge.EndsOf(end);
        var nearest = Enumerable.Range(0, end.Outline.Length).MinBy(i => end.Outline[i].DistanceTo(to));
        var segment = end.Outline[nearest];
        double share;
        if (segment.IsLine) share = (to - segment.Start).Dot(segment.StartDirection) / segment.Length;
        else
        {
            var (from, towards) = (segment.Start - segment.Centre, to - segment.Centre);
            share = Math.Atan2(from.Cross(towards), from.Dot(towards)) / segment.Sweep.Radians;
            // Past half a circle the angle counts from the other side.
            if (share < 0) share = segment.Start.DistanceTo(to) < segment.End.DistanceTo(to) ? 0 : 1;
        }
        return ends[nearest] + Math.Clamp(share, 0, 1) * segment.Length;
    }

    // The plane through a line and a tangent of an arc touches both where line, tangent and what joins them lie in one plane.
    private static IEnumerable<double> Touched(TransitionEnd end, SpacePoint on, SpaceVector along)
    {
        var ends = TransitionEdge.EndsOf(end);
        for (var i = 0; i < end.Outline.Length; i++)
        {
            var arc = end.Outline[i];
            if (arc.IsLine) continue;
            var before = Out(arc, 0);
            if (Math.Abs(before) < None && IsAlong(arc, 0)) yield return ends[i];
            for (var k = 1; k <= Samples; k++)
            {
                var after = Out(arc, (double)k / Samples);
                if (Math.Abs(after) < None)
                {
                    if (IsAlong(arc, (double)k / Samples)) yield return ends[i] + arc.Length * k / Samples;
                }
                else if (before * after < 0 && Math.Abs(before) >= None)
                {
                    var (low, high) = ((double)(k - 1) / Samples, (double)k / Samples);
                    for (var step = 0; step < 60; step++)
                    {
                        var middle = (low + high) / 2;
                        if (Out(arc, middle) * before > 0) low = middle;
                        else high = middle;
                    }
                    if (IsAlong(arc, high)) yield return ends[i] + high * arc.Length;
                }
                before = after;
            }
        }

        // Both are gone along the same way where a plane lies on the outside of both.
        bool IsAlong(Segment arc, double share) => end.InSpace(arc.DirectionAt(share)).Dot(along) > 0;

        double Out(Segment arc, double share) =>
            along.Cross(end.InSpace(arc.At(share)) - on).Dot(end.InSpace(arc.DirectionAt(share)));
    }

    private static Segment SegmentAt(TransitionEnd end, double at, out double share)
    {
        foreach (var segment in end.Outline)
        {
            if (at < segment.Length)
            {
                share = at / segment.Length;
                return segment;
            }
            at -= segment.Length;
        }
        share = 1;
        return end.Outline[^1];
    }
}
