using System.Collections.Immutable;
using System.Globalization;
using TemplateForge.Drawing;

namespace TemplateForge.Cli.Printing;

/// <summary>Prints what a DXF holds and what was found in it.</summary>
internal sealed class DxfPrinter(Terminal terminal, bool asJson)
{
    /// <summary>How many places of one kind of finding a person is shown.</summary>
    private const int MostPlaces = 8;

    /// <summary>What was found in a file.</summary>
    public void Print(string file, DxfContents contents, DxfPurposes purposes, DxfCheck check) => Print(file, contents, purposes, check, [], contents.Unit, isRepaired: false);

    /// <summary>What was changed, and what is left in the file that was written.</summary>
    public void Print(string file, DxfContents written, DxfCheck left, DxfRepair repair) => Print(file, written, repair.Purposes, left, repair.Mended, repair.TakenAs, isRepaired: true);

    private void Print(string file, DxfContents contents, DxfPurposes purposes, DxfCheck check, ImmutableArray<DxfFinding> mended, DxfUnit takenAs, bool isRepaired)
    {
        var layers = DxfLayerReport.Of(contents, purposes, check);
        if (asJson)
        {
            var report = new DxfReport(
                file, contents.Release, contents.StatedUnit, contents.Unit.Name, DxfUnit.Millimetre.Name, layers, [.. check.Findings.Select(DxfFindingReport.Of)], [.. mended.Select(DxfFindingReport.Of)]);
            Reports.Print(report, ReportText.Default.DxfReport, terminal);
            return;
        }
        var page = new Page(terminal);
        page.Line($"{file}: DXF {DxfWords.Release(contents.Release)}, {DxfWords.Unit(contents)}");
        page.Table(["layer", "is", " closed", " open", " length mm", " area mm²"], layers.Select(l => (IReadOnlyList<string>)
            [l.Layer, l.Purpose, $"{l.Closed}", $"{l.Open}", l.Length.ToString("0.0", CultureInfo.InvariantCulture), l.Area.ToString("0.0", CultureInfo.InvariantCulture)]));
        if (isRepaired)
        {
            page.Line();
            page.Line(mended.IsEmpty ? "Nothing had to be changed." : "Changed:", Page.Strong);
            Grouped(page, mended, takenAs, DxfWords.Done);
        }
        page.Line();
        page.Line(check.Findings.IsEmpty ? "A table would take it as it is." : isRepaired ? "Left for you to look at:" : "A table would choke on this:", Page.Strong);
        Grouped(page, check.Findings, contents.Unit, DxfWords.Remedy);
    }

    private static void Grouped(Page page, ImmutableArray<DxfFinding> findings, DxfUnit unit, Func<DxfFindingKind, string> say)
    {
        // New names stand together, each with its old one.
        foreach (var group in findings.GroupBy(f => (f.Kind, Layer: f.Kind == DxfFindingKind.LayerRenamed ? "" : f.Layer)).OrderBy(g => g.Key.Kind))
        {
            page.Line();
            page.Line($"{DxfWords.Heading(group.Key.Kind, group.Count())}{(group.Key.Layer.Length > 0 ? $" on layer {group.Key.Layer}" : "")}");
            page.Line($"  {say(group.Key.Kind)}");
            foreach (var at in group.Select(f => DxfWords.At(f, unit)).Where(at => at.Length > 0).Take(MostPlaces)) page.Line($"  {at}");
            if (group.Count() > MostPlaces) page.Line($"  and {group.Count() - MostPlaces} more; --json lists all");
        }
    }
}
