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
    private readonly Turn[] _turns;
    private readonly int[] _next;
    private readonly int[] _winding;
    private readonly int[] _part;

    public Windings(Arrangement arrangement)
    {
        _arrangement = arrangement;
        var halves = arrangement.Edges.Count * 2;
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
        _part = new int[arrangement.Edges.Count];
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
    /// order on every circle that reaches all of them: that of the shortest. Two that lie within the tolerance there are compared
    /// on a circle of their own, as far out as both reach.
    /// </remarks>
    private void SortFan(List<int> fan)
    {
        var radius = fan.Min(h => _turns[h].Chord);
        var angles = fan.ToDictionary(h => h, h => Wrapped(_turns[h].DirectionAt(radius)));
        fan.Sort((a, b) => angles[a].CompareTo(angles[b]));
        RotateToWidestGap(fan, angles);
        for (var i = 1; i < fan.Count; i++)
        {
            for (var j = i; j > 0 && AreClose(fan[j - 1], fan[j]) && !IsBefore(fan[j - 1], fan[j]); j--)
                (fan[j - 1], fan[j]) = (fan[j], fan[j - 1]);
        }

        bool AreClose(int a, int b) => Math.Abs(Wrapped(angles[b] - angles[a])) * radius < 2 * Tolerance.Merge;
    }

    private bool IsBefore(int a, int b)
    {
        var (p, q) = (_turns[a], _turns[b]);
        // Between the same two nodes the one that turns left more lies on the right.
        if (Origin(a ^ 1) == Origin(b ^ 1)) return p.Bulge > q.Bulge;
        var radius = Math.Min(p.Chord, q.Chord);
        return Wrapped(q.DirectionAt(radius) - p.DirectionAt(radius)) >= 0;
    }

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
        foreach (var part in Parts(fans))
        {
            var seed = Outermost(part, fans, out var point);
            Reach(seed, WindingAt(point, exceptPart: _part[part[0]]));
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
    private List<List<int>> Parts(Dictionary<int, List<int>> fans)
    {
        var parts = new List<List<int>>();
        Array.Fill(_part, -1);
        for (var e = 0; e < _part.Length; e++)
        {
            if (_part[e] >= 0) continue;
            var part = new List<int> { e };
            _part[e] = parts.Count;
            for (var i = 0; i < part.Count; i++)
            {
                var edge = _arrangement.Edges[part[i]];
                AddFan(fans[edge.Start]);
                AddFan(fans[edge.End]);
            }
            parts.Add(part);

            void AddFan(List<int> fan)
            {
                foreach (var half in fan)
                {
                    if (_part[half >> 1] >= 0) continue;
                    _part[half >> 1] = parts.Count;
                    part.Add(half >> 1);
                }
            }
        }
        return parts;
    }

    /// <summary>The half-edge at the leftmost point of a part that has the outside on its left.</summary>
    private int Outermost(List<int> part, Dictionary<int, List<int>> fans, out Point leftmost)
    {
        leftmost = new(double.PositiveInfinity, 0);
        var outermost = -1;
        foreach (var e in part)
        {
            var edge = _arrangement.Edges[e];
            foreach (var node in (ReadOnlySpan<int>)[edge.Start, edge.End])
            {
                if (!(_arrangement.Nodes[node].X < leftmost.X)) continue;
                leftmost = _arrangement.Nodes[node];
                outermost = LastBeforeWest(fans[node]);
            }
            var curve = _arrangement.CurveOf(edge);
            if (!curve.Reaches(curve.UprightPlace)) continue;
            var extreme = curve.At(curve.UprightPlace);
            // Within the tolerance of an end, the fan about that end decides.
            var ends = Math.Min(_arrangement.Nodes[edge.Start].X, _arrangement.Nodes[edge.End].X);
            if (!(extreme.X < leftmost.X && extreme.X < ends - Tolerance.Merge)) continue;
            leftmost = extreme;
            // There a left turn runs downwards, with the outside on its right.
            outermost = curve.Curvature > 0 ? 2 * e + 1 : 2 * e;
        }
        return outermost;
    }

    /// <summary>The last half-edge, counter-clockwise, of a fan that has nothing to the left of its node.</summary>
    private int LastBeforeWest(List<int> fan)
    {
        // That gap is half a turn at least, so it is the widest, before which a sorted fan ends; or one of two half turns.
        SortFan(fan);
        var radius = fan.Min(h => _turns[h].Chord);
        for (var i = 1; i < fan.Count; i++)
        {
            var from = _turns[fan[i - 1]].DirectionAt(radius);
            var gap = Wrapped(_turns[fan[i]].DirectionAt(radius) - from);
            if (Math.Abs(gap) > Math.PI - 1e-6 && Math.Cos(from + Math.PI / 2) < 0) return fan[i - 1];
        }
        return fan[^1];
    }

    private int WindingAt(Point point, int exceptPart)
    {
        var winding = 0;
        for (var e = 0; e < _arrangement.Edges.Count; e++)
        {
            if (_part[e] != exceptPart) winding += _arrangement.Edges[e].Count * Ray.Crossings(_arrangement, e, point);
        }
        return winding;
    }

    private Turn TurnOf(int half)
    {
        var edge = _arrangement.Edges[half >> 1];
        var (from, to) = (_arrangement.Nodes[Origin(half)], _arrangement.Nodes[Origin(half ^ 1)]);
        var bulge = (half & 1) == 0 ? edge.Bulge : -edge.Bulge;
        var chord = to - from;
        var length = chord.Length;
        return new(chord.Direction.Radians - 2 * Math.Atan(bulge), length, bulge, 4 * bulge / (length * (1 + bulge * bulge)));
    }

    private static double Wrapped(double angle) => Math.IEEERemainder(angle, 2 * Math.PI);

    /// <summary>How a half-edge leaves its node: its direction there, its length as the crow flies, its turning.</summary>
    private readonly record struct Turn(double Direction, double Chord, double Bulge, double Curvature)
    {
        /// <summary>Direction in which it is seen from its node, where it is this far away.</summary>
        public double DirectionAt(double distance) => Direction + Math.Asin(Math.Clamp(distance * Curvature / 2, -1, 1));
    }
}
