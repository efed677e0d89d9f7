using System.Collections.Immutable;
using TemplateForge.Fabrication;
using TemplateForge.Jobs;

namespace TemplateForge.Cli.Printing;

/// <summary>What was made.</summary>
/// <param name="Profile">Name of the profile.</param>
/// <param name="Version">Its version.</param>
/// <param name="Title">What it is.</param>
/// <param name="Folder">Where the files are, as it was given.</param>
/// <param name="Remade">How it compares with the record that it was made from.</param>
/// <param name="Jobs">One for each hand.</param>
internal sealed record MakeReport(string Profile, int Version, string Title, string Folder, string Remade, ImmutableArray<ReportedJob> Jobs)
{
    public static MakeReport Of(JobSet set, string folder, Remade remade) => new(
        set.Profile.Name,
        set.Profile.Version,
        set.Profile.Title,
        folder,
        remade switch { Printing.Remade.Alike => "alike", Printing.Remade.Otherwise => "otherwise", _ => "new" },
        [.. set.Jobs.Select(job => ReportedJob.Of(job, folderOf: set.Jobs.Length == 1 ? "" : job.Folder + "/"))]);
}

/// <summary>How a job compares with the record that it was made from.</summary>
internal enum Remade
{
    /// <summary>It was made from a profile, not from a record.</summary>
    No,

    /// <summary>Its record is the same, letter for letter.</summary>
    Alike,

    /// <summary>Its record is another.</summary>
    Otherwise,
}

internal sealed record ReportedJob(
    string Hand,
    bool HandWasMeasured,
    bool Demonstration,
    ImmutableArray<DefaultLeft> AtDefault,
    ImmutableArray<ReportedFile> Files,
    ImmutableArray<ReportedPages> Pages,
    string Printing,
    ImmutableArray<ReportedCheck> Checks,
    ImmutableArray<ReportedBlank> Blanks,
    ImmutableArray<ReportedWarning> Warnings,
    ImmutableArray<ReportedCaution> Cautions)
{
    public static ReportedJob Of(Job job, string folderOf)
    {
        var modification = job.Modification;
        return new(
            Reports.Word(modification.Hand),
            modification.HandWasMeasured,
            modification.IsDemonstration,
            [
                .. modification.Values
                    .Where(v => v.Source == ValueSource.Measured && v.GivenAs.Length == 0)
                    .Select(v => new DefaultLeft(v.Name, v.Label, v.Text, v.Explanation)),
            ],
            [.. job.Files.Select(f => new ReportedFile(folderOf + f.Name, f.What, f.Bytes.Length))],
            [.. job.Template.Layings.Select(l => new ReportedPages(l.Title, l.Pages, Math.Round(l.Turn.Degrees, 6), l.PagesSaved, l.InWords))],
            ChosenPrinting.NoteOn(job.Printing),
            [.. modification.Pieces.SelectMany(p => p.Checks.Select(c => new ReportedCheck(p.Title, c.Label, Math.Round(c.Distance, 8))))],
            [
                .. modification.Pieces.Where(p => p.Kind == PieceKind.Blank && p.Weight > 0)
                    .Select(p => new ReportedBlank(p.Title, p.Material.Title, p.Thickness, p.Quantity, p.Bends.Length, Math.Round(p.Weight, 6))),
            ],
            [.. modification.Pieces.SelectMany(p => p.Warnings.Select(w => new ReportedWarning(p.Title, w.Rule, w.Text, w.Source)))],
            [.. modification.Cautions.Select(c => new ReportedCaution(c.Title, c.Text))]);
    }
}

/// <summary>A measured value that nobody gave.</summary>
internal sealed record DefaultLeft(string Name, string Label, string Value, string HowMeasured);

internal sealed record ReportedFile(string Name, string What, int Bytes);

/// <summary>How a piece lies on the pages of its template.</summary>
/// <param name="Piece">What it is.</param>
/// <param name="Pages">How many it takes.</param>
/// <param name="Turned">In degrees anticlockwise; 0 for as it is drawn.</param>
/// <param name="Saved">How many pages the turn saves.</param>
/// <param name="Words">The turn in words; empty where there is none.</param>
internal sealed record ReportedPages(string Piece, int Pages, double Turned, int Saved, string Words);

internal sealed record ReportedCheck(string Piece, string Label, double Millimetres);

/// <summary>What is cut from which sheet; only where its material is known.</summary>
internal sealed record ReportedBlank(string Piece, string Material, double Thickness, int Quantity, int Bends, double Kilograms);

internal sealed record ReportedWarning(string Piece, string Rule, string Text, string Source);

internal sealed record ReportedCaution(string Title, string Text);
