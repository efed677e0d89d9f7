using CsCheck;
using TemplateForge.Geometry;
using TemplateForge.Testing;

namespace TemplateForge.Fabrication.Tests.Bending;

public class BendTests
{
    private const double Inch = 25.4;

    // AC 43.13-1B, paragraph 4-56, page 4-14: 0.064 in sheet, radius 0.25 in, through 45° has a setback of 0.130 in.
    [Fact]
    public void A_45_degree_bend_in_0_064_inch_sheet_has_a_setback_of_0_130_inch() =>
        Approximately.Equal(0.130 * Inch, Airframe(45, 0.25 * Inch, 0.064 * Inch).Setback, within: 0.0005 * Inch);

    // AC 43.13-1B, table 4-7 (9/8/98, page 4-15): K = tan(A / 2) as printed. One unit in the last place, for the table is partly cut short.
    // Its entries for 86°, 159° and 176° are wrong in the copy that was read, and not among these.
    [Theory]
    [InlineData(1, 0.0087, 4), InlineData(10, 0.0874, 4), InlineData(15, 0.1316, 4), InlineData(30, 0.2679, 4), InlineData(45, 0.4142, 4)]
    [InlineData(50, 0.4663, 4), InlineData(60, 0.5773, 4), InlineData(75, 0.7673, 4), InlineData(90, 1.000, 3), InlineData(100, 1.191, 3)]
    [InlineData(105, 1.303, 3), InlineData(110, 1.428, 3), InlineData(120, 1.732, 3), InlineData(135, 2.414, 3), InlineData(150, 3.732, 3)]
    [InlineData(160, 5.671, 3), InlineData(170, 11.43, 2), InlineData(179, 114.59, 2)]
    public void The_setback_is_the_handbooks_k_times_radius_and_thickness(double degrees, double k, int decimals) =>
        Approximately.Equal(k, Airframe(degrees, insideRadius: 0.75, thickness: 0.25).Setback, within: Math.Pow(10, -decimals) + 1e-9);

    // FAA-H-8083-31, volume 1, chapter 4, figure 4-129: 0.040 in sheet, 5/32 in radius, 0.003034 in for each degree. Its head gives the
    // radius as 0.156 in, for which the formula gives 0.0030311, for 5/32 in 0.0030354: 5e-6 holds for both.
    [Theory]
    [InlineData(0.156)]
    [InlineData(5.0 / 32)]
    public void The_airframe_handbook_adds_0_003034_inch_for_each_degree(double radius) =>
        Approximately.Equal(0.003034 * Inch, Airframe(1, radius * Inch, 0.040 * Inch).Allowance, within: 5e-6 * Inch);

    // The same page works the L bracket of figure 4-130: bent through 60°, it takes 0.003034 × 60 = 0.18204 in. The formula gives 0.18213
    // with 5/32 in.
    [Fact]
    public void A_60_degree_bend_in_0_040_inch_sheet_takes_0_18204_inch() =>
        Approximately.Equal(0.18204 * Inch, Airframe(60, 5.0 / 32 * Inch, 0.040 * Inch).Allowance, within: 0.0001 * Inch);

    // US Navy manual of aviation structural mechanics, chapter 13, prints (0.0173 R + 0.0078 T): a third constant for π / 180, 0.75 % off.
    [Fact]
    public void The_navy_s_constant_differs_by_less_than_one_per_cent()
    {
        var navy = (0.0173 * 0.156 + 0.0078 * 0.040) * 90 * Inch;
        Approximately.Equal(navy, Airframe(90, 0.156 * Inch, 0.040 * Inch).Allowance, within: 0.01 * navy);
    }

    // DIN 6935 as a German trade tables page works it: β = 60° (bent through 120°), r = 6, s = 5, k = 0.7 read off the graph: v = 5.77.
    [Fact]
    public void With_the_graph_s_k_the_worked_example_loses_5_77() =>
        Approximately.Equal(5.77, new Bend(Angle.FromDegrees(120), 6, 5, new KFactorRule(0.7 / 2)).OutsideDeduction, within: 0.005);

