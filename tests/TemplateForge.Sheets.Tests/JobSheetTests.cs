using System.Globalization;
using System.Text.RegularExpressions;
using TemplateForge.Drawing;
using TemplateForge.Fabrication;
using TemplateForge.Geometry;

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
    public void A_job_without_checks_has_no_empty_list_of_them()
    {
        var without = Samples.Bracket with { Pieces = [.. Samples.Bracket.Pieces.Select(p => p with { Checks = [] })] };
        Assert.DoesNotContain("Check by rule", Words(without), StringComparison.Ordinal);
        Assert.Contains("Check by rule", Words(Samples.Bracket), StringComparison.Ordinal);

        static string Words(Modification made) =>
            string.Join(' ', JobSheet.Of(made, Cases.A4).Pages.Select(p => Printed.Words(Printed.On(p))));
    }

    // The words round a long piece once made it 1:40 on the sheet; its width of 400 alone asks for some 1:4.
    [Fact]
    public void A_long_piece_is_drawn_about_as_large_as_the_column_is_wide()
    {
        var rail = Samples.Bracket.Pieces[0] with
        {
            Shape = Region.Of(Outline.Rectangle(new(new(0, 0), new(400, 97.178)))),
            BendLines = [new(1, new(400, 58.589), new(0, 58.589), Angle.QuarterTurn, Angle.QuarterTurn, BendWay.Up, 2, 4.178)],
            Checks = [new("Length", new(0, 0), new(400, 0), CheckDirection.Across)],
        };
        var words = Printed.Words(Printed.On(Assert.Single(JobSheet.Of(Samples.Bracket with { Pieces = [rail] }, Cases.A4).Pages)));
        var scale = Regex.Match(words, @"Scale 1:(?<scale>\d+(\.\d+)?)", RegexOptions.ExplicitCapture, TimeSpan.FromSeconds(1)).Groups["scale"].Value;
        Assert.InRange(double.Parse(scale, CultureInfo.InvariantCulture), 3.5, 6);
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
