using System.Collections.Immutable;

namespace TemplateForge.Geometry;

/// <summary>A contour as its corners and the sides between them; side i runs, without a corner, from corner i to the next.</summary>
internal sealed class CorneredContour
{
    private readonly Segment[][] _sides;
    private readonly bool[] _wanted;
    private readonly (Segment Segment, Box Bounds)[] _boundary;

    public CorneredContour(Contour contour, ImmutableArray<int> corners, Func<Point, bool> where, Region region)
    {
        var segments = contour.Segments;
        _sides = [.. corners.Select((from, i) =>
        {
            var to = corners[(i + 1) % corners.Length];
            var count = to > from ? to - from : to - from + segments.Length;
            return Enumerable.Range(from, count).Select(k => segments[k % segments.Length]).ToArray();
        })];
        _wanted = [.. corners.Select(i => where(segments[i].Start))];
        _boundary = [.. region.Contours.SelectMany(c => c.Segments).Select(s => (s, s.Bounds))];
    }

    /// <summary>The fillets that fit, by corner.</summary>
    public Fillet?[] Fillets(double radius)
    {
        var all = new Fillet?[_sides.Length];
        for (var i = 0; i < all.Length; i++) all[i] = At(i, radius);
        return [.. all.Select((fillet, i) => fillet is not null && LeavesRoom(i, fillet, all[Before(i)], all[After(i)]) ? fillet : null)];
    }

    /// <summary>The largest radius, up to the given one, that fits at a corner if its neighbours have it too.</summary>
    public double LargestRadius(int corner, double upTo)
    {
        var (fits, tooLarge) = (0.0, upTo);
        while (tooLarge - fits > Tolerance.Length / 2)
        {
            var radius = (fits + tooLarge) / 2;
            var fillet = At(corner, radius);
            if (fillet is not null && LeavesRoom(corner, fillet, At(Before(corner), radius), At(After(corner), radius))) fits = radius;
            else tooLarge = radius;
        }
        return fits;
    }

    public Contour Rounded(Fillet?[] fillets)
    {
        var rounded = new List<Segment>();
        for (var i = 0; i < _sides.Length; i++)
        {
            if (fillets[i] is { } fillet) rounded.AddRange(fillet.Arcs);
            rounded.AddRange(Between(_sides[i], fillets[i]?.End ?? Place.StartOf(_sides[i]), fillets[After(i)]?.Start ?? Place.EndOf(_sides[i])));
        }
        return new(rounded);
    }

    private int Before(int corner) => (corner + _sides.Length - 1) % _sides.Length;
    private int After(int corner) => (corner + 1) % _sides.Length;

    private Fillet? At(int corner, double radius)
    {
        if (!_wanted[corner]) return null;
        var fillet = Fillet.Between(_sides[Before(corner)], _sides[corner], radius);
        return fillet is not null && IsClear(fillet, _sides[Before(corner)], _sides[corner]) ? fillet : null;
    }

    private bool LeavesRoom(int corner, Fillet fillet, Fillet? before, Fillet? after)
    {
        var arriving = _sides[Before(corner)].Sum(s => s.Length);
        var leaving = _sides[corner].Sum(s => s.Length);
        return fillet.TakenBefore + (before?.TakenAfter ?? 0) <= arriving + Tolerance.Merge
            && fillet.TakenAfter + (after?.TakenBefore ?? 0) <= leaving + Tolerance.Merge;
    }

    /// <summary>Whether nothing of the boundary lies in the tip that the fillet takes away or fills.</summary>
    private bool IsClear(Fillet fillet, Segment[] arriving, Segment[] leaving)
    {
        Segment[] cutOff =
        [
            .. Between(leaving, Place.StartOf(leaving), fillet.End),
            .. fillet.Arcs.Reverse().Select(s => s.Reversed()),
            .. Between(arriving, fillet.Start, Place.EndOf(arriving)),
        ];
        var tip = new Contour(cutOff);
        var bounds = tip.Bounds;
        var ownSides = new HashSet<Segment>([.. arriving, .. leaving]);
        var (touched, touchedToo) = (arriving[fillet.Start.Segment], leaving[fillet.End.Segment]);
        var (points, runs) = (new List<Meeting>(), new List<SharedRun>());
        foreach (var (segment, around) in _boundary)
        {
            if (segment == touched || segment == touchedToo || !around.Touches(bounds)) continue;
            if (!ownSides.Contains(segment) && tip.WindingAround(segment.At(0.5)) != 0) return false;
            foreach (var arc in fillet.Arcs) Meetings.Find(arc, segment, points, runs);
        }
        return points.TrueForAll(p => IsEnd(p.At));

        // Where a fillet ends it runs along its side, and along what joins on to that without a corner.
        bool IsEnd(Point p) =>
            p.DistanceTo(fillet.Arcs[0].Start) < fillet.Radius / 100 || p.DistanceTo(fillet.Arcs[^1].End) < fillet.Radius / 100;
    }

    private static IEnumerable<Segment> Between(Segment[] side, Place from, Place to)
    {
        for (var i = from.Segment; i <= to.Segment; i++)
        {
            var (start, end) = (i == from.Segment ? from.Share : 0, i == to.Segment ? to.Share : 1);
            if ((end - start) * side[i].Length < 2 * Tolerance.Merge) continue; // used up
            yield return side[i].Part(start, end);
        }
    }
}
