namespace TemplateForge.Geometry;

/// <summary>How often the boundary runs round the points on either side of each edge.</summary>
/// <remarks>
/// Every edge has two half-edges: 2 e forwards, 2 e + 1 backwards. Sorted about their nodes they bound faces, each on the left of
/// its half-edges. Crossing an edge from its right to its left adds its count; so one ray for each connected part of the
/// arrangement is enough, and within a face there can be no two opinions.
/// </remarks>
internal sealed class Windings
{
    private readonly Arrangement _arrangement;
    private readonly Curve[] _curves;
    private readonly Turn[] _turns;
    private readonly int[] _next;
    private readonly int[] _winding;

    public Windings(Arrangement arrangement)
    {
        _arrangement = arrangement;
        var halves = arrangement.Edges.Count * 2;
        _curves = [.. arrangement.Edges.Select(arrangement.CurveOf)];
        _turns = new Turn[halves];
        for (var h = 0; h < halves; h++) _turns[h] = TurnOf(h);
        _next = new int[halves];
        var fans = Fans();
        foreach (var fan in fans.Values)
        {
            // Round two half-edges there is one order only.
            if (fan.Count > 2) SortFan(fan);
            for (var i = 0; i < fan.Count; i++) _next[fan[i] ^ 1] = fan[(i + fan.Count - 1) % fan.Count];
        }
        _winding = new int[halves];
        Spread(fans);
    }

    /// <summary>The half-edge that follows along the same face.</summary>
    public int Next(int half) => _next[half];

    /// <summary>Winding number on the left of a half-edge.</summary>
    public int LeftOf(int half) => _winding[half];

    public int Origin(int half) =>
        (half & 1) == 0 ? _arrangement.Edges[half >> 1].Start : _arrangement.Edges[half >> 1].End;

    /// <summary>The half-edges that leave each node.</summary>
    private Dictionary<int, List<int>> Fans()
    {
        var fans = new Dictionary<int, List<int>>();
        for (var h = 0; h < _next.Length; h++)
        {
            if (!fans.TryGetValue(Origin(h), out var fan)) fans.Add(Origin(h), fan = []);
            fan.Add(h);
        }
        return fans;
    }

    /// <summary>Sorts a fan counter-clockwise, beginning after its widest gap.</summary>
    /// <remarks>
    /// An arc of at most half a turn only ever gets farther from its start, so about a node edges that do not cross have the same
    /// order on every circle that reaches all of them: one a little within the shortest. Of two that lie within the tolerance there
    /// the shorter ends clearly to the left or right of the longer, or it would end in a node of it.
    /// </remarks>
    private void SortFan(List<int> fan)
    {
        var radius = fan.Min(h => _turns[h].Reach);
        var angles = fan.ToDictionary(h => h, h => Wrapped(_turns[h].DirectionAt(radius)));
        fan.Sort((a, b) => angles[a].CompareTo(angles[b]));
        RotateToWidestGap(fan, angles);
        for (var i = 1; i < fan.Count; i++)
        {
            for (var j = i; j > 0 && AreClose(fan[j - 1], fan[j]) && !IsBefore(fan[j - 1], fan[j]); j--)
                (fan[j - 1], fan[j]) = (fan[j], fan[j - 1]);
        }

        // A shortest edge of hardly the tolerance puts all within it: what clearly differs in direction is in order even there.
        bool AreClose(int a, int b) =>
            Math.Abs(Wrapped(angles[b] - angles[a])) is var apart && apart < 0.1 && apart * radius < 2 * Tolerance.Merge;
    }

    private bool IsBefore(int a, int b)
    {
        // Between the same two nodes the one that turns left more lies on the right.
        if (Origin(a ^ 1) == Origin(b ^ 1)) return _turns[a].Bulge > _turns[b].Bulge;
        return _turns[a].Reach <= _turns[b].Reach
            ? CurveAlong(b).RightOf(PointAt(a ^ 1)) > 0
            : CurveAlong(a).RightOf(PointAt(b ^ 1)) < 0;
    }

    private Point PointAt(int half) => _arrangement.Nodes[Origin(half)];

    private Curve CurveAlong(int half) => Curve.Between(PointAt(half), PointAt(half ^ 1), _turns[half].Bulge);

    private static void RotateToWidestGap(List<int> fan, Dictionary<int, double> angles)
    {
        var (widest, first) = (angles[fan[0]] + 2 * Math.PI - angles[fan[^1]], 0);
        for (var i = 1; i < fan.Count; i++)
        {
            if (angles[fan[i]] - angles[fan[i - 1]] is var gap && gap > widest) (widest, first) = (gap, i);
        }
        var head = fan[..first];
        fan.RemoveRange(0, first);
        fan.AddRange(head);
    }