    // The same with k by the standard's formula: 0.689, and 5.82, calculated from the formula that is printed there.
    [Fact]
    public void With_k_by_formula_the_worked_example_loses_5_82()
    {
        Approximately.Equal(0.689, Din6935Rule.Correction(6, 5), within: 0.001); // cut short, not rounded, where it is printed
        Approximately.Equal(5.82, Din(120, 6, 5).OutsideDeduction, within: 0.005);
        Approximately.Equal(31.2, 16 + 21 - Din(120, 6, 5).OutsideDeduction, within: 0.05); // printed as "about 32": lifted to whole mm
    }

    // German trade tables, "Ausgleichswerte" at 90°, from memory; every row was reproduced to 0.06 mm with the standard's formula.
    [Theory]
    [InlineData(1, 1, 1.9)]
    [InlineData(1.6, 1, 2.1), InlineData(1.6, 1.5, 2.9)]
    [InlineData(2.5, 1, 2.4), InlineData(2.5, 1.5, 3.2), InlineData(2.5, 2, 4.0), InlineData(2.5, 2.5, 4.8)]
    [InlineData(4, 1, 3.0), InlineData(4, 1.5, 3.7), InlineData(4, 2, 4.5), InlineData(4, 2.5, 5.2), InlineData(4, 3, 6.0)]
    [InlineData(4, 3.5, 6.9)]
    [InlineData(6, 1, 3.8), InlineData(6, 1.5, 4.5), InlineData(6, 2, 5.2), InlineData(6, 2.5, 5.9), InlineData(6, 3, 6.7)]
    [InlineData(6, 3.5, 7.5), InlineData(6, 4, 8.3), InlineData(6, 4.5, 9.0), InlineData(6, 5, 9.9)]
    [InlineData(10, 1, 5.5), InlineData(10, 1.5, 6.1), InlineData(10, 2, 6.7), InlineData(10, 2.5, 7.4), InlineData(10, 3, 8.1)]
    [InlineData(10, 3.5, 8.9), InlineData(10, 4, 9.6), InlineData(10, 4.5, 10.4), InlineData(10, 5, 11.2), InlineData(10, 6, 12.7)]
    public void The_compensation_at_90_degrees_is_as_tabled(double radius, double thickness, double v) =>
        Approximately.Equal(v, Din(90, radius, thickness).OutsideDeduction, within: 0.06);

    // DIN 6935: above r/s = 5 the middle of the sheet is accurate enough.
    [Theory]
    [InlineData(5.001)]
    [InlineData(8)]
    [InlineData(100)]
    public void Past_a_radius_of_five_thicknesses_k_is_held_at_1(double ratio)
    {
        Assert.Equal(1, Din6935Rule.Correction(ratio * 2, 2));
        Approximately.Equal(Math.PI / 2 * (ratio * 2 + 1), Din(90, ratio * 2, 2).Allowance, within: 1e-9);
    }

    [Fact]
    public void K_rises_with_the_radius_and_stays_between_0_and_1() =>
        Gen.Select(Gen.Double[0, 10], Gen.Double[0.3, 6]).Check(200, (radius, thickness) =>
        {
            var k = Din6935Rule.Correction(radius, thickness);
            Assert.InRange(k, 0, 1);
            Assert.True(Din6935Rule.Correction(radius * 1.1, thickness) >= k);
        });

    // DIN 6935: v is taken as 0 for opening angles over 165°; 165° itself still goes by the formula.
    [Theory]
    [InlineData(14.9, 0)]
    [InlineData(1, 0)]
    [InlineData(15, 0.874)] // 22 tan 7.5° − π/12 (6 + 2.5 × 0.6896), calculated from the printed formula
    public void A_slight_bend_by_din_has_no_compensation(double degrees, double v) =>
        Approximately.Equal(v, Din(degrees, 6, 5).OutsideDeduction, within: 0.001);

    // DIN 6935, opening angles to 90°: v = 2 (r + s) − π (180° − β) / 180° (r + s k / 2), here β = 0: folded flat.
    [Fact]
    public void Bent_past_square_outside_lengths_run_to_the_round_of_the_bend() =>
        Approximately.Equal(2 * 11 - Math.PI * (6 + 2.5 * (0.65 + 0.5 * Math.Log10(1.2))), Din(180, 6, 5).OutsideDeduction, within: 1e-9);

