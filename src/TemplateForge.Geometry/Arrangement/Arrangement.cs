namespace TemplateForge.Geometry;

/// <summary>Curves laid over one another and cut where they meet: nodes, and edges that meet nowhere but in them.</summary>
/// <remarks>
/// <code>
/// 1. Contacts: every place where two edges cross, touch or part company.
/// 2. Nodes: points nearer to each other than the tolerance become one of them.
/// 3. Edges: cut at the nodes on them. A cut edge that was bent to end exactly in its nodes is compared once more, from 1.
/// 4. Fans: the edges about each node in their order; edges that coincide become one, their counts added; what counts zero is gone.
/// </code>
/// Then <see cref="Windings"/> says what is inside, and <see cref="Walk"/> runs round it. The curves as they were put in stay as
/// they are, and every edge takes its bulge from its curve. Its room is used again: rent one, and dispose of it.
/// </remarks>
internal sealed class Arrangement : IDisposable
{
    // Bending moves an edge by less than the tolerance, so new contacts get fewer quickly; three passes are already rare.
    private const int MostPasses = 24;

    /// <summary>Edges that part in a node are clear of each other's next nodes when those are farther off, in mm.</summary>
    private const double Apart = 100 * Tolerance.Merge;

    [ThreadStatic]
    private static Arrangement? _spare;

    private readonly Buffer<Piece> _pieces = new();
    private readonly Buffer<Point> _nodes = new();
    private readonly Contacts _contacts;
    private readonly Buffer<int> _firstCut = new();
    private readonly Buffer<Cut> _cuts = new();
    private readonly Buffer<int> _root = new();
    private readonly Fans _fans;
    private readonly Windings _windings;
    private readonly Walk _walk;
    private Buffer<Edge> _edges = new();
    private Buffer<Edge> _split = new();
    private Point _first;
    private Point _reached;
    private int _chainStart = -1;
    private int _chainEnd = -1;
    private int _chains;
    private bool _closesTangent;
    private bool _clear;
    private int _edgesPutIn;

    private Arrangement()
    {
        _contacts = new(this);
        _fans = new(this);
        _windings = new(this, _contacts.EdgeBoxes, _fans);
        _walk = new(this, _fans, _windings);
    }

    public Buffer<Point> Nodes => _nodes;
    public Buffer<Edge> Edges => _edges;
    public Buffer<Piece> Pieces => _pieces;

    /// <summary>Room for whoever adds an offset; it is used again together with the rest.</summary>
    public Buffer<Strip> Strips { get; } = new();

    public static Arrangement Rent()
    {
        var arrangement = _spare ?? new();
        _spare = null;
        arrangement.Clear();
        return arrangement;
    }

    public void Dispose() => _spare = this;

    public void Add(Region region, int count)
    {
        foreach (var contour in region.Contours) Add(contour, count);
    }

    public void Add(Contour contour, int count)
    {
        var segments = contour.Segments;
        for (var i = 0; i < segments.Length; i++)
        {
            var next = i + 1 < segments.Length ? segments[i + 1].Start : segments[0].Start;
            Add(segments[i].Start, next, segments[i].Bulge, count);
        }
    }

    /// <summary>Where it is known beforehand what is inside.</summary>
    public KnownDiscs Known { get; } = new();

    /// <summary>All that is added must close: as many counts run into every point as out of it.</summary>
    /// <param name="start">Where the curve begins.</param>
    /// <param name="end">Where it ends.</param>
    /// <param name="bulge">tan(sweep / 4).</param>
    /// <param name="count">How often the boundary runs along it.</param>
    /// <param name="runsOn">Whether what is added next begins at its end and is tangent to it there.</param>
    /// <param name="hidden">
    /// Whether it is known not to be on the boundary of what is inside: it counts for the winding, but needs no node where it
    /// crosses something.
    /// </param>
    public void Add(Point start, Point end, double bulge, int count, bool runsOn = false, bool hidden = false)
    {
        var (from, to) = NextOfChain(start, end);
        if (from == to) return;
        var flattened = Flattened(_nodes[from], end, bulge);
        // What closes a chain may do so where the boundary only passes through its start again: then something else comes next.
        if (!hidden) _edges.Add(new(from, to, flattened, count, _pieces.Count, Settled: false, runsOn && _chainEnd >= 0));
        _closesTangent = runsOn && !hidden && _chainEnd < 0;
        _pieces.Add(new(_nodes[from], end, flattened, count, IsEdge: !hidden, Known.Near));
    }

