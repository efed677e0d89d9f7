using TemplateForge.Geometry;
using TemplateForge.Testing;

namespace TemplateForge.Fabrication.Tests;

/// <summary>The least clearance of an opening or a panel, and where, against plane geometry.</summary>
public class LeastClearanceTests
{
    private static Component Can(double radius, double height = 0) => new(
        new RevolvedForm(Region.Of(Outline.Rectangle(new(new(-50, 0), new(50, radius))))),
        new(Point.Origin, height, Angle.Zero, Angle.Zero, Angle.Zero), 2);

    // A hole of radius 100, its middle 3 mm off the middle of a can of radius 80: 100 − 80 − 3 on the side that it is off from.
    [Fact]
    public void A_round_hole_off_the_middle_of_a_can_is_nearest_on_one_side()
    {
        var least = LeastClearance.OfOpening(Region.Of(Outline.Circle(new(3, 0), 100)), [Can(80)]);
        Approximately.Equal(17, least.Distance, within: 0.001);
        Approximately.Equal(0, least.At.DistanceTo(new(-97, 0)), within: 0.1);
    }

    [Fact]
    public void The_opening_that_was_cleared_has_the_clearance_everywhere()
    {
        var component = Can(80) with { Travels = [new(10, Angle.FromDegrees(60), Angle.FromDegrees(30))] };
        Approximately.Equal(12, LeastClearance.OfOpening(ClearanceRegion.Of([component], 12), [component]).Distance, within: ClearanceRegion.MostError);
    }

    // No opening at all: a can that ends 7 mm over the sheet is 7 mm off the metal under it, away from every edge.
    [Fact]
    public void A_component_over_the_sheet_is_nearest_in_the_middle_of_the_metal()
    {
        var metal = Region.Of(Outline.Rectangle(new(new(-200, -200), new(200, 200))));
        Approximately.Equal(7, LeastClearance.OfMetal(metal, [Can(30, height: 57)]).Distance, within: 0.01);
    }

    [Fact]
    public void Where_they_meet_it_is_0() =>
        Assert.Equal(0, LeastClearance.OfOpening(Region.Of(Outline.Circle(new(50, 0), 100)), [Can(80)]).Distance);

    // The square's corner at (60, 60) is 60 √2 from the axis, and the sides 60: a can of radius 40.
    [Fact]
    public void A_square_opening_is_nearest_at_the_middle_of_a_side() =>
        Approximately.Equal(20, LeastClearance.OfOpening(Region.Of(Outline.Rectangle(new(new(-60, -60), new(60, 60)))), [Can(40)]).Distance, within: 0.01);
}
