using TemplateForge.Fabrication;

namespace TemplateForge.Shop.Tests;

/// <summary>Holes for bolts and rivets by the printed tables, as they are printed.</summary>
public class FastenersTests
{
    // ISO 273: fine, medium, coarse (read); ISO coarse thread, tapping drills: Mechanical Engineer's Data Handbook p. 299 (read).
    [Theory]
    [InlineData("M4", 4.3, 4.5, 4.8, 3.3)]
    [InlineData("M5", 5.3, 5.5, 5.8, 4.2)]
    [InlineData("M6", 6.4, 6.6, 7.0, 5.0)]
    [InlineData("M8", 8.4, 9.0, 10.0, 6.8)]
    [InlineData("M10", 10.5, 11.0, 12.0, 8.5)]
    [InlineData("M12", 13.0, 13.5, 14.5, 10.2)]
    public void A_metric_bolt_has_the_holes_of_its_standards(string size, double fine, double medium, double coarse, double tapping)
    {
        Is(fine, size, FastenerHole.ClearanceFine);
        Is(medium, size, FastenerHole.ClearanceMedium);
        Is(coarse, size, FastenerHole.ClearanceCoarse);
        Is(tapping, size, FastenerHole.Tapping);
    }

    // A tapping drill of coarse thread is the size less the pitch, within 0.05 mm: pitches of ISO 261, as printed in the same table.
    [Theory]
    [InlineData("M4", 4, 0.7)]
    [InlineData("M5", 5, 0.8)]
    [InlineData("M6", 6, 1)]
    [InlineData("M8", 8, 1.25)]
    [InlineData("M10", 10, 1.5)]
    [InlineData("M12", 12, 1.75)]
    public void A_tapping_drill_is_the_size_less_the_pitch(string size, double diameter, double pitch) =>
        Assert.Equal(diameter - pitch, Of(size, FastenerHole.Tapping), 0.05 + 1e-9);

    // Close and free drills in inches: general shop chart, from memory.
    [Theory]
    [InlineData("no_10", 0.196, 0.201)]
    [InlineData("inch_1_4", 0.257, 0.266)]
    [InlineData("inch_5_16", 0.323, 0.332)]
    [InlineData("inch_3_8", 0.386, 0.397)]
    public void An_inch_bolt_has_a_close_and_a_free_drill_and_no_other(string size, double close, double free)
    {
        Is(close * 25.4, size, FastenerHole.ClearanceFine);
        Is(free * 25.4, size, FastenerHole.ClearanceMedium);
        Assert.False(Shipped.Tables.Bolts[size].TryHole(FastenerHole.Tapping, out _));
    }

    // Solid-rivet drills: airframe handbook ch. 4, from memory. A drill is a little larger than its rivet.
    [Theory]
    [InlineData("inch_3_32", 0.098, 3.0 / 32)]
    [InlineData("inch_1_8", 0.1285, 1.0 / 8)]
    [InlineData("inch_5_32", 0.159, 5.0 / 32)]
    [InlineData("inch_3_16", 0.191, 3.0 / 16)]
    [InlineData("inch_1_4", 0.257, 1.0 / 4)]
    public void A_solid_rivet_has_its_drill(string size, double inches, double rivet)
    {
        Assert.True(Shipped.Tables.Rivets[size].TryHole(FastenerHole.Rivet, out var drill));
        Assert.Equal(inches * 25.4, drill, 1e-9);
        Assert.InRange(drill / 25.4 - rivet, 0.001, 0.008);
    }

    private static void Is(double expected, string size, FastenerHole hole) => Assert.Equal(expected, Of(size, hole), 1e-9);

    private static double Of(string size, FastenerHole hole) =>
        Shipped.Tables.Bolts[size].TryHole(hole, out var diameter) ? diameter : throw new InvalidOperationException($"{size} has no hole {hole}.");
}
