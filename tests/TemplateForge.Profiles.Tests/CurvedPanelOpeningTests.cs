using TemplateForge.Testing;

namespace TemplateForge.Profiles.Tests;

public class CurvedPanelOpeningTests
{
    private static readonly Profile Opening = TheLibrary.Profile("curved-panel-opening");

    private static double Height(params string[] given) => Hole(given).Height;

    private static Geometry.Box Hole(params string[] given) =>
        Opening.Make(given).Piece("panel").Shape.Contours.Single(c => !c.IsCounterClockwise).Bounds;

    // Radius 300² / (8 × 28) + 14; seen square to the panel in the middle of the arc, 2 r asin(60 / r). Inside, the outside is a sheet rounder.
    [Theory]
    [InlineData("outside", 0)]
    [InlineData("inside", 1)]
    public void On_one_even_arc_it_is_as_tall_as_the_arc_over_it(string face, double more)
    {
        var radius = 300.0 * 300 / (8 * 28) + 14 + more;
        Approximately.Equal(2 * radius * Math.Asin(60 / radius), Height("section_by=rise", $"section_face={face}"), within: 1e-6);
    }

    // Gaps of a circle of 400 that touches in the middle: what they give may differ by what a smooth curve makes of seven places.
    [Fact]
    public void Gaps_of_a_circle_give_that_circle()
    {
        double[] gaps = [.. Enumerable.Range(-3, 7).Select(i => 400 - Math.Sqrt(400 * 400 - 2500 * i * i))];
        string[] given = [.. gaps.Select((gap, i) => FormattableString.Invariant($"gap_{i + 1}={gap:0.0000}"))];
        Approximately.Equal(2 * 400 * Math.Asin(60 / 400.0), Height(given), within: 0.02);
    }

    [Fact]
    public void A_flat_panel_leaves_the_opening_as_it_is()
    {
        var hole = Hole([.. Enumerable.Range(1, 7).Select(i => $"gap_{i}=0")]);
        Approximately.Equal(120, hole.Height, within: 1e-9);
        Approximately.Equal(120, hole.Width, within: 1e-9);
    }

    [Fact]
    public void Its_middle_lies_between_A_and_B_on_the_datum_line()
    {
        var panel = Opening.Make("opening=rectangle").Piece("panel");
        Assert.All(panel.Datums, d => Approximately.Equal(0, d.At.Y, within: 1e-9));
        Approximately.Equal(0, panel.Shape.Bounds.Centre.X, within: 1e-9);
        Assert.Contains(panel.Notes, n => n.Contains("square to the sheet", StringComparison.Ordinal));
    }

    [Theory]
    [InlineData("gap_1=120")]
    [InlineData("middle_up=400")]
    [InlineData("middle_up=60")]
    [InlineData("middle_along=80")]
    public void What_the_section_or_the_panel_does_not_reach_is_refused(string given) =>
        Assert.All(Opening.Refuse(given), c => Assert.True(c.Remedy.Length > 0));
}
