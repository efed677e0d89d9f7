using System.Collections.Immutable;
using TemplateForge.Geometry;

namespace TemplateForge.Drawing.Tests.Tiling;

public class FurnitureTests
{
    private static readonly Paper A4 = new("a4", 210, 297, 5);

    private static TilePlan Plan(double width = 500, double height = 700, Paper? paper = null, PageLayout? layout = null) =>
        Drawing.Tiling.Plan(new(new(-70, 30), new(width - 70, height + 30)), paper ?? A4, layout ?? PageLayout.Usual, _ => true);

    private static ImmutableArray<Mark> Layer(LineDrawing drawing, string name) => drawing.Layers.Single(l => l.Name == name).Marks;

    /// <summary>The corners of a page's registration marks where they lie in the drawing.</summary>
    private static List<Point> Registration(TilePlan plan, Tile tile)
    {
        var back = tile.Window.Min - tile.PageWindow.Min;
        return [.. Layer(Furniture.Of(plan, tile, "Title"), "REGISTRATION").Cast<OpenStroke>()
            .SelectMany(m => m.Path.Segments).SelectMany(s => new[] { s.Start, s.End }).Select(p => p + back)];
    }

    private static bool Covers(IEnumerable<Point> all, Point p) => all.Any(q => q.DistanceTo(p) < 1e-9);

    /// <summary>Those of its marks that lie in the overlap of a seam, its corners left out, where other seams have theirs.</summary>
    private static List<Point> Registration(TilePlan plan, Tile tile, Seam seam) =>
        [.. Registration(plan, tile).Where(p =>
            (p - seam.Start).Dot(seam.Inwards) is var depth && depth > -1e-9 && depth < seam.Overlap
            && (p - seam.Start).Dot(seam.Along) is var along && along > seam.Overlap + 4 && along < seam.Length - seam.Overlap - 4)];

    [Fact]
    public void Registration_marks_of_neighbours_coincide_wherever_both_pages_show_them()
    {
        var plan = Plan();
        Assert.Equal(12, plan.Seams.Count()); // 3 × 3 pages: 6 side by side, 6 one above the other
        foreach (var seam in plan.Seams)
        {
            var (under, over) = (Registration(plan, seam.Under, seam), Registration(plan, seam.Over, seam));
            Assert.Equal(2 * 8, over.Count); // two marks, each half a diamond and a cross of two lines
            Assert.All(over, p => Assert.True(Covers(under, p)));
            Assert.All(under, p => Assert.True(Covers(over, p)));
        }
    }

    [Fact]
    public void Half_a_diamond_on_the_page_below_meets_the_half_at_the_edge_of_the_page_above()
    {
        var plan = Plan();
        foreach (var seam in plan.Seams)
        {
            var under = Registration(plan, seam.Under);
            foreach (var place in seam.Places)
            {
                var edge = seam.Start + seam.Along * place;
                foreach (var corner in new[] { seam.Along, -seam.Along, seam.Inwards, -seam.Inwards })
                    Assert.True(Covers(under, edge + corner * 3));
                Assert.False(Covers(Registration(plan, seam.Over), edge - seam.Inwards * 3));
            }
        }
    }

    [Fact]
    public void No_two_seams_have_their_marks_at_the_same_pair_of_places()
    {
        var plan = Plan(1500, 1500);
        foreach (var seams in plan.Seams.GroupBy(s => s.IsUpright))
        {
            var pairs = seams.Select(s => (Math.Round(s.Places[0], 3), Math.Round(s.Places[1], 3))).ToList();
            Assert.Equal(pairs.Count, pairs.Distinct().Count());
        }
        Assert.All(plan.Seams, s => Assert.All(s.Places, p => Assert.InRange(p, s.Overlap, s.Length - s.Overlap)));
    }

    [Fact]
    public void Marks_of_one_seam_do_not_fit_another()
    {
        // The page to the right of A1, laid to the right of B1 instead: some mark finds no partner.
        var plan = Plan();
        var (right, wrong) = (plan.Tiles.Single(t => t.Address == "A2"), plan.Tiles.Single(t => t.Address == "B1"));
        var shift = plan.Tiles.Single(t => t.Address == "B2").Window.Min - right.Window.Min;
        var seam = plan.Seams.Single(s => s.Over == right && s.IsUpright);
        var marks = Registration(plan, right, seam);
        Assert.Contains(marks, p => !Covers(Registration(plan, wrong), p + shift));
    }

