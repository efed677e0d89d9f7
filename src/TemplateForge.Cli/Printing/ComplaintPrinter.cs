using TemplateForge.Notation;

namespace TemplateForge.Cli.Printing;

/// <summary>Prints complaints, on the errors' side.</summary>
internal static class ComplaintPrinter
{
    public static void Print(IEnumerable<Complaint> complaints, Terminal terminal)
    {
        foreach (var complaint in complaints)
            foreach (var line in complaint.ToString().Split('\n')) terminal.Errors.WriteLine(Wordings.Plain(line));
    }

    /// <summary>Prints complaints, as JSON on the output too where that was asked for.</summary>
    public static int Refuse(IReadOnlyCollection<Complaint> complaints, bool asJson, Terminal terminal)
    {
        if (asJson) Reports.Print(new RefusedReport(Reports.Of(complaints)), ReportText.Default.RefusedReport, terminal);
        Print(complaints, terminal);
        return ExitCode.Refused;
    }
}
