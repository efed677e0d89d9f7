using System.Collections.Immutable;
using TemplateForge.Drawing;
using TemplateForge.Fabrication;
using TemplateForge.Geometry;
using TemplateForge.Testing;
using UglyToad.PdfPig;
using UglyToad.PdfPig.Core;

namespace TemplateForge.Sheets.Tests;

/// <summary>Turned drawings, long checks across seams, flaps, lines and printers.</summary>
public class PaperTests
{
    private static readonly PrintSetup A4 = new(Cases.A4, 12);

    private static Piece Strip(double length, double width, Angle askew) => new()
    {
        Name = "strip",
        Title = "Strip",
        Kind = PieceKind.Blank,
        Thickness = 1,
        FaceUp = "either",
        Shape = Region.Of(Outline.Rectangle(new(new(-length / 2, -width / 2), new(length / 2, width / 2)))).Placed(Placement.Turned(askew, Point.Origin)),
        Datums = [new("A", Placement.Turned(askew, Point.Origin).Of(new Point(-length / 2 + 20, 0)), 6), new("B", Placement.Turned(askew, Point.Origin).Of(new Point(length / 2 - 20, 5)), 6)],
        Checks =
        [
            new("A to B", Placement.Turned(askew, Point.Origin).Of(new Point(-length / 2 + 20, 0)), Placement.Turned(askew, Point.Origin).Of(new Point(length / 2 - 20, 5)), CheckDirection.Across),
        ],
        Arrows = [new("UP", Angle.QuarterTurn), new("FRONT", Angle.Zero)],
    };

    private static TemplateSheet Make(Piece piece, PrintSetup setup) => TemplateSheet.Of(Samples.Bracket with { Pieces = [piece] }, setup);

    private static IEnumerable<Page> Tiles(TemplateSheet made) => Cases.Tiles(made.Document);

    private static readonly Piece Askew = Strip(620, 50, Angle.FromDegrees(40));
    private static readonly TemplateSheet Turned = Make(Askew, A4);
    private static readonly TemplateSheet Unturned = Make(Askew, A4 with { Turn = TurnWish.None });

    [Fact]
    public void A_strip_that_lies_askew_is_turned_so_that_it_takes_fewer_pages_and_everything_says_so()
    {
        var (turned, unturned) = (Assert.Single(Turned.Layings), Assert.Single(Unturned.Layings));
        Assert.True(turned.Pages < unturned.Pages, $"{turned.Pages} and {unturned.Pages}");
        Assert.Equal(unturned.Pages - turned.Pages, turned.PagesSaved);
        Assert.Equal((Tiles(Turned).Count(), Tiles(Unturned).Count()), (turned.Pages, unturned.Pages));
        var words = Printed.Words(Turned.Document.Pages.SelectMany(Printed.On));
        var said = Wording.TurnedBy(turned.Turn);
        Assert.Equal(turned.Pages + 1, words.Split(said).Length - 1); // on each page and by the map
        Assert.Contains($"which saves {Wording.PagesOf(turned.PagesSaved)}", words, StringComparison.Ordinal);
        Assert.Equal("", unturned.InWords);
    }

    [Fact]
    public void Lettering_on_a_turned_drawing_reads_along_the_page_and_its_arrows_turn_with_the_part()
    {
        var turn = Turned.Layings[0].Turn;
        var unturned = LaidPiece.Of(Askew, 1, A4 with { Turn = TurnWish.None }, out _);
        var candidates = TurnSearch.Candidates(unturned.Lines.Marks, unturned.Content.Marks, unturned.Plan, Cases.A4, A4.Layout).ToList();
        Assert.NotEmpty(candidates);
        Assert.All(candidates, c => Assert.InRange(c.Degrees, -90, 90));
        foreach (var page in Tiles(Turned))
        {
            var printed = Printed.On(page);
            // A turn of a quarter of a circle to either side at the most, as for dimensions of any drawing.
            foreach (var words in printed.Where(p => p.Layer != "DEMONSTRATION").Select(p => p.Mark).OfType<Lettering>())
                Assert.True(words.Turn.Cos > -1e-9, $"{words.Text} lies at {words.Turn.Degrees}°");
        }
        // The arrow's shaft is 9.5 mm long: the only strokes of that length on its layer.
        var shafts = Tiles(Turned).SelectMany(Printed.On).Where(p => p.Layer == "ARROW" && p.Mark is OpenStroke).SelectMany(p => p.Segments).Select(s => s.StartDirection).ToList();
        Assert.NotEmpty(shafts);
        Assert.All(shafts, way => Assert.Contains(new[] { turn, turn + Angle.QuarterTurn }, a => (Vector.Polar(1, a) - way).Length < 1e-9));
    }