    /// <summary>A contour has been added as a whole: if it was one chain, what was added last runs on into its first edge.</summary>
    /// <param name="firstEdge">How many edges there were before.</param>
    public void CloseContour(int firstEdge)
    {
        if (!_closesTangent || _edges.Count == firstEdge || _edges[^1].End != _edges[firstEdge].Start) return;
        _edges[^1] = _edges[^1] with { RunsOn = true };
    }

    /// <summary>The contour that was added last is known to meet nothing, unless it is another one.</summary>
    public void LastContourIsClear() => _clear = true;

    /// <summary>The region of all points whose winding number is inside; 0, as it is far away, must not be.</summary>
    public Region Where(Predicate<int> inside)
    {
        _edgesPutIn = _edges.Count;
        if (_clear && _chains == 1 && !AnyHidden) return _walk.RoundOneLoop(inside);
        _contacts.Find();
        if (_contacts.None && _chains == 1 && !AnyHidden) return _walk.RoundOneLoop(inside);
        Settle();
        _fans.Build();
        _windings.Spread();
        return _walk.Around(inside);
    }

    public bool AnyHidden => _pieces.Count > _edgesPutIn;

    public Curve CurveOf(in Edge edge) => Curve.Between(_nodes[edge.Start], _nodes[edge.End], edge.Bulge);

    /// <summary>Builds a tree of boxes about the edges as they are now.</summary>
    public void PutEdgesInto(BoxTree boxes)
    {
        var leaves = boxes.Leaves(_edges.Count);
        for (var i = 0; i < leaves.Length; i++)
        {
            ref readonly var edge = ref _edges[i];
            leaves[i] = Bounds.Around(_nodes[edge.Start], _nodes[edge.End], edge.Bulge, Tolerance.Merge);
        }
        boxes.Build();
    }

    private void Clear()
    {
        _pieces.Clear();
        _nodes.Clear();
        _edges.Clear();
        _contacts.Clear();
        Known.Clear();
        (_chainStart, _chainEnd, _chains) = (-1, -1, 0);
        (_closesTangent, _clear) = (false, false);
    }

    /// <summary>The nodes of what is added next; they are one where it is shorter than the tolerance, and then it is left out.</summary>
    private (int From, int To) NextOfChain(Point start, Point end)
    {
        if (_chainEnd < 0 || _reached != start)
        {
            _chains++;
            _first = start;
            _chainStart = _chainEnd = NewNode(start);
        }
        _reached = end;
        var (from, closes) = (_chainEnd, _first == end);
        if ((end - _nodes[from]).LengthSquared < Tolerance.Merge * Tolerance.Merge)
        {
            if (closes) EndChainAtItsStart();
            return (from, from);
        }
        var to = closes ? _chainStart : NewNode(end);
        _chainEnd = closes ? -1 : to;
        return (from, to);
    }

    /// <summary>What is left to the start of the chain is shorter than the tolerance: what was added last ends there.</summary>
    private void EndChainAtItsStart()
    {
        if (_chainEnd != _chainStart)
        {
            ref var piece = ref _pieces[^1];
            piece = piece with { End = _first };
            if (piece.IsEdge) _edges[^1] = _edges[^1] with { End = _chainStart };
            // With only two of them they would now be one point, and what they enclose is nothing.
            if (piece.IsEdge && _edges[^1].Start == _chainStart)
            {
                _edges.RemoveLast(1);
                _pieces.RemoveLast(1);
            }
        }
        _chainEnd = -1;
    }

    private int NewNode(Point p)
    {
        _nodes.Add(p);
        return _nodes.Count - 1;
    }

    private void Settle()
    {
        for (var pass = 0; pass < MostPasses && (_contacts.Cuts.Count > 0 || _contacts.Links.Count > 0); pass++)
        {
            SortCuts();
            LinkNearCuts();
            MergeNodes();
            if (!Split()) return;
            _contacts.FindAgain();
        }
    }

