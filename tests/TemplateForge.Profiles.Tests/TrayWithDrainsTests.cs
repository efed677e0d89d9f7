using TemplateForge.Testing;

namespace TemplateForge.Profiles.Tests;

public class TrayWithDrainsTests
{
    private static readonly Profile Tray = TheLibrary.Profile("tray-with-drains");

    // General mechanics: a bend of 90° takes 2 (R + T) − π/2 (R + K T) off two legs over the outside. R 1.5, T 1.2, DC01's K 0.44.
    private const double Deduction = 2 * (1.5 + 1.2) - Math.PI / 2 * (1.5 + 0.44 * 1.2);

    [Theory, InlineData("mitred"), InlineData("closed")]
    public void A_plain_blank_is_the_floor_and_two_walls_less_their_deductions(string corners)
    {
        var bounds = Tray.Make("edge=plain", $"corners={corners}").Piece("tray").Shape.Bounds;
        Approximately.Equal(240 + 2 * (3 + 1.2) + 2 * (40 - Deduction), bounds.Width, within: 1e-9);
        Approximately.Equal(175 + 2 * (3 + 1.2) + 2 * (40 - Deduction), bounds.Height, within: 1e-9);
    }

    // US Navy Steelworker, volume 2: a closed hem adds its own width.
    [Fact]
    public void A_hem_adds_its_width_on_both_sides() =>
        Approximately.Equal(
            2 * 8,
            Tray.Make().Piece("tray").Shape.Bounds.Width - Tray.Make("edge=plain").Piece("tray").Shape.Bounds.Width,
            within: 1e-9);

    [Theory]
    [InlineData(4, "drains=corners")]
    [InlineData(3, "drains=row")]
    [InlineData(8, "fixing=m8")]
    public void Its_floor_has_the_holes_that_were_asked_for(int holes, string given) =>
        Assert.Equal(holes, Tray.Make(given).Piece("tray").Shape.Contours.Count(c => !c.IsCounterClockwise));

    [Fact]
    public void A_drain_in_a_bend_is_refused() =>
        Assert.Contains("out of round", Assert.Single(Tray.Refuse("drain_in=10")).Problem, StringComparison.Ordinal);
}
