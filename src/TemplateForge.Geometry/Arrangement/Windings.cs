namespace TemplateForge.Geometry;

/// <summary>How often the boundary runs round the points on either side of each edge.</summary>
/// <remarks>
/// Crossing an edge from its right to its left adds its count; so one ray for each connected part of the arrangement is enough, and
/// within a face there can be no two opinions. The ray counts the curves as they were put in.
/// <para>
/// Hidden lines run through faces and change the winding within them, but not whether it is inside. So with them every face needs
/// a ray, or an edge beside which one was cast.
/// </para>
/// </remarks>
internal sealed class Windings(Arrangement arrangement, BoxTree edgeBoxes, Fans fans)
{
    private const int Unknown = int.MinValue;

    /// <summary>Room in mm that puts a point beyond all doubt on one side of an edge.</summary>
    private const double Room = 1000 * Tolerance.Merge;

    private readonly BoxTree _boxesWithHidden = new();
    private readonly BoxTree _boxesNow = new();
    private readonly Buffer<int> _winding = new();
    private readonly Buffer<int> _reached = new();
    private readonly Buffer<int> _hit = new();
    private Buffer<Edge> _edges = arrangement.Edges;
    private BoxTree _boxes = new();
    private bool _areBoxesNowMade;
    private Comparison<int>? _longestFirst;

    /// <summary>Winding number on the left of a half-edge.</summary>
    public int LeftOf(int half) => _winding[half];

    public void Spread()
    {
        _edges = arrangement.Edges;
        _areBoxesNowMade = false;
        _boxes = arrangement.AnyHidden ? BoxesWithHidden() : edgeBoxes;
        _winding.Filled(2 * _edges.Count, Unknown);
        if (arrangement.AnyHidden) TakeKnown();
        for (var half = 0; half < _winding.Count; half++)
        {
            if (_winding[half] != Unknown) continue;
            if (arrangement.AnyHidden || !TrySpreadFrom(half)) CastFor(half);
        }
    }

    /// <summary>Boxes about the edges as they are now; made only where they are needed.</summary>
    private BoxTree BoxesNow()
    {
        if (_areBoxesNowMade) return _boxesNow;
        arrangement.PutEdgesInto(_boxesNow);
        _areBoxesNowMade = true;
        return _boxesNow;
    }

    private BoxTree BoxesWithHidden()
    {
        var leaves = _boxesWithHidden.Leaves(arrangement.Pieces.Count);
        for (var i = 0; i < leaves.Length; i++)
        {
            ref readonly var piece = ref arrangement.Pieces[i];
            leaves[i] = Bounds.Around(piece.Start, piece.End, piece.Bulge, Tolerance.Merge);
        }
        _boxesWithHidden.Build();
        return _boxesWithHidden;
    }

    /// <summary>Gives the faces on both sides of an edge the known winding where its middle lies in a known disc.</summary>
    private void TakeKnown()
    {
        var known = arrangement.Known;
        for (var e = 0; e < _edges.Count; e++)
        {
            if (_winding[2 * e] != Unknown && _winding[2 * e + 1] != Unknown) continue;
            ref readonly var edge = ref _edges[e];
            var (start, end) = (arrangement.Nodes[edge.Start], arrangement.Nodes[edge.End]);
            var middle = start.MidpointTo(end) - (end - start).Left * (edge.Bulge / 2);
            if (!known.Hold(middle, around: 0, arrangement.Pieces[edge.Parent].Disc)) continue;
            Reach(2 * e, known.Winding);
            Reach(2 * e + 1, known.Winding);
        }
    }

    /// <summary>Winding numbers of a whole connected part: first less that of one of its faces, then as they are.</summary>
    /// <remarks>
    /// False, and none given, where two ways to a face do not agree: then edges about some node are out of order, and every face
    /// has to be asked by itself.
    /// </remarks>
    private bool TrySpreadFrom(int seed)
    {
        _reached.Clear();
        Reach(seed, 0);
        var agree = true;
        for (var i = 0; i < _reached.Count; i++)
        {
            var half = _reached[i];
            var across = _winding[half] - CountOf(half);
            if (_winding[half ^ 1] == Unknown) Reach(half ^ 1, across);
            else agree &= _winding[half ^ 1] == across;
        }
        if (!agree)
        {
            foreach (var half in _reached.Items) _winding[half] = Unknown;
            return false;
        }
        var clear = ClearHalf(out var beside, out _);
        var less = WindingAt(beside) - _winding[clear];
        foreach (var half in _reached.Items) _winding[half] += less;
        return true;
    }

    /// <summary>Winding numbers of the face of a half-edge, and of the one across the edge beside which the ray is cast.</summary>
    private void CastFor(int seed)
    {
        _reached.Clear();
        Reach(seed, 0);
        var clear = ClearHalf(out var beside, out var evenOfHidden);
        var winding = WindingAt(beside);
        foreach (var half in _reached.Items) _winding[half] = winding;
        if (evenOfHidden && _winding[clear ^ 1] == Unknown) Reach(clear ^ 1, winding - CountOf(clear));
    }

