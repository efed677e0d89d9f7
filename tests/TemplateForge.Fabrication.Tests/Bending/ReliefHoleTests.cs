using TemplateForge.Testing;

namespace TemplateForge.Fabrication.Tests.Bending;

/// <summary>FAA-H-8083-31, volume 1, chapter 4 (read); inches as printed.</summary>
public class ReliefHoleTests
{
    private const double Inch = 25.4;

    // At least 1/8 in for sheet to 0.064 in, 3/16 in for 0.072 to 0.128 in; where the bend is large, about twice its radius.
    [Theory]
    [InlineData(0.032, 0.03, 1.0 / 8)]
    [InlineData(0.064, 0.06, 1.0 / 8)]
    [InlineData(0.072, 0.06, 3.0 / 16)]
    [InlineData(0.128, 0.06, 3.0 / 16)]
    [InlineData(0.040, 5.0 / 32, 5.0 / 16)]
    [InlineData(0.102, 0.25, 0.5)]
    public void A_relief_hole_is_twice_the_radius_and_no_less_than_its_sheet_wants(double thickness, double radius, double diameter)
    {
        Assert.True(ReliefHole.TryDiameter(radius * Inch, thickness * Inch, out var found));
        Approximately.Equal(diameter * Inch, found, within: 1e-9);
    }

    // It reaches 1/32 to 1/16 in past the tangent lines that cross in its middle: the least hole of thin sheet by half its diameter.
    [Fact]
    public void The_least_hole_reaches_a_sixteenth_past_the_tangent_lines()
    {
        Assert.True(ReliefHole.TryDiameter(0, 0.040 * Inch, out var found));
        Assert.InRange(found / 2 / Inch, 1.0 / 32, 1.0 / 16);
    }

    [Fact]
    public void Of_thicker_sheet_the_handbook_says_nothing() => Assert.False(ReliefHole.TryDiameter(1, 0.129 * Inch, out _));
}
