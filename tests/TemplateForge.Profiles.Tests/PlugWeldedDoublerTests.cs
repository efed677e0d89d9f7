using TemplateForge.Fabrication;
using TemplateForge.Geometry;
using TemplateForge.Testing;

namespace TemplateForge.Profiles.Tests;

public class PlugWeldedDoublerTests
{
    private static readonly Profile Doubler = TheLibrary.Profile("plug-welded-doubler");

    // Closed forms: 170 by 110 less 12 mm all round is 146 by 86. At 36 mm that is 4 gaps across; staggered, rows 31.2 apart at least,
    // 2 gaps up, so 5 + 4 + 5; square 2 gaps up, so 5 + 5 + 5. Round the rim 5 below and above and 1 between on either side.
    [Theory]
    [InlineData(14)]
    [InlineData(15, "plug_rows=square")]
    [InlineData(12, "welds=rim")]
    [InlineData(12, "plug_rows=square", "length=140")] // 116 across: 3 gaps, so 4 + 4 + 4
    public void It_has_as_many_plugs_as_fit(int count, params string[] given) => Assert.Equal(count, Holes(Doubler.Make(given)).Count);

    // Collision-repair textbooks (from memory): 5 mm in thin skins, 8 mm from about 1 mm up.
    [Theory]
    [InlineData("sheet=0.8", 5)]
    [InlineData("sheet=1.2", 8)]
    public void Its_plug_holes_go_by_its_sheet(string sheet, double hole) =>
        Assert.All(Holes(Doubler.Make(sheet)), h => Approximately.Equal(hole, 2 * h.Radius, within: 1e-6));

    [Theory]
    [InlineData("plug_rows=square")]
    [InlineData("plug_rows=staggered", "length=600", "width=400", "corner=60")]
    [InlineData("welds=rim", "length=333", "width=91")]
    [InlineData("bolt=M12", "length=220", "width=160")]
    public void Every_plug_keeps_its_distance_from_the_edge_from_the_bolt_and_from_every_other(params string[] given)
    {
        var made = Doubler.Make(given);
        var holes = Holes(made);
        var outside = Region.Of(made.Piece("doubler").Shape.Contours.Single(c => c.IsCounterClockwise));
        Assert.All(holes, h => Assert.True(outside.BoundaryDistanceTo(h.Centre) >= 12 - 1e-6));
        Assert.All(holes, a => Assert.All(holes, b => Assert.True(a == b || a.Centre.DistanceTo(b.Centre) >= 36 - 1e-6)));
        Assert.Empty(made.Piece("doubler").Warnings);
        Assert.Equal(holes.Count, made.Piece("doubler").Tacks.Length);
    }

    [Fact]
    public void A_bolt_goes_through_the_middle_and_its_washer_stays_clear()
    {
        var made = Doubler.Make("bolt=M10", "plug_rows=square", "length=200", "width=120");
        var bolt = made.Piece("doubler").Shape.Contours.Single(c => !c.IsCounterClockwise && c.TryAsCircle(out var at, out _) && at.DistanceTo(Point.Origin) < 1e-6);
        Assert.True(bolt.TryAsCircle(out _, out var radius));
        Approximately.Equal(11, 2 * radius, within: 1e-6); // ISO 273 medium
        Assert.All(Holes(made), h => Assert.True(h.Centre.DistanceTo(Point.Origin) >= 33 / 2.0 + 12 - 1e-6));
    }

    // Closed form: the doubler and 25 mm round it, its corners round already.
    [Fact]
    public void The_panel_is_stripped_under_it_and_25_mm_round_it()
    {
        var strip = Assert.Single(Doubler.Make().Piece("panel").ZincStrips);
        var own = 170 * 110 - (4 - Math.PI) * 144;
        var length = 2 * (170 + 110) - 8 * 12 + 2 * Math.PI * 12;
        Approximately.Equal(own + 25 * length + Math.PI * 625, strip.Zone.Area, within: 1e-3);
        Assert.Empty(Doubler.Make("panel_metal=dc01").Piece("panel").ZincStrips);
    }

    [Fact]
    public void Its_edge_is_welded_in_short_runs_only_where_that_was_chosen()
    {
        Assert.Empty(Doubler.Make().Piece("doubler").WeldSeams);
        Assert.True(Assert.Single(Doubler.Make("edge=welded").Piece("doubler").WeldSeams).LongestRun <= 25); // 1.2 mm by MIG/MAG
    }

    [Theory]
    [InlineData("plug_pitch=31", "draw the sheet")]
    [InlineData("corner=20", "too near corners", "welds=rim")]
    [InlineData("bolt=M12", "no room between the plugs", "width=70")]
    [InlineData("panel_sheet=0.6", "burns through", "sheet=2")]
    public void What_cannot_be_is_refused(string given, string words, params string[] more) =>
        Assert.Contains(Doubler.Refuse([given, .. more]), c => c.Problem.Contains(words, StringComparison.Ordinal));

    private static List<(Point Centre, double Radius)> Holes(Modification made) =>
    [
        .. made.Piece("doubler").Shape.Contours.Where(c => !c.IsCounterClockwise)
            .Select(c => c.TryAsCircle(out var centre, out var radius) ? (Centre: centre, Radius: radius) : default)
            .Where(h => h.Radius < 4.5),
    ];
}
