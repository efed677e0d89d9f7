using TemplateForge.Geometry;
using TemplateForge.Testing;

namespace TemplateForge.Profiles.Tests;

public class FlangedPatchTests
{
    private static readonly Profile Patch = TheLibrary.Profile("flanged-patch");

    // General mechanics: a bend of 90° takes 2 (R + T) − π/2 (R + K T) off two legs over the outside. R 1.5, T 1, K 0.44 of the three steels.
    private const double Deduction = 2 * (1.5 + 1) - Math.PI / 2 * (1.5 + 0.44);

    // ISO 9692-1 table 1 (from memory): a gap of about the thickness for MIG/MAG, none for TIG up to 2 mm. Flanges lie 0.3 mm inside of the
    // returns, or outside of them by that and the sheet.
    [Theory]
    [InlineData("mig", "inside", 180 - 0.3 - 1, 130 - 0.3 - 1)]
    [InlineData("tig", "inside", 180 - 0.3, 130 - 0.3)]
    [InlineData("mig", "over", 180 + 1.3 - 1, 130 + 1.3 - 1)]
    public void A_butted_patch_with_adjoining_flanges_is_its_opening_less_gap_and_room(string process, string lies, double wide, double high)
    {
        var bounds = Patch.Make($"process={process}", $"lies={lies}").Piece("patch").Shape.Bounds;
        Approximately.Equal(wide + 20 - Deduction, bounds.Width, within: 1e-6);
        Approximately.Equal(high + 20 - Deduction, bounds.Height, within: 1e-6);
    }

    [Fact]
    public void A_lapped_patch_with_flanges_opposite_lies_over_the_panel_above_and_below()
    {
        var bounds = Patch.Make("flanged_edges=opposite", "joint=lap").Piece("patch").Shape.Bounds;
        Approximately.Equal(180 - 2 * 0.3 + 2 * (20 - Deduction), bounds.Width, within: 1e-6);
        Approximately.Equal(130 + 2 * 18, bounds.Height, within: 1e-6);
    }

    [Theory, InlineData("flanged_edges=opposite"), InlineData("flanged_edges=adjoining")]
    public void It_has_two_flanges(string edges) => Assert.Equal([1, 2], Patch.Make(edges).Piece("patch").Bends.Select(b => b[0].Number));

    // Quarter turn of radius 24: the seam of the butted edges.
    [Fact]
    public void Tacks_and_runs_lie_along_the_butted_edges_and_no_run_ends_between_tacks_that_it_passes()
    {
        var patch = Patch.Make().Piece("patch");
        var seam = Assert.Single(patch.WeldSeams);
        Approximately.Equal(178.7 - 24 + 128.7 - 24 + Math.PI / 2 * 24, seam.Length, within: 1e-6);
        Assert.True(seam.LongestRun <= 20 + 1e-9); // 1 mm by MIG/MAG
        var ends = seam.Runs.SelectMany(r => new[] { r.Along.Start, r.Along.End }).ToList();
        Assert.All(patch.Tacks, t => Assert.Contains(ends, e => e.DistanceTo(t.At) < 1e-6));
        Assert.All(patch.Tacks, t => Assert.True(patch.Shape.BoundaryDistanceTo(t.At) < 1e-6));
    }

    [Fact]
    public void Two_opposite_seams_are_both_welded() => Assert.Equal(2, Patch.Make("flanged_edges=opposite").Piece("patch").WeldSeams.Length);

    [Theory]
    [InlineData("joint=lap")]
    [InlineData("joint=lap", "flanged_edges=opposite")]
    [InlineData("flanged_edges=opposite")]
    [InlineData("flange_angle=105")]
    [InlineData("flange_angle=75", "joint=lap", "plug_hole=8", "plug_pitch=40", "lap=26", "flange=30", "opening_width=260", "opening_height=220")]
    public void Its_plug_welds_give_a_foreman_nothing_to_say(params string[] given) => Assert.Empty(Patch.Make(given).Piece("patch").Warnings);

    [Fact]
    public void Every_plug_of_a_lap_has_its_number()
    {
        var patch = Patch.Make("joint=lap", "flange_joint=free").Piece("patch");
        var holes = patch.Shape.Contours.Where(c => !c.IsCounterClockwise && c.TryAsCircle(out _, out var radius) && Math.Abs(radius - 2.5) < 1e-6);
        Assert.Equal(holes.Count(), patch.Tacks.Length);
    }

    [Fact]
    public void Zinc_is_stripped_at_its_seam_where_it_is_coated_and_the_fume_is_warned_of_there()
    {
        var coated = Patch.Make();
        Assert.NotEmpty(coated.Piece("patch").ZincStrips);
        Assert.NotEmpty(coated.Piece("opening").ZincStrips);
        Assert.Contains(coated.Steps, s => s.Text.StartsWith("Strip zinc", StringComparison.Ordinal) && s.Cautions.Any(c => c.Title == "Zinc fume"));
        var plain = Patch.Make("metal=dc01");
        Assert.All(plain.Pieces, p => Assert.Empty(p.ZincStrips));
        Assert.DoesNotContain(plain.Cautions, c => c.Title == "Zinc fume");
    }

    // A weld before the zinc is off, or paint before the weld, is the wrong order.
    [Fact]
    public void Coating_comes_off_before_the_weld_and_goes_back_after_it()
    {
        var steps = Patch.Make().Steps.Select(s => s.Text).ToList();
        var (strip, fire, weld) = (At("Strip zinc"), steps.IndexOf(TheLibrary.Shop.Steps["clear_for_welding"].Text), At("Weld the seam"));
        var (coat, seal) = (steps.IndexOf(TheLibrary.Shop.Steps["recoat"].Text), steps.IndexOf(TheLibrary.Shop.Steps["seal_seam"].Text));
        Assert.True(0 <= strip && strip < fire && fire < weld && weld < coat && coat < seal);

        int At(string words) => steps.FindIndex(s => s.StartsWith(words, StringComparison.Ordinal));
    }

    [Theory]
    [InlineData("flange=15", "no room for plug welds")]
    [InlineData("plug_pitch=22", "draw the sheet", "plug_hole=8", "flange=30")]
    [InlineData("corner=8", "sharper than five times", "sheet=2", "inside_radius=2", "flange=30")]
    [InlineData("lap=15", "no room for plug welds of 8 mm", "joint=lap", "plug_hole=8", "plug_pitch=40", "flange=30")]
    public void What_cannot_be_is_refused(string given, string words, params string[] more) =>
        Assert.Contains(Patch.Refuse([given, .. more]), c => c.Problem.Contains(words, StringComparison.Ordinal));
}
