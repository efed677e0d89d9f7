using TemplateForge.Testing;

namespace TemplateForge.Geometry.Tests;

public class VanishingTests
{
    // Above the notch's centre the quarter circles about both its corners leave uncovered what is not of their half disc.
    [Fact]
    public void An_arc_that_is_hollow_shrinks_to_radius_zero_when_the_plate_grows_by_its_radius()
    {
        var notched = Draw.Rectangle(0, 0, 40, 20).Subtract(Draw.Disc(new(20, 20), 5));
        Everywhere.Offsets(
            notched, 5, area: 800 + 120 * 5 + 25 * Math.PI - (50 - 12.5 * Math.PI), contours: 1);
    }

    [Fact]
    public void Arcs_of_several_radii_shrink_to_radius_zero_one_after_the_other()
    {
        var quarter = Math.Tan(Math.PI / 8);
        var rounded = Region.Of(Draw.Outline(
            (5, 0, 0), (50, 0, quarter), (60, 10, 0), (60, 25, quarter), (45, 40, 0), (5, 40, quarter), (0, 35, 0), (0, 5, quarter)));
        Everywhere.Offsets(rounded, -5, area: 50 * 30 - (1 - Math.PI / 4) * (25 + 100), contours: 1);
        Everywhere.Offsets(rounded, -10, area: 40 * 20 - (1 - Math.PI / 4) * 25, contours: 1);
        Everywhere.Offsets(rounded, -15, area: 30 * 10, contours: 1);
        Everywhere.Offsets(rounded, -20, area: 0, contours: 0);
    }

    [Fact]
    public void A_bar_and_a_slot_vanish_at_half_their_width()
    {
        Everywhere.Offsets(Draw.Rectangle(0, 0, 100, 10), -5, area: 0, contours: 0);
        Everywhere.Offsets(Region.Of(Outline.Slot(new(0, 0), new(30, 40), 10)), -5, area: 0, contours: 0);
    }

    // Of the square in its corner stays what lies farther than 5 mm from the corner within.
    [Fact]
    public void The_arms_of_an_L_vanish_at_half_their_width_and_a_piece_of_its_corner_stays() =>
        Everywhere.Offsets(
            Region.Of(Draw.Polygon((0, 0), (50, 0), (50, 10), (10, 10), (10, 50), (0, 50))), -5, area: 25 - 25 * Math.PI / 4, contours: 1);

    [Fact]
    public void A_slot_closes_when_the_plate_grows_by_half_its_width()
    {
        var plate = Draw.Rectangle(-50, -30, 50, 30).Subtract(Region.Of(Outline.Slot(new(-20, 0), new(20, 0), 10)));
        Everywhere.Offsets(plate, 5, area: 6000 + 320 * 5 + 25 * Math.PI, contours: 1);
    }

    [Fact]
    public void A_neck_parts_at_half_its_width()
    {
        var dumbbell = Draw.Rectangle(0, 0, 30, 30).Union(Draw.Rectangle(30, 10, 60, 20)).Union(Draw.Rectangle(60, 0, 90, 30));
        // Each head keeps 20 × 20 and, at the neck's mouth, what lies outside two quarter circles of 5 mm.
        Everywhere.Offsets(dumbbell, -5, area: 2 * (400 + 50 - 12.5 * Math.PI), contours: 2);
    }

    [Fact]
    public void A_hundredth_of_a_micrometre_short_of_half_the_width_stays_and_a_tenth_of_the_tolerance_does_not()
    {
        var bar = Draw.Rectangle(0, 0, 100, 10);
        Everywhere.Offsets(bar, -(5 - 1e-5), area: 2e-5 * (90 + 2e-5), contours: 1);
        foreach (var (_, by) in Symmetries.Placements) Assert.True(bar.Placed(by).Offset(-(5 - 1e-8)).IsEmpty);
    }

    // The walls of 10 mm on three sides of the hole vanish along whole edges. Outside the grown hole's rounded corners remain four
    // pieces of 25 − 25 π / 4, two of them part of what is left on the right.
    [Fact]
    public void An_island_whose_offset_touches_the_outer_along_whole_edges()
    {
        var plate = Draw.Rectangle(0, 0, 100, 60).Subtract(Draw.Rectangle(10, 10, 40, 50));
        Everywhere.Offsets(plate, -5, area: 50 * 50 + 4 * (25 - 25 * Math.PI / 4), contours: 3);
    }

    [Fact]
    public void Islands_that_grow_together_along_a_whole_edge_become_one()
    {
        var islands = Draw.Rectangle(0, 0, 20, 20).Union(Draw.Rectangle(30, 0, 50, 20));
        Everywhere.Offsets(islands, 5, area: 2 * (400 + 80 * 5 + 25 * Math.PI), contours: 1);
    }
}
