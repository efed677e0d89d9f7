using CsCheck;
using TemplateForge.Geometry;
using TemplateForge.Testing;

namespace TemplateForge.Fabrication.Tests.Bending;

// The model of a folding brake: common practice, no source. Brake and material are invented.
public class BendingOrderTests
{
    private static readonly Brake Finger = new("finger brake", 1250, 600, 40, 30, 120, Angle.FromDegrees(45));
    private static readonly Material Mild = new("mild", "mild steel", MetalFamily.Steel, 7850, 0.5, 0.44, 0.3, false);
    private static readonly Material Hard = new("hard", "hard aluminium", MetalFamily.Aluminium, 2780, 3, 0.44, 0.1, false);

    [Fact]
    public void An_angle_lies_on_the_table_with_its_long_leg()
    {
        var order = Order(Flat(1.5, new(100), Square(BendWay.Up, 25)));
        Assert.True(order.CanBeDone);
        Assert.Equal(ClampedSide.First, order.Steps[0].Clamped);
        Assert.False(order.Steps[0].TurnedOver);
    }

    [Fact]
    public void A_bend_the_other_way_is_made_with_the_sheet_turned_over() =>
        Assert.True(Order(Flat(1.5, new(100), Square(BendWay.Down, 25))).Steps[0].TurnedOver);

    // A hat with brims of 20: each brim before its wall, so that what swings is short.
    [Fact]
    public void A_hat_is_bent_from_the_outside_in()
    {
        var flat = Flat(1.5, new(20), Square(BendWay.Up, 50), Square(BendWay.Down, 60), Square(BendWay.Down, 50), Square(BendWay.Up, 20));
        var order = Order(flat);
        var bends = order.Steps.Select(s => s.Bend).ToList();
        Assert.True(order.CanBeDone);
        Assert.True(bends.IndexOf(1) < bends.IndexOf(2) && bends.IndexOf(4) < bends.IndexOf(3));
    }

    // Sides of 60, 25 wide inside, a nose 30 deep: whichever side is bent second, the first one stands where the nose is.
    [Fact]
    public void A_channel_narrower_than_the_nose_fouls_it()
    {
        var order = Order(Flat(1.5, new(60), Square(BendWay.Up, 25), Square(BendWay.Up, 60)));
        Assert.False(order.CanBeDone);
        Assert.Contains(order.Fouls, f => f.With == "the nose");
    }

    [Fact]
    public void A_channel_wider_than_the_nose_can_be_bent() =>
        Assert.True(Order(Flat(1.5, new(25), Square(BendWay.Up, 60), Square(BendWay.Up, 25))).CanBeDone);

    // Turned over for the second bend, the first leg hangs 25 from it: under a leaf 40 wide and a table 600 deep there is no room for it.
    [Fact]
    public void A_z_narrower_than_the_leaf_fouls_the_leaf_or_the_table()
    {
        var order = Order(Flat(1.5, new(60), Square(BendWay.Up, 25), Square(BendWay.Down, 60)));
        Assert.False(order.CanBeDone);
        Assert.All(order.Fouls, f => Assert.Contains(f.With, (string[])["the leaf", "the table"]));
    }

    [Fact]
    public void A_z_wider_than_the_leaf_can_be_bent() =>
        Assert.True(Order(Flat(1.5, new(60), Square(BendWay.Up, 60), Square(BendWay.Down, 60))).CanBeDone);

    // The front leans back by 45°, so 135° is as far as it goes; the hem is finished off the brake, where nothing is in the way.
    [Fact]
    public void A_hem_is_started_on_the_brake() =>
        Assert.True(Order(Flat(1, new(60), Hem.Closed(12, 1, BendWay.Up)[0])).CanBeDone);

    // A square box of 40 over the outside, closed by its fourth side: the last bend brings it against the first leg.
    [Fact]
    public void A_leg_that_swings_into_another_leg_fouls_it()
    {
        var flat = Flat(1.5, new(40), Square(BendWay.Up, 40), Square(BendWay.Up, 40), Square(BendWay.Up, 50));
        Assert.Contains(Order(flat).Fouls, f => f.With.StartsWith("leg", StringComparison.Ordinal));
    }

    [Fact]
    public void An_order_names_every_bend_once_whatever_the_section() =>
        Gen.Select(Gen.Double[25, 60], Gen.Bool, Gen.Double[10, 60]).Array[1, 4].Check(40, folds =>
        {
            var flat = Flat(1, new(50), [.. folds.Select(f => Square(f.Item2 ? BendWay.Up : BendWay.Down, f.Item1, 1))]);
            var order = Order(flat);
            Assert.Equal(Enumerable.Range(1, folds.Length), order.Steps.Select(s => s.Bend).Order());
            Assert.All(order.Steps, s => Assert.Equal(flat.Bends[s.Bend - 1].SightLine(s.Clamped), s.SightLine));
            Assert.Equal(order.Fouls.Length, SectionWarnings.Of(flat, order).Count(w => w.Rule == "leg fouls"));
        });

