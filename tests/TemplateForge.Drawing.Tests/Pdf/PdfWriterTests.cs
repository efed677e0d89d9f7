using System.Text;
using TemplateForge.Geometry;
using UglyToad.PdfPig.Tokens;
using Path = TemplateForge.Geometry.Path;

namespace TemplateForge.Drawing.Tests.Pdf;

/// <summary>The file is read by PdfPig, which is not ours. Issue: a point on paper is true within 0.005 mm; here 0.001.</summary>
public class PdfWriterTests
{
    private const double Near = 0.001;

    private static Document OnPage(double width, double height, params View[] views) => new("Title", "Subject", [new(width, height, [.. views])]);

    private static View Whole(LineDrawing drawing, Placement placement) => new(drawing, placement, new(new(-5000, -5000), new(5000, 5000)));

    private static PrintedPage Print(double width, double height, params View[] views) =>
        Assert.Single(PrintedPage.Read(PdfWriter.Write(OnPage(width, height, views))));

    [Theory]
    [InlineData(210, 297)]
    [InlineData(297, 210)]
    [InlineData(215.9, 279.4)]
    [InlineData(420, 594)]
    [InlineData(841, 1189)]
    public void A_page_has_its_size_within_a_thousandth_of_a_millimetre(double width, double height)
    {
        var page = Print(width, height);
        Assert.Equal(width, page.Width, Near);
        Assert.Equal(height, page.Height, Near);
    }

    [Fact]
    public void Every_corner_and_every_arc_end_of_a_notch_is_where_it_was_put()
    {
        var placement = Placement.Turned(Angle.FromDegrees(17), Point.Origin).Then(Placement.Moved(new(190.123, 60.456)));
        var stroke = Assert.Single(Print(420, 297, Whole(Sketch.Of(new OpenStroke(Sketch.Notch)), placement)).Strokes);
        foreach (var vertex in Sketch.Notch.Segments.Select(s => s.End).Prepend(Sketch.Notch.Start).Select(placement.Of))
            Assert.True(stroke.Vertices.Min(v => v.DistanceTo(vertex)) < Near, $"No vertex at {vertex}.");
        Assert.False(stroke.IsClosed);
    }

    [Theory]
    [InlineData(0.5)]
    [InlineData(5)]
    [InlineData(95)]
    [InlineData(400)]
    [InlineData(3000)]
    public void All_points_of_a_circle_are_its_radius_from_its_centre(double radius)
    {
        // A large circle is seen in part: its rightmost point lies on the page.
        var centre = new Point(300 - radius, 200);
        var stroke = Assert.Single(Print(841, 594, Whole(Sketch.Of(new ClosedStroke(Sketch.Circle(centre, radius))), Placement.Unmoved)).Strokes);
        Assert.True(stroke.IsClosed);
        // Single precision 3 m off the page is 0.0005 mm, both ways.
        var near = radius > 1000 ? 2 * Near : Near;
        Assert.All(stroke.Samples, p => Assert.Equal(radius, p.DistanceTo(centre), near));
    }

    [Fact]
    public void Pens_keep_their_width_and_dashes_their_length_in_a_view_at_a_tenth_of_the_size()
    {
        var line = Sketch.With(new(0.5, [6, 3], Colour.Black), new OpenStroke(Path.Line(new(0, 0), new(960, 0))));
        var strokes = Print(297, 210, Whole(line, Placement.Scaled(0.1, Point.Origin).Then(Placement.Moved(new(20, 20))))).Strokes;
        // 96 mm on paper are ten times 6 + 3, and the 6 at which the line ends; round ends take 0.5 mm off a dash inside.
        Assert.Equal(11, strokes.Count);
        Assert.All(strokes, s => Assert.Equal(0.5, s.Width, 1e-6));
        Assert.All(strokes.Skip(1).SkipLast(1), s => Assert.Equal(5.5, s.Vertices[0].DistanceTo(s.Vertices[^1]), Near));
    }