    private void Spread(Dictionary<int, List<int>> fans)
    {
        var reached = new bool[_winding.Length];
        var waiting = new Stack<int>();
        foreach (var part in Parts(_arrangement.Edges, fans))
        {
            var seed = ClearHalf(part, out var beside);
            Reach(seed, WindingAt(beside));
            while (waiting.TryPop(out var half))
            {
                var edge = _arrangement.Edges[half >> 1];
                if (!reached[half ^ 1]) Reach(half ^ 1, _winding[half] - ((half & 1) == 0 ? edge.Count : -edge.Count));
            }
        }

        void Reach(int half, int winding)
        {
            for (var h = half; !reached[h]; h = _next[h])
            {
                (reached[h], _winding[h]) = (true, winding);
                waiting.Push(h);
            }
        }
    }

    /// <summary>The edges of each connected part.</summary>
    private static IEnumerable<List<int>> Parts(IReadOnlyList<Edge> edges, Dictionary<int, List<int>> fans)
    {
        var seen = new bool[edges.Count];
        for (var first = 0; first < seen.Length; first++)
        {
            if (seen[first]) continue;
            seen[first] = true;
            var part = new List<int> { first };
            for (var i = 0; i < part.Count; i++)
            {
                foreach (var half in fans[edges[part[i]].Start].Concat(fans[edges[part[i]].End]))
                {
                    if (seen[half >> 1]) continue;
                    seen[half >> 1] = true;
                    part.Add(half >> 1);
                }
            }
            yield return part;
        }
    }

    /// <summary>A half-edge of a part, and a point of the face on its left that lies well away from all edges.</summary>
    /// <remarks>A ray from there need not know in which order edges lie that are nearer to each other than the tolerance.</remarks>
    private int ClearHalf(List<int> part, out Point beside)
    {
        var (clearest, clearance) = (part[0], 0.0);
        foreach (var e in part.OrderByDescending(e => _curves[e].Reach))
        {
            var room = RoomAbout(_curves[e].Apex, except: e);
            if (room > clearance) (clearest, clearance) = (e, room);
            if (clearance > 1000 * Tolerance.Merge) break;
        }
        var curve = _curves[clearest];
        beside = curve.Apex + curve.Along.Left * (Math.Min(clearance, curve.Reach / 2) / 2);
        return 2 * clearest;
    }

    /// <summary>Distance from a point to the nearest edge but one.</summary>
    private double RoomAbout(Point point, int except)
    {
        var nearest = double.PositiveInfinity;
        for (var e = 0; e < _curves.Length; e++)
        {
            if (e != except) nearest = Math.Min(nearest, DistanceTo(e, point));
        }
        return nearest;
    }

    private double DistanceTo(int edge, Point point) => _curves[edge].Reaches(_curves[edge].PlaceOf(point))
        ? Math.Abs(_curves[edge].RightOf(point))
        : Math.Min(point.DistanceTo(PointAt(2 * edge)), point.DistanceTo(PointAt(2 * edge + 1)));

    private int WindingAt(Point point)
    {
        var winding = 0;
        for (var e = 0; e < _curves.Length; e++)
        {
            winding += _arrangement.Edges[e].Count * Ray.Crossings(_curves[e], PointAt(2 * e), PointAt(2 * e + 1), point);
        }
        return winding;
    }

    private Turn TurnOf(int half)
    {
        var edge = _arrangement.Edges[half >> 1];
        var (from, to) = (PointAt(half), PointAt(half ^ 1));
        var bulge = (half & 1) == 0 ? edge.Bulge : -edge.Bulge;
        var chord = to - from;
        var length = chord.Length;
        return new(chord.Direction.Radians - 2 * Math.Atan(bulge), 0.9 * length, bulge, 4 * bulge / (length * (1 + bulge * bulge)));
    }

    private static double Wrapped(double angle) => Math.IEEERemainder(angle, 2 * Math.PI);

    /// <summary>How a half-edge leaves its node.</summary>
    /// <param name="Direction">There, in radians.</param>
    /// <param name="Reach">
    /// How far out it is compared with others: nine tenths of its chord. A half circle ends along a circle about its start, where
    /// the direction in which it is seen is badly known.
    /// </param>
    /// <param name="Bulge">tan(sweep / 4) of the whole.</param>
    /// <param name="Curvature">Positive turning left.</param>
    private readonly record struct Turn(double Direction, double Reach, double Bulge, double Curvature)
    {
        /// <summary>Direction in which it is seen from its node, where it is this far away.</summary>
        public double DirectionAt(double distance) => Direction + Math.Asin(Math.Clamp(distance * Curvature / 2, -1, 1));
    }
}
