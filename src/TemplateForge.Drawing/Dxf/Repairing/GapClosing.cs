using System.Collections.Immutable;
using TemplateForge.Geometry;

namespace TemplateForge.Drawing;

/// <summary>Brings ends together that were meant to meet.</summary>
internal static class GapClosing
{
    /// <summary>The nearest pair of ends first; chains that become one go on being joined.</summary>
    public static ImmutableArray<DxfChain> Of(ImmutableArray<DxfChain> chains, double widest, List<DxfFinding> mended)
    {
        var closed = chains.Where(c => c.IsClosed).ToList();
        var open = chains.Where(c => !c.IsClosed).ToList();
        while (TryNearest(open, widest, out var one, out var other, out var gap))
        {
            var first = open[one];
            mended.Add(new(DxfFindingKind.Gap, first.Layer, first.Line, first.End, gap, ""));
            if (one == other)
            {
                open.RemoveAt(one);
                closed.Add(first with { Segments = Closed(first.Segments), IsClosed = true });
                continue;
            }
            var second = open[other];
            open.RemoveAt(Math.Max(one, other));
            var corner = Corner.Between(first.Segments[^1], second.Segments[0]);
            open[Math.Min(one, other)] = first with { Segments = [.. WithEnd(first.Segments, corner), .. WithStart(second.Segments, corner)] };
        }
        return [.. open, .. closed];
    }

    private static ImmutableArray<Segment> Closed(ImmutableArray<Segment> run)
    {
        var corner = Corner.Between(run[^1], run[0]);
        return WithEnd(WithStart(run, corner), corner);
    }

    private static ImmutableArray<Segment> WithStart(ImmutableArray<Segment> run, Point start) => run.SetItem(0, Corner.WithStart(run[0], start));

    private static ImmutableArray<Segment> WithEnd(ImmutableArray<Segment> run, Point end) => run.SetItem(run.Length - 1, Corner.WithEnd(run[^1], end));

    // Of two chains of a layer one is turned round so that the end of the first is to meet the start of the second.
    private static bool TryNearest(List<DxfChain> open, double widest, out int one, out int other, out double gap)
    {
        (one, other, gap) = (-1, -1, widest);
        var turn = (First: false, Second: false);
        for (var i = 0; i < open.Count; i++)
        {
            if (open[i].Segments.Length > 1) Try(i, i, open[i].End, open[i].Start, (false, false), ref one, ref other, ref gap);
            for (var j = i + 1; j < open.Count; j++)
            {
                if (!string.Equals(open[i].Layer, open[j].Layer, StringComparison.OrdinalIgnoreCase)) continue;
                Try(i, j, open[i].End, open[j].Start, (false, false), ref one, ref other, ref gap);
                Try(i, j, open[i].End, open[j].End, (false, true), ref one, ref other, ref gap);
                Try(i, j, open[i].Start, open[j].Start, (true, false), ref one, ref other, ref gap);
                Try(i, j, open[i].Start, open[j].End, (true, true), ref one, ref other, ref gap);
            }
        }
        if (one < 0) return false;
        if (turn.First) open[one] = Turned(open[one]);
        if (turn.Second) open[other] = Turned(open[other]);
        return true;

        void Try(int i, int j, Point a, Point b, (bool, bool) turned, ref int first, ref int second, ref double least)
        {
            var distance = a.DistanceTo(b);
            if (distance > least || distance >= Math.Min(open[i].Length, open[j].Length) / 2) return;
            (first, second, least, turn) = (i, j, distance, turned);
        }
    }

    private static DxfChain Turned(DxfChain chain) => chain with { Segments = [.. chain.Segments.Reverse().Select(s => s.Reversed())] };
}