    private int CountOf(int half) => (half & 1) == 0 ? _edges[half >> 1].Count : -_edges[half >> 1].Count;

    private void Reach(int half, int winding)
    {
        for (; _winding[half] == Unknown; half = fans.Next(half))
        {
            _winding[half] = winding;
            _reached.Add(half);
        }
    }

    /// <summary>A half-edge of those reached, and a point of the face on its left that lies well away from all edges.</summary>
    /// <remarks>A ray from there need not know in which order edges lie that are nearer to each other than the tolerance.</remarks>
    /// <param name="beside">The point.</param>
    /// <param name="evenOfHidden">Whether no hidden line runs along the edge either, or between it and the point.</param>
    private int ClearHalf(out Point beside, out bool evenOfHidden)
    {
        var longest = _reached[0];
        foreach (var half in _reached.Items)
        {
            if (ChordSquared(half) > ChordSquared(longest)) longest = half;
        }
        if (HasRoom(longest, out evenOfHidden))
        {
            beside = Beside(longest, Room);
            return longest;
        }

        evenOfHidden = false;
        _reached.Items.Sort(_longestFirst ??= (a, b) => ChordSquared(b).CompareTo(ChordSquared(a)));
        // Often something lies close on one side only, and mostly there is room outside the whole. Edges that stay within the
        // tolerance of each other may lie the other way round than their order about a node says; so better none is that close.
        foreach (var apart in (ReadOnlySpan<double>)[1.5 * Tolerance.Merge, 0.25 * Tolerance.Merge])
        {
            for (var room = Room; room > Tolerance.Merge / 10; room /= 4)
            {
                foreach (var half in _reached.Items)
                {
                    if (ChordSquared(half) < 16 * room * room) break;
                    beside = Beside(half, room);
                    if (HasRoomAhead(half, beside, apart)) return half;
                }
            }
        }
        beside = Beside(longest, Tolerance.Merge / 10);
        return longest;
    }

    /// <summary>A point to the left of the middle of a half-edge, half as far off as there is room.</summary>
    private Point Beside(int half, double room)
    {
        var curve = arrangement.CurveOf(_edges[half >> 1]);
        var aside = curve.Along.Left * (Math.Min(room, curve.Reach / 2) / 2);
        return (half & 1) == 0 ? curve.Apex + aside : curve.Apex - aside;
    }

    /// <summary>Whether, seen from a point beside the middle of a half-edge, everything else is farther off than that middle by as much.</summary>
    private bool HasRoomAhead(int half, Point beside, double apart)
    {
        var near = beside.DistanceTo(arrangement.CurveOf(_edges[half >> 1]).Apex) + apart;
        _hit.Clear();
        BoxesNow().Touching(Bounds.Around(beside, near), _hit);
        foreach (var e in _hit.Items)
        {
            ref readonly var edge = ref _edges[e];
            if (e == half >> 1) continue;
            if (Distance(beside, arrangement.Nodes[edge.Start], arrangement.Nodes[edge.End], arrangement.CurveOf(edge)) < near) return false;
        }
        return true;
    }

    private double ChordSquared(int half) =>
        (arrangement.Nodes[_edges[half >> 1].End] - arrangement.Nodes[_edges[half >> 1].Start]).LengthSquared;

    /// <summary>Whether no edge, as it was put in, comes near the middle of an edge but that itself.</summary>
    private bool HasRoom(int half, out bool evenOfHidden)
    {
        ref readonly var edge = ref _edges[half >> 1];
        var middle = arrangement.CurveOf(edge).Apex;
        evenOfHidden = true;
        _hit.Clear();
        _boxes.Touching(Bounds.Around(middle, Room), _hit);
        foreach (var p in _hit.Items)
        {
            ref readonly var piece = ref arrangement.Pieces[p];
            if (p == edge.Parent || Distance(middle, piece.Start, piece.End, piece.Curve) >= Room) continue;
            if (piece.IsEdge) return false;
            evenOfHidden = false;
        }
        return true;
    }

    private static double Distance(Point point, Point start, Point end, in Curve curve) => curve.Reaches(curve.PlaceOf(point))
        ? Math.Abs(curve.RightOf(point))
        : Math.Min(point.DistanceTo(start), point.DistanceTo(end));

    private int WindingAt(Point point)
    {
        _hit.Clear();
        _boxes.Touching(Bounds.LeftFrom(point), _hit);
        var winding = 0;
        foreach (var p in _hit.Items)
        {
            ref readonly var piece = ref arrangement.Pieces[p];
            winding += piece.Count * (point.X > _boxes[p].MaxX
                ? Ray.CrossingsOfAllToTheLeft(piece.Start, piece.End, point)
                : Ray.Crossings(piece.Curve, piece.Start, piece.End, point));
        }
        return winding;
    }
}