    [Theory]
    [InlineData(210, 297, 5, 150, 200)]
    [InlineData(148, 210, 5, 150, 100)] // across, which takes fewer pages
    [InlineData(297, 420, 5, 200, 200)]
    [InlineData(215.9, 279.4, 6.35, 150, 200)]
    public void The_scale_checks_are_the_longest_fifty_that_fits_and_exactly_that_long(double width, double height, double margin, double level, double upright)
    {
        var plan = Plan(150, 200, new("any", width, height, margin));
        var lines = Layer(Furniture.Of(plan, plan.Tiles[0], "Title"), "SCALE-CHECK").OfType<OpenStroke>().Select(m => m.Path).ToList();
        Assert.Equal(level, lines.Where(l => l.Start.Y == l.End.Y).Max(l => l.Length), 1e-9);
        Assert.Equal(upright, lines.Where(l => l.Start.X == l.End.X).Max(l => l.Length), 1e-9);
    }

    [Fact]
    public void Each_page_says_what_it_joins_and_where_it_is_trimmed_and_glued()
    {
        var plan = Plan();
        var words = plan.Tiles.ToDictionary(t => t.Address, t => Furniture.Of(plan, t, "Left hand").Layers
            .SelectMany(l => l.Marks).OfType<Lettering>().Select(l => l.Text).ToList(), StringComparer.Ordinal);
        Assert.Contains("B2 joins B1", words["B2"]);
        Assert.Contains("B2 joins C2", words["B2"]);
        Assert.Contains("B2: glue under B3", words["B2"]);
        Assert.Contains("B2: glue under A2", words["B2"]);
        Assert.Equal(2, words["B2"].Count(w => w == "trim here"));
        Assert.DoesNotContain("trim here", words["C1"]);
        Assert.All(words.Values, w => Assert.Contains("Left hand", w));
        Assert.Contains(words["A1"], w => w.StartsWith("150 mm: measure before use", StringComparison.Ordinal));
    }

    [Theory]
    [InlineData(210, 297, 5)]
    [InlineData(215.9, 279.4, 6.35)]
    [InlineData(297, 420, 8)]
    [InlineData(148, 210, 5)]
    [InlineData(297, 210, 5)]
    public void Nothing_of_the_furniture_leaves_what_the_printer_reaches_and_none_but_the_seams_lies_on_the_drawing(double width, double height, double margin)
    {
        var plan = Plan(900, 700, new("any", width, height, margin));
        var title = new string('W', 120);
        foreach (var tile in plan.Tiles)
        {
            foreach (var layer in Furniture.Of(plan, tile, title).Layers)
            {
                foreach (var bounds in layer.Marks.Select(m => m.Bounds))
                {
                    Assert.True(plan.Printable.Grown(1e-9).Contains(bounds.Min) && plan.Printable.Grown(1e-9).Contains(bounds.Max), $"{layer.Name} {bounds}");
                    if (layer.Name is "SCALE-CHECK" or "PAGE-ADDRESS" or "PAGE-MAP") Assert.False(bounds.Touches(tile.PageWindow), $"{layer.Name} {bounds}");
                }
            }
        }
    }

    [Theory]
    [InlineData(210, 297, 5, 13, 20)]
    [InlineData(210, 297, 5, 12, 18)] // the narrowest strips
    [InlineData(215.9, 279.4, 6.35, 13, 20)]
    [InlineData(297, 420, 8, 13, 20)]
    [InlineData(148, 210, 5, 12, 18)]
    public void No_lettering_of_the_strips_lies_on_other_lettering_or_on_a_scale_check(double width, double height, double margin, double side, double foot)
    {
        var plan = Plan(900, 700, new("any", width, height, margin), new(side, foot, Overlap: 15));
        foreach (var tile in plan.Tiles)
        {
            var furniture = Furniture.Of(plan, tile, "A title that says what the drawing is, for whom, and which hand");
            var words = furniture.Layers.SelectMany(l => l.Marks).OfType<Lettering>().Select(l => l.Bounds).ToList();
            var others = new[] { "SCALE-CHECK", "PAGE-MAP", "TRIM" }.SelectMany(n => Layer(furniture, n)).Select(m => m.Bounds).ToList();
            for (var i = 0; i < words.Count; i++)
            {
                Assert.DoesNotContain(words.Skip(i + 1), w => w.Touches(words[i]));
                Assert.DoesNotContain(others, o => o.Touches(words[i]));
                Assert.True(plan.Printable.Contains(words[i].Min) && plan.Printable.Contains(words[i].Max));
            }
        }
    }

