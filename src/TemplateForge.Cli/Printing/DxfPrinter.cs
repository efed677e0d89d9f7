using System.Collections.Immutable;
using System.Globalization;
using TemplateForge.Drawing;

namespace TemplateForge.Cli.Printing;

/// <summary>Prints what a DXF holds and what was found in it.</summary>
internal sealed class DxfPrinter(Terminal terminal, bool asJson)
{
    /// <summary>How many places of one kind of finding a person is shown.</summary>
    private const int MostPlaces = 8;

    public void Print(string file, DxfContents contents, DxfCheck check) => Print(file, contents, check, [], isRepaired: false);

    public void Print(string file, DxfContents contents, DxfCheck check, DxfRepair repair) => Print(file, contents, check, repair.Mended, isRepaired: true);

    private void Print(string file, DxfContents contents, DxfCheck check, ImmutableArray<DxfFinding> mended, bool isRepaired)
    {
        var layers = check.Chains.GroupBy(c => c.Layer, StringComparer.OrdinalIgnoreCase)
            .Select(g => new DxfLayerReport(
                g.Key, g.Count(c => c.IsClosed), g.Count(c => !c.IsClosed), Math.Round(g.Sum(c => c.Length), 6), Math.Round(DxfCheck.Bounded(g).Area, 6)))
            .ToImmutableArray();
        var report = new DxfReport(
            file, contents.Release, contents.UnitIsStated ? contents.Unit.Name : "", layers, [.. check.Findings.Select(Reported)], [.. mended.Select(Reported)]);
        if (asJson)
        {
            Reports.Print(report, ReportText.Default.DxfReport, terminal);
            return;
        }
        var page = new Page(terminal);
        page.Line($"{file}: DXF {DxfWords.Release(contents.Release)}, {(contents.UnitIsStated ? "in " + contents.Unit.Name : "unit not stated, taken as " + contents.Unit.Name)}");
        page.Table(["layer", " closed", " open", " length mm", " area mm²"], layers.Select(l => (IReadOnlyList<string>)
            [l.Layer, $"{l.Closed}", $"{l.Open}", l.Length.ToString("0.0", CultureInfo.InvariantCulture), l.Area.ToString("0.0", CultureInfo.InvariantCulture)]));
        if (isRepaired)
        {
            page.Line();
            page.Line(mended.IsEmpty ? "Nothing had to be changed." : "Changed:", Page.Strong);
            Grouped(page, mended, withRemedy: false);
        }
        page.Line();
        page.Line(check.Findings.IsEmpty ? "A table would take it as it is." : isRepaired ? "Left for you to look at:" : "A table would choke on this:", Page.Strong);
        Grouped(page, check.Findings, withRemedy: true);
    }

    private static void Grouped(Page page, ImmutableArray<DxfFinding> findings, bool withRemedy)
    {
        foreach (var group in findings.GroupBy(f => (f.Kind, f.Layer)).OrderBy(g => g.Key.Kind))
        {
            page.Line();
            page.Line($"{DxfWords.Heading(group.Key.Kind, group.Count())}{(group.Key.Layer.Length > 0 ? $" on layer {group.Key.Layer}" : "")}");
            if (withRemedy) page.Line($"  {DxfWords.Remedy(group.Key.Kind)}");
            foreach (var finding in group.Take(MostPlaces)) page.Line($"  {DxfWords.At(finding)}");
            if (group.Count() > MostPlaces) page.Line($"  and {group.Count() - MostPlaces} more; --json lists all");
        }
    }

    private static DxfFindingReport Reported(DxfFinding f) => new(
        DxfWords.Name(f.Kind), f.Layer, f.Line, Math.Round(f.At.X, 4), Math.Round(f.At.Y, 4), Math.Round(f.Size, 4), f.Detail);
}

internal sealed record DxfReport(
    string File, string Release, string Unit, ImmutableArray<DxfLayerReport> Layers, ImmutableArray<DxfFindingReport> Findings, ImmutableArray<DxfFindingReport> Mended);

internal sealed record DxfLayerReport(string Layer, int Closed, int Open, double Length, double Area);

internal sealed record DxfFindingReport(string Kind, string Layer, int Line, double X, double Y, double Size, string Detail);
