namespace TemplateForge.Geometry;

/// <summary>All places where edges meet other than in a common node.</summary>
/// <remarks>
/// Two edges are in contact where an end of one lies on the other, where they cross, and where they touch. They count as in
/// contact as long as they stay nearer than the tolerance, so one node stands for all of such a stretch: a crossing that can be
/// reached from a known contact without ever leaving the tolerance is no new one. That holds for near tangents, whose crossings
/// are known only to √(2 r δ) along the curve, and for edges that coincide, where every point would do for a crossing.
/// But where an end lies beside another edge and the two truly cross farther on, the crossing is where the boundary turns from one to
/// the other; what lies between becomes doubled and cancels out.
/// </remarks>
internal sealed class Contacts(Arrangement arrangement)
{
    /// <summary>Edges that cross at a smaller sine than this may stay near each other for long.</summary>
    private const double Shallow = 0.01;

    /// <summary>A crossing this far, in mm, from an end that lies beside it is told from that.</summary>
    private const double FartherOn = 10 * Tolerance.Merge;

    /// <summary>Edges shorter than this, in mm, may have ends that lie on each other's edges.</summary>
    private const double Short = 10 * Tolerance.Merge;

    /// <summary>What lies this far off its curve, in mm, is moved there without coming near anything that it was clear of.</summary>
    public const double Exact = Tolerance.Merge / 100;

    private readonly Buffer<Point> _nodes = arrangement.Nodes;
    private readonly BoxTree _boxesAgain = new();
    private readonly Buffer<(int, int)> _pairs = new();
    private readonly Buffer<int> _touching = new();
    private BoxTree _boxes = new();
    private bool _isFirstPass;
    private Buffer<Edge> _edges = arrangement.Edges;

    /// <summary>Boxes about the edges as they were put in.</summary>
    public BoxTree EdgeBoxes { get; } = new();

    /// <summary>Where edges are to be cut.</summary>
    public Buffer<Cut> Cuts { get; } = new();

    /// <summary>Nodes that are one point.</summary>
    public Buffer<(int, int)> Links { get; } = new();

    /// <summary>Whether two edges run along each other from the same node to the same node.</summary>
    public bool AnyDoubled { get; private set; }

    public bool None => Cuts.Count == 0 && Links.Count == 0 && !AnyDoubled;

    public void Clear()
    {
        Cuts.Clear();
        Links.Clear();
        AnyDoubled = false;
    }

    /// <summary>Finds the contacts of all edges, as they were put in. Crossings and touching points become new nodes.</summary>
    public void Find()
    {
        _isFirstPass = true;
        Build(EdgeBoxes);
        _pairs.Clear();
        _boxes.Pairs(_pairs);
        foreach (var (a, b) in _pairs.Items) Compare(a, b);
    }

    /// <summary>Finds the contacts of the edges that are not settled.</summary>
    public void FindAgain()
    {
        Clear();
        _isFirstPass = false;
        Build(_boxesAgain);
        for (var a = 0; a < _edges.Count; a++)
        {
            if (_edges[a].Settled) continue;
            _touching.Clear();
            _boxes.Touching(_boxes[a], _touching);
            foreach (var b in _touching.Items)
            {
                // A pair of which neither is settled comes up twice.
                if (b > a || b < a && _edges[b].Settled) Compare(a, b);
            }
        }
    }

    private void Build(BoxTree boxes)
    {
        (_boxes, _edges) = (boxes, arrangement.Edges);
        arrangement.PutEdgesInto(boxes);
    }

    private void Compare(int one, int other)
    {
        ref readonly var a = ref _edges[one];
        ref readonly var b = ref _edges[other];
        var (aThenB, bThenA) = (a.End == b.Start, b.End == a.Start);
        if (aThenB && a.RunsOn && AreApart(a.Start, b.End) || bThenA && b.RunsOn && AreApart(b.Start, a.End)) return;
        if (a.Bulge == 0 && b.Bulge == 0 && LinesAreClear(a, b)) return;
        // Tangent at one node and through the other they are the two parts of one circle.
        if (aThenB && bThenA && (a.RunsOn || b.RunsOn) && a.Bulge * b.Bulge > 0) return;
        if (a.Start == b.Start && a.End == b.End || aThenB && bThenA)
        {
            var halfChord = _nodes[a.Start].DistanceTo(_nodes[a.End]) / 2;
            if (Math.Abs(a.Bulge + (aThenB ? b.Bulge : -b.Bulge)) * halfChord < Tolerance.Merge)
            {
                AnyDoubled = true;
                return;
            }
        }
        var (curveOfA, curveOfB) = (CurveOf(a), CurveOf(b));
        // The more curved one is followed; the distance from the flatter one is the better known.
        if (Math.Abs(curveOfA.Curvature) >= Math.Abs(curveOfB.Curvature)) Compare(one, curveOfA, other, curveOfB);
        else Compare(other, curveOfB, one, curveOfA);
    }

    private bool AreApart(int a, int b) => (_nodes[b] - _nodes[a]).LengthSquared >= Tolerance.Merge * Tolerance.Merge;

    private Curve CurveOf(in Edge edge) => Curve.Between(_nodes[edge.Start], _nodes[edge.End], edge.Bulge);

