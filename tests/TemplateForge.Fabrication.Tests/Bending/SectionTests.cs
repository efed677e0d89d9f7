using TemplateForge.Geometry;
using TemplateForge.Testing;

namespace TemplateForge.Fabrication.Tests.Bending;

public class SectionTests
{
    private const double Inch = 25.4;
    private static readonly KFactorRule Rule = new(0.44);

    // FAA-H-8083-31, volume 1, chapter 4, figures 4-124 to 4-131: 0.040 in sheet, radius 0.16 in, mould lines 1, 2 and 1 in: setback 0.2,
    // flats of 0.8, 1.6 and 0.8, 3.74 in together. It takes the allowance of 0.156 in and cuts it to 0.27, so ± 0.02 in.
    [Fact]
    public void The_handbook_s_channel_is_3_74_inch_wide_on_the_flat()
    {
        var bend = new Bend(Angle.QuarterTurn, 0.16 * Inch, 0.040 * Inch, new AirframeRule());
        Leg Mould(double inches) => new(inches * Inch, MeasuredBy.MouldLine);
        var section = new Section(0.040 * Inch, Mould(1), new Fold(bend, BendWay.Up, Mould(2)), new Fold(bend, BendWay.Up, Mould(1)));
        Approximately.Equal(3.74 * Inch, Flat(section).Length, within: 0.02 * Inch);
        Assert.All(section.Straights.Zip([0.8, 1.6, 0.8]), s => Approximately.Equal(s.Second * Inch, s.First, within: 1e-9));
        Approximately.Equal(0.27 * Inch, new Bend(Angle.QuarterTurn, 0.156 * Inch, 0.040 * Inch, new AirframeRule()).Allowance, 0.005 * Inch);
    }

    // Austrian school text, ch. 16.8, page 206: legs 50, 40 and 30, r = 1, t = 1, two bends: 116 mm.
    [Fact]
    public void By_the_rule_of_thumb_50_40_and_30_take_116()
    {
        Assert.Equal(116, Flat(ThreeLegs(new ThumbRule())).Length, 1e-9);
    }

    // The same part by DIN 6935, calculated from its formula: two published methods within 0.2 mm.
    [Fact]
    public void By_din_the_same_part_takes_116_16() => Approximately.Equal(116.16, Flat(ThreeLegs(new Din6935Rule())).Length, within: 0.005);

    // DIN 6935, printed example: L = a + b − v with a = 16, b = 21 and v = 5.77 by the graph's k.
    [Fact]
    public void Outside_lengths_less_din_s_compensation_are_the_blank()
    {
        var bend = new Bend(Angle.FromDegrees(120), 6, 5, new KFactorRule(0.35));
        Approximately.Equal(31.23, Flat(new Section(5, new(16), new Fold(bend, BendWay.Up, new(21)))).Length, within: 0.005);
    }

    [Fact]
    public void Which_way_a_bend_turns_does_not_change_the_blank()
    {
        var bend = new Bend(Angle.FromDegrees(70), 2, 1, Rule);
        Section With(BendWay second) => new(1, new(30), new Fold(bend, BendWay.Up, new(40)), new Fold(bend, second, new(20)));
        Assert.Equal(Flat(With(BendWay.Up)).Length, Flat(With(BendWay.Down)).Length);
    }

    // US Navy Steelworker, volume 2 (NAVEDTRA 14251), ch. 2: a single hem is allowed its width, a double hem twice that.
    [Theory]
    [InlineData(0.8)]
    [InlineData(1.5)]
    public void A_single_hem_takes_its_width_and_a_double_hem_twice_that(double thickness)
    {
        Approximately.Equal(112, Flat(new Section(thickness, new(100), Hem.Closed(12, thickness, BendWay.Up))).Length, within: 1e-9);
        Approximately.Equal(124, Flat(new Section(thickness, new(100), Hem.Double(12, thickness, BendWay.Up))).Length, within: 1e-9);
    }

    // Closed form: the straights run to the fold's tangent lines, and half a turn of the neutral line lies between.
    [Fact]
    public void An_open_hem_takes_half_a_turn_of_the_neutral_line()
    {
        var section = new Section(1, new(100), Hem.Open(12, gap: 3, thickness: 1, BendWay.Up, Rule));
        Approximately.Equal(100 - 2.5 + Math.PI * (1.5 + 0.44) + 12 - 2.5, Flat(section).Length, within: 1e-9);
    }

    [Fact]
    public void A_rolled_hem_takes_the_turn_up_to_its_edge()
    {
        var section = new Section(1, new(100), Hem.Rolled(Angle.FromDegrees(270), insideRadius: 2, thickness: 1, BendWay.Up, Rule));
        Approximately.Equal(100 - 3 + 1.5 * Math.PI * (2 + 0.44), Flat(section).Length, within: 1e-9);
    }

    [Fact]
    public void Hems_may_lie_against_the_sheet_and_go_through_nothing()
    {
        Assert.Empty(SectionWarnings.Through(Flat(new Section(1, new(100), Hem.Closed(12, 1, BendWay.Up)))));
        Assert.Empty(SectionWarnings.Through(Flat(new Section(1, new(100), Hem.Double(12, 1, BendWay.Down)))));
        Assert.Empty(SectionWarnings.Through(Flat(new Section(1, new(100), Hem.Rolled(Angle.FromDegrees(270), 2, 1, BendWay.Up, Rule)))));
    }

