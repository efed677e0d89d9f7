using TemplateForge.Drawing;
using TemplateForge.Fabrication;
using TemplateForge.Geometry;
using TemplateForge.Testing;
using UglyToad.PdfPig;
using UglyToad.PdfPig.Core;
using static TemplateForge.Sheets.Tests.Cases;

namespace TemplateForge.Sheets.Tests;

public class TemplateSheetTests
{
    public static TheoryData<string, string> All => Cases.All;

    [Theory, MemberData(nameof(All))]
    public void Every_page_says_which_hand_it_is_and_whether_it_was_measured(string modification, string paper)
    {
        var expected = Of(modification) switch
        {
            { Hand: Hand.Either } => "EITHER HAND",
            { HandWasMeasured: true } => "LEFT HAND",
            _ => "RIGHT HAND: mirror image of the left, NOT MEASURED on this side",
        };
        var template = Template(modification, paper);
        Assert.All(template.Pages, p => Assert.Contains(expected, Printed.Words(Printed.On(p)), StringComparison.Ordinal));
    }

    [Fact]
    public void A_round_hole_is_punched_by_a_cross_whose_middle_is_open()
    {
        var arms = Tiles(TemplateSheet.Of(Samples.Bracket, A4, Overlap)).SelectMany(Printed.On)
            .Where(p => p.Layer == "CENTRE-LINE").Select(p => Assert.IsType<OpenStroke>(p.Mark).Path).ToList();
        Assert.Equal(4, arms.Count);
        Assert.All(arms, arm => Approximately.Equal(4 + 2.5 - 1, arm.Length, within: 1e-9));
    }

    [Fact]
    public void No_two_pages_of_a_job_have_the_same_address()
    {
        var two = Samples.Bracket with { Pieces = [Samples.Bracket.Pieces[0], Samples.Lid.Pieces[0]] };
        var addresses = Tiles(TemplateSheet.Of(two, A4, Overlap))
            .Select(page => Printed.On(page).Where(p => p.Layer == "PAGE-ADDRESS").Select(p => p.Mark).OfType<Lettering>().First().Text);
        Assert.Equal(["A1", "B1"], addresses);
    }

    [Theory, MemberData(nameof(All))]
    public void A_demonstration_says_so_across_every_page_and_nothing_else_does(string modification, string paper)
    {
        foreach (var page in Template(modification, paper).Pages)
        {
            var across = Printed.On(page).Where(p => p.Layer == "DEMONSTRATION").Select(p => Assert.IsType<Lettering>(p.Mark)).ToList();
            if (!Of(modification).IsDemonstration)
            {
                Assert.Empty(across);
                continue;
            }
            var words = Assert.Single(across);
            Assert.Equal("DEMONSTRATION, DO NOT CUT", words.Text);
            Assert.InRange(words.Height, 8, 40);
            Assert.True(words.Bounds.Width > page.Width / 2 && words.Bounds.Height > page.Height / 2);
            // Under the lines: in the lowest view.
            Assert.Contains(page.Views[0].Drawing.Layers, l => l.Marks.Contains(words));
        }
    }

    [Theory, MemberData(nameof(All))]
    public void Every_tile_has_its_face_arrows_profile_and_checks(string modification, string paper)
    {
        var made = Of(modification);
        foreach (var page in Tiles(Template(modification, paper)))
        {
            var printed = Printed.On(page);
            var words = Printed.Words(printed);
            Assert.Contains($"{made.Profile}, version 1", words, StringComparison.Ordinal);
            Assert.Contains("This face up: ", words, StringComparison.Ordinal);
            Assert.All(made.Pieces[0].Arrows, a => Assert.Contains(a.Label, words, StringComparison.Ordinal));
            Assert.Equal(2, words.Split("mm: measure before use").Length - 1);
            Assert.Contains(printed, p => p.Layer == "PAGE-ADDRESS");
        }
    }

    [Fact]
    public void The_cover_tells_values_their_source_the_checks_and_every_caution()
    {
        var made = Samples.Notch;
        var template = Template("notch", "a4");
        var covers = Printed.Words(template.Pages.Except(Tiles(template)).SelectMany(Printed.On));
        Assert.All(made.Values, v => Assert.Contains(v.Text, covers, StringComparison.Ordinal));
        Assert.All(made.Cautions, c => Assert.Contains(c.Title, covers, StringComparison.Ordinal));
        Assert.All(made.Pieces[0].Checks, c => Assert.Contains(c.Label, covers, StringComparison.Ordinal));
        Assert.Contains("given: 40", covers, StringComparison.Ordinal);
        Assert.Contains("What the lines mean", covers, StringComparison.Ordinal);
        // Ten measured values and two of the shop's stand at their defaults.
        Assert.Equal(made.Values.Count(v => v.GivenAs.Length == 0), covers.Split("DEFAULT").Length - 1);
    }

