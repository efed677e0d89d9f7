using System.Globalization;
using System.Text.RegularExpressions;
using TemplateForge.Drawing;
using TemplateForge.Fabrication;
using TemplateForge.Geometry;

namespace TemplateForge.Sheets.Tests;

/// <summary>What is named on a picture can be told from what is not: by whoever has the sheet alone.</summary>
public partial class NamesOnPicturesTests
{
    public static TheoryData<double> Reductions => [2, 3, 4, 5.5, 7, 8, 10];

    // Half a tray: walls 40 high with a hem of 8 on each, so that the hems' bend lines lie close to the edge on a small picture.
    private static Piece Hemmed { get; } = Samples.Bracket.Pieces[0] with
    {
        Shape = Region.Of(Outline.Rectangle(new(new(47, 0), new(293, 275)))).Union(Region.Of(Outline.Rectangle(new(new(0, 47), new(340, 228))))),
        BendLines =
        [
            Bend(1, 48, 8, 292, 8), Bend(2, 332, 48, 332, 227), Bend(3, 292, 267, 48, 267), Bend(4, 8, 227, 8, 48),
            Bend(5, 48, 47, 292, 47), Bend(6, 293, 48, 293, 227), Bend(7, 292, 228, 48, 228), Bend(8, 47, 227, 47, 48),
        ],
        ScribeLines = [],
        Warnings = [],
        Checks =
        [
            new("Length", new(0, 47), new(340, 47), CheckDirection.Across), new("Width", new(47, 0), new(47, 275), CheckDirection.Up),
        ],
    };

    private static BendLine Bend(int number, double x, double y, double toX, double toY) =>
        new(number, new(x, y), new(toX, toY), Angle.QuarterTurn, Angle.QuarterTurn, BendWay.Up, 1.5, 3);

    [Theory, MemberData(nameof(Reductions))]
    public void Every_bend_has_its_number_on_a_picture_however_small(double reduction)
    {
        var words = LetteringOf(Hemmed, reduction).Select(l => l.Text).ToList();
        Assert.All(Enumerable.Range(1, 8).Select(n => n.ToString(CultureInfo.InvariantCulture)),
            number => Assert.Contains(words, w => w == number || w.StartsWith($"bend {number}:", StringComparison.Ordinal)));
    }

    [Fact]
    public void A_bend_line_is_broken_where_its_number_stands_on_it()
    {
        var printed = Printed.On(Picture.Of(Samples.Bracket, Hemmed, 200, 3, 2.3).Board.ToDrawing());
        var number = Assert.Single(printed.Select(p => p.Mark).OfType<Lettering>(), l => l.Text == "5");
        Assert.All(printed.Where(p => p.Layer.StartsWith("PENCIL", StringComparison.Ordinal)).SelectMany(p => p.Segments), s => Assert.True(s.DistanceTo(number.Bounds.Centre) > 1.8));
    }

    [Fact]
    public void The_ends_of_the_line_from_which_bends_are_measured_are_on_picture_and_template()
    {
        foreach (var page in (Page[])[JobSheet.Of(Samples.Bracket, Cases.A4).Pages[0], Cases.Tiles(Cases.Template("bracket", "a4")).First()])
            Assert.All((string[])["P", "Q"], name => Assert.Contains(Printed.On(page), p => p.Mark is Lettering l && l.Text == name));
    }

    [Theory, MemberData(nameof(Reductions))]
    public void No_line_of_a_dimension_runs_through_the_figures_of_another(double reduction)
    {
        foreach (var made in (Modification[])[Samples.MeasuredNotch, Samples.OtherHand(Samples.MeasuredNotch), Samples.LapPatch, Samples.Bracket with { Pieces = [Hemmed] }])
        {
            var printed = Printed.On(Picture.Of(made, made.Pieces[0], 200, reduction, 2.3).Board.ToDrawing());
            var lines = printed.Where(p => p.Layer == "DIMENSION").SelectMany(p => p.Segments).ToList();
            // The figures of a short dimension come near to its own arrow heads.
            foreach (var figures in printed.Select(p => p.Mark).OfType<Lettering>().Where(l => Numbered().IsMatch(l.Text)))
            {
                var strokes = Alphabet.Strokes(figures).SelectMany(s => s.Segments).ToList();
                Assert.All(lines, line => Assert.True(strokes.Min(s => s.DistanceTo(line)) > (line.Length < 3.1 ? 0.05 : 0.25), $"A line at {line.Start} runs through {figures.Text} at 1:{reduction}."));
            }
        }
    }

