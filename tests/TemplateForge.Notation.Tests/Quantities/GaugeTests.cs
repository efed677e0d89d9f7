namespace TemplateForge.Notation.Tests;

/// <summary>Inches as printed; half a unit of the last printed digit is allowed.</summary>
public class GaugeTests
{
    // 10 and 18 ga: Electromechanical Design Handbook, 3rd edition; 20 ga: AISC handbook, 7th edition. The others: the usual table.
    [Theory]
    [InlineData(10, 0.1345)]
    [InlineData(11, 0.1196)]
    [InlineData(12, 0.1046)]
    [InlineData(13, 0.0897)]
    [InlineData(14, 0.0747)]
    [InlineData(15, 0.0673)]
    [InlineData(16, 0.0598)]
    [InlineData(17, 0.0538)]
    [InlineData(18, 0.0478)]
    [InlineData(19, 0.0418)]
    [InlineData(20, 0.0359)]
    [InlineData(21, 0.0329)]
    [InlineData(22, 0.0299)]
    [InlineData(23, 0.0269)]
    [InlineData(24, 0.0239)]
    [InlineData(25, 0.0209)]
    [InlineData(26, 0.0179)]
    [InlineData(27, 0.0164)]
    [InlineData(28, 0.0149)]
    public void Steel_follows_the_Manufacturers_Standard_Gauge(int gauge, double inches) => Agrees(gauge, "steel", inches, 0.00005);

    // The Electromechanical Design Handbook, 3rd edition, has 28 ga cut short, where the usual table rounds 0.01494 to 0.0149.
    [Fact]
    public void A_figure_that_a_handbook_cuts_short_is_within_its_last_digit() => Agrees(28, "steel", 0.0148, 0.00015);

    // 15 U.S.C. 206 prints the ounces of a square foot. AISC handbook, 7th edition: 20 ga weighs 24 oz or 1.5 lb, at 41.82 lb/ft² for each
    // inch, which is 0.2904 lb/in³ and not what steel weighs. The act itself reckons wrought iron of 480 lb/ft³, 40 lb/ft² for each inch.
    [Theory]
    [InlineData(10, 90)]
    [InlineData(11, 80)]
    [InlineData(12, 70)]
    [InlineData(13, 60)]
    [InlineData(14, 50)]
    [InlineData(15, 45)]
    [InlineData(16, 40)]
    [InlineData(17, 36)]
    [InlineData(18, 32)]
    [InlineData(19, 28)]
    [InlineData(20, 24)]
    [InlineData(21, 22)]
    [InlineData(22, 20)]
    [InlineData(23, 18)]
    [InlineData(24, 16)]
    [InlineData(25, 14)]
    [InlineData(26, 12)]
    [InlineData(27, 11)]
    [InlineData(28, 10)]
    public void A_square_foot_weighs_the_ounces_of_the_act_by_either_basis(int gauge, double ounces)
    {
        var (steel, iron) = (GaugeSystem.Steel.Thickness(gauge) / 25.4, GaugeSystem.UsStandard.Thickness(gauge) / 25.4);
        Assert.Equal(ounces, steel * 41.82 * 16, 1e-9);
        Assert.Equal(ounces, steel * 144 * 0.2904 * 16, 1e-4 * ounces);
        Assert.Equal(ounces, iron / 12 * 480 * 16, 1e-9);
    }

    // The usual table of galvanised sheet (to 24 ga from memory, from there on read).
    [Theory]
    [InlineData(10, 0.1382)]
    [InlineData(11, 0.1233)]
    [InlineData(12, 0.1084)]
    [InlineData(13, 0.0934)]
    [InlineData(14, 0.0785)]
    [InlineData(15, 0.0710)]
    [InlineData(16, 0.0635)]
    [InlineData(17, 0.0575)]
    [InlineData(18, 0.0516)]
    [InlineData(19, 0.0456)]
    [InlineData(20, 0.0396)]
    [InlineData(21, 0.0366)]
    [InlineData(22, 0.0336)]
    [InlineData(23, 0.0306)]
    [InlineData(24, 0.0276)]
    [InlineData(25, 0.0247)]
    [InlineData(26, 0.0217)]
    [InlineData(27, 0.0202)]
    [InlineData(28, 0.0187)]
    public void Galvanised_sheet_is_thicker_by_its_zinc(int gauge, double inches) => Agrees(gauge, "galvanised", inches, 0.00005);

