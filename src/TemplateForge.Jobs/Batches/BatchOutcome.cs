using TemplateForge.Fabrication;

namespace TemplateForge.Jobs;

/// <summary>What became of a row.</summary>
/// <param name="Row">The row.</param>
/// <param name="IsSaved">Whether its files are saved; if not, its place is as it was.</param>
/// <param name="Files">How many files.</param>
/// <param name="Bytes">How long they are together.</param>
/// <param name="NotMeasured">How many measured values stand at their defaults; 0 for a job that may be cut.</param>
/// <param name="Warnings">How many warnings its pieces carry.</param>
/// <param name="Printing">What must be known of its printer, as <see cref="ChosenPrinting.NoteOn"/> says it; empty where there is nothing to say.</param>
public sealed record BatchOutcome(BatchRow Row, bool IsSaved, int Files, long Bytes, int NotMeasured, int Warnings, string Printing)
{
    internal static BatchOutcome Failed(BatchRow row) => new(row, IsSaved: false, Files: 0, Bytes: 0, NotMeasured: 0, Warnings: 0, Printing: "");

    internal static BatchOutcome Of(BatchRow row, JobSet set) => new(
        row,
        IsSaved: true,
        set.Files.Length,
        set.Files.Sum(f => (long)f.Bytes.Length),
        set.Jobs[0].Modification.Values.Count(v => v.Source == ValueSource.Measured && v.GivenAs.Length == 0),
        set.Jobs.Max(job => job.Modification.Pieces.Sum(p => p.Warnings.Length)),
        ChosenPrinting.NoteOn(set.Jobs[0].Printing));
}
