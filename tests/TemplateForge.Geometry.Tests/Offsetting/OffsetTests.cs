using TemplateForge.Testing;

namespace TemplateForge.Geometry.Tests;

public class OffsetTests
{
    private static readonly Region Square = Draw.Rectangle(0, 0, 40, 40);

    [Fact]
    public void A_square_grows_by_its_edges_and_four_quarter_circles()
    {
        var grown = Square.Offset(5);
        Approximately.Equal(1600 + 4 * 40 * 5 + 25 * Math.PI, grown.Area, within: Tolerance.Area(grown.Length));
        Assert.Equal(8, Assert.Single(grown.Contours).Segments.Length);
    }

    // Every start corner, both directions, mirrored, turned and 100 m away.
    [Fact]
    public void An_L_grows_by_its_edges_and_five_quarter_circles_less_one_square()
    {
        var theL = Draw.Polygon((0, 0), (40, 0), (40, 10), (20, 10), (20, 20), (0, 20));
        foreach (var image in Symmetries.Of(theL))
        {
            var grown = Region.Of(image.Shape).Offset(5);
            Approximately.Equal(600 + 120 * 5 + 5 * Math.PI * 25 / 4 - 25, grown.Area, within: Tolerance.Area(grown.Length));
            Assert.Equal(11, Assert.Single(grown.Contours).Segments.Length);
        }
    }

    [Fact]
    public void A_square_shrinks_to_nothing_at_half_its_width()
    {
        Assert.Equal(900, Square.Offset(-5).Area);
        Assert.True(Square.Offset(-20).IsEmpty);
        Assert.True(Square.Offset(-25).IsEmpty);
    }

    [Fact]
    public void A_slot_shrinks_to_nothing_at_exactly_half_its_width()
    {
        var slot = Region.Of(Draw.Outline((0, 0, 0), (30, 0, 1), (30, 10, 0), (0, 10, 1)));
        Assert.True(slot.Offset(-5).IsEmpty);
        Approximately.Equal(30 * 2 + Math.PI, slot.Offset(-4).Area, within: Tolerance.Area(70));
    }

    [Fact]
    public void A_disc_shrinks_to_nothing_at_its_radius()
    {
        Assert.True(Draw.Disc(new(0, 0), 10).Offset(-10).IsEmpty);
        Assert.Equal([2], Draw.Disc(new(0, 0), 10).Offset(-9.999).Contours.Select(c => c.Segments.Length));
    }

    [Fact]
    public void Rounded_corners_shrink_to_sharp_ones_at_their_radius_and_stay_sharp()
    {
        var quarter = Math.Tan(Math.PI / 8);
        var rounded = Region.Of(Draw.Outline(
            (5, 0, 0), (35, 0, quarter), (40, 5, 0), (40, 15, quarter), (35, 20, 0), (5, 20, quarter), (0, 15, 0), (0, 5, quarter)));
        foreach (var distance in (ReadOnlySpan<double>)[5, 7])
        {
            var shrunk = rounded.Offset(-distance);
            Approximately.Equal((40 - 2 * distance) * (20 - 2 * distance), shrunk.Area, within: Tolerance.Area(120));
            Assert.Equal(4, Assert.Single(shrunk.Contours).Segments.Length);
        }
    }

    // Past its centre an arc has nothing left to sweep.
    [Fact]
    public void A_hole_closes_when_its_plate_grows_by_its_radius_or_more()
    {
        var plate = Square.Subtract(Draw.Disc(new(20, 20), 5));
        Assert.Equal(2, plate.Offset(4.999).Contours.Length);
        foreach (var distance in (ReadOnlySpan<double>)[5, 7, 12])
        {
            var grown = Assert.Single(plate.Offset(distance).Contours);
            Approximately.Equal(
                1600 + 160 * distance + Math.PI * distance * distance, grown.Area, within: Tolerance.Area(grown.Length));
        }
    }

    // A plate of 65 × 25 mm with a half circle cut out of its whole left side: at both lips the contour turns right back. Growing
    // by 5 mm adds 5 mm along three sides, two quarter discs, half a ring, and half a disc at each lip.
    [Fact]
    public void The_knife_edged_lips_of_a_round_notch_are_rounded()
    {
        var notched = Region.Of(Draw.Outline((65, 0, 0), (65, 25, 0), (0, 25, -1), (0, 0, 0)));
        var grown = notched.Offset(5);
        var source = 65 * 25 - Math.PI * 12.5 * 12.5 / 2;
        var added = (65 + 25 + 65) * 5 + Math.PI / 2 * (12.5 * 12.5 - 7.5 * 7.5 + 25) + 25 * Math.PI;
        Approximately.Equal(source + added, grown.Area, within: Tolerance.Area(grown.Length));
        Law.IsOffset(grown, notched, 5);
    }

    // The wall is 10 mm thick: at 5 mm the offset of the hole lies on that of the edge. Round a square hole it is thicker at the
    // corners, where four squares less a quarter circle each are left; round a round one nothing is.
    [Fact]
    public void A_wall_vanishes_where_both_its_sides_move_by_half_its_thickness()
    {
        var wall = Square.Subtract(Draw.Rectangle(10, 10, 30, 30)).Offset(-5);
        Assert.Equal([3, 3, 3, 3], wall.Contours.Select(c => c.Segments.Length));
        Approximately.Equal(4 * (25 - 25 * Math.PI / 4), wall.Area, within: Tolerance.Area(wall.Length));
        var ring = Draw.Disc(new(0, 0), 20).Subtract(Draw.Disc(new(0, 0), 10));
        Assert.True(ring.Offset(-5).IsEmpty);
        Approximately.Equal(1.0 * Math.PI * 2 * 15, ring.Offset(-4.5).Area, within: Tolerance.Area(200));
    }

    [Fact]
    public void Two_parts_10_mm_apart_grow_together_when_each_has_grown_by_5_mm()
    {
        var parts = Square.Union(Draw.Rectangle(50, 0, 90, 40));
        Assert.Equal(2, parts.Offset(4.999).Contours.Length);
        Assert.Single(parts.Offset(5).Contours);
        Approximately.Equal(2 * (1600 + 800 + 25 * Math.PI), parts.Offset(5).Area, within: Tolerance.Area(500));
    }

    // Each needle of 2 mm at its foot and 100 mm long ends in a half circle less its own small angle.
    [Fact]
    public void A_needle_is_rounded_at_its_point()
    {
        var needle = Region.Of(Draw.Polygon((0, 0), (100, 1), (0, 2)));
        var grown = needle.Offset(3);
        Approximately.Equal(needle.Area + needle.Length * 3 + 9 * Math.PI, grown.Area, within: Tolerance.Area(grown.Length));
        Law.IsOffset(grown, needle, 3);
    }

    // A disc less a disc that touches it from within: both arcs leave the tip in one direction, and the contour turns back there.
    [Fact]
    public void A_tip_without_an_angle_is_rounded()
    {
        var crescent = Draw.Disc(new(0, 0), 10).Subtract(Draw.Disc(new(5, 0), 5));
        Approximately.Equal(75 * Math.PI, crescent.Area, within: Tolerance.Area(crescent.Length));
        foreach (var distance in (ReadOnlySpan<double>)[2, -2, 5, -5]) Law.IsOffset(crescent.Offset(distance), crescent, distance);
    }

    [Fact]
    public void No_distance_leaves_the_region_as_it_is()
    {
        Assert.Same(Square, Square.Offset(0));
        Assert.Throws<ArgumentOutOfRangeException>(() => Square.Offset(double.NaN));
        Assert.True(Region.Empty.Offset(5).IsEmpty);
    }
}
