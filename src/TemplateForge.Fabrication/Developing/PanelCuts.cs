using System.Collections.Immutable;
using TemplateForge.Geometry;

namespace TemplateForge.Fabrication;

/// <summary>A line or arc cut at some heights, or where an arc is furthest along and across.</summary>
internal static class PanelCuts
{
    /// <summary>Its parts, in order; none shorter than ten times <see cref="Tolerance.Length"/>.</summary>
    public static IEnumerable<Segment> At(Segment segment, ImmutableArray<double> heights) => Cut(segment, Shares(segment, heights));

    /// <summary>Its parts between the places at which it is level or upright, so that each of those is the end of one.</summary>
    public static IEnumerable<Segment> Quarters(Segment segment) => Cut(segment, Turned(segment, Math.PI / 2));

    private static IEnumerable<Segment> Cut(Segment segment, IEnumerable<double> shares)
    {
        var least = 10 * Tolerance.Length / segment.Length;
        var from = 0.0;
        foreach (var share in shares.Order())
        {
            if (share - from < least || 1 - share < least) continue;
            yield return segment.Part(from, share);
            from = share;
        }
        yield return segment.Part(from, 1);
    }

    private static IEnumerable<double> Shares(Segment segment, ImmutableArray<double> heights)
    {
        if (heights.IsEmpty) yield break;
        double[] ends = [0, .. Turned(segment, Math.PI).Order(), 1];
        for (var i = 1; i < ends.Length; i++)
        {
            var (low, high) = (segment.At(ends[i - 1]).Y, segment.At(ends[i]).Y);
            foreach (var height in heights.Where(h => (h - low) * (h - high) < 0)) yield return Found(segment, height, ends[i - 1], ends[i], low < high);
        }
    }

    /// <summary>Where an arc runs in whole multiples of an angle: of half a turn, so that between two such places it only rises or only falls.</summary>
    private static IEnumerable<double> Turned(Segment segment, double angle)
    {
        if (segment.IsLine) return [];
        var start = segment.StartDirection.Direction.Radians;
        return Enumerable.Range(-4, 9).Select(k => (k * angle - start) / segment.Sweep.Radians).Where(share => share is > 0 and < 1);
    }

    private static double Found(Segment segment, double height, double from, double to, bool rises)
    {
        for (var i = 0; i < 60; i++)
        {
            var middle = (from + to) / 2;
            if (segment.At(middle).Y < height == rises) from = middle; else to = middle;
        }
        return (from + to) / 2;
    }
}
