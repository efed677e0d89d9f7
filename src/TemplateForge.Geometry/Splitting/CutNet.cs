namespace TemplateForge.Geometry;

/// <summary>The net of a region's boundary and of a path's stretches inside it, joined where they meet.</summary>
/// <remarks>
/// <code>
///    ┌────────┬────────┐
///    │  ┌──┐  c        │       Strands are joined to a tree until one would close a loop: boundary first, then cuts. Here c closes
///    │  │  ├──┘   b─   │       the loop of c, the hole and the outer edge; b hangs in the air and closes none.
///    │  └──┘           │
///    └─────────────────┘
/// </code>
/// Two faces on either side of a cut are told apart by at least one of the loops that cuts close, if by any loop at all: every
/// loop of the net is a sum of these and of loops of the boundary, none of which runs within the region.
/// </remarks>
internal sealed class CutNet
{
    /// <summary>How near, in mm, ends are one knot.</summary>
    private const double Near = 2 * Tolerance.Merge;

    /// <summary>Side of a square in mm, that holds one knot: two are farther apart than its diagonal.</summary>
    private const double Cell = Near / 1.5;

    private readonly List<Point> _knots = [];
    private readonly Dictionary<(long, long), int> _cells = [];
    private readonly List<Strand> _boundary = [];
    private readonly List<Strand> _cuts = [];

    public CutNet(Region region, Path path)
    {
        var bounds = path.Bounds.Grown(Near);
        Stretch[] sides = [.. region.Contours.SelectMany(c => c.Segments).Select(s => new Stretch(s))];
        Stretch[] steps = [.. path.Segments.Select(s => new Stretch(s))];
        for (var i = 0; i < steps.Length; i++)
        {
            for (var j = 0; j < i; j++) steps[i].Meet(steps[j]);
            foreach (var side in sides) steps[i].Meet(side);
        }
        foreach (var side in sides) _boundary.AddRange(StrandsOf(side));
        foreach (var step in steps) _cuts.AddRange(StrandsOf(step).Where(strand => IsInside(region, strand)));
    }

    /// <summary>For each cut that closes a loop, that loop.</summary>
    public IEnumerable<Contour> Loops()
    {
        var tree = new Tree(_knots.Count);
        foreach (var strand in _boundary) tree.TryJoin(strand);
        // Not until all have been tried is the tree whole; but the way between two knots in it never changes.
        foreach (var cut in _cuts)
        {
            if (tree.TryJoin(cut)) continue;
            Strand[] loop = [cut, .. tree.Way(cut.To, cut.From)];
            if (loop.Length >= 2) yield return new(loop.Select(SegmentOf));
        }
    }

    private Segment SegmentOf(Strand strand) => Segment.Trusted(_knots[strand.From], _knots[strand.To], strand.Bulge);

    private static bool IsInside(Region region, Strand strand) =>
        region.BoundaryDistanceTo(strand.Middle) > Near && region.Surrounds(strand.Middle);

    /// <summary>What lies between one meeting and the next.</summary>
    private IEnumerable<Strand> StrandsOf(Stretch stretch)
    {
        var segment = stretch.Segment;
        var before = (Knot: Knot(segment.Start), Share: 0.0);
        foreach (var share in stretch.Meetings.Order().Append(1))
        {
            var knot = Knot(share == 1 ? segment.End : segment.At(share));
            if (knot == before.Knot) continue;
            var part = segment.Part(before.Share, share);
            yield return new(before.Knot, knot, part.Bulge, part.At(0.5));
            before = (knot, share);
        }
    }

    /// <summary>The knot at a point. Those near it lie in its cell or at most two away.</summary>
    private int Knot(Point p)
    {
        var (x, y) = ((long)Math.Floor(p.X / Cell), (long)Math.Floor(p.Y / Cell));
        for (var i = x - 2; i <= x + 2; i++)
        {
            for (var j = y - 2; j <= y + 2; j++)
            {
                if (_cells.TryGetValue((i, j), out var known) && _knots[known].DistanceTo(p) <= Near) return known;
            }
        }
        _knots.Add(p);
        _cells.TryAdd((x, y), _knots.Count - 1);
        return _knots.Count - 1;
    }

    /// <summary>A segment and the shares of its length at which others meet it.</summary>
    private sealed class Stretch(Segment segment)
    {
        private readonly Box _bounds = segment.Bounds.Grown(Near);

        public Segment Segment => segment;
        public List<double> Meetings { get; } = [];

        public void Meet(Stretch other)
        {
            if (!_bounds.Touches(other._bounds)) return;
            var (points, runs) = (new List<Meeting>(), new List<SharedRun>());
            Geometry.Meetings.Find(segment, other.Segment, points, runs);
            foreach (var meeting in points.Concat(runs.SelectMany(run => new[] { run.From, run.To })))
            {
                Meetings.Add(meeting.OnFirst);
                other.Meetings.Add(meeting.OnSecond);
            }
        }
    }

    /// <summary>A piece of boundary or path from knot to knot.</summary>
    private readonly record struct Strand(int From, int To, double Bulge, Point Middle)
    {
        public Strand Reversed() => new(To, From, -Bulge, Middle);
    }

    /// <summary>Knots joined by strands without a loop; it may fall into several trees.</summary>
    private sealed class Tree
    {
        private readonly int[] _root;
        private readonly List<Strand>[] _from;

        public Tree(int knots)
        {
            _root = [.. Enumerable.Range(0, knots)];
            _from = [.. _root.Select(_ => new List<Strand>())];
        }

        /// <summary>Joins what the strand joins, unless that is joined already.</summary>
        public bool TryJoin(Strand strand)
        {
            var (a, b) = (RootOf(strand.From), RootOf(strand.To));
            if (a == b) return false;
            _root[a] = b;
            _from[strand.From].Add(strand);
            _from[strand.To].Add(strand.Reversed());
            return true;
        }

        /// <summary>The strands that lead from one knot to another that is joined to it.</summary>
        public Stack<Strand> Way(int from, int to)
        {
            var reachedBy = new Dictionary<int, Strand>();
            var next = new Queue<int>([from]);
            while (next.TryDequeue(out var knot) && knot != to)
            {
                foreach (var strand in _from[knot])
                {
                    if (strand.To != from && reachedBy.TryAdd(strand.To, strand)) next.Enqueue(strand.To);
                }
            }
            var way = new Stack<Strand>();
            for (var knot = to; knot != from; knot = way.Peek().From) way.Push(reachedBy[knot]);
            return way;
        }

        private int RootOf(int knot)
        {
            while (_root[knot] != knot) knot = _root[knot] = _root[_root[knot]];
            return knot;
        }
    }
}