    // ASTM B258, as printed to four decimals in wire tables.
    [Theory]
    [InlineData(10, 0.1019)]
    [InlineData(11, 0.0907)]
    [InlineData(12, 0.0808)]
    [InlineData(13, 0.0720)]
    [InlineData(14, 0.0641)]
    [InlineData(15, 0.0571)]
    [InlineData(16, 0.0508)]
    [InlineData(17, 0.0453)]
    [InlineData(18, 0.0403)]
    [InlineData(19, 0.0359)]
    [InlineData(20, 0.0320)]
    [InlineData(21, 0.0285)]
    [InlineData(22, 0.0253)]
    [InlineData(23, 0.0226)]
    [InlineData(24, 0.0201)]
    [InlineData(25, 0.0179)]
    [InlineData(26, 0.0159)]
    [InlineData(27, 0.0142)]
    [InlineData(28, 0.0126)]
    public void Aluminium_follows_the_American_Wire_Gauge(int gauge, double inches) => Agrees(gauge, "aluminium", inches, 0.00005);

    // 15 U.S.C. 206 prints these as decimal fractions, so they are exact.
    [Theory]
    [InlineData(10, 0.140625)]
    [InlineData(11, 0.125)]
    [InlineData(12, 0.109375)]
    [InlineData(13, 0.09375)]
    [InlineData(14, 0.078125)]
    [InlineData(15, 0.0703125)]
    [InlineData(16, 0.0625)]
    [InlineData(17, 0.05625)]
    [InlineData(18, 0.05)]
    [InlineData(19, 0.04375)]
    [InlineData(20, 0.0375)]
    [InlineData(21, 0.034375)]
    [InlineData(22, 0.03125)]
    [InlineData(23, 0.028125)]
    [InlineData(24, 0.025)]
    [InlineData(25, 0.021875)]
    [InlineData(26, 0.01875)]
    [InlineData(27, 0.0171875)]
    [InlineData(28, 0.015625)]
    public void The_US_Standard_Gauge_is_that_of_the_act(int gauge, double inches) => Agrees(gauge, "us-standard", inches, 1e-12);

    // BS 3737 (SWG), Holtzapffel's table (BWG), Order in Council of 10 July 1914 (BG, which was read to 22): printed figures.
    [Theory]
    [InlineData(10, 0.128, 0.134, 0.1250)]
    [InlineData(11, 0.116, 0.120, 0.1113)]
    [InlineData(12, 0.104, 0.109, 0.0991)]
    [InlineData(13, 0.092, 0.095, 0.0882)]
    [InlineData(14, 0.080, 0.083, 0.0785)]
    [InlineData(15, 0.072, 0.072, 0.0699)]
    [InlineData(16, 0.064, 0.065, 0.0625)]
    [InlineData(17, 0.056, 0.058, 0.0556)]
    [InlineData(18, 0.048, 0.049, 0.0495)]
    [InlineData(19, 0.040, 0.042, 0.0440)]
    [InlineData(20, 0.036, 0.035, 0.0392)]
    [InlineData(21, 0.032, 0.032, 0.0349)]
    [InlineData(22, 0.028, 0.028, 0.03125)]
    [InlineData(23, 0.024, 0.025, 0.02782)]
    [InlineData(24, 0.022, 0.022, 0.02476)]
    [InlineData(25, 0.020, 0.020, 0.02204)]
    [InlineData(26, 0.018, 0.018, 0.01961)]
    [InlineData(27, 0.0164, 0.016, 0.01745)]
    [InlineData(28, 0.0148, 0.014, 0.015625)]
    public void British_gauges_are_those_of_their_tables(int gauge, double swg, double bwg, double bg)
    {
        Agrees(gauge, "swg", swg, 1e-12);
        Agrees(gauge, "bwg", bwg, 1e-12);
        Agrees(gauge, "bg", bg, 1e-12);
    }