    [Theory]
    [InlineData("measured notch", "a4")]
    [InlineData("notch for the other hand", "letter")]
    [InlineData("lap patch", "a4")]
    public void Datums_scale_checks_and_every_corner_of_the_finish_line_are_true_in_the_PDF_within_0_005_mm(string modification, string paper)
    {
        // A tile's place on its page is taken from its own view; the reader of the PDF is not ours.
        var template = Template(modification, paper);
        using var pdf = PdfDocument.Open(PdfWriter.Write(template));
        var wanted = 0;
        foreach (var (page, number) in template.Pages.Select((p, i) => (p, i + 1)))
        {
            if (!Tiles(template).Contains(page)) continue;
            var ends = pdf.GetPage(number).Paths.SelectMany(p => p).SelectMany(p => p.Commands).SelectMany(End).ToList();
            foreach (var printed in Printed.On(page).Where(p => p.Layer is "CUT" or "DATUM" or "SCALE-CHECK"))
            {
                foreach (var point in printed.Segments.SelectMany(s => new[] { s.Start, s.End }).Where(printed.Window.Grown(-1).Contains))
                {
                    wanted++;
                    Assert.True(ends.Min(e => e.DistanceTo(point)) < 0.005, $"{printed.Layer} has no end at {point} on page {number}.");
                }
            }
        }
        Assert.True(wanted > 8);
    }

    [Theory, MemberData(nameof(All))]
    public void Both_scale_checks_of_a_page_are_as_long_as_they_say(string modification, string paper)
    {
        foreach (var page in Tiles(Template(modification, paper)))
        {
            var printed = Printed.On(page).ToList();
            var said = printed.Select(p => p.Mark).OfType<Lettering>().Select(l => l.Text).Where(t => t.Contains("mm: measure before use", StringComparison.Ordinal))
                .Select(t => double.Parse(t.Split(' ')[0], System.Globalization.CultureInfo.InvariantCulture)).Order();
            var lines = printed.Where(p => p.Layer == "SCALE-CHECK").SelectMany(p => p.Segments).Select(s => s.Length).OrderDescending().Take(2).Order();
            Assert.Equal(said, lines.Select(l => Math.Round(l, 9)));
        }
    }

    [Theory, MemberData(nameof(All))]
    public void The_tiles_show_the_whole_finish_line_at_true_scale(string modification, string paper)
    {
        var tiles = Tiles(Template(modification, paper)).ToList();
        foreach (var piece in Of(modification).Pieces)
        {
            foreach (var point in piece.FinishLines().SelectMany(l => l.PointsEvery(5)))
            {
                Assert.Contains(tiles, t => t.Views.Any(v => v.Window.Contains(v.Placement.Of(point)) && Shows(v, point)));
            }
        }
        Assert.All(tiles, t => Assert.All(t.Views, v => Approximately.Equal(1, v.Placement.Scale, 1e-12)));

        static bool Shows(View view, Point point) => view.Drawing.Layers.Where(l => l.Name == "CUT").SelectMany(l => l.Marks)
            .SelectMany(m => m is OpenStroke open ? open.Path.Segments : ((ClosedStroke)m).Contour.Segments)
            .Any(s => s.DistanceTo(point) < Tolerance.Length);
    }

    [Fact]
    public void A_datum_s_cross_is_open_in_the_middle()
    {
        var datum = Samples.Notch.Pieces[0].Datums[0];
        var marks = PieceLines.DatumMarks(datum, unit: 1).OfType<OpenStroke>().ToList();
        Assert.Equal(4, marks.Count);
        Assert.All(marks, m => Assert.True(m.Path.Segments.Min(s => s.DistanceTo(datum.At)) >= 1));
    }

    [Fact]
    public void The_rough_cut_and_the_hatch_lie_on_the_waste_side()
    {
        var piece = Samples.Notch.Pieces[0];
        var board = new Board();
        PieceLines.PutOn(board, piece, unit: 1);
        var waste = piece.Waste();
        foreach (var kind in (LineKind[])[LineKinds.RoughCut, LineKinds.Waste])
        {
            Assert.NotEmpty(board.On(kind));
            foreach (var segment in board.On(kind).Cast<OpenStroke>().SelectMany(s => s.Path.Segments))
                Assert.True(waste.Contains(segment.At(0.5)) || waste.BoundaryDistanceTo(segment.At(0.5)) < 0.01);
        }
        Assert.All(
            board.On(LineKinds.RoughCut).Cast<OpenStroke>().SelectMany(s => s.Path.PointsEvery(3)),
            p => Approximately.Equal(piece.RoughAllowance, piece.Shape.DistanceTo(p), within: Tolerance.Length));
    }

    [Fact]
    public void The_same_modification_makes_the_same_bytes()
    {
        byte[] Make() => PdfWriter.Write(TemplateSheet.Of(Samples.ButtPatch, A4, Overlap));
        Assert.Equal(Make(), Make());
    }

    private static IEnumerable<Point> End(PdfSubpath.IPathCommand command) => command switch
    {
        PdfSubpath.Move move => [Mm(move.Location)],
        PdfSubpath.Line line => [Mm(line.From), Mm(line.To)],
        PdfSubpath.CubicBezierCurve curve => [Mm(curve.StartPoint), Mm(curve.EndPoint)],
        _ => [],
    };

    private static Point Mm(PdfPoint point) => new(point.X * 25.4 / 72, point.Y * 25.4 / 72);
}