    [Fact]
    public void A_sound_bracket_has_no_warning() =>
        Assert.Empty(SectionWarnings.Of(Flat(1.5, new(40), Square(BendWay.Up, 25)), Mild, bendLength: 300, Finger));

    [Fact]
    public void A_radius_under_the_material_s_least_is_warned_of_at_its_bend()
    {
        var flat = Flat(1.5, new(40), Square(BendWay.Up, 25));
        var warning = Assert.Single(SectionWarnings.Of(flat, Hard, bendLength: 300, Finger));
        Assert.Equal("radius too small", warning.Rule);
        Assert.Equal(new Point(flat.Bends[0].Middle, 0), warning.At);
        Assert.Contains("4.5 mm", warning.Text, StringComparison.Ordinal);
    }

    // 4 t + r: common practice, from memory. Here 4 × 1.5 + 1.5 = 7.5.
    [Theory]
    [InlineData(7.5, 0)]
    [InlineData(7.4, 1)]
    public void A_flange_under_four_thicknesses_and_a_radius_is_warned_of(double height, int warnings) =>
        Assert.Equal(
            warnings,
            SectionWarnings.Of(Flat(1.5, new(40), Square(BendWay.Up, height)), Mild, 300, Finger).Count(w => w.Rule == "flange too short"));

    // Sheet-metal designers' handbook (read): the radius of a curl is at least 2 t. A hem is folded flat and no curl.
    [Theory]
    [InlineData(270, 3, 0)]
    [InlineData(270, 2.9, 1)]
    [InlineData(181, 2.9, 1)]
    [InlineData(180, 2.9, 0)]
    [InlineData(90, 2.9, 0)]
    public void An_edge_that_is_rolled_tighter_than_two_thicknesses_is_warned_of(double degrees, double radius, int warnings)
    {
        var flat = Flat(1.5, new(40), Hem.Rolled(Angle.FromDegrees(degrees), radius, 1.5, BendWay.Up, new KFactorRule(0.44))[0]);
        Assert.Equal(warnings, SectionWarnings.Of(flat, Mild, 300, Finger).Count(w => w.Rule == "roll too tight"));
    }

    [Theory]
    [InlineData(1250, 0)]
    [InlineData(1251, 1)]
    public void A_bend_longer_than_the_brake_is_warned_of(double length, int warnings) =>
        Assert.Equal(
            warnings,
            SectionWarnings.Of(Flat(1.5, new(40), Square(BendWay.Up, 25)), Mild, length, Finger).Count(w => w.Rule == "bend longer than the brake"));

    [Theory]
    [InlineData(1.5, 0)]
    [InlineData(1.4, 1)]
    public void Sheet_thicker_than_the_brake_takes_is_warned_of(double greatest, int warnings) =>
        Assert.Equal(
            warnings,
            SectionWarnings.Of(Flat(1.5, new(40), Square(BendWay.Up, 25)), Mild, 1000, Finger with { GreatestThickness = greatest })
                .Count(w => w.Rule == "sheet thicker than the brake takes"));

    [Fact]
    public void Soft_sheet_takes_a_closed_hem_and_hard_sheet_does_not()
    {
        var flat = Flat(1, new(40), Hem.Closed(10, 1, BendWay.Up)[0]);
        Assert.Empty(SectionWarnings.Of(flat, Mild, 300, Finger));
        Assert.Equal("radius too small", Assert.Single(SectionWarnings.Of(flat, Hard, 300, Finger)).Rule);
    }

    [Fact]
    public void A_box_whose_last_leg_runs_through_its_first_is_warned_of()
    {
        var flat = Flat(1.5, new(40), Square(BendWay.Up, 40), Square(BendWay.Up, 40), Square(BendWay.Up, 60), Square(BendWay.Up, 20));
        Assert.NotEmpty(SectionWarnings.Through(flat));
    }

    private static BendingOrder Order(FlatSection flat) => BendingOrder.Of(flat, Finger, Springback.Unstated);

    private static Fold Square(BendWay way, double next, double thickness = 1.5) =>
        new(new(Angle.QuarterTurn, thickness, thickness, new KFactorRule(0.44)), way, new(next));

    private static FlatSection Flat(double thickness, Leg first, params Fold[] folds)
    {
        Assert.True(new Section(thickness, first, folds).TryUnfold(out var flat));
        return flat;
    }
}
