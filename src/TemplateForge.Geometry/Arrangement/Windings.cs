namespace TemplateForge.Geometry;

/// <summary>How often the boundary runs round the points on either side of each edge.</summary>
/// <remarks>
/// Crossing an edge from its right to its left adds its count; so one ray for each connected part of the arrangement is enough, and
/// within a face there can be no two opinions. The ray counts the curves as they were put in.
/// </remarks>
internal sealed class Windings(Arrangement arrangement, BoxTree pieceBoxes, Fans fans)
{
    private const int Unknown = int.MinValue;

    /// <summary>Room in mm that puts a point beyond all doubt on one side of an edge.</summary>
    private const double Room = 1000 * Tolerance.Merge;

    private readonly Buffer<int> _winding = new();
    private readonly Buffer<int> _part = new();
    private readonly Buffer<int> _hit = new();
    private Buffer<Edge> _edges = arrangement.Edges;

    /// <summary>Winding number on the left of a half-edge.</summary>
    public int LeftOf(int half) => _winding[half];

    public void Spread()
    {
        _edges = arrangement.Edges;
        _winding.Filled(2 * _edges.Count, Unknown);
        for (var half = 0; half < _winding.Count; half += 2)
        {
            if (_winding[half] == Unknown) SpreadFrom(half);
        }
    }

    /// <summary>Winding numbers of a whole connected part: first less that of one of its faces, then as they are.</summary>
    private void SpreadFrom(int seed)
    {
        _part.Clear();
        Reach(seed, 0);
        for (var i = 0; i < _part.Count; i++)
        {
            var half = _part[i];
            if (_winding[half ^ 1] != Unknown) continue;
            var count = _edges[half >> 1].Count;
            Reach(half ^ 1, _winding[half] - ((half & 1) == 0 ? count : -count));
        }
        var clear = ClearHalf(out var beside);
        var less = WindingAt(beside) - _winding[clear];
        foreach (var half in _part.Items) _winding[half] += less;
    }

    private void Reach(int half, int winding)
    {
        for (; _winding[half] == Unknown; half = fans.Next(half))
        {
            _winding[half] = winding;
            _part.Add(half);
        }
    }

    /// <summary>A half-edge of the part, and a point of the face on its left that lies well away from all edges.</summary>
    /// <remarks>A ray from there need not know in which order edges lie that are nearer to each other than the tolerance.</remarks>
    private int ClearHalf(out Point beside)
    {
        var longest = _part[0];
        foreach (var half in _part.Items)
        {
            if (ChordSquared(half) > ChordSquared(longest)) longest = half;
        }
        var edge = longest >> 1;
        var curve = arrangement.CurveOf(_edges[edge]);
        if (HasRoom(curve.Apex, _edges[edge].Parent))
        {
            beside = Beside(curve, Room);
            return 2 * edge;
        }

        _part.Items.Sort((a, b) => ChordSquared(b).CompareTo(ChordSquared(a)));
        var (clearest, clearance) = (longest >> 1, 0.0);
        foreach (var half in _part.Items)
        {
            var room = RoomAbout(arrangement.CurveOf(_edges[half >> 1]).Apex, except: half >> 1);
            if (room > clearance) (clearest, clearance) = (half >> 1, room);
            if (clearance > Room) break;
        }
        beside = Beside(arrangement.CurveOf(_edges[clearest]), clearance);
        return 2 * clearest;

        static Point Beside(in Curve curve, double room) => curve.Apex + curve.Along.Left * (Math.Min(room, curve.Reach / 2) / 2);
    }

    private double ChordSquared(int half) =>
        (arrangement.Nodes[_edges[half >> 1].End] - arrangement.Nodes[_edges[half >> 1].Start]).LengthSquared;

    /// <summary>Whether no curve that was put in, but one, comes near a point.</summary>
    private bool HasRoom(Point point, int except)
    {
        _hit.Clear();
        pieceBoxes.Touching(Bounds.Around(point, Room), _hit);
        foreach (var p in _hit.Items)
        {
            ref readonly var piece = ref arrangement.Pieces[p];
            if (p != except && Distance(point, piece.Start, piece.End, piece.Curve) < Room) return false;
        }
        return true;
    }

    /// <summary>Distance from a point to the nearest edge but one.</summary>
    private double RoomAbout(Point point, int except)
    {
        var nearest = double.PositiveInfinity;
        for (var e = 0; e < _edges.Count; e++)
        {
            ref readonly var edge = ref _edges[e];
            if (e == except) continue;
            nearest = Math.Min(nearest, Distance(point, arrangement.Nodes[edge.Start], arrangement.Nodes[edge.End], arrangement.CurveOf(edge)));
        }
        return nearest;
    }

    private static double Distance(Point point, Point start, Point end, in Curve curve) => curve.Reaches(curve.PlaceOf(point))
        ? Math.Abs(curve.RightOf(point))
        : Math.Min(point.DistanceTo(start), point.DistanceTo(end));

    private int WindingAt(Point point)
    {
        _hit.Clear();
        pieceBoxes.Touching(Bounds.LeftFrom(point), _hit);
        var winding = 0;
        foreach (var p in _hit.Items)
        {
            ref readonly var piece = ref arrangement.Pieces[p];
            winding += piece.Count * Ray.Crossings(piece.Curve, piece.Start, piece.End, point);
        }
        return winding;
    }
}