    [Fact]
    public void A_turned_piece_is_the_same_piece_and_its_distances_are_stated_as_they_were()
    {
        var turn = Placement.Turned(Turned.Layings[0].Turn, Point.Origin);
        var stated = Wording.NumberedDistance(1, Askew.Checks[0]);
        Assert.Contains(stated, Printed.Words(Tiles(Turned).SelectMany(Printed.On)), StringComparison.Ordinal);
        // Whatever page shows a corner shows it where the turned corner lies: the two ends of every cut, on one page, are as far apart.
        foreach (var page in Tiles(Turned))
        {
            var view = page.Views.Single(v => v.Drawing.Layers.Any(l => l.Name == "CUT"));
            foreach (var corner in Askew.Shape.Contours.SelectMany(c => c.Segments).Select(s => s.Start))
                Assert.Contains(view.Drawing.Layers.Single(l => l.Name == "CUT").Marks.Cast<ClosedStroke>().SelectMany(c => c.Contour.Segments), s => s.Start.DistanceTo(turn.Of(corner)) < 1e-9);
        }
    }

    [Theory]
    [InlineData(25)]
    [InlineData(90)]
    [InlineData(-130)]
    public void A_turn_that_somebody_wishes_is_taken(double degrees)
    {
        var made = Make(Strip(100, 60, Angle.Zero), A4 with { Turn = new(Angle.FromDegrees(degrees), IsFewest: false) });
        Assert.Equal(degrees, made.Layings[0].Turn.Degrees, 1e-9);
    }

    [Theory]
    [InlineData("measured notch", "a4")]
    [InlineData("large patch", "a4")]
    [InlineData("notch for the other hand", "letter")]
    public void A_long_line_of_the_stated_length_crosses_every_row_of_seams(string modification, string paper)
    {
        var tiles = Cases.Tiles(Cases.Template(modification, paper)).ToList();
        var view = tiles[0].Views.First(v => v.Drawing.Layers.Any(l => l.Name == "SEAM-CHECK"));
        var lines = view.Drawing.Layers.Single(l => l.Name == "SEAM-CHECK").Marks.Cast<OpenStroke>().Select(m => m.Path.Segments[0]).ToList();
        var windows = tiles.SelectMany(t => t.Views.Where(v => ReferenceEquals(v.Drawing, view.Drawing))).Select(v => (v.Window, Back: Point.Origin - v.Placement.Of(Point.Origin)))
            .Select(w => new Box(w.Window.Min + w.Back, w.Window.Max + w.Back)).ToList();
        var words = Printed.Words(Printed.On(view.Drawing));
        foreach (var upright in (bool[])[false, true])
        {
            var edges = windows.SelectMany(w => windows, (a, b) => (a, b))
                .Where(p => upright ? p.b.Min.Y > p.a.Min.Y + 1 && p.a.Min.X == p.b.Min.X : p.b.Min.X > p.a.Min.X + 1 && p.a.Min.Y == p.b.Min.Y)
                .Select(p => Math.Round(upright ? p.b.Min.Y : p.b.Min.X, 6)).Distinct().ToList();
            var longs = lines.Where(l => l.Length > 20 && (upright ? l.Start.X == l.End.X : l.Start.Y == l.End.Y)).ToList();
            Assert.Equal(edges.Count == 0, longs.Count == 0);
            foreach (var edge in edges)
                Assert.Contains(longs, l => upright ? l.Start.Y < edge - 10 && l.End.Y > edge + 20 : l.Start.X < edge - 10 && l.End.X > edge + 20);
            foreach (var line in longs)
            {
                Assert.Equal(0, Math.IEEERemainder(line.Length, 10), 1e-9);
                Assert.Contains($"ACROSS THE SEAMS: {Math.Round(line.Length)} mm", words, StringComparison.Ordinal);
                // All of it is on paper.
                for (var at = 0.0; at <= 1; at += 0.01) Assert.Contains(windows, w => w.Contains(line.At(at)));
            }
        }
    }

