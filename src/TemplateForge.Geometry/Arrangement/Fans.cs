namespace TemplateForge.Geometry;

/// <summary>The edges about each node, sorted counter-clockwise.</summary>
/// <remarks>
/// Every edge has two half-edges: 2 e forwards, 2 e + 1 backwards. Sorted about the nodes that they leave they bound faces, each on
/// the left of its half-edges.
/// </remarks>
internal sealed class Fans(Arrangement arrangement)
{
    /// <summary>Directions that differ by as much are in order, as is, whatever the tolerance did to the edges; about 2°.</summary>
    private const double ClearlyApart = 0.05;

    /// <summary>So long, in mm, must edges be for that.</summary>
    private const double LongEnough = 1000 * Tolerance.Merge;

    private readonly Buffer<int> _first = new();
    private readonly Buffer<int> _halves = new();
    private readonly Buffer<int> _next = new();
    private readonly Buffer<Spoke> _fan = new();
    private Buffer<Edge> _edges = arrangement.Edges;

    /// <summary>The half-edge that follows along the same face.</summary>
    public int Next(int half) => _next[half];

    public int Origin(int half) => (half & 1) == 0 ? _edges[half >> 1].Start : _edges[half >> 1].End;

    public void Build()
    {
        _edges = arrangement.Edges;
        Gather();
        if (MergeDoubled()) Gather();
        _next.Sized(_halves.Count);
        for (var node = 0; node + 1 < _first.Count; node++)
        {
            var fan = _halves.Items[_first[node].._first[node + 1]];
            // Round two half-edges there is one order only.
            if (fan.Length > 2) Sort(fan);
            for (var i = 0; i < fan.Length; i++) _next[fan[i] ^ 1] = fan[i == 0 ? ^1 : i - 1];
        }
    }

    /// <summary>The half-edges that leave each node, in no order yet.</summary>
    private void Gather()
    {
        var edges = _edges.Items;
        var first = _first.Filled(arrangement.Nodes.Count + 1, 0);
        foreach (ref readonly var edge in edges)
        {
            first[edge.Start]++;
            first[edge.End]++;
        }
        var sum = 0;
        for (var i = 0; i < first.Length; i++) first[i] = sum += first[i];
        var halves = _halves.Sized(2 * edges.Length);
        for (var e = edges.Length - 1; e >= 0; e--)
        {
            halves[--first[edges[e].End]] = 2 * e + 1;
            halves[--first[edges[e].Start]] = 2 * e;
        }
    }

    /// <summary>Makes one of edges between the same nodes that are nowhere further apart than the tolerance; whether there were any.</summary>
    private bool MergeDoubled()
    {
        var any = false;
        for (var node = 0; node + 1 < _first.Count; node++)
        {
            var fan = _halves.Items[_first[node].._first[node + 1]];
            for (var i = 1; i < fan.Length; i++)
            {
                for (var j = 0; j < i; j++)
                {
                    if (Origin(fan[i] ^ 1) != Origin(fan[j] ^ 1) || !MergeIfAlike(fan[j], fan[i])) continue;
                    any = true;
                    break;
                }
            }
        }
        if (!any) return false;
        var kept = 0;
        var edges = _edges.Items;
        foreach (ref readonly var edge in edges)
        {
            if (edge.Count != 0) edges[kept++] = edge;
        }
        _edges.RemoveLast(edges.Length - kept);
        return true;
    }

    private bool MergeIfAlike(int one, int other)
    {
        ref var a = ref _edges[one >> 1];
        ref var b = ref _edges[other >> 1];
        if (a.Count == 0 || b.Count == 0) return false;
        var halfChord = arrangement.Nodes[a.Start].DistanceTo(arrangement.Nodes[a.End]) / 2;
        if (Math.Abs(BulgeOf(one) - BulgeOf(other)) * halfChord >= Tolerance.Merge) return false;
        a = a with { Count = a.Count + ((one & 1) == (other & 1) ? b.Count : -b.Count) };
        b = b with { Count = 0 };
        return true;
    }

    private double BulgeOf(int half) => (half & 1) == 0 ? _edges[half >> 1].Bulge : -_edges[half >> 1].Bulge;

    private Point PointAt(int half) => arrangement.Nodes[Origin(half)];

    private void Sort(Span<int> fan)
    {
        var spokes = _fan.Sized(fan.Length);
        if (!SortByTangent(fan, spokes)) SortWithCare(fan, spokes);
        for (var i = 0; i < fan.Length; i++) fan[i] = spokes[i].Half;
    }

