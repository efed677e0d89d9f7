using System.Collections.Immutable;
using TemplateForge.Geometry;

namespace TemplateForge.Drawing;

/// <summary>Outlines that do not close: ends that were meant to meet, and ends that are alone.</summary>
internal static class OpenEnds
{
    /// <param name="chains">What is cut.</param>
    /// <param name="edges">Edges of the work: a cut that runs in over them and out again is meant to be open.</param>
    /// <param name="openIsMeant">Whether other open cuts are meant as well.</param>
    public static IEnumerable<DxfFinding> In(ImmutableArray<DxfChain> chains, ImmutableArray<Segment> edges, bool openIsMeant)
    {
        var open = chains.Where(c => !c.IsClosed && !RunsInAndOut(c, edges)).ToList();
        var ends = open.SelectMany(c => new[] { (Chain: c, At: c.Start), (Chain: c, At: c.End) }).ToList();
        var told = new HashSet<int>();
        var hasGap = new HashSet<DxfChain>(ReferenceEqualityComparer.Instance);
        for (var i = 0; i < ends.Count; i++)
        {
            if (told.Contains(i)) continue;
            var nearest = -1;
            for (var j = 0; j < ends.Count; j++)
            {
                if (j == i || ends[j].Chain.Layer != ends[i].Chain.Layer || told.Contains(j)) continue;
                if (nearest < 0 || ends[j].At.DistanceTo(ends[i].At) < ends[nearest].At.DistanceTo(ends[i].At)) nearest = j;
            }
            if (nearest < 0 || ends[nearest].At.DistanceTo(ends[i].At) is var gap && (gap > DxfCheck.WidestGap || gap >= ends[i].Chain.Length)) continue;
            told.Add(i);
            told.Add(nearest);
            hasGap.Add(ends[i].Chain);
            hasGap.Add(ends[nearest].Chain);
            yield return new(DxfFindingKind.Gap, ends[i].Chain.Layer, ends[i].Chain.Line, ends[i].At, gap, "");
        }
        if (openIsMeant) yield break;
        foreach (var chain in open.Where(c => !hasGap.Contains(c)))
            yield return new(DxfFindingKind.OpenEnd, chain.Layer, chain.Line, chain.Start, chain.Start.DistanceTo(chain.End), "");
    }

    /// <summary>Whether it meets the edges in two places, or more.</summary>
    public static bool RunsInAndOut(DxfChain chain, ImmutableArray<Segment> edges)
    {
        if (edges.IsEmpty) return false;
        var count = chain.Segments.Length;
        var met = SegmentMeetings.Near([.. chain.Segments, .. edges], DxfCheck.Touching)
            .Where(m => m.First < count && m.Second >= count).SelectMany(m => m.Points).ToList();
        return met.Any(p => p.DistanceTo(met[0]) > DxfCheck.Tiny);
    }
}
