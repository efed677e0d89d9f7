using TemplateForge.Testing;

namespace TemplateForge.Geometry.Tests;

public class CombinationTests
{
    private static readonly Region Square = Draw.Rectangle(0, 0, 40, 40);

    [Fact]
    public void Squares_that_share_an_edge_become_one_rectangle_of_four_segments()
    {
        var both = Square.Union(Draw.Rectangle(40, 0, 80, 40));
        Assert.Equal(3200, both.Area);
        Assert.Equal(4, Assert.Single(both.Contours).Segments.Length);
    }

    [Fact]
    public void A_square_joined_with_something_away_from_it_keeps_its_four_segments() =>
        Assert.Equal([4, 2], Square.Union(Draw.Disc(new(100, 0), 5)).Contours.Select(c => c.Segments.Length));

    [Fact]
    public void Squares_that_touch_in_a_corner_stay_two_contours() =>
        Assert.Equal([4, 4], Square.Union(Draw.Rectangle(40, 40, 80, 80)).Contours.Select(c => c.Segments.Length));

    [Fact]
    public void A_disc_within_is_a_hole_of_two_half_circles()
    {
        var plate = Square.Subtract(Draw.Disc(new(20, 20), 5));
        Approximately.Equal(1600 - 25 * Math.PI, plate.Area, within: Tolerance.Area(200));
        Assert.Equal([4, 2], plate.Contours.Select(c => c.Segments.Length));
        Assert.Equal([true, false], plate.Contours.Select(c => c.IsCounterClockwise));
    }

    // A round hole that reaches the edge from within touches it: the edge stays whole.
    [Fact]
    public void A_disc_that_touches_the_edge_from_within_leaves_the_edge_whole()
    {
        var plate = Square.Subtract(Draw.Disc(new(5, 20), 5));
        Assert.Equal([4, 2], plate.Contours.Select(c => c.Segments.Length));
        Approximately.Equal(1600 - 25 * Math.PI, plate.Area, within: Tolerance.Area(200));
    }

    [Fact]
    public void A_region_less_itself_is_empty_however_it_is_drawn()
    {
        var plate = Square.Subtract(Draw.Disc(new(20, 20), 5));
        var redrawn = plate
            .Placed(Placement.Turned(Angle.FromDegrees(37), new(3, 4))).Placed(Placement.Turned(Angle.FromDegrees(-37), new(3, 4)));
        Assert.True(plate.Subtract(redrawn).IsEmpty);
        Assert.True(plate.ExclusiveOr(redrawn).IsEmpty);
        Approximately.Equal(plate.Area, plate.Intersect(redrawn).Area, within: Tolerance.Area(plate.Length));
    }

    [Fact]
    public void Nothing_joined_subtracted_or_shared_is_nothing_new()
    {
        Assert.Equal(1600, Square.Union(Region.Empty).Area);
        Assert.Equal(1600, Square.Subtract(Region.Empty).Area);
        Assert.True(Region.Empty.Subtract(Square).IsEmpty);
        Assert.True(Square.Intersect(Region.Empty).IsEmpty);
        Assert.True(Combination.Union([]).IsEmpty);
    }

    // 20 discs of 10 mm radius whose centres lie 10 mm apart in a row: neighbours share a lens of
    // 2 r² acos(d / 2r) − d / 2 √(4 r² − d²) = 122.837 mm², the next but one only a point.
    [Fact]
    public void A_row_of_discs_is_joined_at_once()
    {
        var lens = 2 * 100 * Math.Acos(0.5) - 5 * Math.Sqrt(300);
        var row = Combination.Union(Enumerable.Range(0, 20).Select(i => Draw.Disc(new(10 * i, 0), 10)));
        Approximately.Equal(20 * 100 * Math.PI - 19 * lens, row.Area, within: Tolerance.Area(row.Length));
        Assert.Single(row.Contours);
    }
}
