using System.Collections.Immutable;

namespace TemplateForge.Geometry;

/// <summary>Where outlines meet.</summary>
public static class OutlineCrossings
{
    /// <summary>The points at which the two outlines cross or touch; of a run that they share, its two ends.</summary>
    public static ImmutableArray<Point> OutlineMeetings(this Region region, Region other)
    {
        var (points, runs) = (new List<Meeting>(), new List<SharedRun>());
        var others = other.Contours.SelectMany(c => c.Segments).Select(s => (Segment: s, Bounds: s.Bounds.Grown(Tolerance.Merge))).ToArray();
        foreach (var segment in region.Contours.SelectMany(c => c.Segments))
        {
            var bounds = segment.Bounds;
            foreach (var opposite in others)
            {
                if (opposite.Bounds.Touches(bounds)) Meetings.Find(segment, opposite.Segment, points, runs);
            }
        }

        var distinct = ImmutableArray.CreateBuilder<Point>();
        var met = points.Concat(runs.SelectMany(r => new[] { r.From, r.To })).Select(m => m.At);
        foreach (var p in met.OrderBy(p => p.X).ThenBy(p => p.Y))
        {
            // Sorted by x, so a point that is the same one is among the last few.
            var isKnown = false;
            for (var i = distinct.Count - 1; i >= 0 && p.X - distinct[i].X <= Meetings.Smeared && !isKnown; i--)
                isKnown = IsOne(p, distinct[i]);
            if (!isKnown) distinct.Add(p);
        }
        return distinct.ToImmutable();

        // At a joint the segments on either hand each report a touch, a little apart, with nothing between the outlines there.
        bool IsOne(Point p, Point q) => p.DistanceTo(q) <= 10 * Tolerance.Merge
            || (p.DistanceTo(q) < Meetings.Smeared && IsOn(region, p.MidpointTo(q)) && IsOn(other, p.MidpointTo(q)));
    }

    private static bool IsOn(Region region, Point p) => region.BoundaryDistanceTo(p) <= Meetings.Rounding;
}
