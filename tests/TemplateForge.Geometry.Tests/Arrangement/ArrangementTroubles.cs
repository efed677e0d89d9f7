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

    // Half circles that end on a circle about their start, where the direction in which they are seen is badly known.
    [Fact]
    public void A_round_hole_a_little_off_two_half_circles_stays_a_hole()
    {
        var plate = Region.FromContours(
        [
            Draw.Polygon((0, -20), (60, -20), (60, 40), (0, 40)),
            Draw.Outline((45.000000167473964, 4.999999845168683, -0.9999999829695992), (25.000000130817302, 5.000000099350687, -1)),
        ]);
        Approximately.Equal(3600 - 100 * Math.PI, plate.Area, within: Tolerance.Area(plate.Length));
    }

    // A side of 1.2e-7 mm between two half circles: on a circle so small all edges of the node lie within the tolerance.
    [Fact]
    public void Notches_that_differ_by_the_tolerance_keep_their_order_about_the_shortest_edge()
    {
        var exact = Region.Of(Draw.Outline(
            (20, 25, 0.9999999999999999), (20, 15, 0.41421356237309503), (25, 10, 0), (55, 10, 0), (55, 15, -0.41421356237309503),
            (50, 20, 0), (50, 25, 0), (40, 25, -0.9999999999999999)));
        var shaken = Region.Of(Draw.Outline(
            (19.999999926781424, 24.99999994759319, 1), (20.00000003105683, 15.00000012084065, 0.41421356041789026),
            (25.000000113999203, 10.000000004838057, 0), (54.99999999999733, 10.00000003534686, 0),
            (54.99999997280775, 15.000000042254348, -0.41421356744156507), (49.99999987379284, 20.000000134279382, 0),
            (50.00000012496819, 25.00000012603469, 0), (39.99999986999935, 24.999999915023633, -0.9999999992599926)));
        Law.AreCombined(exact, shaken);
    }
}
