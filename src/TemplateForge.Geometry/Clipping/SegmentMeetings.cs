using System.Collections.Immutable;

namespace TemplateForge.Geometry;

/// <summary>Where the segments of a heap meet, that belong to no contour yet.</summary>
public static class SegmentMeetings
{
    /// <summary>All pairs whose bounds come nearer than a distance, in mm, in the order of their numbers.</summary>
    public static ImmutableArray<SegmentMeeting> Near(IReadOnlyList<Segment> segments, double distance)
    {
        if (segments.Count < 2) return [];
        var tree = new BoxTree();
        var boxes = tree.Leaves(segments.Count);
        for (var i = 0; i < segments.Count; i++) boxes[i] = Bounds.Around(segments[i].Start, segments[i].End, segments[i].Bulge, distance / 2);
        tree.Build();
        var pairs = new Buffer<(int First, int Second)>();
        tree.Pairs(pairs);
        var (points, runs) = (new List<Meeting>(), new List<SharedRun>());
        var found = ImmutableArray.CreateBuilder<SegmentMeeting>(pairs.Count);
        foreach (var (one, other) in pairs.Items)
        {
            points.Clear();
            Meetings.Find(segments[one], segments[other], points, runs);
            found.Add(new(Math.Min(one, other), Math.Max(one, other), [.. points.Select(p => p.At)]));
        }
        found.Sort((a, b) => (a.First, a.Second).CompareTo((b.First, b.Second)));
        return found.ToImmutable();
    }
}

/// <summary>Two segments of a heap that come near each other, and the points at which they cross or touch.</summary>
/// <param name="First">The number of one.</param>
/// <param name="Second">The number of the other, which is higher.</param>
/// <param name="Points">Where they meet; nothing where they run along each other or only come near.</param>
public sealed record SegmentMeeting(int First, int Second, ImmutableArray<Point> Points);
