using System.Collections.Immutable;
using TemplateForge.Geometry;

namespace TemplateForge.Fabrication;

/// <summary>In which order cuts are made, and from which of its places each is begun.</summary>
/// <remarks>
/// Holes come before the outline round them, nested parts inner first, open cuts last: they let go what hangs on them. Within that the
/// nearest next cut is taken, then stretches are turned round and moved (2-opt and or-opt) as long as the moves get shorter, then the
/// best places to begin are found for that order, exactly. With a spread the next cut is the nearest that is so far away.
/// </remarks>
internal sealed class CutOrder
{
    /// <summary>Stretches longer than this are not turned round: with more cuts the gain is small and the time is long.</summary>
    private const int LongestStretch = 40;

    private const int MostRounds = 6;

    private readonly ImmutableArray<CutNode> nodes;
    private readonly bool[,] precedes;
    private readonly int[] starts;

    private CutOrder(ImmutableArray<CutNode> nodes)
    {
        this.nodes = nodes;
        starts = new int[nodes.Length];
        precedes = Precedence(nodes);
    }

    /// <summary>The cuts in order.</summary>
    /// <param name="nodes">What is cut.</param>
    /// <param name="from">Where the torch stands before; the move from there counts for nothing.</param>
    /// <param name="spread">How far apart cuts that follow each other are begun, in mm; 0 for the shortest way.</param>
    public static ImmutableArray<PlannedCut> Of(ImmutableArray<CutNode> nodes, Point from, double spread)
    {
        if (nodes.IsEmpty) return [];
        var order = new CutOrder(nodes);
        var sequence = order.Nearest(from, spread);
        if (spread <= 0)
        {
            for (var i = 0; i < 2; i++)
            {
                order.Shorten(sequence);
                order.ChooseStarts(sequence);
            }
        }
        return [.. sequence.SelectMany(n => nodes[n].Starts[order.starts[n]])];
    }

    /// <summary>A length that the moves from cut to cut cannot be shorter than, whatever the order, in mm.</summary>
    /// <remarks>
    /// A cut that all others must come before is the last, and some move leads to it: the shortest that there is. The moves between the
    /// others join them, so together they are no shorter than the shortest tree that does (Prim): an edge of it is the shortest move
    /// between any places of two cuts, either way. Moves from tab to tab are added. Which else comes first is left out.
    /// </remarks>
    public static double LowerBound(ImmutableArray<CutNode> nodes)
    {
        var within = nodes.Sum(n => Enumerable.Range(0, n.Starts.Length).Min(n.MovesWithin));
        var (total, precedes) = (0.0, Precedence(nodes));
        var alive = Enumerable.Range(0, nodes.Length).ToList();
        while (alive.Count > 1)
        {
            var last = alive.FindIndex(n => alive.TrueForAll(o => o == n || precedes[o, n]));
            if (last < 0) break;
            var node = alive[last];
            alive.RemoveAt(last);
            total += alive.Min(n => Move(nodes[n], nodes[node]));
        }
        return within + total + ShortestTree([.. alive.Select(n => nodes[n])]);
    }

    private static double ShortestTree(ImmutableArray<CutNode> nodes)
    {
        if (nodes.IsEmpty) return 0;
        var (joined, nearest) = (new bool[nodes.Length], new double[nodes.Length]);
        Array.Fill(nearest, double.PositiveInfinity);
        var (total, at) = (0.0, 0);
        for (var count = 1; count < nodes.Length; count++)
        {
            joined[at] = true;
            for (var i = 0; i < nodes.Length; i++)
            {
                if (!joined[i]) nearest[i] = Math.Min(nearest[i], Math.Min(Move(nodes[at], nodes[i]), Move(nodes[i], nodes[at])));
            }
            at = Enumerable.Range(0, nodes.Length).Where(i => !joined[i]).MinBy(i => nearest[i]);
            total += nearest[at];
        }
        return total;
    }

    // The shortest from any end of one to any beginning of another.
    private static double Move(CutNode from, CutNode to)
    {
        var least = double.PositiveInfinity;
        for (var i = 0; i < from.Starts.Length; i++)
        {
            for (var j = 0; j < to.Starts.Length; j++) least = Math.Min(least, from.End(i).DistanceTo(to.Begin(j)));
        }
        return least;
    }

    private static bool[,] Precedence(ImmutableArray<CutNode> nodes)
    {
        var found = new bool[nodes.Length, nodes.Length];
        for (var i = 0; i < nodes.Length; i++)
        {
            for (var j = 0; j < nodes.Length; j++)
            {
                if (i == j || nodes[i].Role == CutRole.Open) continue;
                found[i, j] = nodes[j].Role == CutRole.Open || IsWithin(nodes[i].Around, nodes[j].Around);
            }
        }
        return found;
    }

    private static bool IsWithin(Region inner, Region outer)
    {
        var (a, b) = (inner.Bounds, outer.Bounds);
        return a.Min.X >= b.Min.X && a.Min.Y >= b.Min.Y && a.Max.X <= b.Max.X && a.Max.Y <= b.Max.Y
            && inner.Area < outer.Area && outer.Contains(inner.Contours[0].Segments[0].At(0.5));
    }

