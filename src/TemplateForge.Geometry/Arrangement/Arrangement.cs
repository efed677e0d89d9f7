using System.Runtime.InteropServices;

namespace TemplateForge.Geometry;

/// <summary>Curves laid over one another and cut where they meet: nodes, and edges that meet nowhere but in them.</summary>
/// <remarks>
/// <code>
/// 1. Contacts: every place where two edges cross, touch or part company.
/// 2. Nodes: points nearer to each other than the tolerance become one of them.
/// 3. Edges: cut at the nodes on them; edges that coincide become one, their counts added; what counts zero is gone.
/// Cut edges have been bent a little, to end exactly in nodes, so once more from 1, until nothing is new.
/// </code>
/// Then <see cref="Windings"/> says what is inside, and <see cref="Walk"/> runs round it. The curves as they were put in stay as
/// they are, and every edge takes its bulge from its curve.
/// </remarks>
internal sealed class Arrangement
{
    // Bending moves an edge by less than the tolerance, so new contacts get fewer quickly; three passes are already rare.
    private const int MostPasses = 24;

    private readonly List<Point> _nodes = [];
    private readonly Dictionary<Point, int> _nodeAt = [];
    private readonly List<Curve> _parents = [];
    private readonly List<(int, int)> _links = [];
    private List<Edge> _edges = [];

    public IReadOnlyList<Point> Nodes => _nodes;
    public IReadOnlyList<Edge> Edges => _edges;
    public IReadOnlyList<Curve> Parents => _parents;

    public void Add(Region region, int count)
    {
        foreach (var contour in region.Contours) Add(contour, count);
    }

    public void Add(Contour contour, int count)
    {
        for (var i = 0; i < contour.Segments.Length; i++)
        {
            var next = contour.Segments[(i + 1) % contour.Segments.Length];
            Add(contour.Segments[i].Start, next.Start, contour.Segments[i].Bulge, count);
        }
    }

    /// <summary>All that is added must close: as many counts run into every point as out of it.</summary>
    public void Add(Point start, Point end, double bulge, int count)
    {
        var (from, to) = (NodeAt(start), NodeAt(end));
        if (from == to) return;
        if (start.DistanceTo(end) < Tolerance.Merge)
        {
            _links.Add((from, to));
            return;
        }
        _parents.Add(Curve.Between(start, end, Flattened(start, end, bulge)));
        _edges.Add(new(from, to, Flattened(start, end, bulge), count, _parents.Count - 1, Settled: false));
    }

    /// <summary>The region of all points whose winding number is inside.</summary>
    public Region Where(Predicate<int> inside)
    {
        Settle();
        var windings = new Windings(this);
        return Walk.Around(this, windings, inside);
    }

    public Curve CurveOf(Edge edge) => Curve.Between(_nodes[edge.Start], _nodes[edge.End], edge.Bulge);

    private void Settle()
    {
        _edges = Merged(_edges);
        for (var pass = 0; pass < MostPasses; pass++)
        {
            var cuts = new Contacts(_nodes, _edges).Find();
            var node = NodesMerged(cuts, out var moved);
            if (cuts.Count == 0 && !moved) return;
            _edges = Merged(Split(cuts, node));
        }
    }

    /// <summary>For each node the one that it becomes: of nodes that are near each other the one that was there first.</summary>
    private int[] NodesMerged(List<Cut> cuts, out bool moved)
    {
        var node = new int[_nodes.Count];
        Array.Fill(node, -1);
        foreach (var edge in _edges) (node[edge.Start], node[edge.End]) = (edge.Start, edge.End);
        foreach (var cut in cuts) node[cut.Node] = cut.Node;
        foreach (var (a, b) in _links) (node[a], node[b]) = (a, b);
        var any = false;

        var order = node.Where(n => n >= 0).ToArray();
        Array.Sort(order, (a, b) => _nodes[a].X.CompareTo(_nodes[b].X));
        for (var i = 0; i < order.Length; i++)
        {
            for (var j = i + 1; j < order.Length && _nodes[order[j]].X - _nodes[order[i]].X < Tolerance.Merge; j++)
            {
                if (_nodes[order[i]].DistanceTo(_nodes[order[j]]) < Tolerance.Merge) Join(order[i], order[j]);
            }
        }
        foreach (var (a, b) in _links) Join(a, b);
        _links.Clear();

        foreach (var n in order) node[n] = Root(n);
        moved = any;
        return node;

        int Root(int n)
        {
            while (node[n] != n) n = node[n] = node[node[n]];
            return n;
        }

        void Join(int a, int b)
        {
            (a, b) = (Root(a), Root(b));
            if (a == b) return;
            any = true;
            node[Math.Max(a, b)] = Math.Min(a, b);
        }
    }