    /// <summary>Enough where all tangents clearly differ.</summary>
    private bool SortByTangent(Span<int> fan, Span<Spoke> spokes)
    {
        for (var i = 0; i < fan.Length; i++)
        {
            var chord = PointAt(fan[i] ^ 1) - PointAt(fan[i]);
            if (chord.LengthSquared < LongEnough * LongEnough) return false;
            var bulge = BulgeOf(fan[i]);
            var tangent = chord * (1 - bulge * bulge) - chord.Left * (2 * bulge);
            Insert(spokes, i, new(fan[i], Around(tangent), default));
        }
        if (spokes[0].Angle + 4 - spokes[^1].Angle < ClearlyApart) return false;
        for (var i = 1; i < spokes.Length; i++)
        {
            if (spokes[i].Angle - spokes[i - 1].Angle < ClearlyApart) return false;
        }
        return true;
    }

    /// <summary>Grows with the angle, from 0 along +x to 4, by 0.7 to 1.4 a radian over most of it and never by less than 0.6.</summary>
    private static double Around(Vector direction)
    {
        var share = direction.X / (Math.Abs(direction.X) + Math.Abs(direction.Y));
        return direction.Y >= 0 ? 1 - share : 3 + share;
    }

    private static void Insert(Span<Spoke> spokes, int count, Spoke spoke)
    {
        for (; count > 0 && spokes[count - 1].Angle > spoke.Angle; count--) spokes[count] = spokes[count - 1];
        spokes[count] = spoke;
    }

    /// <summary>Sorts a fan counter-clockwise, beginning after its widest gap.</summary>
    /// <remarks>
    /// An arc of at most half a turn only ever gets farther from its start, so about a node edges that do not cross have the same
    /// order on every circle that reaches all of them: one a little within the shortest. Of two that lie within the tolerance there
    /// the shorter ends clearly to the left or right of the longer, or it would end in a node of it.
    /// </remarks>
    private void SortWithCare(Span<int> fan, Span<Spoke> spokes)
    {
        var radius = double.PositiveInfinity;
        foreach (var half in fan) radius = Math.Min(radius, TurnOf(half).Reach);
        for (var i = 0; i < fan.Length; i++)
        {
            var turn = TurnOf(fan[i]);
            Insert(spokes, i, new(fan[i], Wrapped(turn.DirectionAt(radius)), turn));
        }
        RotateToWidestGap(spokes);
        for (var i = 1; i < spokes.Length; i++)
        {
            for (var j = i; j > 0 && AreClose(spokes[j - 1], spokes[j]) && !IsBefore(spokes[j - 1], spokes[j]); j--)
                (spokes[j - 1], spokes[j]) = (spokes[j], spokes[j - 1]);
        }

        // A shortest edge of hardly the tolerance puts all within it: what clearly differs in direction is in order even there.
        bool AreClose(in Spoke a, in Spoke b) =>
            Math.Abs(Wrapped(b.Angle - a.Angle)) is var apart && apart < 0.5 && apart * radius < 2 * Tolerance.Merge;
    }

    private static void RotateToWidestGap(Span<Spoke> spokes)
    {
        var (widest, first) = (spokes[0].Angle + 2 * Math.PI - spokes[^1].Angle, 0);
        for (var i = 1; i < spokes.Length; i++)
        {
            if (spokes[i].Angle - spokes[i - 1].Angle is var gap && gap > widest) (widest, first) = (gap, i);
        }
        spokes[..first].Reverse();
        spokes[first..].Reverse();
        spokes.Reverse();
    }

    private bool IsBefore(in Spoke a, in Spoke b)
    {
        // Between the same two nodes the one that turns left more lies on the right.
        if (Origin(a.Half ^ 1) == Origin(b.Half ^ 1)) return a.Turn.Bulge > b.Turn.Bulge;
        return a.Turn.Reach <= b.Turn.Reach
            ? CurveAlong(b).RightOf(PointAt(a.Half ^ 1)) > 0
            : CurveAlong(a).RightOf(PointAt(b.Half ^ 1)) < 0;
    }

    private Curve CurveAlong(in Spoke spoke) => Curve.Between(PointAt(spoke.Half), PointAt(spoke.Half ^ 1), spoke.Turn.Bulge);

    private Turn TurnOf(int half)
    {
        var (chord, bulge) = (PointAt(half ^ 1) - PointAt(half), BulgeOf(half));
        var length = chord.Length;
        return new(chord.Direction.Radians - 2 * Math.Atan(bulge), 0.9 * length, bulge, 4 * bulge / (length * (1 + bulge * bulge)));
    }

    private static double Wrapped(double angle) => Math.IEEERemainder(angle, 2 * Math.PI);

    /// <summary>A half-edge of a fan, and the direction by which it is sorted.</summary>
    private readonly record struct Spoke(int Half, double Angle, Turn Turn);

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