    private List<int> Nearest(Point from, double spread)
    {
        var (sequence, left) = (new List<int>(), Enumerable.Range(0, nodes.Length).ToList());
        var (at, last) = (from, from);
        while (left.Count > 0)
        {
            var free = left.Where(n => left.TrueForAll(other => !precedes[other, n]))
                .SelectMany(n => Enumerable.Range(0, nodes[n].Starts.Length).Select(s => (Node: n, Start: s))).ToList();
            var away = spread <= 0 || sequence.Count == 0 ? free : [.. free.Where(f => Apart(f) >= spread)];
            var next = away.Count > 0
                ? away.MinBy(f => nodes[f.Node].Begin(f.Start).DistanceTo(at))
                : free.MaxBy(Apart);
            starts[next.Node] = next.Start;
            sequence.Add(next.Node);
            left.Remove(next.Node);
            (at, last) = (nodes[next.Node].End(next.Start), nodes[next.Node].Begin(next.Start));
        }
        return sequence;

        double Apart((int Node, int Start) f) => nodes[f.Node].Begin(f.Start).DistanceTo(last);
    }

    private double Move(int from, int to) => nodes[from].End(starts[from]).DistanceTo(nodes[to].Begin(starts[to]));

    private double Length(List<int> sequence, int from, int to)
    {
        var sum = 0.0;
        for (var i = Math.Max(from, 1); i <= Math.Min(to, sequence.Count - 1); i++) sum += Move(sequence[i - 1], sequence[i]);
        return sum;
    }

    private void Shorten(List<int> sequence)
    {
        for (var round = 0; round < MostRounds; round++)
        {
            if (!TryTurn(sequence) & !TryShift(sequence)) return;
        }
    }

    // 2-opt: a stretch is cut in the opposite order.
    private bool TryTurn(List<int> sequence)
    {
        var better = false;
        for (var i = 0; i < sequence.Count - 1; i++)
        {
            for (var j = i + 1; j < Math.Min(sequence.Count, i + LongestStretch) && !ClashesFrom(sequence, i, j); j++)
            {
                var before = Length(sequence, i, j + 1);
                sequence.Reverse(i, j - i + 1);
                if (Length(sequence, i, j + 1) < before - Tolerance.Length) better = true;
                else sequence.Reverse(i, j - i + 1);
            }
        }
        return better;

        // Whether what is new at the end of the stretch must come after something in it.
        bool ClashesFrom(List<int> order, int i, int j)
        {
            for (var a = i; a < j; a++)
            {
                if (precedes[order[a], order[j]]) return true;
            }
            return false;
        }
    }

    // Or-opt: one to three neighbours are cut at another time.
    private bool TryShift(List<int> sequence)
    {
        var better = false;
        for (var length = 1; length <= 3; length++)
        {
            for (var i = 0; i + length <= sequence.Count; i++)
            {
                var stretch = sequence.GetRange(i, length);
                sequence.RemoveRange(i, length);
                var (least, place) = (Insertion(i) - Tolerance.Length, i);
                for (var j = Math.Max(0, i - LongestStretch); j <= Math.Min(sequence.Count, i + LongestStretch); j++)
                {
                    if (j == i || Insertion(j) >= least || !MayStand(sequence, stretch, j)) continue;
                    (least, place) = (Insertion(j), j);
                }
                sequence.InsertRange(place, stretch);
                better |= place != i;

                // How much longer the moves get when the stretch is put in here.
                double Insertion(int at)
                {
                    var (hasBefore, hasAfter) = (at > 0, at < sequence.Count);
                    return (hasBefore ? Move(sequence[at - 1], stretch[0]) : 0) + (hasAfter ? Move(stretch[^1], sequence[at]) : 0)
                        - (hasBefore && hasAfter ? Move(sequence[at - 1], sequence[at]) : 0);
                }
            }
        }
        return better;
    }

    private bool MayStand(List<int> rest, List<int> stretch, int at)
    {
        for (var k = 0; k < rest.Count; k++)
        {
            foreach (var moved in stretch)
            {
                if (k < at ? precedes[moved, rest[k]] : precedes[rest[k], moved]) return false;
            }
        }
        return true;
    }

    // The best place to begin each cut, for this order: the shortest way through layers of places.
    private void ChooseStarts(List<int> sequence)
    {
        var from = new int[sequence.Count][];
        var cost = nodes[sequence[0]].Starts.Select((_, s) => nodes[sequence[0]].MovesWithin(s)).ToArray();
        for (var i = 1; i < sequence.Count; i++)
        {
            var (before, node) = (nodes[sequence[i - 1]], nodes[sequence[i]]);
            (var next, from[i]) = (new double[node.Starts.Length], new int[node.Starts.Length]);
            for (var s = 0; s < next.Length; s++)
            {
                var begin = node.Begin(s);
                var at = Enumerable.Range(0, cost.Length).MinBy(p => cost[p] + before.End(p).DistanceTo(begin));
                (next[s], from[i][s]) = (cost[at] + before.End(at).DistanceTo(begin) + node.MovesWithin(s), at);
            }
            cost = next;
        }
        var best = Enumerable.Range(0, cost.Length).MinBy(s => cost[s]);
        for (var i = sequence.Count - 1; i >= 0; i--)
        {
            starts[sequence[i]] = best;
            if (i > 0) best = from[i][best];
        }
    }
}
