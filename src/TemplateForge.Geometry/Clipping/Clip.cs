using System.Collections.Immutable;

namespace TemplateForge.Geometry;

/// <summary>The parts of a curve that lie inside or outside a region.</summary>
public static class Clip
{
    /// <summary>How near to the boundary, in mm, a run counts as running along it.</summary>
    private const double Beside = 10 * Tolerance.Length;

    /// <summary>
    /// The runs strictly inside, cut at the boundary, in the order of the path. A run along the boundary is not inside; where the
    /// path only touches the boundary, its run goes on.
    /// </summary>
    public static ImmutableArray<Path> PartsInside(this Path path, Region region) =>
        Parts(path.Segments, region, closed: false, Side.Inside);

    /// <summary>
    /// As of a path, and a run goes on past the contour's start. A contour that is wholly inside is one path which ends where it
    /// began.
    /// </summary>
    public static ImmutableArray<Path> PartsInside(this Contour contour, Region region) =>
        Parts(contour.Segments, region, closed: true, Side.Inside);

    /// <summary>The runs strictly outside; otherwise as those inside.</summary>
    public static ImmutableArray<Path> PartsOutside(this Path path, Region region) =>
        Parts(path.Segments, region, closed: false, Side.Outside);

    /// <summary>The runs strictly outside; otherwise as those inside.</summary>
    public static ImmutableArray<Path> PartsOutside(this Contour contour, Region region) =>
        Parts(contour.Segments, region, closed: true, Side.Outside);

    private enum Side { Inside, Outside, Along, Grazing }

    /// <summary>A part of a segment between two neighbouring meetings with the boundary.</summary>
    private readonly record struct Piece(int Segment, double From, double To, Side Side);

    // 1. Cut every segment where it meets the boundary.
    // 2. Ask of each piece on which side it runs.
    // 3. Join neighbours on the wanted side, round a contour's start as well.
    private static ImmutableArray<Path> Parts(ImmutableArray<Segment> segments, Region region, bool closed, Side wanted)
    {
        var boundary = region.Contours.SelectMany(c => c.Segments).Select(s => (s, s.Bounds.Grown(Beside))).ToArray();
        var pieces = new List<Piece>();
        for (var i = 0; i < segments.Length; i++) Cut(segments[i], i, boundary, region, pieces);
        Settle(pieces);

        var runs = new List<List<Piece>>();
        for (var i = 0; i < pieces.Count; i++)
        {
            if (pieces[i].Side != wanted) continue;
            if (i > 0 && pieces[i - 1].Side == wanted) runs[^1].Add(pieces[i]);
            else runs.Add([pieces[i]]);
        }
        if (closed && runs.Count > 1 && pieces[0].Side == wanted && pieces[^1].Side == wanted)
        {
            runs[^1].AddRange(runs[0]);
            runs.RemoveAt(0);
        }
        return [.. runs.Select(run => Joined(run, segments))];
    }

    private static void Cut(Segment segment, int index, (Segment Segment, Box Bounds)[] boundary, Region region, List<Piece> pieces)
    {
        var (points, runs) = (new List<Meeting>(), new List<SharedRun>());
        var bounds = segment.Bounds;
        var near = boundary.Where(b => b.Bounds.Touches(bounds)).ToArray();
        foreach (var (other, _) in near) Meetings.Find(segment, other, points, runs);

        var shares = new List<double> { 0, 1 };
        shares.AddRange(points.Select(p => p.OnFirst));
        shares.AddRange(runs.SelectMany(r => new[] { r.From.OnFirst, r.To.OnFirst }));
        shares.Sort();
        var least = Tolerance.Merge / segment.Length;
        var from = 0.0;
        foreach (var share in shares)
        {
            // Too short a piece belongs to the next; at the end, to the one before.
            var to = 1 - share <= 2 * least ? 1 : share;
            if (to - from <= 2 * least && !(to == 1 && from == 0)) continue;
            pieces.Add(new(index, from, to, SideOf(segment, from, to, runs, region)));
            from = to;
            if (to == 1) break;
        }
    }

    private static Side SideOf(Segment segment, double from, double to, List<SharedRun> runs, Region region)
    {
        var middle = (from + to) / 2;
        if (runs.Any(r => r.From.OnFirst < middle && middle < r.To.OnFirst)) return Side.Along;
        // Between two meetings a piece stays on one side, so its point that is furthest from the boundary knows best.
        var (furthest, depth) = (segment.At(middle), 0.0);
        foreach (var at in (ReadOnlySpan<double>)[0.5, 0.25, 0.75, 0.1, 0.9, 0.01, 0.99])
        {
            var p = segment.At(from + (to - from) * at);
            var distance = region.BoundaryDistanceTo(p);
            if (distance > depth) (furthest, depth) = (p, distance);
            if (depth > 1000 * Beside) break;
        }
        if (depth > Beside) return region.Surrounds(furthest) ? Side.Inside : Side.Outside;
        return from > 0 && to < 1 ? Side.Grazing : Side.Along;
    }

    /// <summary>A touch may come out as a sliver between two crossings. It belongs to both its neighbours when these are on one side.</summary>
    private static void Settle(List<Piece> pieces)
    {
        for (var i = 0; i < pieces.Count; i++)
        {
            if (pieces[i].Side != Side.Grazing) continue;
            // Grazing pieces lie within their segment, so there is always one before and one after.
            var (before, next) = (pieces[i - 1].Side, i + 1);
            while (pieces[next].Side == Side.Grazing) next++;
            pieces[i] = pieces[i] with { Side = before == pieces[next].Side ? before : Side.Along };
        }
    }

    private static Path Joined(List<Piece> run, ImmutableArray<Segment> segments)
    {
        var joined = new List<Segment>();
        for (var i = 0; i < run.Count; i++)
        {
            var (segment, from, to, _) = run[i];
            while (i + 1 < run.Count && run[i + 1].Segment == segment && run[i + 1].From == to) to = run[++i].To;
            joined.Add(segments[segment].Part(from, to));
        }
        return new(joined);
    }
}
