using System.Collections.Immutable;
using System.Globalization;
using TemplateForge.Geometry;

namespace TemplateForge.Drawing;

/// <summary>A DXF that a table takes, from one that it would choke on.</summary>
/// <param name="Drawing">Lines and arcs in mm, a layer for each of the file's, inner cuts before outer ones; what is not cut as it was.</param>
/// <param name="TakenAs">The unit in which the numbers of the file were taken.</param>
/// <param name="Purposes">What the layers of the drawing are for.</param>
/// <param name="Mended">What was changed, and where.</param>
/// <param name="Lost">What is in the file and could not be read, so that it is missing. What else could not be mended is found by a check of what is written.</param>
public sealed record DxfRepair(
    LineDrawing Drawing, DxfUnit TakenAs, DxfPurposes Purposes, ImmutableArray<DxfFinding> Mended, ImmutableArray<DxfFinding> Lost)
{
    /// <summary>Gaps up to this are closed if nothing else is said, in mm.</summary>
    public const double UsualGap = 0.2;

    /// <param name="contents">What was read, its curves as few arcs.</param>
    /// <param name="purposes">What its layers are for.</param>
    /// <param name="widestGap">Gaps up to this, in mm, are closed.</param>
    /// <param name="format">How the drawing is going to be written.</param>
    public static DxfRepair Of(DxfContents contents, DxfPurposes purposes, double widestGap, DxfFormat format)
    {
        var seen = contents.Strokes.Where(s => !s.IsHidden).ToList();
        var names = LayerNames.Of(seen.Select(s => s.Layer), format.Release);
        List<DxfFinding> mended = [.. Written(contents, names, format), .. contents.Findings.Where(f => !IsLoss(f) && DxfCheck.Concerns(f, purposes))];
        var chains = Mend(DxfCheck.CutOf(contents, purposes), purposes, widestGap, mended);
        var marks = DxfChain.EachAlone(seen.Where(s => !purposes.IsCut(s.Layer)));
        var layers = chains.Concat(marks).GroupBy(c => names[c.Layer], StringComparer.Ordinal)
            .Select(g => new Layer(g.Key, Pen.Solid(0.25, Colour.Black), [.. g.Select(Stroke)]));
        return new(new([.. layers]), contents.Unit, purposes.Renamed(names), [.. mended], [.. contents.Findings.Where(IsLoss)]);
    }

    private static bool IsLoss(DxfFinding finding) =>
        finding.Kind is DxfFindingKind.CutShort or DxfFindingKind.Unreadable or DxfFindingKind.TooFar or DxfFindingKind.LostBlock;

    // What is written differs in these from what was there, whatever else is mended.
    private static IEnumerable<DxfFinding> Written(DxfContents contents, ImmutableDictionary<string, string> names, DxfFormat format)
    {
        if (contents.Unit != format.Unit) yield return At(DxfFindingKind.UnitConverted, "", Factor(contents.Unit, format.Unit));
        var release = format.Release == DxfRelease.R12 ? "AC1009" : "AC1015";
        if (contents.Release != release) yield return At(DxfFindingKind.ReleaseWritten, "", $"{contents.Release} {release}");
        foreach (var (layer, name) in names.Where(n => n.Key != n.Value).OrderBy(n => n.Key, StringComparer.Ordinal))
            yield return At(DxfFindingKind.LayerRenamed, layer, name);

        static DxfFinding At(DxfFindingKind kind, string layer, string detail) => new(kind, layer, 0, Point.Origin, 0, detail);
    }

    private static string Factor(DxfUnit from, DxfUnit to) =>
        string.Create(CultureInfo.InvariantCulture, $"{from.Name} to {to.Name}: each number times {from.Millimetres / to.Millimetres:0.######}");

    private static IEnumerable<DxfChain> Mend(ImmutableArray<DxfStroke> strokes, DxfPurposes purposes, double widestGap, List<DxfFinding> mended)
    {
        // The order of courses is that of cutting, and their ends are where the torch is lit and put out.
        if (purposes.AreCourses) return [.. DxfChain.EachAlone(Doubles.LeftOutWhole(strokes, mended)).Select(c => Rounded(c, mended))];
        var chains = GapClosing.Of(DxfChain.Of(Doubles.LeftOut(strokes, mended)), widestGap, mended);
        return [.. chains.Select(c => Rounded(c, mended)).OrderBy(c => c.IsClosed ? 1 : 0).ThenBy(Size)];
    }

    private static DxfChain Rounded(DxfChain chain, List<DxfFinding> mended)
    {
        var runs = ChordRun.In(chain);
        if (runs.IsEmpty) return chain;
        var segments = new List<Segment>();
        var next = 0;
        foreach (var run in runs)
        {
            segments.AddRange(chain.Segments[next..run.First]);
            segments.AddRange(run.Arcs());
            next = run.First + run.Count;
            mended.Add(new(DxfFindingKind.ChordsOfArc, chain.Layer, chain.Line, run.Start, run.Radius, $"{run.Count}"));
        }
        segments.AddRange(chain.Segments[next..]);
        return chain with { Segments = [.. segments] };
    }

    // An outline is larger than all that lies in it, so holes come first.
    private static double Size(DxfChain chain) => chain.IsClosed ? chain.ToContour().Area : chain.Length;

    private static Mark Stroke(DxfChain chain) => chain.IsClosed ? new ClosedStroke(chain.ToContour()) : new OpenStroke(new(chain.Segments));
}
