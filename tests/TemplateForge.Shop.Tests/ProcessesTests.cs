using System.Collections.Immutable;
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

    // Tacks every 25 to 50 mm in sheet, the closer the thinner (from memory; the steps are common practice, no source). Runs about as long
    // as from tack to tack, and 25 mm of zinc on either side: common practice, no source.
    [Fact]
    public void Tacks_runs_and_the_strip_without_zinc_are_a_shops() => Assert.All(Shipped.Tables.Processes.Values, process =>
    {
        Assert.Equal(25, process.ZincStrip);
        Assert.All(process.TackPitch.Rows, row => Assert.InRange(row.Value, 25, 50));
        Assert.All(process.WeldRun.Rows, row => Assert.InRange(row.Value, 15, 50));
        foreach (var rows in new[] { process.TackPitch.Rows, process.WeldRun.Rows })
        {
            Assert.Equal(3, rows[^1].UpTo);
            Assert.Equal(rows.Select(r => r.Value).Order(), rows.Select(r => r.Value));
        }
    });

    [Theory]
    [InlineData("mig", 0.8, 25)]
    [InlineData("mig", 1.0, 30)]
    [InlineData("mig", 2.0, 50)]
    [InlineData("tig", 0.8, 25)]
    public void Tacks_stand_closer_in_thinner_sheet(string process, double thickness, double pitch)
    {
        Assert.True(Shipped.Tables.Processes[process].TackPitch.TryFind(thickness, out var found));
        Assert.Equal(pitch, found);
    }

    // Tables from before tacks went by the sheet have one length; a job's record holds such a table.
    [Fact]
    public void One_tack_pitch_is_for_every_thickness()
    {
        const string there = "tack_pitch: {0.8 mm: 25 mm, 1 mm: 30 mm, 1.5 mm: 40 mm, 3 mm: 50 mm}";
        var files = Shipped.Files.Select(f => f with { Text = f.Text.Replace(there, "tack_pitch: 30 mm", StringComparison.Ordinal) }).ToImmutableArray();
        Assert.True(ShopReader.TryRead(files, [], out var shop));
        Assert.True(shop.Processes["mig"].TackPitch.TryFind(40, out var pitch));
        Assert.Equal(30, pitch);
    }

    [Fact]
    public void A_kerf_is_what_the_machine_takes_away_and_a_torchs_is_unknown_until_somebody_measures_it()
    {
        Assert.Equal(double.PositiveInfinity, Shipped.Tables.Cutters["plasma-table"].Kerf);
        Assert.Equal(0, Shipped.Tables.Cutters["snips"].Kerf);
    }

    [Fact]
    public void Two_rows_of_one_thickness_are_refused() => Assert.Throws<ArgumentException>(() => new ByThickness((1, 2), (1, 3)));
}
