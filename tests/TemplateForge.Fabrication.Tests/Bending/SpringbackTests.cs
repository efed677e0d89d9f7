using TemplateForge.Geometry;

namespace TemplateForge.Fabrication.Tests.Bending;

public class SpringbackTests
{
    // German trade tables, k_R; the factors were read, the heads of the columns (inside radius in thicknesses) are from memory.
    [Theory]
    [InlineData("DC04", 1, 0.99)]
    [InlineData("DC04", 10, 0.97)]
    [InlineData("DC04", 100, 0.83)]
    [InlineData("DC01", 16, 0.93)]
    [InlineData("X12CrNi18-8", 40, 0.63)]
    [InlineData("EN AW-Al99.0", 6.3, 0.98)]
    [InlineData("EN AW-AlCuMg1", 63, 0.91)]
    [InlineData("EN AW-AlSiMgMn", 25, 0.86)]
    public void The_factors_are_those_of_the_table(string material, double ratio, double factor)
    {
        Assert.True(Springback.TryFromTable(material, ratio, out var springback));
        Assert.Equal(factor, springback.Factor, 1e-12);
    }

    [Fact]
    public void Between_two_columns_the_factor_lies_between_theirs()
    {
        Assert.True(Springback.TryFromTable("DC01", Math.Sqrt(10 * 16), out var springback));
        Assert.Equal(0.945, springback.Factor, 1e-12);
    }

    [Theory]
    [InlineData("X12CrNi18-8", 63)]
    [InlineData("DC04", 101)]
    [InlineData("tin", 1)]
    public void What_the_table_does_not_have_is_not_made_up(string material, double ratio)
    {
        Assert.False(Springback.TryFromTable(material, ratio, out var springback));
        Assert.Equal(Springback.Unstated, springback);
    }

    // k_R = angle wanted / angle of the tool.
    [Fact]
    public void A_bend_is_made_further_by_what_springs_back() =>
        Assert.Equal(90 / 0.97, new Springback(0.97, "trial bend").Overbend(Angle.QuarterTurn).Degrees, 1e-9);

    [Fact]
    public void What_is_folded_flat_is_not_bent_further() =>
        Assert.Equal(Angle.HalfTurn, new Springback(0.97, "trial bend").Overbend(Angle.HalfTurn));
}
