using System.Collections.Immutable;
using TemplateForge.Drawing;

namespace TemplateForge.Cli.Printing;

/// <summary>What a DXF holds and what was found in it, for other programs.</summary>
/// <param name="File">Its name.</param>
/// <param name="Release">As it names it.</param>
/// <param name="Unit">The unit that it states; empty where it states none.</param>
/// <param name="TakenAs">The unit in which its numbers were taken.</param>
/// <param name="MeasuredIn">The unit of every length, area and place in this report.</param>
/// <param name="Layers">Its layers.</param>
/// <param name="Findings">What a table would choke on.</param>
/// <param name="Mended">What was changed.</param>
internal sealed record DxfReport(
    string File, string Release, string Unit, string TakenAs, string MeasuredIn,
    ImmutableArray<DxfLayerReport> Layers, ImmutableArray<DxfFindingReport> Findings, ImmutableArray<DxfFindingReport> Mended);

/// <param name="Layer">Its name.</param>
/// <param name="Purpose">cut, mark or hidden.</param>
/// <param name="Closed">How many runs of lines and arcs close.</param>
/// <param name="Open">How many do not.</param>
/// <param name="Length">Of all of them, in mm.</param>
/// <param name="Area">What those that close bound, in mm²; of marks and what is hidden 0.</param>
internal sealed record DxfLayerReport(string Layer, string Purpose, int Closed, int Open, double Length, double Area)
{
    public static ImmutableArray<DxfLayerReport> Of(DxfContents contents, DxfPurposes purposes, DxfCheck check) =>
    [
        .. Each(check.Chains, "cut", c => DxfCheck.Bounded(c).Area),
        .. Each(DxfChain.EachAlone(contents.Strokes.Where(s => !s.IsHidden && !purposes.IsCut(s.Layer))), "mark", _ => 0),
        .. Each(DxfChain.EachAlone(contents.Strokes.Where(s => s.IsHidden)), "hidden", _ => 0),
    ];

    private static IEnumerable<DxfLayerReport> Each(ImmutableArray<DxfChain> chains, string purpose, Func<IEnumerable<DxfChain>, double> areaOf) =>
        chains.GroupBy(c => c.Layer, StringComparer.OrdinalIgnoreCase).Select(g => new DxfLayerReport(
            g.Key, purpose, g.Count(c => c.IsClosed), g.Count(c => !c.IsClosed), Math.Round(g.Sum(c => c.Length), 6), Math.Round(areaOf(g), 6)));
}

internal sealed record DxfFindingReport(string Kind, string Layer, int Line, double X, double Y, double Size, string Detail)
{
    public static DxfFindingReport Of(DxfFinding f) =>
        new(DxfWords.Name(f.Kind), f.Layer, f.Line, Math.Round(f.At.X, 4), Math.Round(f.At.Y, 4), Math.Round(f.Size, 4), f.Detail);
}
