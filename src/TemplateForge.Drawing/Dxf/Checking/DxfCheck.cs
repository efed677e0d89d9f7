using System.Collections.Immutable;
using System.Globalization;
using TemplateForge.Geometry;

namespace TemplateForge.Drawing;

/// <summary>What a cutting table would choke on in somebody's DXF, and where.</summary>
/// <param name="Chains">The strokes that are cut, end to end; courses of a torch each by itself.</param>
/// <param name="Findings">All that was found, on reading and here.</param>
/// <remarks>Only what can be seen and lies on a layer that is cut is judged; what is hidden is told of.</remarks>
public sealed record DxfCheck(ImmutableArray<DxfChain> Chains, ImmutableArray<DxfFinding> Findings)
{
    /// <summary>Two ends nearer than this, in mm, were meant to meet.</summary>
    public const double WidestGap = 2;

    /// <summary>Arcs and lines shorter than this, in mm, make a torch stutter if it has to turn on them.</summary>
    public const double Tiny = 0.1;

    /// <summary>Two lines nearer than this, in mm, all along are cut twice in the same place: no kerf is narrower than twice this.</summary>
    public const double Same = 0.05;

    /// <summary>Lines that cross nearer than this, in mm, to an end of one of them only touch.</summary>
    public const double Touching = 0.01;

    /// <summary>In mm: hardly a sheet is longer, so that a wider drawing is in another unit than it says. Common practice, no source.</summary>
    public const double WidestPart = 6000;

    public static DxfCheck Of(DxfContents contents, DxfPurposes purposes)
    {
        var strokes = CutOf(contents, purposes);
        var doubles = new List<DxfFinding>();
        var once = purposes.AreCourses ? Doubles.LeftOutWhole(strokes, doubles) : Doubles.LeftOut(strokes, doubles);
        var chains = purposes.AreCourses ? DxfChain.EachAlone(once) : DxfChain.Of(once);
        return new(chains,
        [
            .. contents.Findings.Where(f => Concerns(f, purposes)),
            .. Size(strokes),
            .. chains.SelectMany(TinyBends.In),
            .. purposes.AreCourses ? [] : OpenEnds.In(chains, EdgesOf(contents, purposes), purposes.OpenIsMeant),
            .. doubles,
            .. Crossings(once, purposes),
            .. chains.SelectMany(c => ChordRun.In(c).Select(run => new DxfFinding(DxfFindingKind.ChordsOfArc, c.Layer, c.Line, run.Start, run.Radius, $"{run.Count}"))),
        ]);
    }

    /// <summary>What the closed chains of a layer bound, whichever way they were drawn: what lies in an odd number of them.</summary>
    public static Region Bounded(IEnumerable<DxfChain> chains) =>
        Region.FromContours(chains.Where(c => c.IsClosed).Select(c => c.ToContour()), FillRule.EvenOdd);

    /// <summary>The strokes that can be seen and are cut.</summary>
    public static ImmutableArray<DxfStroke> CutOf(DxfContents contents, DxfPurposes purposes) =>
        [.. contents.Strokes.Where(s => !s.IsHidden && purposes.IsCut(s.Layer))];

    /// <summary>Whether a finding of the reader's is one of what is cut, or of the file as a whole. A block may hold what is cut whatever layer it lies on.</summary>
    internal static bool Concerns(DxfFinding finding, DxfPurposes purposes) =>
        finding.Layer.Length == 0 || purposes.IsCut(finding.Layer) || finding.Kind is DxfFindingKind.Block or DxfFindingKind.LostBlock;

    private static IEnumerable<DxfFinding> Size(ImmutableArray<DxfStroke> strokes)
    {
        if (strokes.IsEmpty)
        {
            yield return new(DxfFindingKind.Empty, "", 0, Point.Origin, 0, "");
            yield break;
        }
        var bounds = Box.Around(strokes.SelectMany(s => s.Segments).Select(s => s.Bounds));
        if (Math.Max(bounds.Width, bounds.Height) > WidestPart)
            yield return new(DxfFindingKind.TooWide, "", 0, bounds.Min, Math.Max(bounds.Width, bounds.Height), string.Create(CultureInfo.InvariantCulture, $"{bounds.Width:0.#} × {bounds.Height:0.#} mm"));
    }

    private static ImmutableArray<Segment> EdgesOf(DxfContents contents, DxfPurposes purposes) =>
        [.. contents.Strokes.Where(s => purposes.IsEdge(s.Layer)).SelectMany(s => s.Segments)];

    // A course may cross itself where it leads in and out.
    private static IEnumerable<DxfFinding> Crossings(ImmutableArray<DxfStroke> strokes, DxfPurposes purposes)
    {
        foreach (var layer in strokes.GroupBy(s => s.Layer, StringComparer.OrdinalIgnoreCase))
        {
            var segments = layer.SelectMany(s => s.Segments.Select(segment => (Stroke: s, Segment: segment))).ToList();
            foreach (var pair in SegmentMeetings.Near([.. segments.Select(s => s.Segment)], Touching))
            {
                var ((before, first), (stroke, second)) = (segments[pair.First], segments[pair.Second]);
                if (purposes.AreCourses && ReferenceEquals(before, stroke)) continue;
                foreach (var at in pair.Points.Where(p => IsInside(first, p) && IsInside(second, p)))
                    yield return new(DxfFindingKind.Crossing, layer.Key, stroke.Line, at, 0, stroke.Entity);
            }
        }
    }

    private static bool IsInside(Segment segment, Point p) => p.DistanceTo(segment.Start) > Touching && p.DistanceTo(segment.End) > Touching;
}