    [Fact]
    public void A_flap_hangs_on_the_panel_edge_beyond_it_and_takes_no_page_more()
    {
        var piece = Samples.MeasuredNotch.Pieces[0];
        var flap = Assert.Single(Flap.Of(piece));
        Assert.Contains(piece.Edges.SelectMany(e => e.Segments), s => s.DistanceTo(flap.Fold.Start) < 1e-9 && s.DistanceTo(flap.Fold.End) < 1e-9);
        Assert.All(flap.Outline.PointsEvery(3), p => Assert.False(piece.Before.Contains(p + flap.Outwards * 0.01)));
        // It is the edge from which the datums are measured.
        Assert.True(piece.Datums.Max(d => flap.Fold.DistanceTo(d.At)) < 60);
        var words = Printed.Words(Cases.Tiles(Cases.Template("measured notch", "letter")).SelectMany(Printed.On));
        Assert.Contains("FOLD BACK", words, StringComparison.Ordinal);
        Assert.Empty(Flap.Of(Samples.ButtPatch.Pieces[0]));
    }

    [Theory]
    [InlineData(0.18)]
    [InlineData(0.5)]
    public void Lines_to_work_to_are_as_wide_as_the_shop_likes_them_and_none_is_wider(double width)
    {
        var view = Tiles(Make(Strip(100, 60, Angle.Zero), A4 with { Line = width })).Single().Views.Single(v => v.Drawing.Layers.Any(l => l.Name == "CUT"));
        Assert.Equal(width, view.Drawing.Layers.Single(l => l.Name == "CUT").Pen.Width);
        Assert.All(view.Drawing.Layers.Where(l => l.Name is not ("DEMONSTRATION" or "HEADING")), l => Assert.True(l.Pen.Width <= Math.Max(width, 0.35)));
    }

    [Fact]
    public void Corrected_pages_all_say_for_which_printer_and_when_it_was_measured()
    {
        var error = PrinterError.Of(new(170, 250, 169.7, 250.4, 302.4, 302.5));
        var made = Make(Strip(100, 60, Angle.Zero), A4 with { Printer = new("office-laser", error, "2026-11-28") });
        foreach (var page in made.Document.Pages)
        {
            Assert.Equal(error.Correction(across: page.Width > page.Height), page.Correction);
            var words = Printed.Words(Printed.On(page));
            if (page == made.Document.Pages[0] || Tiles(made).Contains(page))
            {
                Assert.Contains("office-laser", words, StringComparison.Ordinal);
                Assert.Contains("2026-11-28", words, StringComparison.Ordinal);
            }
        }
    }

    // A page of a roll may be shorter than the roll is wide: which way it lies does not follow from which side is longer.
    [Theory]
    [InlineData(210, false, PaperLay.Upright)]
    [InlineData(210, false, PaperLay.Across)]
    [InlineData(610, true, PaperLay.Upright)]
    [InlineData(610, true, PaperLay.Across)]
    public void The_scale_checks_of_a_corrected_page_are_right_once_its_printer_has_erred(double width, bool isRoll, PaperLay lay)
    {
        // A printer that makes x 0.6 % shorter and y 0.4 % longer, and leans by 0.1 %; its coupon by Pythagoras.
        Point Erring(Point p) => new(0.994 * p.X + 0.001 * p.Y, 1.004 * p.Y);
        // What is read across is turned by a quarter before it is printed.
        Point Prints(Point p) => Erring(lay == PaperLay.Across ? new(-p.Y, p.X) : p);
        double Apart(Point a, Point b) => Erring(a).DistanceTo(Erring(b));
        Point a = Point.Origin, b = new(170, 0), c = new(170, 250), d = new(0, 250);
        var error = PrinterError.Of(new(170, 250, Apart(a, b), Apart(a, d), Apart(a, c), Apart(d, b)));
        var paper = isRoll ? new Paper("roll across", width, 5000, 8) { IsRoll = true, Lay = lay } : Cases.A4 with { Lay = lay };
        var made = Make(Strip(100, 60, Angle.Zero), new(paper, 12) { Printer = new("office-laser", error, "2026-11-28"), Turn = TurnWish.None });
        var page = made.Document.Pages[^1];
        using var pdf = PdfDocument.Open(PdfWriter.Write(made.Document with { Pages = [page] }));
        var lines = pdf.GetPage(1).Paths.SelectMany(p => p).SelectMany(p => p.Commands).OfType<PdfSubpath.Line>()
            .Select(l => (From: Prints(new(l.From.X * 25.4 / 72, l.From.Y * 25.4 / 72)), To: Prints(new(l.To.X * 25.4 / 72, l.To.Y * 25.4 / 72))))
            .Select(l => l.To - l.From).ToList();
        foreach (var check in Printed.On(page).Where(p => p.Layer == "SCALE-CHECK").SelectMany(p => p.Segments).Where(s => s.Length > 90))
        {
            var along = lay == PaperLay.Across ? new Vector(-check.StartDirection.Y, check.StartDirection.X) : check.StartDirection;
            Assert.Contains(lines, l => Math.Abs(l.Length - check.Length) < 0.02 && Math.Abs(l.Unit.Dot(along)) > 0.9999);
        }
    }