    [Fact]
    public void A_view_is_clipped_to_its_window_and_what_lies_outside_is_not_in_the_file()
    {
        var inside = new OpenStroke(Path.Line(new(20, 20), new(60, 20)));
        var outside = new OpenStroke(Path.Line(new(20, 120), new(60, 120)));
        var across = new OpenStroke(Path.Line(new(0, 50), new(200, 50)));
        var pdf = PdfWriter.Write(OnPage(210, 297, new View(Sketch.Of(inside, outside, across), Placement.Unmoved, new(new(10, 10), new(100, 100)))));
        Assert.Equal(2, PrintedPage.Read(pdf)[0].Strokes.Count);

        using var document = UglyToad.PdfPig.PdfDocument.Open(pdf);
        var clip = Assert.Single(document.GetPage(1).Paths, p => p.IsClipping).GetBoundingRectangle()!.Value;
        double[] sides = [clip.Left, clip.Bottom, clip.Right, clip.Top];
        double[] wanted = [10, 10, 100, 100];
        for (var i = 0; i < 4; i++) Assert.Equal(wanted[i], sides[i] * 25.4 / 72, Near);
    }

    [Theory]
    [InlineData(100)]
    [InlineData(31)]
    [InlineData(9)]
    [InlineData(4)]
    public void A_chain_line_begins_and_ends_with_a_dash_and_never_looks_solid(double length)
    {
        var pen = new Pen(0.25, [12, 2, 1, 2], Colour.Black);
        var strokes = Print(210, 297, Whole(Sketch.With(pen, new OpenStroke(Path.Line(new(20, 20), new(20 + length, 20)))), Placement.Unmoved)).Strokes;
        Assert.True(strokes.Count >= 2);
        Assert.Equal(20, strokes.Min(s => s.Vertices.Min(v => v.X)), Near);
        Assert.Equal(20 + length, strokes.Max(s => s.Vertices.Max(v => v.X)), Near);
        var ordered = strokes.OrderBy(s => s.Vertices.Min(v => v.X)).ToList();
        Assert.All(ordered.Zip(ordered.Skip(1)), pair =>
            Assert.True(pair.Second.Vertices.Min(v => v.X) - pair.First.Vertices.Max(v => v.X) > 2 * pen.Width, "No white is left between two dashes."));
    }

    [Fact]
    public void Dashes_run_on_round_corners_and_stay_on_the_line()
    {
        var strokes = Print(297, 420, Whole(Sketch.With(new(0.35, [7, 3], Colour.Black), new ClosedStroke(Sketch.Rectangle(30, 30, 71, 57))), Placement.Unmoved)).Strokes;
        // 136 mm round, 10 mm a period: 14 periods of 9.714 mm, each with one dash of 6.8 less the pen's 0.35.
        Assert.Equal(14, strokes.Count);
        Assert.All(strokes, s => Assert.Equal(6.8 - 0.35, s.Vertices.Zip(s.Vertices.Skip(1)).Sum(p => p.First.DistanceTo(p.Second)), Near));
        Assert.Contains(strokes, s => s.Vertices.Count == 3);
        Assert.All(strokes.SelectMany(s => s.Vertices), v => Assert.True(
            Math.Min(Math.Min(Math.Abs(v.X - 30), Math.Abs(v.X - 71)), Math.Min(Math.Abs(v.Y - 30), Math.Abs(v.Y - 57))) < Near));
    }

    [Fact]
    public void Dashes_round_a_circle_stay_on_it()
    {
        var strokes = Print(297, 420, Whole(Sketch.With(new(0.35, [7, 3], Colour.Black), new ClosedStroke(Sketch.Circle(new(100, 100), 60))), Placement.Unmoved)).Strokes;
        Assert.Equal(38, strokes.Count); // 2 π 60 / 10, rounded
        Assert.All(strokes.SelectMany(s => s.Samples), p => Assert.Equal(60, p.DistanceTo(new(100, 100)), Near));
    }

