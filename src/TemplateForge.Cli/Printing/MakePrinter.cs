using System.Globalization;

namespace TemplateForge.Cli.Printing;

/// <summary>Prints what was made for the person who is going to cut.</summary>
internal static class MakePrinter
{
    public const string MadeOtherwise =
        "The job was made again, but its record is not the same as the one it was made from: the record was changed by hand, or this"
        + " program computes something otherwise than the one that wrote it. Compare the two before you cut.";

    public static void Print(MakeReport report, Terminal terminal)
    {
        var page = new Page(terminal);
        page.Line($"{report.Profile}, version {report.Version}: {report.Title}", Page.Strong);
        foreach (var job in report.Jobs) Print(job, page);
        var shared = report.Jobs[0];
        page.Line();
        foreach (var caution in shared.Cautions) page.Line($"{caution.Title}: {caution.Text}");
        if (shared.Demonstration) PrintDemonstration(shared, page);
        page.Line();
        page.Line($"Saved in {report.Folder}{(report.Remade == "alike" ? ", the same as before" : "")}");
    }

    private static void Print(ReportedJob job, Page page)
    {
        page.Line();
        if (job.Hand != "either")
        {
            if (job.HandWasMeasured) page.Line($"{Capital(job.Hand)} hand, from values taken on this hand.");
            else page.Line($"{Capital(job.Hand)} hand: NOT MEASURED, mirrored from values of the other hand. Check it on the vehicle.", Page.Loud);
        }
        page.Table(
            ["File", "What it is", " Size"],
            job.Files.Select(f => (IReadOnlyList<string>)[f.Name, f.What, Size(f.Bytes)]));
        foreach (var turned in job.Pages.Where(p => p.Words.Length > 0)) page.Line($"On paper: {turned.Piece} is {turned.Words}.");
        if (job.Printing.Length > 0) page.Line($"On paper: {job.Printing}.");
        if (job.Checks.Length > 0)
        {
            page.Line();
            page.Line("Check before cutting:", Page.Strong);
            page.Table(
                ["Piece", "Distance", " mm"],
                job.Checks.Select(c => (IReadOnlyList<string>)[c.Piece, c.Label, c.Millimetres.ToString("0.0", CultureInfo.InvariantCulture)]));
        }
        if (job.Blanks.Length > 0)
        {
            page.Line();
            page.Line("Sheet metal:", Page.Strong);
            page.Table(
                ["Piece", "Material", " mm", " Off", " Bends", " kg each"],
                job.Blanks.Select(b => (IReadOnlyList<string>)
                [
                    b.Piece,
                    b.Material,
                    b.Thickness.ToString("0.##", CultureInfo.InvariantCulture),
                    b.Quantity.ToString(CultureInfo.InvariantCulture),
                    b.Bends.ToString(CultureInfo.InvariantCulture),
                    b.Kilograms.ToString("0.000", CultureInfo.InvariantCulture),
                ]));
        }
        if (job.Warnings.Length == 0) return;
        page.Line();
        page.Line("Warnings:", Page.Strong);
        foreach (var warning in job.Warnings.Distinct()) page.Line($"{warning.Piece}, {warning.Rule}: {warning.Text} ({warning.Source})");
    }

    private static void PrintDemonstration(ReportedJob job, Page page)
    {
        page.Line();
        page.Line(" DEMONSTRATION, DO NOT CUT ", Page.Loud);
        page.Line("These must be measured on this vehicle and still stand at their defaults. Measure them and give each with --set:");
        page.Table(
            ["Give", "Default", "What it is", "How it is measured"],
            job.AtDefault.Select(v => (IReadOnlyList<string>)[$"--set {v.Name}=…", v.Value, v.Label, v.HowMeasured]));
    }

    private static string Size(int bytes) =>
        bytes < 10_000 ? $"{bytes} B" : $"{(bytes / 1000.0).ToString("0", CultureInfo.InvariantCulture)} kB";

    private static string Capital(string word) => char.ToUpperInvariant(word[0]) + word[1..];
}