    /// <summary>Whether two lines stay apart by more than the tolerance, but for a node that both end in.</summary>
    private bool LinesAreClear(in Edge a, in Edge b)
    {
        var (a0, a1, b0, b1) = (_nodes[a.Start], _nodes[a.End], _nodes[b.Start], _nodes[b.End]);
        var (alongA, alongB) = (a1 - a0, b1 - b0);
        var (startOfB, endOfB) = (alongA.Cross(b0 - a0), alongA.Cross(b1 - a0));
        var (startOfA, endOfA) = (alongB.Cross(a0 - b0), alongB.Cross(a1 - b0));
        var nearA = Tolerance.Merge * Tolerance.Merge * alongA.LengthSquared;
        var nearB = Tolerance.Merge * Tolerance.Merge * alongB.LengthSquared;
        if (startOfB * endOfB > 0 && Math.Min(startOfB * startOfB, endOfB * endOfB) > nearA) return true;
        if (startOfA * endOfA > 0 && Math.Min(startOfA * startOfA, endOfA * endOfA) > nearB) return true;

        // From a common node it is enough that neither far end lies near the other line.
        if (a.End == b.Start) return endOfB * endOfB > nearA && startOfA * startOfA > nearB;
        if (a.Start == b.End) return startOfB * startOfB > nearA && endOfA * endOfA > nearB;
        if (a.Start == b.Start) return endOfB * endOfB > nearA && endOfA * endOfA > nearB;
        if (a.End == b.End) return startOfB * startOfB > nearA && startOfA * startOfA > nearB;
        return false;
    }

    private void Compare(int followed, in Curve curve, int other, in Curve flatter)
    {
        Span<double> places = stackalloc double[4];
        var count = 0;
        EndOnEdge(_edges[followed].Start, other, flatter, curve, places, ref count);
        EndOnEdge(_edges[followed].End, other, flatter, curve, places, ref count);
        EndOnEdge(_edges[other].Start, followed, curve, curve, places, ref count);
        EndOnEdge(_edges[other].End, followed, curve, curve, places, ref count);
        var known = places[..count];

        var crossing = Crossing.Of(curve, flatter);
        var touches = Math.Abs(flatter.RightOf(curve.At(crossing.Nearest))) < Tolerance.Merge;
        if (touches && curve.Reaches(crossing.Nearest))
        {
            Meet(followed, curve, other, flatter, crossing.Nearest, known, crosses: false);
            return;
        }
        if (!crossing.Exists) return;
        // Edges that were bent cross where they were bent; taking that for new would never end.
        var crosses = !touches && _isFirstPass;
        Meet(followed, curve, other, flatter, crossing.First, known, crosses);
        Meet(followed, curve, other, flatter, crossing.Second, known, crosses);
    }

    /// <summary>Notes where on the followed curve an end of one edge lies on the other, or at an end of it.</summary>
    private void EndOnEdge(int node, int edge, in Curve curve, in Curve followed, Span<double> known, ref int count)
    {
        var point = _nodes[node];
        var (start, end) = (_edges[edge].Start, _edges[edge].End);
        if (node != start && node != end)
        {
            if (!_boxes[edge].Contains(point)) return;
            if (point.DistanceTo(_nodes[start]) < Tolerance.Merge)
            {
                Links.Add((node, start));
            }
            else if (point.DistanceTo(_nodes[end]) < Tolerance.Merge)
            {
                Links.Add((node, end));
            }
            else
            {
                var place = curve.PlaceOf(point);
                if (!curve.Reaches(place)) return;
                var aside = Math.Abs(curve.RightOf(point));
                if (!(aside < Tolerance.Merge) || MayGoOnForEver(point, _nodes[start], _nodes[end])) return;
                Cuts.Add(new(edge, place, node, aside < Exact));
            }
        }
        known[count++] = Math.Clamp(followed.PlaceOf(point), -followed.Reach, followed.Reach);
    }

    /// <summary>
    /// Of three nodes hardly the tolerance apart each may lie on the edge between the two others. Among bent edges as short as that
    /// only those are cut that are longer than both their parts.
    /// </summary>
    private bool MayGoOnForEver(Point point, Point start, Point end)
    {
        var square = (end - start).LengthSquared;
        return !_isFirstPass && square < Short * Short && Math.Max((point - start).LengthSquared, (end - point).LengthSquared) >= square;
    }

    private void Meet(
        int followed, in Curve curve, int other, in Curve flatter, double place, ReadOnlySpan<double> known, bool crosses)
    {
        if (!curve.Reaches(place)) return;
        var point = curve.At(place);
        var otherPlace = flatter.PlaceOf(point);
        if (!flatter.Reaches(otherPlace)) return;
        foreach (var contact in known)
        {
            if (!StaysNear(curve, flatter, contact, place)) continue;
            if (!crosses || (curve.At(contact) - point).LengthSquared < FartherOn * FartherOn) return;
        }
        _nodes.Add(point);
        var exact = Math.Abs(flatter.RightOf(point)) < Exact
            && Math.Abs(curve.PowerGradient(point).Cross(flatter.PowerGradient(point))) > Shallow;
        Cuts.Add(new(followed, place, _nodes.Count - 1, exact));
        Cuts.Add(new(other, otherPlace, _nodes.Count - 1, exact));
    }

    private static bool StaysNear(in Curve curve, in Curve flatter, double from, double to)
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
/// <param name="IsExact">Cutting there does not bend the edge, nor does it run along another one there.</param>
internal readonly record struct Cut(int Edge, double Place, int Node, bool IsExact);