    // Austrian school text, ch. 16.8, page 206: 0.5 r + 1.5 t for a bend of 90°.
    [Fact]
    public void The_rule_of_thumb_takes_half_a_radius_and_one_and_a_half_thicknesses_off() =>
        Approximately.Equal(0.5 * 3 + 1.5 * 2, new Bend(Angle.QuarterTurn, 3, 2, new ThumbRule()).Deduction, within: 1e-12);

    [Theory]
    [InlineData(45)]
    [InlineData(89.9)]
    [InlineData(135)]
    public void The_rule_of_thumb_refuses_what_is_not_square(double degrees)
    {
        Assert.False(new ThumbRule().Covers(Angle.FromDegrees(degrees)));
        Assert.Throws<ArgumentOutOfRangeException>(() => new Bend(Angle.FromDegrees(degrees), 1, 1, new ThumbRule()));
    }

    // 0.0078 / (π / 180) = 0.4469: the handbook's neutral line. Its other constant is 0.13 % small, which is the tolerance.
    [Fact]
    public void The_airframe_handbook_is_a_k_factor_of_0_447() =>
        Gen.Select(Gen.Double[0, 10], Gen.Double[0.3, 6], Gen.Double[1, 180]).Check(200, drawn =>
        {
            var (radius, thickness, degrees) = drawn;
            var arc = new Bend(Angle.FromDegrees(degrees), radius, thickness, new KFactorRule(0.4469)).Allowance;
            Approximately.Equal(arc, Airframe(degrees, radius, thickness).Allowance, within: 0.0015 * arc);
        });

    [Fact]
    public void Up_to_square_an_outside_length_ends_at_the_mould_line()
    {
        var bend = Din(60, 2, 1);
        Assert.Equal(bend.Setback, bend.OutsideSetback);
        Assert.Equal(bend.Deduction, bend.OutsideDeduction);
        Approximately.Equal(2 * Math.Tan(Math.PI / 6), bend.InsideSetback, within: 1e-12);
        Assert.Equal(3, Din(120, 2, 1).OutsideSetback);
        Assert.Equal(2, Din(120, 2, 1).InsideSetback);
    }

    [Fact]
    public void Folded_flat_there_is_no_mould_line() =>
        Assert.Equal(double.PositiveInfinity, new Bend(Angle.HalfTurn, 1, 1, new KFactorRule(0.4)).Setback);

    [Fact]
    public void Every_rule_says_its_name_and_its_source()
    {
        Assert.Equal("K-factor 0.44", new KFactorRule(0.44).Name);
        BendRule[] rules = [new KFactorRule(0.44), new Din6935Rule(), new AirframeRule(), new ThumbRule()];
        Assert.Equal(rules.Length, rules.Select(r => r.Name).Distinct().Count());
        Assert.All(rules, r => Assert.NotEqual("", r.Source));
    }

    [Fact]
    public void Values_that_no_sheet_has_are_refused()
    {
        var rule = new KFactorRule(0.4);
        Assert.Throws<ArgumentOutOfRangeException>(() => new KFactorRule(0.51));
        Assert.Throws<ArgumentOutOfRangeException>(() => new Bend(Angle.Zero, 1, 1, rule));
        Assert.Throws<ArgumentOutOfRangeException>(() => new Bend(Angle.FromDegrees(361), 1, 1, rule));
        Assert.Throws<ArgumentOutOfRangeException>(() => new Bend(Angle.QuarterTurn, -0.1, 1, rule));
        Assert.Throws<ArgumentOutOfRangeException>(() => new Bend(Angle.QuarterTurn, double.NaN, 1, rule));
        Assert.Throws<ArgumentOutOfRangeException>(() => new Bend(Angle.QuarterTurn, 1, 0, rule));
        Assert.Throws<ArgumentOutOfRangeException>(() => new Bend(Angle.FromRadians(double.NaN), 1, 1, rule));
    }

    private static Bend Airframe(double degrees, double insideRadius, double thickness) =>
        new(Angle.FromDegrees(degrees), insideRadius, thickness, new AirframeRule());

    private static Bend Din(double degrees, double insideRadius, double thickness) =>
        new(Angle.FromDegrees(degrees), insideRadius, thickness, new Din6935Rule());
}
