using TemplateForge.Testing;

namespace TemplateForge.Geometry.Tests;

/// <summary>The smallest cases of what once went wrong.</summary>
public class ArrangementTroubles
{
    // The end of the arc runs upright beside the line; rounding had it leftmost and the line inside it.
    [Fact]
    public void A_line_and_an_arc_that_leave_the_leftmost_point_together_keep_their_order()
    {
        var region = Region.Of(Draw.Outline(
            (2.5, -7.5, 0), (2.5, -25, -0.41421356237309503), (10, -17.5, 0), (20, -17.5, 0.41421356237309503),
            (22.5, -15, 0.41421356237309503), (15, -7.5, 0)));
        Assert.True(Assert.Single(Region.FromContours(region.Contours).Contours).IsCounterClockwise);
        var grown = region.Offset(2.5);
        Law.IsOffset(grown, region, 2.5);
    }

    // The half circle rises from (35, 10) to (35, 40) by way of (50, 25): a ray from between has not passed it.
    [Fact]
    public void A_shape_within_the_bulge_of_a_half_circle_is_inside()
    {
        var pocket = Region.Of(Draw.Outline((40, 25, 0.41421356237309503), (45, 30, 0), (40, 30, 0)));
        var bulged = Region.Of(Draw.Outline(
            (5, 25, 0), (5, 10, 1), (35, 10, 1), (35, 40, 0), (20, 40, 0.41421356237309503)));
        Approximately.Equal(bulged.Area, bulged.Union(pocket).Area, within: Tolerance.Area(bulged.Length));
        Approximately.Equal(pocket.Area, bulged.Intersect(pocket).Area, within: Tolerance.Area(bulged.Length));
    }

    // What is left of the circle ends exactly opposite the middle of its first half.
    [Fact]
    public void Three_quarters_of_a_disc_are_one_circle_in_two_arcs()
    {
        var left = Draw.Disc(new(5, 0), 5).Subtract(Draw.Rectangle(5, -20, 20, 0));
        Approximately.Equal(0.75 * 25 * Math.PI, left.Area, within: Tolerance.Area(left.Length));
        Assert.Equal(4, Assert.Single(left.Contours).Segments.Length);
    }

    // The short side ends 9e-8 mm off the arc before it: joined with it or not, but the same however often it is put in.
    [Fact]
    public void A_side_shorter_than_a_micrometre_at_the_end_of_an_arc_is_joined_at_once()
    {
        var exact = Region.Of(Draw.Outline((-5, -15, 0), (15, -15, 0.41421356237309503), (20, -10, 0), (20, 0, 0), (-5, 0, 0)));
        var shaken = Region.Of(Draw.Outline(
            (-5, -15, 0), (15, -15, 0.414213538760612), (20.000000089977345, -10.000000403090308, 0), (19.9999995, 0, 0), (-5, 0, 0)));
        Law.IsWellMade(shaken.Union(exact));
    }
}
