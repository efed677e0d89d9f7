using TemplateForge.Testing;

namespace TemplateForge.Geometry.Tests;

public class FromContoursTests
{
    [Fact]
    public void A_contour_drawn_clockwise_encloses_the_same_as_counter_clockwise()
    {
        var region = Region.Of(Draw.Polygon((0, 0), (0, 20), (30, 20), (30, 0)));
        Assert.Equal(600, region.Area);
        Assert.True(Assert.Single(region.Contours).IsCounterClockwise);
    }

    // Two 10 mm triangles that meet in a point: each is 10 × 10 / 2.
    [Fact]
    public void A_figure_of_eight_becomes_two_contours_turned_the_same_way()
    {
        var region = Region.Of(Draw.Polygon((0, 0), (20, 10), (20, 0), (0, 10)));
        Approximately.Equal(100, region.Area, within: Tolerance.Area(70));
        Assert.Equal(2, region.Contours.Length);
        Assert.All(region.Contours, c => Assert.True(c.IsCounterClockwise));
    }

    [Fact]
    public void A_contour_drawn_twice_is_there_once_by_one_rule_and_not_at_all_by_the_other()
    {
        var square = Draw.Polygon((0, 0), (10, 0), (10, 10), (0, 10));
        Assert.Equal(100, Region.FromContours([square, square]).Area);
        Assert.True(Region.FromContours([square, square], FillRule.EvenOdd).IsEmpty);
        Assert.True(Region.FromContours([square, square.Reversed()]).IsEmpty);
    }

    [Fact]
    public void A_contour_in_another_is_a_hole_when_every_second_is_outside()
    {
        var ring = Region.FromContours([Draw.Circle(new(0, 0), 20), Draw.Circle(new(0, 0), 10)], FillRule.EvenOdd);
        Approximately.Equal(300 * Math.PI, ring.Area, within: Tolerance.Area(ring.Length));
        Assert.Equal([true, false], ring.Contours.Select(c => c.IsCounterClockwise));
    }

    [Fact]
    public void A_hole_may_touch_the_outer_contour_in_a_point()
    {
        var region = Region.FromContours(
            [Draw.Polygon((0, 0), (40, 0), (40, 40), (0, 40)), Draw.Polygon((20, 0), (30, 10), (10, 10))], FillRule.EvenOdd);
        Approximately.Equal(1600 - 100, region.Area, within: Tolerance.Area(220));
        Assert.Equal([4, 3], region.Contours.Select(c => c.Segments.Length));
    }

    [Fact]
    public void Corners_that_turn_nowhere_vanish()
    {
        var region = Region.Of(Draw.Polygon((0, 0), (10, 0), (25, 0), (40, 0), (40, 40), (40, 40.5), (40, 60), (0, 60)));
        Assert.Equal(4, Assert.Single(region.Contours).Segments.Length);
    }

    [Fact]
    public void A_circle_of_four_quarters_becomes_two_halves()
    {
        var quarter = Math.Tan(Math.PI / 8);
        var region = Region.Of(Draw.Outline((10, 0, quarter), (0, 10, quarter), (-10, 0, quarter), (0, -10, quarter)));
        Assert.Equal([1.0, 1.0], Assert.Single(region.Contours).Segments.Select(s => Math.Round(s.Bulge, 12)));
        Approximately.Equal(100 * Math.PI, region.Area, within: Tolerance.Area(63));
    }

    [Fact]
    public void What_has_no_area_vanishes()
    {
        Assert.True(Region.Of(Draw.Polygon((0, 0), (30, 0))).IsEmpty);
        Assert.True(Region.Of(Draw.Outline((0, 0, 0.5), (30, 0, -0.5))).IsEmpty);
        Assert.True(Region.Of(Draw.Polygon((0, 0), (30, 0), (15, 0.9 * Tolerance.Merge))).IsEmpty);
    }

    [Fact]
    public void A_spike_without_width_is_cut_off()
    {
        var region = Region.Of(Draw.Polygon((0, 0), (10, 0), (10, 5), (90, 5), (10, 5), (10, 10), (0, 10)));
        Assert.Equal(100, region.Area);
        Assert.Equal(4, Assert.Single(region.Contours).Segments.Length);
    }

    // A 100 m arc that rises by 0.125 mm over a chord of 10 m: the centre lies 100 km away.
    [Fact]
    public void An_arc_whose_centre_is_far_away_is_cut_where_it_is()
    {
        var bulge = 2 * 0.125 / 10_000;
        var flat = Region.Of(Draw.Outline((0, 0, bulge), (10_000, 0, 0), (10_000, 100, 0), (0, 100, 0)));
        var half = flat.Intersect(Draw.Rectangle(5_000, -10, 20_000, 200));
        Approximately.Equal(5_000, half.Contours[0].Segments.Min(s => s.Start.X), within: Tolerance.Length);
        Approximately.Equal(-0.125, half.Contours[0].Segments.Min(s => s.Start.Y), within: Tolerance.Length);
        Approximately.Equal(flat.Area / 2, half.Area, within: Tolerance.Area(half.Length));
    }
}
