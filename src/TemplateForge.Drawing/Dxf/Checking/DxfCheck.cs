using System.Collections.Immutable;
using TemplateForge.Geometry;

namespace TemplateForge.Drawing;

/// <summary>What a cutting table would choke on in somebody's DXF, and where.</summary>
/// <param name="Chains">The strokes end to end.</param>
/// <param name="Findings">All that was found, on reading and here.</param>
public sealed record DxfCheck(ImmutableArray<DxfChain> Chains, ImmutableArray<DxfFinding> Findings)
{
    /// <summary>Two ends nearer than this, in mm, were meant to meet.</summary>
    public const double WidestGap = 2;

    /// <summary>Arcs and lines shorter than this, in mm, make a torch stutter.</summary>
    public const double Tiny = 0.1;

    /// <summary>Two lines nearer than this, in mm, all along are cut twice in the same place.</summary>
    public const double Same = 0.01;

    public static DxfCheck Of(DxfContents contents)
    {
        var doubles = new List<DxfFinding>();
        var once = Doubles.LeftOut(contents.Strokes, doubles);
        var chains = DxfChain.Of(once);
        return new(chains,
        [
            .. contents.Findings,
            .. Small(contents),
            .. Ends(chains),
            .. doubles,
            .. Crossings(once),
            .. chains.SelectMany(c => ChordRun.In(c).Select(run => new DxfFinding(DxfFindingKind.ChordsOfArc, c.Layer, c.Line, run.Start, run.Radius, $"{run.Count}"))),
        ]);
    }

    /// <summary>What the closed chains of a layer bound, whichever way they were drawn: what lies in an odd number of them.</summary>
    public static Region Bounded(IEnumerable<DxfChain> chains) =>
        Region.FromContours(chains.Where(c => c.IsClosed).Select(c => c.ToContour()), FillRule.EvenOdd);

    private static IEnumerable<DxfFinding> Small(DxfContents contents) =>
        from stroke in contents.Strokes
        where stroke.Entity is not ("SPLINE" or "ELLIPSE")
        from segment in stroke.Segments
        where segment.Length < Tiny
        select new DxfFinding(DxfFindingKind.TinyArc, stroke.Layer, stroke.Line, segment.Start, segment.Length, stroke.Entity);

    private static IEnumerable<DxfFinding> Ends(ImmutableArray<DxfChain> chains)
    {
        var open = chains.Where(c => !c.IsClosed).ToList();
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
            if (nearest < 0 || ends[nearest].At.DistanceTo(ends[i].At) is var gap && (gap > WidestGap || gap >= ends[i].Chain.Length)) continue;
            told.Add(i);
            told.Add(nearest);
            hasGap.Add(ends[i].Chain);
            hasGap.Add(ends[nearest].Chain);
            yield return new(DxfFindingKind.Gap, ends[i].Chain.Layer, ends[i].Chain.Line, ends[i].At, gap, "");
        }
        foreach (var chain in open.Where(c => !hasGap.Contains(c)))
            yield return new(DxfFindingKind.OpenEnd, chain.Layer, chain.Line, chain.Start, chain.Start.DistanceTo(chain.End), "");
    }

    private static IEnumerable<DxfFinding> Crossings(ImmutableArray<DxfStroke> strokes)
    {
        foreach (var layer in strokes.GroupBy(s => s.Layer, StringComparer.OrdinalIgnoreCase))
        {
            var segments = layer.SelectMany(s => s.Segments.Select(segment => (Stroke: s, Segment: segment))).ToList();
            foreach (var pair in SegmentMeetings.Near([.. segments.Select(s => s.Segment)], Same))
            {
                var ((_, first), (stroke, second)) = (segments[pair.First], segments[pair.Second]);
                foreach (var at in pair.Points.Where(p => IsInside(first, p) && IsInside(second, p)))
                    yield return new(DxfFindingKind.Crossing, layer.Key, stroke.Line, at, 0, stroke.Entity);
            }
        }
    }

    private static bool IsInside(Segment segment, Point p) => p.DistanceTo(segment.Start) > Same && p.DistanceTo(segment.End) > Same;
}