    // Closed form: 45° bends with ρ = 1.5 and a step of 2: s = (2 − 3 (1 − √½)) / √½, run = 3 √½ + s √½.
    [Fact]
    public void A_joggle_steps_by_its_depth()
    {
        var bend = new Bend(Angle.FromDegrees(45), 1, 1, Rule);
        var joggle = new Joggle(2, bend);
        var root = Math.Sqrt(0.5);
        var straight = (2 - 3 * (1 - root)) / root;
        Approximately.Equal(straight, joggle.Straight, within: 1e-12);
        Approximately.Equal(3 * root + straight * root, joggle.Run, within: 1e-12);
        var flat = Flat(new Section(1, new(50, MeasuredBy.TangentLine), joggle.Folds(BendWay.Up, new(20, MeasuredBy.TangentLine))));
        Approximately.Equal(70 + straight + 2 * bend.Allowance, flat.Length, within: 1e-9);
        Assert.Equal([BendWay.Up, BendWay.Down], flat.Bends.Select(b => b.Way));
        Approximately.Equal(2, new RefoldedSection(flat).Step, within: 1e-9);
        Assert.Empty(SectionWarnings.Through(flat));
    }

    [Fact]
    public void A_joggle_whose_bends_step_too_far_is_refused()
    {
        var steepest = Joggle.Steepest(1, 1.5, 1);
        Approximately.Equal(Math.Acos(0.75), steepest.Radians, within: 1e-12);
        Approximately.Equal(0, new Joggle(1, new Bend(steepest, 1.5, 1, Rule)).Straight, within: 1e-9);
        Assert.Throws<ArgumentOutOfRangeException>(() => new Joggle(1, new Bend(Angle.FromDegrees(45), 1.5, 1, Rule)));
    }

    [Fact]
    public void Tangent_lines_lie_half_an_allowance_and_sight_lines_one_inside_radius_from_them()
    {
        var bend = new Bend(Angle.QuarterTurn, 2, 1, Rule);
        var flat = Flat(new Section(1, new(30), new Fold(bend, BendWay.Up, new(20)))).Bends[0];
        Approximately.Equal(27, flat.FirstTangent, within: 1e-12);
        Approximately.Equal(27 + bend.Allowance, flat.LastTangent, within: 1e-12);
        Approximately.Equal(27 + bend.Allowance / 2, flat.Middle, within: 1e-12);
        // From memory, FAA-H-8083-31, volume 1, chapter 4: one inside radius in from the tangent line under the nose.
        Approximately.Equal(29, flat.SightLine(ClampedSide.First), within: 1e-12);
        Approximately.Equal(25 + bend.Allowance, flat.SightLine(ClampedSide.Last), within: 1e-12);
    }

    [Fact]
    public void A_leg_that_its_bends_use_up_cannot_be_laid_flat()
    {
        var bend = new Bend(Angle.QuarterTurn, 2, 1, Rule);
        var section = new Section(1, new(30), new Fold(bend, BendWay.Up, new(5.9)), new Fold(bend, BendWay.Up, new(20)));
        Assert.False(section.TryUnfold(out _));
        Assert.Equal([2], section.TooShort);
    }

    [Fact]
    public void Past_half_a_turn_there_is_no_mould_line_to_measure_to() =>
        Assert.Equal([1], new Section(
            1, new(30, MeasuredBy.MouldLine), Hem.Closed(12, 1, BendWay.Up)).TooShort);

    [Fact]
    public void A_bend_of_another_sheet_is_refused() =>
        Assert.Throws<ArgumentException>(() => new Section(1, new(30), Hem.Closed(12, 1.2, BendWay.Up)));

    private static Section ThreeLegs(BendRule rule)
    {
        var bend = new Bend(Angle.QuarterTurn, 1, 1, rule);
        return new(1, new(50), new Fold(bend, BendWay.Up, new(40)), new Fold(bend, BendWay.Up, new(30)));
    }

    private static FlatSection Flat(Section section)
    {
        Assert.True(section.TryUnfold(out var flat));
        return flat;
    }

    // The bend line lies half the allowance from the tangent line, the sight line one radius: with R 1.5, T 1, K 0.44 they are 0.02 apart.
    [Theory]
    [InlineData(1.5, 1, 90, false)]
    [InlineData(4, 1, 90, true)]
    [InlineData(1.5, 2, 90, true)]
    [InlineData(0, 1, 90, false)]
    public void A_sight_line_is_drawn_where_it_is_not_the_bend_line(double radius, double thickness, double degrees, bool drawn)
    {
        var bend = new Bend(Angle.FromDegrees(degrees), radius, thickness, new KFactorRule(0.44));
        var line = new BendLine(1, new(100, 0), new(0, 0), bend.Angle, bend.Angle, BendWay.Up, radius, bend.Allowance);
        Assert.Equal(drawn, line.HasSightLine);
        Assert.False((line with { IsOverFormer = true }).HasSightLine);
    }
}
