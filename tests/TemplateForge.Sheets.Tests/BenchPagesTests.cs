using System.Text.RegularExpressions;
using TemplateForge.Drawing;
using TemplateForge.Fabrication;
using TemplateForge.Geometry;

namespace TemplateForge.Sheets.Tests;

/// <summary>How the sheets for the bench read: what is said once, what is said again, and where it stands.</summary>
public class BenchPagesTests
{
    [Fact]
    public void Every_sheet_after_the_first_says_at_its_head_for_which_hand_it_is()
    {
        var pages = JobSheet.Of(Samples.OtherHand(Samples.MeasuredNotch), Cases.A4).Pages;
        Assert.True(pages.Length > 1);
        foreach (var page in pages.Skip(1))
        {
            var head = Assert.Single(Printed.On(page).Select(p => p.Mark).OfType<Lettering>(), l => l.Text == "RIGHT HAND, mirrored, not measured");
            Assert.True(head.At.Y > page.Height - 20);
        }
    }

    [Fact]
    public void The_title_block_has_the_hand_large_and_that_nobody_measured_it_below()
    {
        var lettering = Printed.On(JobSheet.Of(Samples.OtherHand(Samples.MeasuredNotch), Cases.A4).Pages[0]).Select(p => p.Mark).OfType<Lettering>().ToList();
        var hand = Assert.Single(lettering, l => l.Text == "RIGHT HAND");
        var small = Assert.Single(lettering, l => l.Text == "mirrored, not measured");
        Assert.Equal(3, hand.Height, 6);
        Assert.InRange(hand.At.Y - small.At.Y, 1.8, 3);
    }

    [Fact]
    public void The_number_of_a_hold_point_stands_on_the_line_of_its_word()
    {
        var drawing = CoverBlocks.Steps([new WorkStep("Measure it.", IsHold: true, [])], 80, 2.5).Board.Marks.OfType<Lettering>().ToList();
        Assert.Equal(Assert.Single(drawing, l => l.Text == "HOLD").At.Y, Assert.Single(drawing, l => l.Text == "1").At.Y, 0.01);
    }

    [Fact]
    public void Distances_that_stand_in_inches_too_say_so_over_their_column()
    {
        Assert.Contains("mm [in]", Words(Samples.MeasuredNotch), StringComparison.Ordinal);
        Assert.DoesNotContain("mm [in]", Words(Samples.LapPatch), StringComparison.Ordinal);
    }

    [Fact]
    public void A_demonstration_names_what_was_not_given_in_plain_words()
    {
        var missing = Samples.Notch.Values.Where(v => v.Source == ValueSource.Measured && v.GivenAs.Length == 0).ToList();
        var said = Wording.DemonstrationBecause(Samples.Notch with { Values = [.. missing.Take(3)] });
        Assert.All(missing.Take(3), v => Assert.Contains(v.Label, said, StringComparison.Ordinal));
        Assert.Contains("none of the 7 measured values was given",
            Wording.DemonstrationBecause(Samples.Notch with { Values = [.. Enumerable.Repeat(missing[0], 7)] }), StringComparison.Ordinal);
    }

    [Fact]
    public void Values_of_which_none_was_given_say_so_once_and_not_in_every_row()
    {
        var made = Samples.Bracket with { Values = [.. Samples.Bracket.Values.Select(v => v with { GivenAs = "" })] };
        var words = Printed.Words(Printed.On(JobSheet.Of(made, Cases.A4).Pages[0]));
        Assert.Equal(2, Regex.Count(words, "all at their DEFAULT", RegexOptions.None, TimeSpan.FromSeconds(1)));
        Assert.Equal(2, Regex.Count(words, @"\bDEFAULT\b", RegexOptions.None, TimeSpan.FromSeconds(1)));
    }

    [Fact]
    public void A_table_that_runs_on_says_so_and_one_of_less_than_eight_rows_does_not_run_on()
    {
        var shortOne = FlowItem.Table([("", 20)], Rows(7), 2, 0, "goes on").ToList();
        Assert.All(shortOne[..^1], i => Assert.True(i.StaysWithNext));
        var longOne = FlowItem.Table([("", 20)], Rows(20), 2, 0, "goes on").ToList();
        Assert.Contains(longOne, i => !i.StaysWithNext);
        Assert.All(longOne[1..], i => Assert.Contains(i.AtTop.Board.Marks, m => m is Lettering { Text: "goes on" }));

        static IEnumerable<System.Collections.Immutable.ImmutableArray<Cell>> Rows(int count) =>
            Enumerable.Range(0, count).Select(_ => (System.Collections.Immutable.ImmutableArray<Cell>)[Cell.Words("a", 2)]);
    }

    // A drawing that leaves no room for the long list of values has the frame without it, and nothing that nobody can read.
    [Theory, MemberData(nameof(Cases.All), MemberType = typeof(Cases))]
    public void No_letter_of_a_template_s_frames_is_smaller_than_a_person_reads(string modification, string paper) =>
        Assert.All(Cases.Tiles(Cases.Template(modification, paper)).SelectMany(Printed.On).Where(p => p.Layer is "NOTE" or "HEADING").Select(p => p.Mark).OfType<Lettering>(),
            l => Assert.True(l.Height >= 1.8 - 1e-9, $"“{l.Text}” is {l.Height} mm high."));

    [Fact]
    public void Places_that_run_together_on_a_small_picture_ask_for_a_large_one()
    {
        var corners = Region.Of(Outline.Rectangle(new(new(0, 0), new(300, 200))));
        foreach (var at in (Point[])[new(0, 0), new(300, 0), new(300, 200), new(0, 200)]) corners = corners.Subtract(Region.Of(Outline.Rectangle(new Box(at, at).Grown(2))));
        var made = MarkOut.Of(Samples.Bracket.Pieces[0] with { Shape = corners, BendLines = [], ScribeLines = [] });
        Assert.True(MarkOutPicture.IsCrowded(made, 4));
        Assert.False(MarkOutPicture.IsCrowded(made, 1));
    }

    private static string Words(Modification made) => string.Join(' ', JobSheet.Of(made, Cases.A4).Pages.Select(p => Printed.Words(Printed.On(p))));
}
