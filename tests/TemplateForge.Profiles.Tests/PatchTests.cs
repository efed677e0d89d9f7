using TemplateForge.Fabrication;
using TemplateForge.Geometry;

namespace TemplateForge.Profiles.Tests;

public class PatchTests
{
    private static readonly Profile Patch = TheLibrary.Profile("hole-plug-patch");

    [Fact]
    public void A_butted_patch_is_smaller_than_the_hole_by_the_weld_gap_all_round()
    {
        var made = Patch.Make("diameter=30", "weld_gap=0.8");
        Assert.Equal(Math.PI * 14.2 * 14.2, made.Piece("patch").Shape.Area, 1e-6);
        Assert.Equal(Math.PI * 15 * 15, made.Piece("opening").Shape.Area, 1e-6);
    }

    [Theory]
    [InlineData("mig", "0.8 mm")]
    [InlineData("tig", "0.1 mm")]
    public void The_usual_weld_gap_goes_by_the_process(string process, string gap) =>
        Assert.Equal(gap, Patch.Make($"process={process}").Values.Single(v => v.Name == "weld_gap").Text);

    [Fact]
    public void A_TIG_gap_of_0_5_mm_is_refused_with_the_range_of_TIG() =>
        Assert.Equal("weld_gap is 0.5 mm, but takes 0 mm to 0.2 mm.", Assert.Single(Patch.Refuse("process=tig", "weld_gap=0.5")).Problem);

    [Fact]
    public void A_round_patch_is_tacked_at_12_6_3_and_9_o_clock_first()
    {
        var tacks = Patch.Make("diameter=100").Piece("patch").Tacks;
        const double radius = 49.2;
        Assert.Equal(new Point(0, radius), tacks[0].At, SameWithin);
        Assert.Equal(new Point(0, -radius), tacks[1].At, SameWithin);
        Assert.Equal(new Point(radius, 0), tacks[2].At, SameWithin);
        Assert.Equal(new Point(-radius, 0), tacks[3].At, SameWithin);
        Assert.Equal(Enumerable.Range(1, tacks.Length), tacks.Select(t => t.Number));
    }

    [Theory]
    [InlineData("diameter=10")]
    [InlineData("diameter=150")]
    [InlineData("hole=slot", "length=300", "width=40")]
    [InlineData("hole=rounded_rectangle", "length=200", "width=120", "corner_radius=20")]
    public void No_two_neighbouring_tacks_are_further_apart_than_the_most(params string[] given)
    {
        var patch = Patch.Make([.. given, "tack_pitch=30"]).Piece("patch");
        Assert.True(patch.Shape.Length / patch.Tacks.Length <= 30 + 1e-9);
        Assert.Equal(0, patch.Tacks.Length % 4);
    }

    [Theory]
    [InlineData("diameter=30")]
    [InlineData("diameter=10", "lap=12", "plug_hole=5")]
    [InlineData("diameter=150", "lap=25", "plug_hole=8", "plug_pitch=25")]
    [InlineData("hole=slot", "length=120", "width=30")]
    [InlineData("hole=rounded_rectangle", "length=100", "width=60", "corner_radius=10")]
    public void Every_plug_hole_lies_over_steel_and_one_and_a_half_diameters_in_from_the_edge(params string[] given)
    {
        var made = Patch.Make([.. given, "joint=lap"]);
        var patch = made.Piece("patch").Shape;
        var opening = made.Piece("opening").Shape;
        var outline = Region.Of(patch.Contours.Single(c => c.IsCounterClockwise));
        var holes = patch.Contours.Where(c => !c.IsCounterClockwise).ToList();
        Assert.True(holes.Count >= 4);
        foreach (var hole in holes)
        {
            Assert.True(hole.TryAsCircle(out var centre, out var radius));
            Assert.Equal(3 * radius, outline.BoundaryDistanceTo(centre), 1e-5); // 1.5 diameters
            Assert.True(opening.DistanceTo(centre) >= radius - 1e-9);
        }
        Assert.Equal(holes.Count, made.Piece("patch").Tacks.Length);
        foreach (var tack in made.Piece("patch").Tacks)
            Assert.Contains(holes, h => h.TryAsCircle(out var centre, out _) && centre.DistanceTo(tack.At) < 1e-6);
    }

    [Fact]
    public void A_lap_too_narrow_for_its_plug_holes_is_refused() =>
        Assert.Contains("all over steel", Assert.Single(Patch.Refuse("joint=lap", "lap=12", "plug_hole=8")).Problem, StringComparison.Ordinal);

    [Fact]
    public void A_corner_sharper_than_five_times_the_sheet_is_refused() =>
        Assert.Contains("sharper than five times", Assert.Single(Patch.Refuse("hole=rounded_rectangle", "corner_radius=4", "sheet=1")).Problem, StringComparison.Ordinal);

    [Fact]
    public void A_value_that_belongs_to_another_choice_is_refused() =>
        Assert.Equal("diameter is given, but it is only asked for when hole is round.", Assert.Single(Patch.Refuse("hole=slot", "diameter=40")).Problem);

    [Fact]
    public void It_warns_of_zinc_fume_fire_and_bare_metal() =>
        Assert.Superset(new HashSet<string> { "Zinc fume", "Fire", "Bare metal" }, Patch.Make().Cautions.Select(c => c.Title).ToHashSet());

    [Fact]
    public void It_fits_either_hand()
    {
        Assert.Equal(Hand.Either, Patch.Hand);
        Assert.Throws<ArgumentException>(() => Patch.TryMake([], Hand.Left, Hand.Left, new List<Notation.Complaint>(), out _));
    }

    private static bool SameWithin(Point a, Point b) => a.DistanceTo(b) < 1e-6;
}