    // The sheet gauge of 1914 falls by one law: six numbers halve the thickness (0.125 at 10, 0.0625 at 16, 0.03125 at 22). So do the
    // figures that are from memory.
    [Fact]
    public void Six_numbers_of_the_British_sheet_gauge_halve_the_thickness()
    {
        for (var gauge = GaugeSystem.Least; gauge <= GaugeSystem.Greatest; gauge++)
            Agrees(gauge, "bg", 0.125 / Math.Pow(2, (gauge - 10) / 6.0), 0.0003);
    }

    // One number, seven thicknesses; and 20 gauge of the two British systems for sheet differs by 9 %.
    [Fact]
    public void Sixteen_gauge_is_another_sheet_in_every_system()
    {
        foreach (var (system, inches) in new[]
        {
            ("us-standard", 0.0625), ("steel", 0.0598), ("galvanised", 0.0635), ("aluminium", 0.0508), ("swg", 0.064), ("bwg", 0.065), ("bg", 0.0625),
        })
            Agrees(16, system, inches, 0.00005);
        Assert.Equal(1.09, GaugeSystem.BirminghamSheet.Thickness(20) / GaugeSystem.Imperial.Thickness(20), 0.005);
    }

    [Fact]
    public void In_every_system_a_higher_gauge_is_thinner()
    {
        foreach (var system in GaugeSystem.All)
        {
            for (var gauge = GaugeSystem.Least; gauge < GaugeSystem.Greatest; gauge++)
                Assert.True(system.Thickness(gauge) > system.Thickness(gauge + 1), $"{system.Title} {gauge}");
        }
    }

    [Theory]
    [InlineData("18ga galvanized")]
    [InlineData("18 gauge galvanised steel")]
    [InlineData("18 GA Galvanised")]
    public void The_system_is_understood_as_it_is_written(string text) =>
        Assert.Equal(GaugeSystem.Galvanised.Thickness(18), QuantityReaderTests.Read(text, Unit.Millimetre).Value);

    [Fact]
    public void Us_standard_is_understood_with_a_hyphen_or_a_space()
    {
        Assert.Equal(1.27, QuantityReaderTests.Read("18 ga us-standard", Unit.Inch).Value, 1e-12);
        Assert.Equal(1.27, QuantityReaderTests.Read("18 ga us standard", Unit.Inch).Value, 1e-12);
    }

    [Fact]
    public void A_gauge_without_its_system_is_answered_with_all_thicknesses()
    {
        var complaint = QuantityReaderTests.Refused("18 ga", Unit.Millimetre);
        Assert.Equal(Wordings.GaugeWithoutSystem(Heard.Start, "18 ga", 18), complaint);
        foreach (var part in new[] { "18 ga steel (1.215 mm)", "galvanised (1.31 mm)", "aluminium (1.024 mm)", "us-standard (1.27 mm)", "swg (1.219 mm)", "bwg (1.245 mm)", "bg (1.257 mm)" })
            Assert.Contains(part, complaint.Remedy, StringComparison.Ordinal);
    }

    [Fact]
    public void An_unknown_system_is_told_with_its_place() =>
        Assert.Equal(Wordings.UnknownGaugeSystem(Heard.Start.Right(6), "tin", "18 ga", 18), QuantityReaderTests.Refused("18 ga tin", Unit.Millimetre));

    [Theory]
    [InlineData("9 ga steel", "9 ga")]
    [InlineData("29 ga swg", "29 ga")]
    [InlineData("18.5 ga swg", "18.5 ga")]
    public void A_gauge_that_is_in_no_table_is_refused(string text, string written) =>
        Assert.Equal(Wordings.GaugeOutOfRange(Heard.Start, written), QuantityReaderTests.Refused(text, Unit.Millimetre));

    [Fact]
    public void A_gauge_is_a_length() =>
        Assert.Equal("`18 ga swg` is a length, but tilt is an angle.", QuantityReaderTests.Refused("18 ga swg", Unit.Degree, "tilt").Problem);

    [Theory]
    [InlineData(9)]
    [InlineData(29)]
    public void A_thickness_is_not_asked_for_outside_the_table(int gauge) =>
        Assert.Throws<ArgumentOutOfRangeException>(() => GaugeSystem.Steel.Thickness(gauge));

    private static void Agrees(int gauge, string system, double inches, double within) =>
        Assert.Equal(inches, QuantityReaderTests.Read($"{gauge} ga {system}", Unit.Millimetre).Value / 25.4, within);
}
