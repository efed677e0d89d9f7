using TemplateForge.Geometry;
using TemplateForge.Testing;

namespace TemplateForge.Fabrication.Tests.Warnings;

/// <summary>Edge of a hole to the nearer tangent line: 2 t + r (common practice, from memory); a slot along the bend, 4 t + r.</summary>
public class HoleWarningsTests
{
    // Thickness 1, inside radius 1.5, 3 mm wide: tangent lines at y = 48.5 and 51.5; 2 t + r is 3.5, 4 t + r is 5.5.
    private const double Tangent = 51.5;

    private static readonly BendLine Across =
        new(1, new(0, 50), new(200, 50), Angle.QuarterTurn, Angle.QuarterTurn, BendWay.Up, InsideRadius: 1.5, Allowance: 3);

    private static Warning[] Of(Piece piece, params BendLine[] bends) => [.. HoleWarnings.Of(piece with { BendLines = [.. bends] })];

    [Fact]
    public void A_hole_just_under_two_thicknesses_and_a_radius_from_the_tangent_line_is_warned_of_where_it_is_nearest()
    {
        var warning = Assert.Single(Of(Plates.With(Plates.Round(60, Tangent + 3.5 + 4 - Plates.Just, 8)), Across));
        Assert.Equal("hole too near a bend", warning.Rule);
        Assert.Contains("3.5 mm", warning.Text, StringComparison.Ordinal);
        Approximately.Equal(new Point(60, Tangent + 3.5), warning.At, within: 1e-4);
        Assert.Empty(Of(Plates.With(Plates.Round(60, Tangent + 3.5 + 4 + Plates.Just, 8)), Across));
    }

    [Theory]
    [InlineData(48.5 - 3.5 - 4 + 1e-5, 1)]
    [InlineData(48.5 - 3.5 - 4 - 1e-5, 0)]
    public void So_is_one_on_the_other_side(double y, int warnings) =>
        Assert.Equal(warnings, Of(Plates.With(Plates.Round(60, y, 8)), Across).Length);

    [Theory]
    [InlineData(50, 8)]
    [InlineData(51, 0.5)] // between bend line and tangent line, and meets neither
    [InlineData(54, 6)]
    public void A_hole_in_the_bend_itself_is_said_to_be_in_it(double y, double diameter) =>
        Assert.Contains("in bend 1", Assert.Single(Of(Plates.With(Plates.Round(60, y, diameter)), Across)).Text, StringComparison.Ordinal);

    [Theory]
    [InlineData(5.5 - 1e-5, 1)]
    [InlineData(5.5 + 1e-5, 0)]
    public void A_slot_along_the_bend_wants_four_thicknesses_and_a_radius(double clear, int warnings)
    {
        var y = Tangent + clear + 3;
        var found = Of(Plates.With(Outline.Slot(new(60, y), new(100, y), 6)), Across);
        Assert.Equal(warnings, found.Length);
        Assert.All(found, w => Assert.Equal("slot too near a bend", w.Rule));
    }

    [Fact]
    public void A_slot_that_stands_square_to_the_bend_is_a_hole_like_any_other() =>
        Assert.Empty(Of(Plates.With(Outline.Slot(new(60, Tangent + 3.6 + 3), new(60, 90), 6)), Across));

    [Fact]
    public void A_hole_beyond_the_ends_of_a_bend_is_far_from_it() =>
        Assert.Empty(Of(Plates.With(Plates.Round(60, 50, 8)), Across with { From = new(70, 50) }));

    [Fact]
    public void A_notch_that_crosses_a_bend_at_the_edge_is_no_hole()
    {
        var notched = Plates.With();
        notched = notched with { Shape = notched.Shape.Subtract(Region.Of(Plates.Round(0, 50, 20))) };
        Assert.Empty(Of(notched, Across));
    }

    // The same hole is in the way of a bend that goes on past it.
    [Fact]
    public void A_relief_hole_in_which_a_bend_ends_is_not_warned_of()
    {
        var plate = Plates.With(Plates.Round(60, 50, 8));
        Assert.Empty(Of(plate, Across with { To = new(58, 50) }));
        Assert.Single(Of(plate, Across));
    }

    // A window whose lower edge is turned up: the flange is 3 mm wide, nearer than any hole may be.
    [Fact]
    public void An_opening_to_which_a_bend_turns_its_flange_is_not_warned_of()
    {
        var window = Outline.Rectangle(new(new(50, 40), new(150, 80)));
        var along = new BendLine(1, new(140, 35.5), new(60, 35.5), Angle.QuarterTurn, Angle.QuarterTurn, BendWay.Up, 1.5, 3);
        Assert.Equal(34, along.TangentLines.Held.Start.Y);
        Assert.Empty(Of(Plates.With(window), along));
        Assert.Single(Of(Plates.With(window), along with { From = along.To, To = along.From }));
    }

    // The rim of a hole of 20 is bent along a circle of 27, between tangent circles of 24 and 30.
    [Theory]
    [InlineData(3.5 - 1e-4, 1)]
    [InlineData(3.5 + 1e-4, 0)]
    public void A_flanged_hole_is_the_edge_of_its_bend_and_a_hole_beside_it_may_be_too_near(double clear, int warnings)
    {
        var centre = new Point(50, 50);
        var halves = new[] { 1, -1 }.Select(side => new CurvedBend(
            1, Half(side, 13.5), Half(side, 15), Half(side, 12), Angle.FromDegrees(60), Angle.FromDegrees(60), BendWay.Up, InsideRadius: 1.5));
        var plate = Plates.With(Plates.Round(50, 50, 20), Plates.Round(50 + 15 + clear + 4, 50, 8)) with { CurvedBends = [.. halves] };
        Assert.Equal(warnings, HoleWarnings.Of(plate).Length);

        Path Half(int side, double radius) =>
            new(Segment.Arc(centre - new Vector(0, side * radius), centre + new Vector(0, side * radius), bulge: 1));
    }
}
