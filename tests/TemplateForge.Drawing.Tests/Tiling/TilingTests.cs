using CsCheck;
using TemplateForge.Geometry;

namespace TemplateForge.Drawing.Tests.Tiling;

public class TilingTests
{
    private static readonly Paper A4 = new("a4", 210, 297, 5);

    // Drawings from smaller than a page to a whole floor, anywhere; papers from A5 to A0; every strip.
    private static readonly Gen<(Box Content, Paper Paper, PageLayout Layout)> Cases =
        from x in Gen.Double[-5000, 5000]
        from y in Gen.Double[-5000, 5000]
        from width in Gen.Double[1, 2500]
        from height in Gen.Double[1, 1500]
        from shorter in Gen.Double[148, 841]
        from margin in Gen.Double[0, 12]
        from side in Gen.Double[0, 20]
        from foot in Gen.Double[0, 30]
        from overlap in Gen.Double[0, 20]
        select (new Box(new(x, y), new(x + width, y + height)),
            new Paper("any", shorter, shorter * Math.Sqrt(2), margin), new PageLayout(side, foot, overlap));

    private static TilePlan Plan((Box Content, Paper Paper, PageLayout Layout) c) =>
        Drawing.Tiling.Plan(c.Content, c.Paper, c.Layout, _ => true);

    [Fact]
    public void The_windows_of_all_pages_cover_the_content_and_lie_evenly_round_it() =>
        Cases.Sample(c =>
        {
            var plan = Plan(c);
            Assert.Equal(plan.Columns * plan.Rows, plan.Tiles.Length);
            var all = Box.Around(plan.Tiles.Select(t => t.Window));
            Assert.True(all.Min.X <= c.Content.Min.X + Tolerance.Length && all.Min.Y <= c.Content.Min.Y + Tolerance.Length);
            Assert.True(all.Max.X >= c.Content.Max.X - Tolerance.Length && all.Max.Y >= c.Content.Max.Y - Tolerance.Length);
            Assert.Equal(0, all.Centre.DistanceTo(c.Content.Centre), Tolerance.Length);
            // One page fewer either way would not do.
            Assert.True(plan.Columns == 1 || all.Width - (plan.Tiles[0].Window.Width - c.Layout.Overlap) < c.Content.Width);
            Assert.True(plan.Rows == 1 || all.Height - (plan.Tiles[0].Window.Height - c.Layout.Overlap) < c.Content.Height);
        }, seed: "0000KOIKe1r0", iter: 2000);

    [Fact]
    public void Neighbouring_windows_overlap_by_exactly_the_overlap_and_line_up() =>
        Cases.Sample(c =>
        {
            foreach (var seam in Plan(c).Seams)
            {
                Assert.Equal(c.Layout.Overlap, seam.Overlap, 1e-9);
                var (under, over) = (seam.Under.Window, seam.Over.Window);
                if (seam.IsUpright) Assert.Equal((under.Min.Y, under.Max.Y), (over.Min.Y, over.Max.Y));
                else Assert.Equal((under.Min.X, under.Max.X), (over.Min.X, over.Max.X));
            }
        }, seed: "0000KOIKe1r0", iter: 2000);

    [Fact]
    public void A_window_is_shown_at_true_size_inside_what_the_printer_reaches_and_beside_the_strips() =>
        Cases.Sample(c =>
        {
            var plan = Plan(c);
            foreach (var tile in plan.Tiles)
            {
                Assert.Equal(1, tile.ToPage.Scale, 1e-12);
                Assert.Equal(0, tile.ToPage.Of(tile.Window.Min).DistanceTo(tile.PageWindow.Min), 1e-9);
                Assert.Equal(0, tile.ToPage.Of(tile.Window.Max).DistanceTo(tile.PageWindow.Max), 1e-9);
                Assert.Equal(c.Paper.Margin + c.Layout.SideStrip, tile.PageWindow.Min.X, 1e-9);
                Assert.Equal(c.Paper.Margin + c.Layout.FootStrip, tile.PageWindow.Min.Y, 1e-9);
                Assert.Equal(plan.PageWidth - c.Paper.Margin, tile.PageWindow.Max.X, 1e-9);
                Assert.Equal(plan.PageHeight - c.Paper.Margin, tile.PageWindow.Max.Y, 1e-9);
            }
        }, seed: "0000KOIKe1r0", iter: 2000);

    [Theory]
    [InlineData(180, 260, 210, 297, 1)] // one page upright
    [InlineData(260, 170, 297, 210, 1)] // one page across
    [InlineData(100, 100, 210, 297, 1)] // either: upright
    [InlineData(530, 170, 297, 210, 2)] // two across, three upright
    public void The_paper_lies_whichever_way_takes_fewer_pages(double width, double height, double pageWidth, double pageHeight, int pages)
    {
        var plan = Drawing.Tiling.Plan(new(Point.Origin, new(width, height)), A4, new(13, 20, 15), _ => true);
        Assert.Equal((pageWidth, pageHeight, pages), (plan.PageWidth, plan.PageHeight, plan.Tiles.Length));
    }

    [Fact]
    public void Pages_are_lettered_by_row_from_the_top_and_numbered_from_the_left()
    {
        var plan = Drawing.Tiling.Plan(new(Point.Origin, new(500, 700)), A4, new(13, 20, 15), _ => true);
        Assert.Equal(["A1", "A2", "A3", "B1", "B2", "B3", "C1", "C2", "C3"], plan.Tiles.Select(t => t.Address));
        Assert.True(plan.Tiles[0].Window.Max.Y > plan.Tiles[^1].Window.Max.Y);
        Assert.True(plan.Tiles[0].Window.Min.X < plan.Tiles[^1].Window.Min.X);
        Assert.Equal("AB3", (plan.Tiles[0] with { Row = 27, Column = 2 }).Address);
    }

    [Fact]
    public void A_page_without_ink_is_left_out_and_the_others_keep_their_addresses()
    {
        var plan = Drawing.Tiling.Plan(new(Point.Origin, new(500, 700)), A4, new(13, 20, 15), w => !w.Contains(new(250, 350)));
        Assert.Equal(["A1", "A2", "A3", "B1", "B3", "C1", "C2", "C3"], plan.Tiles.Select(t => t.Address));
        Assert.DoesNotContain(plan.Seams, s => s.Under.Address == "B2" || s.Over.Address == "B2");
    }

    [Fact]
    public void A_drawing_that_just_fits_one_page_takes_one()
    {
        // 210 − 2·5 − 13 by 297 − 2·5 − 20, less what doubles lose far from the origin.
        var corner = new Point(4321.1, -1234.7);
        var plan = Drawing.Tiling.Plan(new(corner, corner + new Vector(187, 267)), A4, new(13, 20, 15), _ => true);
        Assert.Single(plan.Tiles);
    }

    [Fact]
    public void Paper_that_the_strips_and_overlaps_fill_is_refused()
    {
        var content = new Box(Point.Origin, new(100, 100));
        Assert.Throws<ArgumentException>(() => Drawing.Tiling.Plan(content, new("small", 50, 70, 5), PageLayout.Usual, _ => true));
        Assert.Throws<ArgumentException>(() => Drawing.Tiling.Plan(content, A4, new(13, 20, 90), _ => true));
        Assert.Throws<ArgumentOutOfRangeException>(() => new PageLayout(-1, 20, 15));
        Assert.Throws<ArgumentOutOfRangeException>(() => new PageLayout(13, double.NaN, 15));
    }
}