    // Two holes as far apart as a letter is high, both punched: which is A?
    [Fact]
    public void A_letter_that_could_be_another_hole_s_stands_on_a_leader()
    {
        var panel = Samples.MeasuredNotch.Pieces[0];
        var a = panel.Datums[0].At;
        var near = Region.Of(Outline.Circle(a + new Vector(30, 30), 4));
        var crowded = panel with { Shape = panel.Shape.Subtract(near) };
        Assert.Contains(LeadersTo(crowded, a, 8), l => l.Length > 0);

        static IEnumerable<Segment> LeadersTo(Piece piece, Point at, double reduction)
        {
            var drawing = Picture.Of(Samples.MeasuredNotch, piece, 200, reduction, 2.3).Board.ToDrawing();
            // The datum's own cross has its middle there.
            var cross = Printed.On(drawing).Where(p => p.Layer == "DATUM").Select(p => p.Mark).OfType<ClosedStroke>().Select(c => c.Contour.Bounds.Centre).OrderBy(c => c.X).ToList();
            var middle = piece.Datums.Select(d => d.At.X).Order().ToList().IndexOf(at.X) is var i ? cross[i] : default;
            return Printed.On(drawing).Where(p => p.Layer == "DIMENSION").SelectMany(p => p.Segments)
                .Where(s => s.End.DistanceTo(middle) < 0.8 && s.Length > 2.5);
        }
    }

    [Fact]
    public void A_mirrored_job_says_whose_left_and_right_stand_in_its_values()
    {
        const string said = "Values as measured on the LEFT hand; left and right in their words are that hand's.";
        var mirrored = Samples.OtherHand(Samples.MeasuredNotch);
        Assert.Contains(said, Printed.Words(Printed.On(JobSheet.Of(mirrored, Cases.A4).Pages[0])), StringComparison.Ordinal);
        Assert.Contains(said, Words(TemplateSheet.Of(mirrored, Cases.A4, 12)), StringComparison.Ordinal);
        Assert.DoesNotContain(said, Words(JobSheet.Of(Samples.MeasuredNotch, Cases.A4)), StringComparison.Ordinal);
        // Measured on that hand, drawn for the other.
        Assert.Contains("Left and right in the words of these values are the LEFT hand's", Words(JobSheet.Of(mirrored with { HandWasMeasured = true }, Cases.A4)), StringComparison.Ordinal);
    }

    // On the picture, on the template and in the mark-out.
    [Fact]
    public void A_plug_welded_hole_has_one_name_everywhere()
    {
        var sheet = JobSheet.Of(Samples.LapPatch, Cases.A4);
        Assert.Contains(Printed.On(sheet.Pages[0]), p => p.Mark is Lettering { Text: "w2" });
        Assert.True(sheet.Pages.Skip(1).SelectMany(Printed.On).Count(p => p.Mark is Lettering { Text: "w2" }) >= 2);
        Assert.Contains("w2", Words(TemplateSheet.Of(Samples.LapPatch, Cases.A4, 12)), StringComparison.Ordinal);
        Assert.DoesNotMatch(@"\bh\d", Words(sheet));
    }

    [Fact]
    public void Figures_below_each_other_have_their_points_in_line_and_columns_stand_three_millimetres_apart()
    {
        var column = Column.OfFigures("along", ["-46.1", "(247.7)", "2.3\n[0.091]"]);
        var (columns, rows) = Column.Table([column, Column.OfFigures("offset", ["1.0", "10.0", "100.0"])], 80, 2.1);
        var lettering = rows.SelectMany(r => r[0].Within(columns[0].Width - 2 * Table.Aside).Board.Marks).OfType<Lettering>().Where(l => l.Text[0] != '[').ToList();
        var points = lettering.Select(l => l.At.X + Alphabet.Width(l.Text, l.Height) - Alphabet.Width(l.Text[l.Text.IndexOf('.', StringComparison.Ordinal)..], l.Height)).ToList();
        Assert.Equal(3, points.Count);
        Assert.All(points, p => Assert.Equal(points[0], p, 0.001));
        Assert.All(lettering, l => Assert.True(columns[0].Width - (Table.Aside + l.At.X + Alphabet.Width(l.Text, l.Height)) + Table.Aside >= 3 - 1e-9));
    }

    private static IEnumerable<Lettering> LetteringOf(Piece piece, double reduction) =>
        Printed.On(Picture.Of(Samples.Bracket with { Pieces = [piece] }, piece, 90, reduction, 2.3).Board.ToDrawing()).Select(p => p.Mark).OfType<Lettering>();

    private static string Words(Document document) => string.Join(' ', document.Pages.Select(p => Printed.Words(Printed.On(p))));

    [GeneratedRegex(@"^\(\d+\) ", RegexOptions.CultureInvariant, 1000)]
    private static partial Regex Numbered();
}
