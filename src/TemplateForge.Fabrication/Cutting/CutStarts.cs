using System.Collections.Immutable;
using TemplateForge.Geometry;

namespace TemplateForge.Fabrication;

/// <summary>Finds where a path may be begun, and makes the cuts from there.</summary>
internal sealed class CutStarts
{
    /// <summary>Places to begin that the order may choose from.</summary>
    private const int MostStarts = 6;

    private const int MostTried = 24;

    /// <summary>Too short a segment to begin on, in mm.</summary>
    private const double Shortest = 0.02;

    private readonly Cutter cutter;
    private readonly double kerf;
    private readonly Leads leads;
    private readonly ImmutableArray<CutTrouble>.Builder troubles;

    public CutStarts(Cutter cutter, double kerf, Region part, ImmutableArray<CutTrouble>.Builder troubles)
    {
        (this.cutter, this.kerf, this.troubles) = (cutter, kerf, troubles);
        leads = new(cutter, cutter.PartOn == Side.Left ? -1 : 1, new KeptClear(part, kerf / 2));
    }

    /// <summary>A closed path with all the places where it may be begun.</summary>
    /// <param name="path">What stays lies on its left.</param>
    /// <param name="tabs">Middles of its tabs, as distances along the path from its start.</param>
    /// <param name="node">The cuts.</param>
    /// <returns>Whether there is a place where the torch may be lit.</returns>
    public bool TryClosed(Contour path, ImmutableArray<double> tabs, out CutNode node)
    {
        var role = path.IsCounterClockwise ? CutRole.Outline : CutRole.Hole;
        var starts = tabs.IsEmpty ? WithoutTabs(path, role) : WithTabs(path, role, tabs);
        node = new(role, Region.Of(path), starts);
        return !starts.IsEmpty;
    }

    /// <summary>A path that runs in from an edge and off again; between its tabs the torch is lit in the waste.</summary>
    public CutNode Open(Path path, ImmutableArray<double> tabs)
    {
        var length = path.Length;
        var gaps = Gaps(tabs.Select(t => (t - HalfGap, t + HalfGap)).Where(g => g.Item1 > 0 && g.Item2 < length), path.Segments);
        var cuts = ImmutableArray.CreateBuilder<PlannedCut>();
        var from = 0.0;
        foreach (var (begin, end) in gaps.Append((length, length)))
        {
            var run = Turned(Between(path.Segments, from, begin));
            cuts.Add(new(CutRole.Open, IsFirst(from, begin) ? [] : SquareLead(run[0]), run, []));
            from = end;
        }
        var inOrder = cutter.PartOn == Side.Left ? cuts.ToImmutable() : [.. Enumerable.Reverse(cuts)];
        return new(CutRole.Open, Region.Empty, [inOrder]);

        bool IsFirst(double start, double stop) => cutter.PartOn == Side.Left ? start <= 0 : stop >= length;
    }

    /// <summary>How far a tab and the round ends of the slot on both sides of it reach along the path, each way.</summary>
    private double HalfGap => (cutter.Tab + kerf) / 2;

    private ImmutableArray<ImmutableArray<PlannedCut>> WithoutTabs(Contour path, CutRole role)
    {
        var segments = Turned(path.Segments);
        var places = Places(segments, kerf);
        foreach (var way in leads.Ways)
        {
            var found = ImmutableArray.CreateBuilder<ImmutableArray<PlannedCut>>();
            foreach (var (index, share) in places)
            {
                var at = segments[index];
                if (!leads.TryIn(at.At(share), at.DirectionAt(share), way, out var lead)) continue;
                ImmutableArray<Segment> run = [.. Once(segments, index, share), .. Overrun(segments, index, share)];
                found.Add([new(role, [lead], run, leads.Out(run[^1].End, run[^1].EndDirection))]);
                if (found.Count == MostStarts) break;
            }
            if (found.Count > 0) return found.ToImmutable();
        }
        return [];
    }

    private ImmutableArray<ImmutableArray<PlannedCut>> WithTabs(Contour path, CutRole role, ImmutableArray<double> tabs)
    {
        var length = path.Length;
        var gaps = Gaps(tabs.Select(t => (t - HalfGap, t + HalfGap)), path.Segments);
        if (gaps.IsEmpty) return WithoutTabs(path, role);
        var twice = path.Segments.AddRange(path.Segments);
        var cuts = gaps.Select((gap, i) =>
        {
            var next = gaps[(i + 1) % gaps.Length].Begin + (i + 1 < gaps.Length ? 0 : length);
            var from = gap.End < 0 ? gap.End + length : gap.End;
            var run = Turned(Between(twice, from, from + (next - gap.End)));
            return new PlannedCut(role, SquareLead(run[0]), run, []);
        }).ToImmutableArray();
        if (cutter.PartOn == Side.Right) cuts = [.. Enumerable.Reverse(cuts)];
        // Any of them may be the first.
        return [.. Enumerable.Range(0, Math.Min(cuts.Length, MostStarts)).Select(i => cuts.RemoveRange(0, i).AddRange(cuts.Take(i)))];
    }

