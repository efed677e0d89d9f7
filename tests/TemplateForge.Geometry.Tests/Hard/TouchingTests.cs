using TemplateForge.Testing;

namespace TemplateForge.Geometry.Tests;

public class TouchingTests
{
    private static readonly Region Square = Draw.Rectangle(0, 0, 40, 40);

    [Fact]
    public void Arcs_tangent_from_outside_touch_and_no_more() =>
        Everywhere.Combines(Draw.Disc(new(0, 0), 10), Draw.Disc(new(25, 0), 15), union: 325 * Math.PI, intersection: 0, contoursOfUnion: 2);

    [Fact]
    public void Arcs_tangent_from_inside_touch_and_no_more() =>
        Everywhere.Combines(Draw.Disc(new(0, 0), 20), Draw.Disc(new(5, 0), 15), union: 400 * Math.PI, intersection: 225 * Math.PI);

    // Radii of 1 m: where they touch they stay within the tolerance over 0.9 mm.
    [Fact]
    public void Large_arcs_that_overlap_by_less_than_the_tolerance_count_as_tangent()
    {
        var (one, other) = (Draw.Disc(new(0, 0), 1000), Draw.Disc(new(2000 - 1e-8, 0), 1000));
        Everywhere.Combines(one, other, union: 2e6 * Math.PI, intersection: 0, contoursOfUnion: 2);
    }

    [Fact]
    public void An_arc_tangent_to_a_line_touches_it_from_either_side()
    {
        Everywhere.Combines(Square, Draw.Disc(new(20, -10), 10), union: 1600 + 100 * Math.PI, intersection: 0, contoursOfUnion: 2);
        Everywhere.Combines(Square, Draw.Disc(new(20, 10), 10), union: 1600, intersection: 100 * Math.PI);
    }

    [Fact]
    public void A_vertex_on_an_edge_from_outside_and_from_inside()
    {
        Everywhere.Combines(
            Square, Region.Of(Draw.Polygon((15, 40), (25, 60), (5, 60))), union: 1600 + 200, intersection: 0, contoursOfUnion: 2);
        Everywhere.Combines(Square, Region.Of(Draw.Polygon((15, 40), (5, 20), (25, 20))), union: 1600, intersection: 200);
    }

    [Fact]
    public void A_vertex_on_an_arc() =>
        Everywhere.Combines(
            Draw.Disc(new(0, 0), 25), Region.Of(Draw.Polygon((15, 20), (35, 20), (35, 40))), union: 625 * Math.PI + 200, intersection: 0, contoursOfUnion: 2);

    [Fact]
    public void A_vertex_on_a_vertex_from_outside_and_from_inside()
    {
        Everywhere.Combines(Square, Draw.Rectangle(40, 40, 60, 60), union: 2000, intersection: 0, contoursOfUnion: 2);
        Everywhere.Combines(Square, Region.Of(Draw.Polygon((0, 0), (20, 10), (10, 20))), union: 1600, intersection: 150);
    }

    [Fact]
    public void Four_squares_about_a_vertex_are_one_and_two_of_them_across_are_two()
    {
        Region[] quarters = [Draw.Rectangle(0, 0, 20, 20), Draw.Rectangle(-20, 0, 0, 20), Draw.Rectangle(-20, -20, 0, 0), Draw.Rectangle(0, -20, 20, 0)];
        Assert.Equal(4, Assert.Single(Combination.Union(quarters).Contours).Segments.Length);
        Assert.Equal([4, 4], quarters[0].Union(quarters[2]).Contours.Select(c => c.Segments.Length));
    }

    // Each is seen from the common point as r = 2 R cos θ, so of the union the ten parts of ± 18° are 2 R² (a + sin 2a / 2), a = π / 10.
    [Fact]
    public void Ten_discs_through_one_point()
    {
        const double a = Math.PI / 10;
        var discs = Enumerable.Range(0, 10).Select(i => Draw.Circle(Point.Origin + Vector.Polar(10, Angle.FromDegrees(36 * i)), 10)).ToArray();
        foreach (var (_, by) in Symmetries.Placements)
        {
            Contour[] placed = [.. discs.Select(d => d.Placed(by))];
            var union = Region.FromContours(placed);
            Approximately.Equal(10 * 200 * (a + Math.Sin(2 * a) / 2), union.Area, within: Tolerance.Area(union.Length));
            Assert.Single(union.Contours);
            foreach (var rule in (FillRule[])[FillRule.NonZero, FillRule.EvenOdd])
            {
                var region = Region.FromContours(placed, rule);
                Law.IsWellMade(region);
                Law.IsEnclosed(region, placed, rule);
            }
        }
    }

    [Fact]
    public void Ten_triangles_that_share_a_corner_stay_ten()
    {
        var triangles = Enumerable.Range(0, 10).Select(i => Draw.Polygon((0, 0), (30, -4), (30, 4)).Placed(
            Placement.Turned(Angle.FromDegrees(36 * i), Point.Origin))).ToArray();
        var region = Region.FromContours(triangles);
        Assert.Equal(10, region.Contours.Length);
        Approximately.Equal(10 * 120, region.Area, within: Tolerance.Area(region.Length));
        Law.IsWellMade(region);
        foreach (var distance in (double[])[-1, 1, 5]) Law.IsOffset(region.Offset(distance), region, distance);
    }
}
