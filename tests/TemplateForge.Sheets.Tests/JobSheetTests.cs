using TemplateForge.Drawing;
using TemplateForge.Fabrication;

namespace TemplateForge.Sheets.Tests;

public class JobSheetTests
{
    public static TheoryData<string, string> All => Cases.All;

    [Theory, MemberData(nameof(All))]
    public void One_page_has_everything_to_work_from(string modification, string paper)
    {
        var made = Cases.Of(modification);
        var page = Assert.Single(Cases.Sheet(modification, paper).Pages);
        var printed = Printed.On(page);
        // A long sentence is broken into lines: the words are read as they follow each other.
        var words = Printed.Words(printed);
        Assert.All(made.Steps, s => Assert.Contains(s.Text, words, StringComparison.Ordinal));
        Assert.All(made.Cautions, c => Assert.Contains(c.Text, words, StringComparison.Ordinal));
        Assert.All(made.Values, v => Assert.Contains(v.Label, words, StringComparison.Ordinal));
        Assert.All(made.Pieces.SelectMany(p => p.Checks), c => Assert.Contains(c.Label, words, StringComparison.Ordinal));
        Assert.Contains("not to scale for measuring", words, StringComparison.Ordinal);
        Assert.Equal(made.IsDemonstration, printed.Any(p => p.Layer == "DEMONSTRATION"));
        Assert.Equal(!made.HandWasMeasured, words.Contains("NOT MEASURED on this side", StringComparison.Ordinal));
    }

    [Fact]
    public void What_a_page_cannot_hold_in_readable_letters_runs_on_over_more()
    {
        var wordy = Samples.Notch with { Steps = [.. Enumerable.Repeat<WorkStep>("Measure it, mark it, measure it again, and only then go on to the next of these many steps.", 60)] };
        var pages = JobSheet.Of(wordy, Cases.A4).Pages;
        Assert.True(pages.Length > 1);
        Assert.All(pages.SelectMany(Printed.On).Select(p => p.Mark).OfType<Lettering>(), l => Assert.True(l.Height > 1.2));
    }

    [Fact]
    public void A_distance_has_the_same_number_on_the_picture_and_in_the_list()
    {
        var words = Printed.On(Assert.Single(JobSheet.Of(Samples.LapPatch, Cases.A4).Pages)).Select(p => p.Mark).OfType<Lettering>().Select(l => l.Text).ToList();
        foreach (var (number, distance) in (IEnumerable<(string, string)>)[("(1)", "62.0"), ("(2)", "62.0"), ("(3)", "30.0"), ("(4)", "30.0")])
        {
            Assert.Contains(number, words);
            Assert.Contains($"{number} {distance}", words);
        }
    }

    [Fact]
    public void A_preview_is_some_250_mm_wide_whatever_the_size_of_the_pieces()
    {
        Assert.All(
            (LineDrawing[])[Preview.Of(Samples.Notch), Preview.Of(Samples.ButtPatch)],
            p => Assert.InRange(p.Bounds.Width, 150, 251));
        Assert.Contains("DEMONSTRATION, DO NOT CUT", Printed.Words(Printed.On(Preview.Of(Samples.Notch))), StringComparison.Ordinal);
    }
}
