namespace TemplateForge.Geometry;

/// <summary>A straight line from one side of a corner to the other.</summary>
internal static class Chamfer
{
    /// <summary>The chamfer that begins and ends so far along the sides; null where they do not reach so far or bend too much.</summary>
    public static CornerCut? Between(Segment[] arriving, Segment[] leaving, double before, double after)
    {
        if (!Place.TryAt(arriving, arriving.Sum(s => s.Length) - before, out var start)) return null;
        if (!Place.TryAt(leaving, after, out var end)) return null;
        var (from, to) = (start.On(arriving), end.On(leaving));
        if (from.DistanceTo(to) < Tolerance.Merge) return null;
        var cut = new CornerCut(start, end, before, after, [Segment.Line(from, to)]);
        // Where a side bends back far enough, the line passes the corner on the other hand: it would fill instead of cut.
        return cut.Tip(arriving, leaving).SignedArea * CornerCut.SideOf(arriving[^1], leaving[0]) > 0 ? cut : null;
    }
}
