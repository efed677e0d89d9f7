using TemplateForge.Testing;

namespace TemplateForge.Profiles.Tests;

public class HemmedCoverTests
{
    private static readonly Profile Cover = TheLibrary.Profile("hemmed-cover");

    // General mechanics: a bend of 90° takes 2 (R + T) − π/2 (R + K T) off two legs over the outside. R 1.5, T 1, DC01's K 0.44.
    private const double Deduction = 2 * (1.5 + 1) - Math.PI / 2 * (1.5 + 0.44);

    // A hem inside stands between the side and what is covered, so the cover is larger by a thickness on each side.
    [Theory, InlineData("inside", 2), InlineData("outside", 1)]
    public void The_clearance_is_left_between_what_is_covered_and_the_nearest_sheet(string way, int thicknesses) =>
        Approximately.Equal(
            250 + 2 * (1.5 + thicknesses) + 2 * (30 - Deduction + 8),
            Cover.Make($"hem_way={way}").Piece("cover").Shape.Bounds.Width,
            within: 1e-9);

    // The hem's fold lies 8 in from the cut edge, and a hole so far up from the fold comes so far up from the edge of the side.
    [Fact]
    public void Screw_holes_come_where_they_were_measured_from_the_edge_of_the_hem()
    {
        var blank = Cover.Make("fixing=screwed", "screw_up=15").Piece("cover").Shape;
        var lowest = blank.Contours.Where(c => !c.IsCounterClockwise).Min(c => c.Bounds.Centre.Y);
        Approximately.Equal(8 + 15, lowest - blank.Bounds.Min.Y, within: 1e-9);
    }

    [Fact]
    public void A_screw_hole_in_the_hem_is_refused() =>
        Assert.Contains("in the hem", Assert.Single(Cover.Refuse("fixing=screwed", "screw_up=8")).Problem, StringComparison.Ordinal);
}