    [Fact]
    public void Letters_stand_where_the_alphabet_puts_their_strokes()
    {
        var words = new Lettering("NOTCH 12 (Größe)\\", new(50, 60), 5, Angle.FromDegrees(90), Anchor.Middle);
        using var pdf = UglyToad.PdfPig.PdfDocument.Open(PdfWriter.Write(OnPage(210, 297, Whole(Sketch.Of(words), Placement.Moved(new(10, 20))))));
        var letters = pdf.GetPage(1).Letters;
        Assert.Equal(words.Text, string.Concat(letters.Select(l => l.Value)));
        for (var i = 0; i < words.Text.Length; i++)
        {
            // A character begins where the text before it, and the gap of 0.3 h after that, end.
            var before = i == 0 ? 0 : Alphabet.Width(words.Text[..i], words.Height) + 0.3 * words.Height;
            var wanted = new Point(60 + words.Height / 2, 80 - Alphabet.Width(words.Text, words.Height) / 2 + before);
            Assert.Equal(0, wanted.DistanceTo(Mm(letters[i].StartBaseLine)), Near);
        }
    }

    [Fact]
    public void Each_letter_is_drawn_with_the_strokes_of_the_alphabet_and_the_pen_of_its_layer()
    {
        using var pdf = UglyToad.PdfPig.PdfDocument.Open(PdfWriter.Write(OnPage(210, 297,
            Whole(Sketch.With(Pen.Solid(0.35, new(0, 0, 255)), new Lettering("NÉ8", new(50, 60), 3.5, Angle.Zero, Anchor.BaseStart)), Placement.Unmoved))));
        var drawn = GlyphsOf(pdf);
        Assert.Equal(3, drawn.Count);
        foreach (var (letter, content) in "8NÉ".Zip(drawn)) // in the order of their codes
        {
            var tokens = content.Split((char[])[' ', '\n'], StringSplitOptions.RemoveEmptyEntries);
            // A tenth of the height, which is 100 units, and blue.
            Assert.Equal("10 w 1 J 1 j 0 0 1 RG", string.Join(' ', tokens.SkipWhile(t => t != "d0").Skip(1).Take(10)));
            var starts = tokens.Select((t, i) => (t, i)).Where(t => t.t == "m").Select(t => new Point(Of(tokens[t.i - 2]), Of(tokens[t.i - 1]))).ToList();
            var wanted = Alphabet.Strokes(new($"{letter}", Point.Origin, 100, Angle.Zero, Anchor.BaseStart));
            Assert.Equal(wanted.Length, starts.Count);
            Assert.All(wanted.Zip(starts), pair => Assert.Equal(0, pair.First.Start.DistanceTo(pair.Second), Near));
        }

        static double Of(string number) => double.Parse(number, System.Globalization.CultureInfo.InvariantCulture);
    }

    [Fact]
    public void More_characters_than_a_font_has_codes_for_are_all_written()
    {
        var characters = string.Concat(Enumerable.Range(0xA1, 0x160).Select(c => (char)c));
        var lines = characters.Chunk(20).Select((c, i) => (Mark)new Lettering(new(c), new(10, 10 + 8 * i), 4, Angle.Zero, Anchor.BaseStart));
        using var pdf = UglyToad.PdfPig.PdfDocument.Open(PdfWriter.Write(OnPage(210, 297, Whole(Sketch.Of([.. lines]), Placement.Unmoved))));
        Assert.Equal(characters.Length, characters.Distinct().Count());
        Assert.Equal(characters, string.Concat(pdf.GetPage(1).Letters.Select(l => l.Value)));
    }

    [Fact]
    public void Words_outside_the_window_are_not_in_the_file()
    {
        var (inside, outside) = (new Lettering("IN", new(20, 20), 5, Angle.Zero, Anchor.BaseStart), new Lettering("OUT", new(150, 20), 5, Angle.Zero, Anchor.BaseStart));
        using var pdf = UglyToad.PdfPig.PdfDocument.Open(PdfWriter.Write(
            OnPage(210, 297, new View(Sketch.Of(inside, outside), Placement.Unmoved, new(new(10, 10), new(100, 100))))));
        Assert.Equal("IN", string.Concat(pdf.GetPage(1).Letters.Select(l => l.Value)));
    }

    private static Point Mm(UglyToad.PdfPig.Core.PdfPoint p) => new(p.X * 25.4 / 72, p.Y * 25.4 / 72);

