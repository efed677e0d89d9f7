using System.Collections.Immutable;

namespace TemplateForge.Geometry;

/// <summary>A contour as its corners and the sides between them; side i runs, without a corner, from corner i to the next.</summary>
internal sealed class CorneredContour
{
    private readonly Segment[][] _sides;
    private readonly bool[] _wanted;
    private readonly (Segment Segment, Box Bounds)[] _boundary;
    private readonly Cutter _cutter;

    public CorneredContour(Contour contour, ImmutableArray<int> corners, Func<Point, bool> where, Region region, Cutter cutter)
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
        _cutter = cutter;
    }

    /// <summary>The cuts that fit, by corner.</summary>
    public CornerCut?[] Cuts()
    {
        var all = new CornerCut?[_sides.Length];
        for (var i = 0; i < all.Length; i++) all[i] = At(i, share: 1);
        return [.. all.Select((cut, i) => cut is not null && LeavesRoom(i, cut, all[Before(i)], all[After(i)]) ? cut : null)];
    }

    /// <summary>The largest share, less than 1, that fits at a corner if its neighbours have it too; 0 where none does.</summary>
    public double LargestShare(int corner, double within)
    {
        // Where sides bend, what fits is not always all that is smaller: first down in steps, then up by halves.
        const int Steps = 32;
        var step = Steps - 1;
        while (step > 0 && !Fits((double)step / Steps)) step--;
        var (fits, tooLarge) = ((double)step / Steps, (step + 1.0) / Steps);
        while (tooLarge - fits > within)
        {
            var share = (fits + tooLarge) / 2;
            if (Fits(share)) fits = share;
            else tooLarge = share;
        }
        return fits;

        bool Fits(double share) =>
            At(corner, share) is { } cut && LeavesRoom(corner, cut, At(Before(corner), share), At(After(corner), share));
    }

    public Contour With(CornerCut?[] cuts)
    {
        var segments = new List<Segment>();
        for (var i = 0; i < _sides.Length; i++)
        {
            if (cuts[i] is { } cut) segments.AddRange(cut.Segments);
            var next = cuts[After(i)];
            Segment[] left = [.. Place.Between(_sides[i], cuts[i]?.End ?? Place.StartOf(_sides[i]), next?.Start ?? Place.EndOf(_sides[i]))];
            // Two cuts that leave next to nothing of a side between them meet.
            if (left.Length == 0 && cuts[i] is not null && next is not null)
                segments[^1] = Segment.Arc(segments[^1].Start, next.Segments[0].Start, segments[^1].Bulge);
            segments.AddRange(left);
        }
        return new(segments);
    }

    private int Before(int corner) => (corner + _sides.Length - 1) % _sides.Length;
    private int After(int corner) => (corner + 1) % _sides.Length;

    private CornerCut? At(int corner, double share)
    {
        if (!_wanted[corner]) return null;
        var (arriving, leaving) = (_sides[Before(corner)], _sides[corner]);
        return _cutter(arriving, leaving, share) is { } cut && IsClear(cut, arriving, leaving) ? cut : null;
    }

    private bool LeavesRoom(int corner, CornerCut cut, CornerCut? before, CornerCut? after)
    {
        var arriving = _sides[Before(corner)].Sum(s => s.Length);
        var leaving = _sides[corner].Sum(s => s.Length);
        return cut.TakenBefore + (before?.TakenAfter ?? 0) <= arriving + Tolerance.Merge
            && cut.TakenAfter + (after?.TakenBefore ?? 0) <= leaving + Tolerance.Merge;
    }

    /// <summary>Whether nothing of the boundary lies in the tip that a cut takes away or fills, and the cut meets its sides at its ends only.</summary>
    private bool IsClear(CornerCut cut, Segment[] arriving, Segment[] leaving)
    {
        var tip = cut.Tip(arriving, leaving);
        var bounds = tip.Bounds;
        var ownSides = new HashSet<Segment>([.. arriving, .. leaving]);
        var (first, last) = (cut.Segments[0], cut.Segments[^1]);
        var (points, runs) = (new List<Meeting>(), new List<SharedRun>());
        foreach (var (segment, around) in _boundary)
        {
            if (!around.Touches(bounds)) continue;
            var isOwn = ownSides.Contains(segment);
            if (!isOwn && tip.WindingAround(segment.At(0.5)) != 0) return false;
            foreach (var piece in cut.Segments)
            {
                points.Clear();
                runs.Clear();
                Meetings.Find(piece, segment, points, runs);
                // A whole run along a side is no more than nearness: the corner is hardly one.
                if (isOwn ? !points.TrueForAll(p => RunsAlongASide(piece, p.OnFirst)) : runs.Count > 0 || !points.TrueForAll(p => IsEnd(p.At)))
                    return false;
            }
        }
        return true;

        // Where a side is used up, the next one begins.
        bool IsEnd(Point p) => p.DistanceTo(first.Start) < Tolerance.Length || p.DistanceTo(last.End) < Tolerance.Length;

        // A fillet runs along its sides at its ends, and a chamfer of a corner that is hardly one does too.
        bool RunsAlongASide(Segment piece, double share) =>
            (piece == first && IsOn(arriving, piece.At(share / 2))) || (piece == last && IsOn(leaving, piece.At((share + 1) / 2)));

        static bool IsOn(Segment[] side, Point p) => Array.Exists(side, s => s.DistanceTo(p) <= Tolerance.Length);
    }
}