    /// <summary>The cuts of each edge together, in their order along it.</summary>
    private void SortCuts()
    {
        var cuts = _contacts.Cuts.Items;
        var first = _firstCut.Filled(_edges.Count + 1, 0);
        foreach (ref readonly var cut in cuts) first[cut.Edge]++;
        var sum = 0;
        for (var i = 0; i < first.Length; i++) (first[i], sum) = (sum, sum + first[i]);
        var sorted = _cuts.Sized(cuts.Length);
        foreach (ref readonly var cut in cuts)
        {
            // Those before it in its edge's room are the cuts of this edge only; first[] moves on to where the next edge begins.
            var at = first[cut.Edge]++;
            sorted[at] = cut;
        }
        for (var i = first.Length - 1; i > 0; i--) first[i] = first[i - 1];
        first[0] = 0;
        for (var i = 0; i + 1 < first.Length; i++)
        {
            var ofEdge = sorted[first[i]..first[i + 1]];
            for (var j = 1; j < ofEdge.Length; j++)
            {
                var cut = ofEdge[j];
                var k = j;
                for (; k > 0 && ofEdge[k - 1].Place > cut.Place; k--) ofEdge[k] = ofEdge[k - 1];
                ofEdge[k] = cut;
            }
        }
    }

    private Span<Cut> CutsOf(int edge) => _cuts.Items[_firstCut[edge].._firstCut[edge + 1]];

    private void LinkNearCuts()
    {
        for (var i = 0; i < _edges.Count; i++)
        {
            var cuts = CutsOf(i);
            if (cuts.IsEmpty) continue;
            var before = _edges[i].Start;
            foreach (ref readonly var cut in cuts)
            {
                LinkIfNear(before, cut.Node);
                before = cut.Node;
            }
            LinkIfNear(before, _edges[i].End);
        }
    }

    private void LinkIfNear(int a, int b)
    {
        if (a != b && (_nodes[b] - _nodes[a]).LengthSquared < Tolerance.Merge * Tolerance.Merge) _contacts.Links.Add((a, b));
    }

    /// <summary>Finds for each node the one that it becomes: of those that are near each other the one that was there first.</summary>
    private void MergeNodes()
    {
        var root = _root.Sized(_nodes.Count);
        for (var i = 0; i < root.Length; i++) root[i] = i;
        foreach (var (a, b) in _contacts.Links.Items)
        {
            var (one, other) = (RootOf(a), RootOf(b));
            root[Math.Max(one, other)] = Math.Min(one, other);
        }
    }

    private int RootOf(int node)
    {
        var root = _root.Items;
        while (root[node] != node) node = root[node] = root[root[node]];
        return node;
    }

    /// <summary>Cuts the edges; whether any part must be compared once more.</summary>
    private bool Split()
    {
        _split.Clear();
        var anyUnsettled = false;
        for (var i = 0; i < _edges.Count; i++)
        {
            ref readonly var edge = ref _edges[i];
            var cuts = CutsOf(i);
            var (at, end) = (RootOf(edge.Start), RootOf(edge.End));
            if (cuts.IsEmpty && at == edge.Start && end == edge.End)
            {
                _split.Add(edge with { Settled = true, RunsOn = false });
                continue;
            }
            var exact = IsSamePlace(edge.Start, at);
            foreach (ref readonly var cut in cuts)
            {
                var to = RootOf(cut.Node);
                var exactThere = cut.IsExact && IsSamePlace(cut.Node, to);
                if (to == at || to == end)
                {
                    exact &= exactThere;
                    continue;
                }
                anyUnsettled |= !AddPart(edge, at, to, exact && exactThere);
                (at, exact) = (to, exactThere);
            }
            if (at != end) anyUnsettled |= !AddPart(edge, at, end, exact && IsSamePlace(edge.End, end));
        }
        (_edges, _split) = (_split, _edges);
        return anyUnsettled;
    }

    private bool IsSamePlace(int node, int root) =>
        node == root || (_nodes[root] - _nodes[node]).LengthSquared < Contacts.Exact * Contacts.Exact;

    /// <summary>Whether the part is settled: it was not bent, and is not so short that a curve may pass both its ends.</summary>
    private bool AddPart(in Edge edge, int start, int end, bool exact)
    {
        var (from, to, curve) = (_nodes[start], _nodes[end], _pieces[edge.Parent].Curve);
        var bulge = edge.Bulge == 0 && curve.IsLine ? 0 : curve.BulgeBetween(curve.PlaceOf(from), curve.PlaceOf(to));
        var settled = exact && (to - from).LengthSquared > Apart * Apart;
        _split.Add(new(start, end, Flattened(from, to, Math.Clamp(bulge, -1, 1)), edge.Count, edge.Parent, settled, RunsOn: false));
        return settled;
    }

    /// <summary>An arc that rises by less than a tenth of the tolerance is a line.</summary>
    private static double Flattened(Point start, Point end, double bulge) =>
        bulge == 0 || bulge * bulge * (end - start).LengthSquared < 0.04 * Tolerance.Merge * Tolerance.Merge ? 0 : bulge;
}
