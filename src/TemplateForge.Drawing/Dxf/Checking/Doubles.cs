using System.Collections.Immutable;
using TemplateForge.Geometry;

namespace TemplateForge.Drawing;

/// <summary>Lines that lie on others.</summary>
internal static class Doubles
{
    /// <summary>The strokes without what lies on a line that came before it, and what was left out.</summary>
    public static ImmutableArray<DxfStroke> LeftOut(ImmutableArray<DxfStroke> strokes, ICollection<DxfFinding> findings) =>
        [.. strokes.GroupBy(s => s.Layer, StringComparer.OrdinalIgnoreCase).SelectMany(layer => OnlyOnce(layer, findings))];

    /// <summary>The strokes without those that lie wholly on one that came before: what a torch's course runs over itself is meant.</summary>
    public static ImmutableArray<DxfStroke> LeftOutWhole(ImmutableArray<DxfStroke> strokes, ICollection<DxfFinding> findings)
    {
        var kept = ImmutableArray.CreateBuilder<DxfStroke>();
        foreach (var stroke in strokes)
        {
            if (kept.Any(k => IsSame(k, stroke))) findings.Add(new(DxfFindingKind.Doubled, stroke.Layer, stroke.Line, stroke.Start, stroke.Segments.Sum(s => s.Length), stroke.Entity));
            else kept.Add(stroke);
        }
        return kept.ToImmutable();
    }

    private static bool IsSame(DxfStroke one, DxfStroke other) =>
        string.Equals(one.Layer, other.Layer, StringComparison.OrdinalIgnoreCase) && one.Segments.Length == other.Segments.Length
        && (IsSame(one.Segments, other.Segments) || IsSame(one.Segments, [.. other.Segments.Reverse()]));

    private static bool IsSame(ImmutableArray<Segment> one, ImmutableArray<Segment> other) =>
        one.Zip(other).All(p => Overlap.TryFind(p.First, p.Second, out var overlap) && overlap.IsWhole);

    private static IEnumerable<DxfStroke> OnlyOnce(IGrouping<string, DxfStroke> layer, ICollection<DxfFinding> findings)
    {
        var segments = layer.SelectMany(s => s.Segments.Select(segment => (Stroke: s, Segment: segment))).ToList();
        var kept = segments.Select(s => ImmutableArray.Create(s.Segment)).ToArray();
        foreach (var pair in SegmentMeetings.Near([.. segments.Select(s => s.Segment)], DxfCheck.Same))
        {
            var ((_, first), (stroke, second)) = (segments[pair.First], segments[pair.Second]);
            if (kept[pair.First].IsEmpty || kept[pair.Second].IsEmpty || !Overlap.TryFind(first, second, out var overlap)) continue;
            findings.Add(new(overlap.IsWhole ? DxfFindingKind.Doubled : DxfFindingKind.Overlapping, layer.Key, stroke.Line, overlap.From, overlap.Length, stroke.Entity));
            kept[pair.Second] = [.. kept[pair.Second].SelectMany(s => Outside(s, first))];
        }
        for (var i = 0; i < segments.Count;)
        {
            var stroke = segments[i].Stroke;
            var count = stroke.Segments.Length;
            if (Enumerable.Range(i, count).All(k => kept[k].Length == 1 && kept[k][0] == segments[k].Segment)) yield return stroke;
            else
            {
                foreach (var run in Enumerable.Range(i, count).SelectMany(k => kept[k])) yield return stroke with { Segments = [run] };
            }
            i += count;
        }
    }

    private static IEnumerable<Segment> Outside(Segment segment, Segment other)
    {
        if (!Overlap.TryFind(other, segment, out var overlap)) return [segment];
        var (a, b) = (Overlap.ShareOf(segment, overlap.From), Overlap.ShareOf(segment, overlap.To));
        var (from, to) = (Math.Min(a, b), Math.Max(a, b));
        var least = DxfCheck.Same / segment.Length;
        return [.. from > least ? [segment.Part(0, from)] : Array.Empty<Segment>(), .. to < 1 - least ? [segment.Part(to, 1)] : Array.Empty<Segment>()];
    }
}
