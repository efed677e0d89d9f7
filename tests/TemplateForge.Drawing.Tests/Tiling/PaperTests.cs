using TemplateForge.Geometry;

namespace TemplateForge.Drawing.Tests.Tiling;

public class PaperTests
{
    private static TilePlan Plan(Paper paper, double width, double height, PageLayout? layout = null) =>
        Drawing.Tiling.Plan(new(Point.Origin, new(width, height)), paper, layout ?? PageLayout.Usual, _ => true);

    private static Paper Roll(double width) => new("roll", width, 5000, 5) { IsRoll = true };

    [Theory]
    [InlineData(500, 1200, 610, 1230)] // 1200 and 2 · 5 and the foot of 20, along the roll
    [InlineData(1200, 500, 1223, 610)] // lying across it: 1200 and 2 · 5 and the side of 13
    [InlineData(40, 30, 137, 610)] // never shorter than the furniture needs: 114 and 2 · 5 and 13, which is less paper than upright
    public void A_roll_is_cut_to_what_the_drawing_needs(double width, double height, double pageWidth, double pageHeight)
    {
        var plan = Plan(Roll(610), width, height);
        Assert.Single(plan.Tiles);
        Assert.Equal((pageWidth, pageHeight), (plan.PageWidth, plan.PageHeight));
        Assert.True(plan.Tiles[0].Window.Width >= width && plan.Tiles[0].Window.Height >= height);
    }

    [Fact]
    public void A_drawing_wider_than_a_roll_takes_strips_and_one_longer_than_a_page_may_be_takes_several()
    {
        Assert.Equal(2, Plan(Roll(610), 1100, 1800).Tiles.Length);
        var longer = Plan(Roll(610), 500, 6000);
        Assert.Equal(2, longer.Tiles.Length);
        Assert.True(Math.Max(longer.PageWidth, longer.PageHeight) <= 5000);
    }

    [Theory]
    [InlineData(PaperLay.Upright, 210, 297)]
    [InlineData(PaperLay.Across, 297, 210)]
    public void A_sheet_lies_as_somebody_wishes_though_it_takes_more_pages(PaperLay lay, double width, double height)
    {
        var paper = new Paper("a4", 210, 297, 5) { Lay = lay };
        foreach (var plan in (TilePlan[])[Plan(paper, 180, 260), Plan(paper, 260, 170)])
            Assert.Equal((width, height), (plan.PageWidth, plan.PageHeight));
    }

    [Fact]
    public void Each_edge_has_a_margin_of_its_own_and_across_the_wider_of_two_stands_on_both_sides()
    {
        var paper = new Paper("a4", 210, 297, new Margins(left: 3, right: 4, top: 5, bottom: 12));
        var window = Plan(paper with { Lay = PaperLay.Upright }, 100, 100).Tiles[0].PageWindow;
        Assert.Equal((3.0 + 13, 12.0 + 20, 210.0 - 4, 297.0 - 5), (window.Min.X, window.Min.Y, window.Max.X, window.Max.Y));
        var across = Plan(paper with { Lay = PaperLay.Across }, 100, 100).Tiles[0].PageWindow;
        Assert.Equal((12.0 + 13, 4.0 + 20, 297.0 - 12, 210.0 - 4), (across.Min.X, across.Min.Y, across.Max.X, across.Max.Y));
        Assert.Throws<ArgumentOutOfRangeException>(() => new Margins(1, 1, -1, 1));
    }

    // ISO 216 (A5 to A0), ANSI/ASME Y14.1 and the architects' sizes, in mm.
    [Theory]
    [InlineData(148, 210, 100, 3)] // an A5: 100 wide beside strips, margins and the map
    [InlineData(841, 1189, 200, 8)]
    [InlineData(215.9, 279.4, 150, 6)]
    [InlineData(914.4, 1219.2, 200, 8)]
    public void Beside_the_millimetres_the_scale_checks_have_whole_inches(double width, double height, double level, int inches)
    {
        var plan = Plan(new Paper("any", width, height, 8) { Lay = PaperLay.Upright }, 100, 100, new(13, 20, 12));
        var lines = Furniture.Of(plan, plan.Tiles[0], "Title").Layers.Single(l => l.Name == "SCALE-CHECK").Marks.OfType<OpenStroke>().Select(m => m.Path.Segments[0]).ToList();
        var start = lines.First(l => l.Start.Y == l.End.Y && Math.Abs(l.Length - level) < 1e-9).Start;
        var below = lines.Where(l => l.Start.X == l.End.X && l.Start.Y == start.Y && l.End.Y < start.Y).Select(l => l.Start.X - start.X).Order().ToList();
        Assert.Equal(Enumerable.Range(0, inches + 1).Select(i => Math.Round(i * 25.4, 9)), below.Select(x => Math.Round(x, 9)));
        var above = lines.Where(l => l.Start.X == l.End.X && l.Start.Y == start.Y && l.End.Y > start.Y).Select(l => Math.Round(l.Start.X - start.X, 9));
        Assert.Equal(Enumerable.Range(0, (int)level / 10 + 1).Select(i => i * 10.0), above);
    }

    [Theory]
    [InlineData(148, 210)]
    [InlineData(210, 297)]
    [InlineData(215.9, 279.4)]
    public void What_a_scale_check_says_can_be_read(double width, double height)
    {
        var plan = Plan(new Paper("any", width, height, 8), 400, 100, new(13, 20, 12));
        var words = Furniture.Of(plan, plan.Tiles[0], "Title").Layers.SelectMany(l => l.Marks).OfType<Lettering>().Where(l => l.Text.Contains("measure before use", StringComparison.Ordinal)).ToList();
        Assert.Equal(2, words.Count);
        Assert.All(words, w => Assert.True(w.Height >= 1.8 - 1e-9, $"{w.Text} is {w.Height} mm high"));
    }

    [Fact]
    public void Paper_that_is_said_to_have_room_has_room_for_what_every_page_shows()
    {
        for (var width = 120.0; width < 170; width += 0.5)
        {
            foreach (var paper in (Paper[])[new("any", width, 210, 8), new("roll", width, 5000, 8) { IsRoll = true }])
            {
                if (!Drawing.Tiling.HasRoom(paper, PageLayout.Usual)) continue;
                var plan = Plan(paper, 30, 20);
                Assert.NotEmpty(Furniture.Of(plan, plan.Tiles[0], "Title").Layers);
            }
        }
    }
}
