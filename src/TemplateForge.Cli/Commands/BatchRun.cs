using TemplateForge.Cli.Printing;
using TemplateForge.Jobs;
using TemplateForge.Notation;

namespace TemplateForge.Cli.Commands;

/// <summary>Makes a job for every row of a table.</summary>
/// <param name="values">The table that was named.</param>
/// <param name="shared">What all jobs have in common.</param>
/// <param name="terminal">Where it prints.</param>
/// <param name="cancellation">Stops it; jobs that are saved by then stay.</param>
internal sealed class BatchRun(Choice values, JobRequest shared, Terminal terminal, CancellationToken cancellation)
{
    /// <summary>The most bytes that a table may have: room for a hundred thousand rows.</summary>
    private const int LongestTable = 50_000_000;

    private int done;

    /// <param name="given">The folder that the jobs' folders go in; open for out/ and the table's name.</param>
    /// <param name="replace">Whether other jobs in their places may go.</param>
    /// <param name="asJson">Whether another program reads what is said.</param>
    /// <param name="complaints">What is wrong already.</param>
    /// <returns>One of <see cref="ExitCode"/>.</returns>
    public int Run(Choice given, bool replace, bool asJson, List<Complaint> complaints)
    {
        if (!TextFiles.TryRead(terminal.PathOf(values.Word), LongestTable, values.Place, complaints, out var file)) return Refuse();
        Batch? batch = null;
        var table = file with { Name = values.Word };
        Waiting.For(
            () => Batch.TryRead(table, shared, One, complaints, cancellation, out batch), () => $"Checking row {done} of {values.Word}", terminal);
        if (batch is null || complaints.Count > 0) return Refuse();

        done = 0;
        var folder = given.IsMade ? given.Word : System.IO.Path.Combine("out", System.IO.Path.GetFileNameWithoutExtension(values.Word));
        var place = given.IsMade ? given.Place : CommandLine.Start;
        try
        {
            var outcomes = Waiting.For(
                () => batch.Make(terminal.PathOf(folder), replace, place, One, complaints, cancellation),
                () => $"{done} of {batch.Rows.Length} jobs made",
                terminal);
            var report = BatchReport.Of(batch, folder, outcomes, complaints);
            if (asJson) Reports.Print(report, ReportText.Default.BatchReport, terminal);
            else BatchPrinter.Print(report, terminal);
        }
        catch (OperationCanceledException)
        {
            terminal.Errors.WriteLine($"Stopped. {done} of {batch.Rows.Length} jobs are saved, each of them whole.");
            return ExitCode.Stopped;
        }
        ComplaintPrinter.Print(complaints, terminal);
        return complaints.Count == 0 ? ExitCode.Done : ExitCode.Refused;

        int Refuse() => ComplaintPrinter.Refuse(complaints, asJson, terminal);
    }

    private void One() => Interlocked.Increment(ref done);
}