    [Fact]
    public void A_seam_is_kept_off_a_datum_that_would_lie_in_the_middle_of_it()
    {
        // Two pages beside each other, whose seam would run through the middle of the strip; the datum lies there clear of its words and marks.
        var piece = Strip(330, 100, Angle.Zero) with { Datums = [new("A", new(0, 35), 8), new("B", new(100, 0), 8)], Checks = [] };
        var laid = LaidPiece.Of(piece, 1, A4 with { Turn = TurnWish.None }, out _);
        Assert.Equal(2, laid.Plan.Tiles.Length);
        var seam = Assert.Single(laid.Plan.Seams);
        var strip = Box.Around([seam.Start, seam.End + seam.Inwards * seam.Overlap]);
        Assert.All(piece.Datums, d => Assert.False(strip.Touches(new Box(d.At, d.At).Grown(PieceLines.Reach(d, 1))), $"{d.Label} lies in the seam at {seam.Start}"));
    }

    // 610 mm and 24 in are what rolls are sold in; 150 mm is so narrow that its cover is made smaller as a whole.
    [Theory]
    [InlineData(610)]
    [InlineData(609.6)]
    [InlineData(914.4)]
    [InlineData(150)]
    public void The_cover_on_a_roll_is_no_longer_than_its_text_asks_and_a_whole_number_of_millimetres(double width)
    {
        var roll = new Paper("roll", width, 5000, 8) { IsRoll = true };
        var made = TemplateSheet.Of(Samples.MeasuredNotch, new(roll, 12));
        var covers = made.Document.Pages.Except(Tiles(made)).ToList();
        foreach (var cover in covers)
        {
            Assert.Equal(width, cover.Width, 1e-9);
            Assert.Equal(0, Math.IEEERemainder(cover.Height, 1), 1e-9);
        }
        if (covers is not [var only]) return;
        Assert.True(only.Height < width * Math.Sqrt(2) / 2, $"{only.Height}");
        // It ends where the longest of its columns does, but for what a column cannot be shared out to.
        var ink = Printed.On(only).Where(p => p.Layer != "DEMONSTRATION").ToList();
        Assert.InRange(ink.Min(p => p.Mark.Bounds.Min.Y), 8, 40);
        Assert.True(ink.Max(p => p.Mark.Bounds.Max.X) > width * 0.6, "its columns lie over the whole width");
    }

    [Fact]
    public void A_coupon_has_its_crosses_where_it_says()
    {
        foreach (var paper in (ImmutableArray<Paper>)[Cases.A4, Cases.A3, Cases.Letter, new("a5", 148, 210, 8), new("roll 610mm", 610, 5000, 5) { IsRoll = true }])
        {
            var (level, upright) = CouponSheet.Drawn(paper);
            var page = Assert.Single(CouponSheet.Of("office-laser", paper, "Copperbeck Works").Pages);
            var frame = Printed.On(page).Select(p => p.Mark).OfType<ClosedStroke>().MaxBy(c => c.Bounds.Width)!.Bounds;
            Approximately.Equal(level, frame.Width, 1e-9);
            Approximately.Equal(upright, frame.Height, 1e-9);
            Assert.True(level >= 100 && level % 10 == 0 && upright % 10 == 0);
            var reached = new Box(new(paper.Margins.Left, paper.Margins.Bottom), new(page.Width - paper.Margins.Right, page.Height - paper.Margins.Top));
            Assert.All(Printed.On(page), p => Assert.True(reached.Contains(p.Mark.Bounds.Min) && reached.Contains(p.Mark.Bounds.Max), $"{paper.Name}: {p.Mark}"));
        }
    }
}
