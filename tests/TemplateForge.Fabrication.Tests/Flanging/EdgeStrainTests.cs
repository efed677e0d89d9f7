using TemplateForge.Testing;

namespace TemplateForge.Fabrication.Tests;

// The simple radial model, worked out from its closed form (general mechanics; not printed figures). Four decimals, so 0.00005.
public class EdgeStrainTests
{
    [Theory]
    [InlineData(60, 6, 0.1111, 0.1054)]
    [InlineData(50, 10, 0.2500, 0.2231)]
    public void A_flange_inside_an_arc_stretches_its_edge(double radius, double height, double share, double trueStrain)
    {
        Approximately.Equal(share, EdgeStrain.Share(radius - height, radius), within: 0.00005);
        Approximately.Equal(trueStrain, EdgeStrain.True(radius - height, radius), within: 0.00005);
    }

    [Theory]
    [InlineData(60, 6, 0.0953)]
    [InlineData(50, 10, 0.1823)]
    public void A_flange_outside_an_arc_shrinks_its_edge(double radius, double height, double trueStrain) =>
        Approximately.Equal(-trueStrain, EdgeStrain.True(radius + height, radius), within: 0.00005);

    [Fact]
    public void A_flange_as_high_as_its_hole_s_radius_is_refused() =>
        Assert.Throws<ArgumentOutOfRangeException>(() => EdgeStrain.Share(flat: 0, folded: 20));
}
