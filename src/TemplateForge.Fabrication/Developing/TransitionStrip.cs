using System.Collections.Immutable;
using TemplateForge.Geometry;

namespace TemplateForge.Fabrication;

/// <summary>Part of a transition laid flat, triangle by triangle, its inside up: it runs to the left from an upright joint at the origin.</summary>
internal sealed class TransitionStrip
{
    // Where an edge turns, from chord to chord, by more than its neighbours do and this besides, in radians, it has a corner.
    private const double Corner = 1.5 * Math.PI / 180;

    // How far, in mm, an edge may pass by the end of a ruling.
    private const double Near = 0.003;
    private const int FewestFitted = 24;

    private TransitionStrip(TransitionSurface surface, ImmutableArray<Ruling> rulings, ImmutableArray<(Point Lower, Point Upper)> flat) =>
        (Surface, Rulings, Flat) = (surface, rulings, flat);

    public TransitionSurface Surface { get; }
    public ImmutableArray<Ruling> Rulings { get; }

    /// <summary>Each ruling on the flat.</summary>
    public ImmutableArray<(Point Lower, Point Upper)> Flat { get; }

    public static TransitionStrip Of(TransitionSurface surface, int from, int to)
    {
        var rulings = surface.Rulings.Slice(from, to - from + 1);
        var flat = ImmutableArray.CreateBuilder<(Point Lower, Point Upper)>();
        var (lower, upper) = (Point.Origin, new Point(0, rulings[0].Lower.DistanceTo(rulings[0].Upper)));
        flat.Add((lower, upper));
        for (var i = 1; i < rulings.Length; i++)
        {
            // The next corner lies as far along the joint before it and as far from that as it does in space.
            var (before, next) = (rulings[i - 1], rulings[i]);
            var along = (before.Upper - before.Lower).Unit;
            var isLower = next.LowerIndex != before.LowerIndex;
            var reach = (isLower ? next.Lower : next.Upper) - before.Lower;
            var up = (upper - lower).Unit;
            var corner = lower + up * reach.Dot(along) + up.Left * reach.SquareTo(along).Length;
            if (isLower) lower = corner;
            else upper = corner;
            flat.Add((lower, upper));
        }
        return new(surface, rulings, flat.ToImmutable());
    }

    /// <summary>Whether the triangle before a ruling stands on a straight side of an outline.</summary>
    public bool IsFlatBefore(int ruling)
    {
        var (before, after) = (Rulings[ruling - 1], Rulings[ruling]);
        var (edge, at) = after.LowerIndex != before.LowerIndex ? (Surface.Lower, before.LowerIndex) : (Surface.Upper, before.UpperIndex);
        return edge.End.Outline[edge.Points[at].Segment].IsLine;
    }

    /// <summary>The same somewhere else on the flat.</summary>
    public TransitionStrip Placed(Placement by) => new(Surface, Rulings, [.. Flat.Select(f => (by.Of(f.Lower), by.Of(f.Upper)))]);

    /// <summary>The lower edge from where the strip begins: runs without a corner between them.</summary>
    public ImmutableArray<TransitionRun> LowerRuns(bool rolled) =>
        Runs(Flat.Select((f, i) => (f.Lower, Rulings[i].LowerIndex)), Surface.Lower, rolled);

    /// <summary>The upper edge from where the strip begins.</summary>
    public ImmutableArray<TransitionRun> UpperRuns(bool rolled) =>
        Runs(Flat.Select((f, i) => (f.Upper, Rulings[i].UpperIndex)), Surface.Upper, rolled);

    private static ImmutableArray<TransitionRun> Runs(IEnumerable<(Point At, int Index)> edge, TransitionEdge divided, bool rolled)
    {
        var points = edge.DistinctBy(p => p.Index).ToList();
        var runs = ImmutableArray.CreateBuilder<TransitionRun>();
        var first = 0;
        for (var i = 1; i < points.Count; i++)
        {
            if (i < points.Count - 1 && !Breaks(i)) continue;
            var run = points.GetRange(first, i - first + 1);
            var isArc = !SegmentFrom(first).IsLine;
            var path = isArc && rolled && run.Count > 2 ? Smooth([.. run.Select(p => p.At)]) : Chords(run);
            runs.Add(new(path, divided.Points[run[0].Index].IsCorner));
            first = i;
        }
        return runs.ToImmutable();

        Segment SegmentFrom(int i) => divided.End.Outline[divided.Points[points[i].Index].Segment];

        bool Breaks(int i)
        {
            if (divided.Points[points[i].Index].IsCorner) return true;
            var turn = Math.Abs(Turn(i));
            var isLine = SegmentFrom(i).IsLine;
            if (isLine != SegmentFrom(i - 1).IsLine) return true;
            if (isLine) return turn > 1e-9 || divided.Points[points[i].Index].Segment != divided.Points[points[i - 1].Index].Segment;
            if (!rolled) return turn > Corner;
            var usual = Math.Max(i > 1 ? Math.Abs(Turn(i - 1)) : 0, i < points.Count - 2 ? Math.Abs(Turn(i + 1)) : 0);
            return turn > usual + Corner;
        }

        double Turn(int i)
        {
            var (arriving, leaving) = (points[i].At - points[i - 1].At, points[i + 1].At - points[i].At);
            return Math.Atan2(arriving.Cross(leaving), arriving.Dot(leaving));
        }

        // Through as few of the points as keep it near all of them: a curve through all takes long.
        static Path Smooth(Point[] run)
        {
            for (var count = Math.Max(FewestFitted, run.Length / 4); count < run.Length; count *= 4)
            {
                var path = SmoothArcs.Through(Enumerable.Range(0, count).Select(k => run[(int)((long)k * (run.Length - 1) / (count - 1))]));
                if (Array.TrueForAll(run, p => path.Segments.Min(s => s.DistanceTo(p)) < Near)) return path;
            }
            return SmoothArcs.Through(run);
        }

        static Path Chords(List<(Point At, int Index)> run)
        {
            var corners = new List<Point> { run[0].At };
            for (var k = 1; k < run.Count; k++)
            {
                // What goes straight on is one line.
                if (corners.Count > 1 && k > 1 && IsStraight(corners[^2], corners[^1], run[k].At)) corners.RemoveAt(corners.Count - 1);
                corners.Add(run[k].At);
            }
            return new(corners.Skip(1).Select((to, k) => Segment.Line(corners[k], to)));
        }

        static bool IsStraight(Point a, Point b, Point c) => Math.Abs((b - a).Unit.Cross(c - b)) < 1e-9;
    }
}

/// <summary>A stretch of an edge on the flat without a corner.</summary>
/// <param name="Path">Its lines and arcs.</param>
/// <param name="BeginsAtCorner">Whether the outline has a corner where it begins, however little the flat edge turns there.</param>
internal readonly record struct TransitionRun(Path Path, bool BeginsAtCorner);