    private ImmutableArray<Segment> SquareLead(Segment first) => leads.TrySquareIn(first.Start, first.StartDirection, out var lead) ? [lead] : [];

    // Gaps in their order: those that meet another, or beside which the torch cannot be lit, are left out and told of.
    private ImmutableArray<(double Begin, double End)> Gaps(IEnumerable<(double Begin, double End)> wanted, ImmutableArray<Segment> path)
    {
        var (kept, length) = (new List<(double Begin, double End)>(), path.Sum(s => s.Length));
        foreach (var gap in wanted.OrderBy(g => g.Begin))
        {
            var lit = cutter.PartOn == Side.Left ? gap.End : gap.Begin;
            var (at, along) = On(path, lit - length * Math.Floor(lit / length));
            var isFree = (kept.Count == 0 || gap.Begin - kept[^1].End > LeastRun && kept[0].Begin + length - gap.End > LeastRun)
                && length - (gap.End - gap.Begin) > LeastRun;
            if (isFree && leads.TrySquareIn(at, cutter.PartOn == Side.Left ? along : -along, out _)) kept.Add(gap);
            else troubles.Add(new(CutTroubleKind.NoRoomForTab, at, cutter.Tab));
        }
        return [.. kept];
    }

    private double LeastRun => Math.Max(1, kerf);

    private ImmutableArray<Segment> Turned(ImmutableArray<Segment> segments) =>
        cutter.PartOn == Side.Left ? segments : [.. segments.Reverse().Select(s => s.Reversed())];

    // The middles of the segments, those far from a corner first. An arc round a corner of the part is as bad as the corner.
    private static ImmutableArray<(int Segment, double Share)> Places(ImmutableArray<Segment> path, double kerf)
    {
        var found = new List<(int Segment, double Share, double Room)>();
        for (var i = 0; i < path.Length; i++)
        {
            if (path[i].Length < Shortest) continue;
            var isCorner = !path[i].IsLine && path[i].Radius <= kerf / 2 + Tolerance.Length;
            foreach (var share in (ReadOnlySpan<double>)[0.5, 0.25, 0.75])
            {
                var room = Math.Min(share, 1 - share) * path[i].Length;
                if (IsSmooth(path[(i + path.Length - 1) % path.Length], path[i]) && IsSmooth(path[i], path[(i + 1) % path.Length])) room = path[i].Length / 2;
                found.Add((i, share, isCorner ? room / 1000 : room));
            }
        }
        return [.. found.OrderByDescending(f => f.Room).Take(MostTried).Select(f => (f.Segment, f.Share))];
    }

    private static bool IsSmooth(Segment before, Segment after) => before.EndDirection.Cross(after.StartDirection) is > -1e-3 and < 1e-3
        && before.EndDirection.Dot(after.StartDirection) > 0;

    private static IEnumerable<Segment> Once(ImmutableArray<Segment> path, int first, double share)
    {
        yield return path[first].Part(share, 1);
        for (var i = 1; i < path.Length; i++) yield return path[(first + i) % path.Length];
        yield return path[first].Part(0, share);
    }

    private ImmutableArray<Segment> Overrun(ImmutableArray<Segment> path, int first, double share)
    {
        if (cutter.Overcut <= 0) return [];
        var from = path.Take(first).Sum(s => s.Length) + share * path[first].Length;
        var length = path.Sum(s => s.Length);
        return Between(path.AddRange(path), from, from + Math.Min(cutter.Overcut, length / 2));
    }

    private static (Point At, Vector Along) On(ImmutableArray<Segment> path, double distance)
    {
        foreach (var segment in path)
        {
            if (distance <= segment.Length) return (segment.At(distance / segment.Length), segment.DirectionAt(distance / segment.Length));
            distance -= segment.Length;
        }
        return (path[^1].End, path[^1].EndDirection);
    }

    // What lies between two distances along a path; slivers shorter than a segment may be are left out.
    private static ImmutableArray<Segment> Between(ImmutableArray<Segment> path, double from, double to)
    {
        var parts = ImmutableArray.CreateBuilder<Segment>();
        var start = 0.0;
        foreach (var segment in path)
        {
            var length = segment.Length;
            var (a, b) = (Math.Max(0, from - start), Math.Min(length, to - start));
            if (b - a > 2 * Tolerance.Merge) parts.Add(a <= Tolerance.Merge && b >= length - Tolerance.Merge ? segment : segment.Part(a / length, b / length));
            start += length;
        }
        return parts.ToImmutable();
    }
}
