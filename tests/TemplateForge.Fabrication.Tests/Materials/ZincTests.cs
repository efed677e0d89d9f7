using TemplateForge.Testing;

namespace TemplateForge.Fabrication.Tests.Materials;

/// <summary>Zinc on sheet and on finished parts, as the standards print it.</summary>
public class ZincTests
{
    private const double Mil = 25.4; // µm

    // ASTM A653/A653M, table 1 (read), g/m²: both faces and one face by three spots, both faces by one spot.
    [Theory]
    [InlineData("Z90", 90, 30, 75)]
    [InlineData("Z120", 120, 36, 90)]
    [InlineData("Z180", 180, 60, 150)]
    [InlineData("Z275", 275, 94, 235)]
    [InlineData("Z350", 350, 120, 300)]
    [InlineData("Z450", 450, 154, 385)]
    [InlineData("Z600", 600, 204, 510)]
    public void A_metric_designation_has_the_zinc_of_its_row(string name, double both, double one, double spot)
    {
        Assert.True(ZincDesignation.TryFind(name, out var coating));
        Assert.Equal((both, one, spot), (coating.BothFaces, coating.LeastOnOneFace, coating.LeastAtOneSpot));
        Assert.Equal(name, FormattableString.Invariant($"Z{coating.BothFaces}"));
    }

    // The same table in oz/ft²; 1.00 oz/ft² = 305 g/m² (read), so that G60 is nearly Z180, and G90 is Z275.
    [Theory]
    [InlineData("G60", 0.60, 0.20, 0.50, "Z180", 4)]
    [InlineData("G90", 0.90, 0.32, 0.80, "Z275", 1)]
    public void A_designation_in_ounces_is_that_of_its_row_and_near_a_metric_one(
        string name, double both, double one, double spot, string metric, double within)
    {
        Assert.True(ZincDesignation.TryFind(name, out var coating));
        Approximately.Equal(both * 305, coating.BothFaces, within: 0.5 * both);
        Approximately.Equal(one * 305, coating.LeastOnOneFace, within: 0.5 * one);
        Approximately.Equal(spot * 305, coating.LeastAtOneSpot, within: 0.5 * spot);
        Assert.True(ZincDesignation.TryFind(metric, out var same));
        Approximately.Equal(same.BothFaces, coating.BothFaces, within);
    }

    // A trap: both faces have 275 g/m² together, but one alone may have less than half, and one spot less than the mean of three.
    [Fact]
    public void A_face_has_less_than_half_and_a_spot_less_than_three() =>
        Assert.All(ZincDesignation.Names, name =>
        {
            Assert.True(ZincDesignation.TryFind(name, out var coating));
            Assert.True(coating.LeastOnOneFace < coating.BothFaces / 2 && coating.LeastAtOneSpot < coating.BothFaces);
        });

    // ASTM A653 (read): 7.14 g/m² is 1 µm, and 1.00 oz/ft² is 1.68 mil. Z275 by it: 38.5 µm on both faces, 19.3 on one.
    [Fact]
    public void An_ounce_is_1_68_mil_thick()
    {
        Approximately.Equal(1.68 * Mil, ZincCoating.InOunces(2, 0, 0).MicrometresOnAFace, within: 0.005 * Mil);
        Approximately.Equal(1, new ZincCoating(2 * 7.14, 0).MicrometresOnAFace, within: 1e-12);
        Approximately.Equal(38.5, 2 * new ZincCoating(275, 94).MicrometresOnAFace, within: 0.05);
    }

    // Grams that are a µm on a square metre (read): of sheet 7.14; pure zinc at 20 °C 7.133; coating practice 7.2; parts that are dipped, ASTM A123,
    // 7.067, so that galvanisers print 75 µm = 2.95 mil = 1.74 oz/ft² = 530.03 g/m². They differ by 1 %.
    [Fact]
    public void Sheet_and_dipped_parts_are_reckoned_within_one_per_cent_of_each_other()
    {
        Approximately.Equal(75, new ZincCoating(2 * 530.03, 0).MicrometresOnAFace, within: 0.011 * 75);
        Approximately.Equal(2.95 * Mil, ZincCoating.InOunces(2 * 1.74, 0, 0).MicrometresOnAFace, within: 0.011 * 75);
        Approximately.Equal(530.03, ZincCoating.InOunces(1.74, 0, 0).BothFaces, within: 0.005 * 305);
        Assert.All([7.133, 7.2, 7.067], grams => Approximately.Equal(1, new ZincCoating(2 * grams, 0).MicrometresOnAFace, within: 0.011));
    }

    // EN ISO 1461, not centrifuged (read): mean and least local, µm, over 6 mm, over 3 to 6, 1.5 to 3, and under 1.5 mm.
    [Theory]
    [InlineData(8, 85, 70)]
    [InlineData(6.001, 85, 70)]
    [InlineData(6, 70, 55)]
    [InlineData(3.001, 70, 55)]
    [InlineData(3, 55, 45)]
    [InlineData(1.5, 55, 45)]
    [InlineData(1.499, 45, 35)]
    [InlineData(0.8, 45, 35)]
    public void A_part_that_is_dipped_takes_more_zinc_the_thicker_it_is(double thickness, double mean, double local) =>
        Assert.Equal(new DippedZinc(mean, local), DippedZinc.On(thickness));

    [Theory]
    [InlineData(0)]
    [InlineData(double.NaN)]
    public void What_is_no_sheet_cannot_be_dipped(double thickness) => Assert.Throws<ArgumentOutOfRangeException>(() => DippedZinc.On(thickness));

    [Theory]
    [InlineData("Z276")]
    [InlineData("z275")]
    [InlineData("")]
    public void Another_designation_is_not_made_up(string name)
    {
        Assert.False(ZincDesignation.TryFind(name, out var coating));
        Assert.Equal(ZincCoating.None, coating);
    }
}
