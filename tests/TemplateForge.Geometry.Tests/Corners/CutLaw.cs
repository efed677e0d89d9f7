using TemplateForge.Testing;

namespace TemplateForge.Geometry.Tests.Corners;

/// <summary>What a region has after a cut that it had not before.</summary>
internal static class CutLaw
{
    /// <summary>The segments of the cut, once it is seen that all others are those of before, whole or shortened at one end.</summary>
    public static Segment[] NewIn(Region after, Region before)
    {
        var (old, now) = (before.Contours.SelectMany(c => c.Segments).ToHashSet(), after.Contours.SelectMany(c => c.Segments).ToArray());
        var changed = now.Where(s => !old.Contains(s)).ToArray();
        var added = changed.Where(s => before.BoundaryDistanceTo(s.At(0.5)) > 1e-7).ToArray();
        var shortened = changed.Except(added).ToArray();
        foreach (var s in shortened)
        {
            var whole = old.Single(o => (o.Start.DistanceTo(s.Start) < 1e-9 || o.End.DistanceTo(s.End) < 1e-9) && o.DistanceTo(s.At(0.5)) < 1e-9);
            foreach (var share in new[] { 0, 0.3, 0.8, 1 }) Approximately.Equal(0, whole.DistanceTo(s.At(share)), within: 1e-9);
            Assert.True(s.Length < whole.Length);
        }
        Assert.Equal(2, shortened.Length);
        Assert.Equal(old.Count + added.Length, now.Length);
        Assert.Equal(before.Contours.Length, after.Contours.Length);
        foreach (var segments in after.Contours.Select(c => c.Segments))
            for (var i = 0; i < segments.Length; i++)
                Approximately.Equal(segments[i].End, segments[(i + 1) % segments.Length].Start, within: 1e-9);
        return added;
    }

    /// <summary>The ends of a run of segments, in the order in which it meets the first point, then the second.</summary>
    public static void RunsBetween(Point one, Point other, Segment[] run, double within)
    {
        var (start, end) = (run.Single(s => run.All(o => o.End != s.Start)).Start, run.Single(s => run.All(o => o.Start != s.End)).End);
        if (start.DistanceTo(one) > start.DistanceTo(other)) (one, other) = (other, one);
        Approximately.Equal(one, start, within);
        Approximately.Equal(other, end, within);
    }

    /// <summary>Says which case broke a law.</summary>
    public static void Holds(string name, Action law)
    {
        try
        {
            law();
        }
        catch (Exception e) when (e is not OutOfMemoryException)
        {
            throw new InvalidOperationException($"{name}: {e.Message}", e);
        }
    }
}