    [Theory]
    [InlineData(11, 20, 15)]
    [InlineData(13, 17, 15)]
    [InlineData(13, 20, 4)]
    [InlineData(90, 20, 15)]
    public void Strips_too_narrow_for_the_furniture_and_windows_too_small_for_it_are_refused(double side, double foot, double overlap)
    {
        var upright = A4 with { Lay = PaperLay.Upright };
        Assert.Throws<ArgumentException>(() =>
        {
            var plan = Drawing.Tiling.Plan(new(Point.Origin, new(100, 100)), upright, new(side, foot, overlap), _ => true);
            return Furniture.Of(plan, plan.Tiles[0], "Title");
        });
    }

    [Fact]
    public void The_smallest_overlap_still_has_marks_that_coincide()
    {
        var plan = Plan(layout: new(13, 20, Overlap: 5));
        foreach (var seam in plan.Seams)
        {
            var over = Registration(plan, seam.Over, seam);
            Assert.Equal(2 * 8, over.Count);
            Assert.All(over, p => Assert.True(Covers(Registration(plan, seam.Under, seam), p)));
        }
    }

    [Fact]
    public void The_small_map_of_a_page_has_the_outline_where_the_pages_show_it()
    {
        var plan = Plan();
        var furniture = Furniture.Of(plan, plan.Tiles[4], "Title", new ClosedStroke(Sketch.Rectangle(-70, 30, 430, 730)));
        var outline = Assert.Single(Layer(furniture, "PAGE-MAP-OUTLINE")).Bounds;
        var pages = Box.Around(Layer(furniture, "PAGE-MAP").Select(m => m.Bounds));
        var (whole, scale) = (Box.Around(plan.Tiles.Select(t => t.Window)), pages.Width / Box.Around(plan.Tiles.Select(t => t.Window)).Width);
        Assert.Equal(500 * scale, outline.Width, 1e-9);
        Assert.Equal(pages.Min.X + (-70 - whole.Min.X) * scale, outline.Min.X, 1e-9);
        Assert.Equal(pages.Min.Y + (30 - whole.Min.Y) * scale, outline.Min.Y, 1e-9);
        Assert.Empty(Layer(Furniture.Of(plan, plan.Tiles[4], "Title"), "PAGE-MAP-OUTLINE"));
    }

    [Fact]
    public void The_map_shows_every_page_with_its_address_over_the_drawing_inside_its_place()
    {
        var plan = Plan();
        var place = new Box(new(30, 60), new(180, 200));
        var map = Furniture.Map(plan, Sketch.Of(new ClosedStroke(Sketch.Rectangle(-70, 30, 430, 730))), place);
        Assert.Equal(plan.Tiles.Select(t => t.Address), Layer(map, "PAGE-ADDRESS").Cast<Lettering>().Select(l => l.Text));
        Assert.Equal(plan.Tiles.Length, Layer(map, "PAGE-MAP").Length);
        Assert.All(map.Layers.SelectMany(l => l.Marks), m => Assert.True(place.Grown(1e-9).Contains(m.Bounds.Min) && place.Grown(1e-9).Contains(m.Bounds.Max)));
        // The drawing keeps its place among the pages: its lower left corner in C1.
        var drawn = Assert.Single(Layer(map, "FINISH")).Bounds;
        var c1 = Layer(map, "PAGE-MAP")[6].Bounds;
        Assert.True(c1.Contains(drawn.Min));
        Assert.Equal(500.0 / 700, drawn.Width / drawn.Height, 1e-9);
    }
}
