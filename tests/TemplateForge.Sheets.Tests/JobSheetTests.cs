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
    public void The_first_page_has_everything_to_work_from(string modification, string paper)
    {
        var made = Cases.Of(modification);
        var printed = Printed.On(Cases.Sheet(modification, paper).Pages[0]);
        // A long sentence is broken into lines: the words are read as they follow each other.
        var words = Printed.Words(printed);
        Assert.All(made.Steps, s => Assert.Contains(s.Text, words, StringComparison.Ordinal));
        Assert.All(made.Cautions, c => Assert.Contains(c.Text, words, StringComparison.Ordinal));
        Assert.All(made.Values, v => Assert.Contains(v.Label, words, StringComparison.Ordinal));
        Assert.All(made.Pieces.SelectMany(p => p.Checks), c => Assert.Contains(c.Label, words, StringComparison.Ordinal));
        Assert.Contains("do not measure on the picture", words, StringComparison.Ordinal);
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
        var words = Printed.On(JobSheet.Of(Samples.LapPatch, Cases.A4).Pages[0]).Select(p => p.Mark).OfType<Lettering>().Select(l => l.Text).ToList();
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
        var words = Printed.Words(Printed.On(JobSheet.Of(Samples.Bracket with { Pieces = [rail] }, Cases.A4).Pages[0]));
        var scale = Regex.Match(words, @"Scale 1:(?<scale>\d+(\.\d+)?)", RegexOptions.ExplicitCapture, TimeSpan.FromSeconds(1)).Groups["scale"].Value;
        // The sheet takes a picture for large enough that is 1.6 times smaller than its column is wide: 1.6 × 400 / 84.
        Assert.InRange(double.Parse(scale, CultureInfo.InvariantCulture), 3.5, 7.6);
    }

    // The figures as they are lettered: each row's two distances, struck from the datums, meet on a vertex of the finish line.
    [Fact]
    public void The_mark_out_table_as_it_is_printed_finds_every_vertex()
    {
        var piece = Samples.MeasuredNotch.Pieces[0];
        var (a, b) = (piece.Datums[0].At, piece.Datums[1].At);
        var rows = Rows(JobSheet.Of(Samples.MeasuredNotch, Cases.A4).Pages).Where(r => r.Length == 6 && (r[5] == "line" || r[5] == "end" || r[5].StartsWith("arc ", StringComparison.Ordinal))).ToList();
        var vertices = piece.FinishLines().SelectMany(l => l.Segments.Select(s => s.Start).Append(l.End)).ToList();
        var found = new List<Point>();
        foreach (var row in rows)
        {
            var (along, offset) = (Number(row[1]), Number(row[2]));
            found.Add(new(a.X + along, a.Y + offset));
            if (row[3].StartsWith('(')) continue;
            var (fromA, fromB, apart) = (Number(row[3]), Number(row[4]), a.DistanceTo(b));
            var x = (fromA * fromA - fromB * fromB + apart * apart) / (2 * apart);
            var y = Math.Sign(offset) * Math.Sqrt(fromA * fromA - x * x);
            Assert.Contains(vertices, v => v.DistanceTo(new(a.X + x, a.Y + y)) < 0.2);
        }
        Assert.Equal(Enumerable.Range(1, rows.Count).Select(n => n.ToString(CultureInfo.InvariantCulture)), rows.Select(r => r[0]));
        Assert.All(found, f => Assert.Contains(vertices, v => v.DistanceTo(f) < 0.1));
        // The two ends of the cut, the two ends of each mouth radius, and the places where one arc of the opening runs into the next.
        Assert.All(vertices, v => Assert.Contains(found, f => f.DistanceTo(v) < 0.1));

        static double Number(string figure) => double.Parse(figure, CultureInfo.InvariantCulture);
    }

    [Fact]
    public void Every_vertex_has_its_number_on_the_mark_out_picture()
    {
        var made = MarkOut.Of(Samples.MeasuredNotch.Pieces[0]);
        var words = JobSheet.Of(Samples.MeasuredNotch, Cases.A4).Pages.Skip(1).SelectMany(Printed.On).Select(p => p.Mark).OfType<Lettering>().Select(l => l.Text).ToList();
        Assert.All(made.Points, p => Assert.True(words.Count(w => w == p.Number.ToString(CultureInfo.InvariantCulture)) >= 2, $"{p.Number}"));
    }

    [Fact]
    public void Inches_stand_beside_the_millimetres_where_a_length_was_given_in_inches()
    {
        // Datum A to datum B is 300 mm, 11.811 in.
        Assert.Contains("[11.811]", Words(Samples.MeasuredNotch), StringComparison.Ordinal);
        Assert.DoesNotContain("[11.811]", Words(Samples.Notch), StringComparison.Ordinal);
    }

    [Theory, MemberData(nameof(All))]
    public void Every_sheet_says_what_it_belongs_to_and_which_it_is(string modification, string paper)
    {
        var (made, pages) = (Cases.Of(modification), Cases.Sheet(modification, paper).Pages);
        for (var i = 0; i < pages.Length; i++)
        {
            var words = Printed.Words(Printed.On(pages[i]));
            Assert.All((string[])[made.Shop, made.Title, "Job sheet", made.Profile, "Revision", $"{i + 1} of {pages.Length}"], w => Assert.Contains(w, words, StringComparison.Ordinal));
        }
        Assert.All((string[])["Vehicle", "Measured by", "Checked by", "Cut by", "Date"], w => Assert.Contains(w, Printed.Words(Printed.On(pages[0])), StringComparison.Ordinal));
    }

    // Half of the allowance of 4.178 that stands with the sample.
    [Fact]
    public void Tangent_lines_are_marked_out_by_their_distance_from_the_bend_line() =>
        Assert.Contains("Tangent lines lie on either side of the bend line: 2.1 mm at bend 1.", Words(Samples.Bracket), StringComparison.Ordinal);

    [Fact]
    public void A_caution_stands_in_full_at_the_first_step_that_has_it_and_by_its_title_at_the_next()
    {
        var fire = Samples.Notch.Cautions.Single(c => c.Title == "Fire");
        var made = Samples.Notch with { Steps = [new("Tack.", false, [fire]), new("Weld.", true, [fire])] };
        var words = Words(made);
        Assert.Equal(1, Regex.Count(words, Regex.Escape(fire.Text), RegexOptions.None, TimeSpan.FromSeconds(1)));
        Assert.True(words.IndexOf(fire.Text, StringComparison.Ordinal) < words.IndexOf("Tack.", StringComparison.Ordinal));
        Assert.Equal(2, Regex.Count(words, @"\bFire\b", RegexOptions.None, TimeSpan.FromSeconds(1)));
        Assert.Contains("HOLD", words, StringComparison.Ordinal);
    }

    [Fact]
    public void A_hole_is_named_by_its_plug_weld_and_holes_come_in_the_order_of_welding()
    {
        var piece = Samples.LapPatch.Pieces[0];
        var line = BaseLine.Of(piece);
        var rows = Rows(JobSheet.Of(Samples.LapPatch, Cases.A4).Pages).Where(r => r.Length == 6 && r[0] is ['w', >= '0' and <= '9', ..]).ToList();
        Assert.Equal(piece.Tacks.Select(t => FormattableString.Invariant($"w{t.Number}")), rows.Select(r => r[0]));
        foreach (var (tack, row) in piece.Tacks.Zip(rows))
        {
            Assert.Equal(tack.At.DistanceTo(line.First), double.Parse(row[4].Trim('(', ')'), CultureInfo.InvariantCulture), 0.0501);
            Assert.Equal(tack.At.DistanceTo(line.Second), double.Parse(row[5].Trim('(', ')'), CultureInfo.InvariantCulture), 0.0501);
        }
    }

    [Fact]
    public void Tacks_on_an_edge_stand_in_the_order_in_which_they_are_made()
    {
        var piece = Samples.ButtPatch.Pieces[0];
        var line = BaseLine.Of(piece);
        var rows = Rows(JobSheet.Of(Samples.ButtPatch, Cases.A4).Pages).Where(r => r.Length == 5 && int.TryParse(r[0], CultureInfo.InvariantCulture, out _)).ToList();
        Assert.Equal(piece.Tacks.Select(t => t.Number.ToString(CultureInfo.InvariantCulture)), rows.Select(r => r[0]));
        Assert.All(piece.Tacks.Zip(rows), t => Assert.Equal(t.First.At.DistanceTo(line.First), double.Parse(t.Second[3], CultureInfo.InvariantCulture), 0.0501));
    }

    private static string Words(Modification made) => string.Join(' ', JobSheet.Of(made, Cases.A4).Pages.Select(p => Printed.Words(Printed.On(p))));

    // The words of each table row: what stands on one base line in one of the two columns.
    private static IEnumerable<string[]> Rows(IEnumerable<Page> pages) => pages.Skip(1).SelectMany(page =>
        Printed.On(page).Where(p => p.Layer == "NOTE").Select(p => p.Mark).OfType<Lettering>()
            .Where(l => !l.Text.StartsWith('['))
            .GroupBy(l => (Math.Round(l.At.Y, 2), l.At.X > 20 + (page.Width - 30) / 2))
            .OrderBy(g => g.Key.Item2).ThenByDescending(g => g.Key.Item1)
            .Select(g => g.OrderBy(l => l.At.X).Select(l => l.Text).ToArray()));

    [Fact]
    public void A_preview_is_some_250_mm_wide_whatever_the_size_of_the_pieces()
    {
        Assert.All(
            (LineDrawing[])[Preview.Of(Samples.Notch), Preview.Of(Samples.ButtPatch)],
            p => Assert.InRange(p.Bounds.Width, 150, 251));
        Assert.Contains("DEMONSTRATION, DO NOT CUT", Printed.Words(Printed.On(Preview.Of(Samples.Notch))), StringComparison.Ordinal);
    }
}
