using System.Globalization;

namespace TemplateForge.Cli.Printing;

/// <summary>Prints what became of the rows of a table.</summary>
internal static class BatchPrinter
{
    public static void Print(BatchReport report, Terminal terminal)
    {
        var page = new Page(terminal);
        page.Line($"{report.Profile}, version {report.Version}", Page.Strong);
        page.Line();
        page.Table(
            ["Job", " Line", "May it be cut", " Warnings", " Files", " kB"],
            report.Jobs.Select(j => (IReadOnlyList<string>)[j.Job, Number(j.Line), MayBeCut(j), Number(j.Warnings), Number(j.Files), Number(j.Bytes / 1000)]));
        page.Line();
        if (report.Printing.Length > 0) page.Line($"On paper: {report.Printing}.");
        var saved = report.Jobs.Count(j => j.Saved);
        page.Line($"{saved} of {report.Jobs.Length} jobs saved in {report.Folder}");
        if (saved < report.Jobs.Length) page.Line(" NOT ALL JOBS WERE SAVED ", Page.Loud);
        if (report.Jobs.Count(j => j.Demonstration) is > 0 and var demonstrations)
            page.Line($"{demonstrations} of them for DEMONSTRATION, DO NOT CUT: fill in what was measured.", Page.Loud);
    }

    private static string MayBeCut(ReportedRow job) =>
        !job.Saved ? "NOT SAVED" : job.Demonstration ? $"NO, {job.NotMeasured} not measured" : "yes";

    private static string Number(long number) => number.ToString(CultureInfo.InvariantCulture);
}
