using TemplateForge.Fabrication;

namespace TemplateForge.Shop.Tests;

/// <summary>Welding, by the thickness of the sheet.</summary>
public class ProcessesTests
{
    // ISO 9692-1 table 1 (from memory): a square butt welded from one side has a gap of about the thickness up to 4 mm; with raised
    // edges, up to 2 mm, none.
    [Theory]
    [InlineData("mig", 0.8, 0.8)]
    [InlineData("mig", 0.7, 0.8)]
    [InlineData("mig", 1.0, 1.0)]
    [InlineData("mig", 1.4, 1.5)]
    [InlineData("mig", 4.0, 4.0)]
    [InlineData("tig", 1.0, 0.0)]
    [InlineData("gas", 2.0, 0.0)]
    [InlineData("gas", 3.0, 4.0)]
    public void A_weld_gap_goes_by_the_thickness(string process, double thickness, double gap)
    {
        Assert.True(Shipped.Tables.Processes[process].WeldGap.TryFind(thickness, out var found));
        Assert.Equal(gap, found, 1e-9);
    }

    [Fact]
    public void Thicker_than_the_table_nothing_is_said() => Assert.False(Shipped.Tables.Processes["mig"].WeldGap.TryFind(4.001, out _));

    // Collision-repair textbooks (from memory): about 5 mm in thin skins, about 8 mm from about 1 mm up.
    [Theory]
    [InlineData(0.8, 5)]
    [InlineData(1.0, 8)]
    [InlineData(2.0, 8)]
    public void A_plug_hole_is_larger_in_thicker_sheet(double thickness, double hole)
    {
        Assert.True(Shipped.Tables.Processes["mig"].PlugHole.TryFind(thickness, out var found));
        Assert.Equal(hole, found, 1e-9);
    }

    // Tacks every 25 to 50 mm in sheet (from memory). 25 mm of zinc on either side: common practice, no source.
    [Fact]
    public void Tacks_and_the_strip_without_zinc_are_a_shops() =>
        Assert.All(Shipped.Tables.Processes.Values, p => Assert.True(p.TackPitch is >= 25 and <= 50 && p.ZincStrip == 25));

    [Fact]
    public void A_kerf_is_what_the_machine_takes_away_and_a_torchs_is_unknown_until_somebody_measures_it()
    {
        Assert.Equal(double.PositiveInfinity, Shipped.Tables.Cutters["plasma-table"].Kerf);
        Assert.Equal(0, Shipped.Tables.Cutters["snips"].Kerf);
    }

    [Fact]
    public void Two_rows_of_one_thickness_are_refused() => Assert.Throws<ArgumentException>(() => new ByThickness((1, 2), (1, 3)));
}
