using System.Collections.Immutable;
using TemplateForge.Jobs;
using TemplateForge.Notation;

namespace TemplateForge.Cli.Printing;

/// <summary>What became of the rows of a table.</summary>
/// <param name="Profile">Name of the profile.</param>
/// <param name="Version">Its version.</param>
/// <param name="Folder">Where the jobs' folders are, as it was given.</param>
/// <param name="Printing">What must be known of the printer; empty where there is nothing to say.</param>
/// <param name="Jobs">One for each row.</param>
/// <param name="Complaints">Why some were not saved.</param>
internal sealed record BatchReport(
    string Profile, int Version, string Folder, string Printing, ImmutableArray<ReportedRow> Jobs, ImmutableArray<ReportedComplaint> Complaints)
{
    public static BatchReport Of(Batch batch, string folder, ImmutableArray<BatchOutcome> outcomes, IEnumerable<Complaint> complaints) => new(
        batch.Profile.Name,
        batch.Profile.Version,
        folder,
        outcomes.Select(o => o.Printing).FirstOrDefault(p => p.Length > 0, ""),
        [.. outcomes.Select(o => new ReportedRow(o.Row.Name, o.Row.Place.Line, o.IsSaved, o.NotMeasured > 0, o.NotMeasured, o.Warnings, o.Files, o.Bytes))],
        Reports.Of(complaints));
}

/// <param name="Job">Its name, which is that of its folder.</param>
/// <param name="Line">Where its row stands in the table.</param>
/// <param name="Saved">Whether its files are saved.</param>
/// <param name="Demonstration">Whether it must not be cut, because measured values stand at their defaults.</param>
/// <param name="NotMeasured">How many do.</param>
/// <param name="Warnings">How many warnings its pieces carry.</param>
/// <param name="Files">How many files.</param>
/// <param name="Bytes">How long they are together.</param>
internal sealed record ReportedRow(string Job, int Line, bool Saved, bool Demonstration, int NotMeasured, int Warnings, int Files, long Bytes);
