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
        // Both corners that a chamfer makes turn the way that its corner did. Where a side bends back far enough for them not to,
        // the line crosses the side, or passes the corner on the other hand: it would fill instead of cut.
        var line = Segment.Line(from, to);
        var side = CornerCut.SideOf(arriving[^1], leaving[0]);
        var turnsThere = arriving[start.Segment].DirectionAt(start.Share).Cross(line.StartDirection) * side > 0;
        var turnsHere = line.EndDirection.Cross(leaving[end.Segment].DirectionAt(end.Share)) * side > 0;
        return turnsThere && turnsHere ? new(start, end, before, after, [line]) : null;
    }
}
