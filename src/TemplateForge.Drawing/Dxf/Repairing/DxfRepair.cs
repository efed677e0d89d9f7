using System.Collections.Immutable;
using TemplateForge.Geometry;

namespace TemplateForge.Drawing;

/// <summary>A DXF that a table takes, from one that it would choke on.</summary>
/// <param name="Drawing">Lines and arcs in mm, a layer for each of the file's, inner cuts before outer ones.</param>
/// <param name="Mended">What was changed, and where. What could not be is found by a check of what is written.</param>
public sealed record DxfRepair(LineDrawing Drawing, ImmutableArray<DxfFinding> Mended)
{
    /// <summary>Gaps up to this are closed if nothing else is said, in mm.</summary>
    public const double UsualGap = 0.2;

    /// <param name="contents">What was read, its curves as few arcs.</param>
    /// <param name="widestGap">Gaps up to this, in mm, are closed: either end moves half of it.</param>
    public static DxfRepair Of(DxfContents contents, double widestGap)
    {
        var mended = new List<DxfFinding>(contents.Findings.Where(f =>
            f.Kind is DxfFindingKind.Block or DxfFindingKind.Spline or DxfFindingKind.Ellipse or DxfFindingKind.ZeroLength or DxfFindingKind.NoUnit
                or DxfFindingKind.UnitContradicted or DxfFindingKind.NotCut or DxfFindingKind.OnPaper or DxfFindingKind.NotFlat or DxfFindingKind.CutShort or DxfFindingKind.HiddenLayer));
        var once = Doubles.LeftOut(contents.Strokes, mended);
        var chains = GapClosing.Of(DxfChain.Of(once), widestGap, mended);
        var round = chains.Select(c => Rounded(c, mended)).ToList();
        var layers = round.GroupBy(c => LayerName(c.Layer), StringComparer.Ordinal)
            .Select(g => new Layer(g.Key, Pen.Solid(0.25, Colour.Black), [.. g.OrderBy(c => c.IsClosed ? 1 : 0).ThenBy(Size).Select(Stroke)]));
        return new(new([.. layers]), [.. mended]);
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

    private static string LayerName(string layer)
    {
        var name = new string([.. layer.ToUpperInvariant().Select(c => char.IsAsciiLetterUpper(c) || char.IsAsciiDigit(c) ? c : '-')]);
        return name is "" or "0" ? "LAYER-0" : name.Length > 200 ? name[..200] : name;
    }
}