    private List<Edge> Split(List<Cut> cuts, int[] node)
    {
        cuts.Sort((a, b) => a.Edge != b.Edge ? a.Edge.CompareTo(b.Edge) : a.Place.CompareTo(b.Place));
        var split = new List<Edge>(_edges.Count + cuts.Count);
        var next = 0;
        for (var i = 0; i < _edges.Count; i++)
        {
            var edge = _edges[i];
            var (at, end) = (node[edge.Start], node[edge.End]);
            if ((next == cuts.Count || cuts[next].Edge != i) && at == edge.Start && end == edge.End)
            {
                split.Add(edge with { Settled = true });
                continue;
            }
            for (; next < cuts.Count && cuts[next].Edge == i; next++)
            {
                var to = node[cuts[next].Node];
                if (to == at || to == end) continue;
                split.Add(Part(edge, at, to));
                at = to;
            }
            if (at != end) split.Add(Part(edge, at, end));
        }
        return split;
    }

    private Edge Part(Edge edge, int start, int end)
    {
        var (from, to, parent) = (_nodes[start], _nodes[end], _parents[edge.Parent]);
        var bulge = parent.BulgeBetween(parent.PlaceOf(from), parent.PlaceOf(to));
        return new(start, end, Flattened(from, to, Math.Clamp(bulge, -1, 1)), edge.Count, edge.Parent, Settled: false);
    }

    /// <summary>Edges between the same nodes that are nowhere further apart than the tolerance, as one.</summary>
    private List<Edge> Merged(List<Edge> edges)
    {
        var merged = new List<Edge>(edges.Count);
        var nextOfPair = new List<int>(edges.Count);
        var firstOfPair = new Dictionary<(int, int), int>(edges.Count);
        foreach (var edge in edges)
        {
            var pair = edge.Start < edge.End ? (edge.Start, edge.End) : (edge.End, edge.Start);
            ref var first = ref CollectionsMarshal.GetValueRefOrAddDefault(firstOfPair, pair, out var known);
            if (!known) first = -1;
            var halfChord = _nodes[edge.Start].DistanceTo(_nodes[edge.End]) / 2;
            var same = first;
            for (; same >= 0; same = nextOfPair[same])
            {
                var other = merged[same];
                var bulge = other.Start == edge.Start ? edge.Bulge : -edge.Bulge;
                if (Math.Abs(other.Bulge - bulge) * halfChord >= Tolerance.Merge) continue;
                merged[same] = other with { Count = other.Count + (other.Start == edge.Start ? edge.Count : -edge.Count) };
                break;
            }
            if (same >= 0) continue;
            merged.Add(edge);
            nextOfPair.Add(first);
            first = merged.Count - 1;
        }
        merged.RemoveAll(e => e.Count == 0);
        return merged;
    }

    /// <summary>An arc that rises by less than a tenth of the tolerance is a line.</summary>
    private static double Flattened(Point start, Point end, double bulge) =>
        Math.Abs(bulge) * start.DistanceTo(end) / 2 < Tolerance.Merge / 10 ? 0 : bulge;

    private int NodeAt(Point p)
    {
        if (_nodeAt.TryGetValue(p, out var node)) return node;
        _nodes.Add(p);
        return _nodeAt[p] = _nodes.Count - 1;
    }
}
