using TemplateForge.Geometry;
using TemplateForge.Testing;

namespace TemplateForge.Fabrication.Tests;

public class ZincStripTests
{
    private static readonly Region Sheet = Region.Of(Outline.Rectangle(new(new(0, 0), new(200, 100))));

    // Closed form: a seam 80 mm long with 15 mm on either side and round both ends.
    [Fact]
    public void Beside_a_seam_within_the_sheet_it_is_a_strip_and_two_half_circles()
    {
        var strip = ZincStrip.Beside(Path.Line(new(60, 50), new(140, 50)), 15, Sheet);
        Approximately.Equal(80 * 30 + Math.PI * 225, strip.Zone.Area, within: 1e-4);
        Approximately.Equal(2 * 80 + 2 * Math.PI * 15, strip.Limits.Sum(l => l.Length), within: 1e-5);
    }

    // Along the edge of the sheet only the inner half is there, and of its outline only what is no edge of the sheet.
    [Fact]
    public void Beside_a_seam_on_the_edge_it_ends_at_the_edge()
    {
        var strip = ZincStrip.Beside(Path.Line(new(0, 0), new(200, 0)), 25, Sheet);
        Approximately.Equal(200 * 25, strip.Zone.Area, within: 1e-4);
        Approximately.Equal(200, Assert.Single(strip.Limits).Length, within: 1e-5);
    }

    // Closed form: a ring of 25 mm on either side of a circle of 40: π (65² − 15²) where the sheet is large enough.
    [Fact]
    public void Round_a_patch_it_is_a_ring()
    {
        var large = Region.Of(Outline.Rectangle(new(new(-100, -100), new(100, 100))));
        Approximately.Equal(Math.PI * (65 * 65 - 15 * 15), ZincStrip.Round(Outline.Circle(Point.Origin, 40), 25, large).Zone.Area, within: 1e-4);
    }

    [Fact]
    public void A_patch_smaller_than_the_strip_is_bare_all_over_and_has_no_limit()
    {
        var patch = Outline.Circle(Point.Origin, 20);
        var strip = ZincStrip.Round(patch, 25, Region.Of(patch));
        Approximately.Equal(Math.PI * 400, strip.Zone.Area, within: 1e-4);
        Assert.Empty(strip.Limits);
    }

    // Closed form: a square of 40 grown by 10 with round corners.
    [Fact]
    public void Over_a_lap_it_is_the_lap_and_so_far_round_it() =>
        Approximately.Equal(
            40 * 40 + 4 * 40 * 10 + Math.PI * 100,
            ZincStrip.Over(Region.Of(Outline.Rectangle(new(new(80, 30), new(120, 70)))), 10, Sheet).Zone.Area,
            within: 1e-4);

    [Fact]
    public void No_point_of_it_is_further_from_the_seam_than_the_width()
    {
        var seam = new Path(Segment.Line(new(20, 20), new(90, 20)), Segment.Arc(new(90, 20), new(130, 60), Math.Tan(Math.PI / 8)));
        var strip = ZincStrip.Beside(seam, 18, Sheet);
        Assert.All(strip.Zone.Contours.SelectMany(c => c.PointsEvery(3)), p => Assert.True(seam.Segments.Min(s => s.DistanceTo(p)) <= 18 + 1e-6));
    }
}
