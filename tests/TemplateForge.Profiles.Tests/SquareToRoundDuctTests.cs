using TemplateForge.Testing;

namespace TemplateForge.Profiles.Tests;

public class SquareToRoundDuctTests
{
    private static readonly Profile Duct = TheLibrary.Profile("square-to-round-duct");

    // The middle of the sheet runs half a thickness outside the collar and its room: a rectangle with sharp corners, a circle.
    [Fact]
    public void Its_edges_are_as_long_as_its_collars_with_room_and_half_the_sheet()
    {
        var labels = Duct.Make("corner=0", "fit=0.5", "sheet=1").Piece("duct").Labels.Select(l => l.Text).ToList();
        Assert.Contains($"rectangular collar, {2 * (180 + 2 * 0.5 + 1 + 120 + 2 * 0.5 + 1):0.0} long", labels);
        Assert.Contains($"round collar, {Math.PI * (100 + 2 * 0.5 + 1):0.0} long", labels);
    }

    [Fact]
    public void Two_halves_without_laps_weigh_what_one_part_weighs()
    {
        var whole = Duct.Make("seam_lap=0", "collar_lap=0").Piece("duct").Weight;
        var halves = Duct.Make("seam_lap=0", "collar_lap=0", "halves=two");
        Approximately.Equal(whole, halves.Piece("duct").Weight + halves.Piece("second-half").Weight, within: whole * 0.002);
    }

    [Fact]
    public void A_round_collar_that_would_dip_into_the_other_is_refused() =>
        Assert.Contains("low side", Duct.Refuse("tilt=45", "rise=40", "diameter=100")[0].Problem, StringComparison.Ordinal);
}