    /// <summary>What draws the characters of the one font there is, in the order of their codes.</summary>
    private static List<string> GlyphsOf(UglyToad.PdfPig.PdfDocument pdf)
    {
        var font = Inside(Inside(pdf.GetPage(1).Dictionary, "Resources", "Font"), "F1");
        return [.. Inside(font, "CharProcs").Data
            .OrderBy(p => int.Parse(p.Key[1..], System.Globalization.CultureInfo.InvariantCulture))
            .Select(p => Encoding.ASCII.GetString(Assert.IsType<StreamToken>(Read(p.Value)).Data.Span))];

        DictionaryToken Inside(DictionaryToken outer, params string[] names) =>
            names.Aggregate(outer, (dictionary, name) => Assert.IsType<DictionaryToken>(Read(dictionary.Data[name])));

        IToken Read(IToken token) => token is IndirectReferenceToken reference ? pdf.Structure.TokenScanner.Get(reference.Data)!.Data : token;
    }

    [Fact]
    public void A_fill_is_an_area_with_its_hole()
    {
        var filled = Print(210, 297, Whole(Sketch.Of(new Fill(Sketch.Plate, new(220, 220, 220))), Placement.Moved(new(20, 20)))).Strokes;
        Assert.Equal(2, filled.Count);
        Assert.All(filled, f => Assert.True(f.IsFilled && f.IsClosed));
        Assert.All(filled.SelectMany(f => f.Samples), p => Assert.Equal(10, p.DistanceTo(new(50, 50)), Near));
    }

    [Fact]
    public void The_same_document_is_the_same_bytes_and_says_nothing_of_when_and_where_it_was_made()
    {
        var document = OnPage(210, 297, Whole(Sketch.Everything, Placement.Moved(new(100, 100))));
        var pdf = PdfWriter.Write(document);
        Assert.Equal(pdf, PdfWriter.Write(document));
        var text = WithoutStreams(Encoding.Latin1.GetString(pdf));
        Assert.DoesNotContain("CreationDate", text, StringComparison.Ordinal);
        Assert.DoesNotContain("ModDate", text, StringComparison.Ordinal);
        Assert.DoesNotContain("/ID", text, StringComparison.Ordinal);
        Assert.DoesNotContain(AppContext.BaseDirectory, text, StringComparison.OrdinalIgnoreCase);
        using var read = UglyToad.PdfPig.PdfDocument.Open(pdf);
        Assert.Equal(["Creator", "Producer", "Subject", "Title"], read.Information.DocumentInformationDictionary!.Data.Keys.Order(StringComparer.Ordinal));
    }

    /// <summary>Streams are packed drawing commands: their bytes say anything and nothing.</summary>
    private static string WithoutStreams(string pdf) => string.Concat(pdf.Split("endstream").Select(p => p.Split("stream\n")[0]));

    [Fact]
    public void Title_and_subject_stand_in_the_file()
    {
        using var document = UglyToad.PdfPig.PdfDocument.Open(PdfWriter.Write(new("Größe A–B", "Left hand", [new(100, 100, [])])));
        Assert.Equal("Größe A–B", document.Information.Title);
        Assert.Equal("Left hand", document.Information.Subject);
    }

    [Fact]
    public void A_document_without_pages_a_page_without_size_and_a_mirror_image_are_refused()
    {
        Assert.Throws<ArgumentException>(() => PdfWriter.Write(new("", "", [])));
        Assert.Throws<ArgumentException>(() => PdfWriter.Write(OnPage(0, 297)));
        Assert.Throws<ArgumentException>(() => PdfWriter.Write(OnPage(210, double.NaN)));
        Assert.Throws<ArgumentException>(() => PdfWriter.Write(OnPage(210, 297, Whole(Sketch.Everything, Placement.Mirrored(Point.Origin, Angle.Zero)))));
    }

    [Fact]
    public void A_dash_pattern_of_an_odd_number_or_of_nothing_is_refused()
    {
        var line = new OpenStroke(Path.Line(new(0, 0), new(10, 0)));
        Assert.Throws<ArgumentException>(() => Print(210, 297, Whole(Sketch.With(new(0.5, [6, 3, 1], Colour.Black), line), Placement.Unmoved)));
        Assert.Throws<ArgumentException>(() => Print(210, 297, Whole(Sketch.With(new(0.5, [6, 0], Colour.Black), line), Placement.Unmoved)));
    }
}
