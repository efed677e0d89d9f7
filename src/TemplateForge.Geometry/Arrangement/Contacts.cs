namespace TemplateForge.Geometry;

/// <summary>All places where edges meet other than in a common node.</summary>
/// <remarks>
/// Two edges are in contact where an end of one lies on the other, where they cross, and where they touch. They count as in
/// contact as long as they stay nearer than the tolerance, so one node stands for all of such a stretch: a crossing that can be
/// reached from a known contact without ever leaving the tolerance is no new one. That holds for near tangents, whose crossings
/// are known only to √(2 r δ) along the curve, and for edges that coincide, where every point would do for a crossing.
/// </remarks>
internal sealed class Contacts
{
    private readonly List<Point> _nodes;
    private readonly List<Edge> _edges;
    private readonly Curve[] _curves;
    private readonly Box[] _boxes;
    private readonly List<Cut> _cuts = [];

    /// <param name="nodes">Crossings and touching points are added to these.</param>
    /// <param name="edges">Pairs of which both are settled are not looked at again.</param>
    public Contacts(List<Point> nodes, List<Edge> edges)
    {
        (_nodes, _edges) = (nodes, edges);
        _curves = [.. edges.Select(e => Curve.Between(nodes[e.Start], nodes[e.End], e.Bulge))];
        _boxes = [.. edges.Select((e, i) => BoxOf(e, _curves[i]).Grown(Tolerance.Merge))];
    }

    public List<Cut> Find()
    {
        // Plain search: edges from left to right, each against those that begin before it ends.
        var order = Enumerable.Range(0, _edges.Count).ToArray();
        Array.Sort(order, (a, b) => _boxes[a].Min.X.CompareTo(_boxes[b].Min.X));
        for (var i = 0; i < order.Length; i++)
        {
            var a = order[i];
            for (var j = i + 1; j < order.Length && _boxes[order[j]].Min.X <= _boxes[a].Max.X; j++)
            {
                var b = order[j];
                if (_edges[a].Settled && _edges[b].Settled || !_boxes[a].Touches(_boxes[b])) continue;
                // The more curved one is followed; the distance from the flatter one is the better known.
                if (Math.Abs(_curves[a].Curvature) >= Math.Abs(_curves[b].Curvature)) Compare(a, b);
                else Compare(b, a);
            }
        }
        return _cuts;
    }

    private Box BoxOf(Edge edge, Curve curve)
    {
        var (start, end) = (_nodes[edge.Start], _nodes[edge.End]);
        var box = new Box(start, start).Joined(new(end, end));
        foreach (var place in (ReadOnlySpan<double>)[curve.UprightPlace, curve.LevelPlace])
        {
            if (!curve.Reaches(place)) continue;
            var extreme = curve.At(place);
            box = box.Joined(new(extreme, extreme));
        }
        return box;
    }

    private void Compare(int followed, int other)
    {
        Span<double> known = stackalloc double[4];
        var count = 0;
        EndOnEdge(_edges[followed].Start, other, followed, known, ref count);
        EndOnEdge(_edges[followed].End, other, followed, known, ref count);
        EndOnEdge(_edges[other].Start, followed, followed, known, ref count);
        EndOnEdge(_edges[other].End, followed, followed, known, ref count);
        known = known[..count];

        // Along the followed curve the power of the other is (a w² + 2 h w + f) / (1 + κ² w²).
        var (curve, flatter) = (_curves[followed], _curves[other]);
        var gradient = flatter.PowerGradient(curve.Apex);
        var f = flatter.Power(curve.Apex);
        var h = gradient.Dot(curve.Along);
        var a = f * curve.Curvature * curve.Curvature
            + 2 * (flatter.Curvature + curve.Curvature * gradient.Dot(curve.Along.Left));

        var nearest = -h / a;
        if (curve.Reaches(nearest) && Math.Abs(flatter.RightOf(curve.At(nearest))) < Tolerance.Merge)
        {
            Meet(followed, other, nearest, known);
            return;
        }
        var discriminant = h * h - a * f;
        if (discriminant < 0) return;
        var q = -(h + Math.CopySign(Math.Sqrt(discriminant), h));
        Meet(followed, other, q / a, known);
        Meet(followed, other, f / q, known);
    }

    /// <summary>Notes where on the followed edge an end of one lies on the other, or at an end of it.</summary>
    private void EndOnEdge(int node, int edge, int followed, Span<double> known, ref int count)
    {
        var (point, curve) = (_nodes[node], _curves[edge]);
        var (start, end) = (_edges[edge].Start, _edges[edge].End);
        var atEnd = node == start || node == end
            || point.DistanceTo(_nodes[start]) < Tolerance.Merge || point.DistanceTo(_nodes[end]) < Tolerance.Merge;
        if (!atEnd)
        {
            var place = curve.PlaceOf(point);
            if (!curve.Reaches(place) || !(Math.Abs(curve.RightOf(point)) < Tolerance.Merge)) return;
            _cuts.Add(new(edge, place, node));
        }
        known[count++] = Math.Clamp(_curves[followed].PlaceOf(point), -_curves[followed].Reach, _curves[followed].Reach);
    }

    private void Meet(int followed, int other, double place, ReadOnlySpan<double> known)
    {
        var (curve, flatter) = (_curves[followed], _curves[other]);
        if (!curve.Reaches(place)) return;
        var point = curve.At(place);
        var otherPlace = flatter.PlaceOf(point);
        if (!flatter.Reaches(otherPlace)) return;
        foreach (var contact in known)
        {
            if (StaysNear(curve, flatter, contact, place)) return;
        }
        _nodes.Add(point);
        _cuts.Add(new(followed, place, _nodes.Count - 1));
        _cuts.Add(new(other, otherPlace, _nodes.Count - 1));
    }

    private static bool StaysNear(Curve curve, Curve flatter, double from, double to)
    {
        // Two conics of this kind bulge apart once between two contacts; three samples cannot miss it.
        for (var share = 0.25; share < 1; share += 0.25)
        {
            if (!(Math.Abs(flatter.RightOf(curve.At(from + (to - from) * share))) < Tolerance.Merge)) return false;
        }
        return true;
    }
}

/// <summary>An edge is to be cut at a node.</summary>
/// <param name="Edge">Which edge.</param>
/// <param name="Place">Where along its curve.</param>
/// <param name="Node">The node that lies there.</param>
internal readonly record struct Cut(int Edge, double Place, int Node);
