using TemplateForge.Geometry;

namespace TemplateForge.Fabrication.Tests.Warnings;

/// <summary>AC 43.13-1B and Army TM 10-5410-229-13&amp;P, p. 5-4: 2 D from the edge, 3 D apart, rows 2.5 D; Navy 14018: 1 to 3 times the sheet.</summary>
public class RivetWarningsTests
{
    private const double D = 3;

    private static string[] Of(params Point[][] rows) => Of(Plates.With([.. rows.SelectMany(r => r).Select(c => Plates.Round(c.X, c.Y, D + 0.2))]), rows);

    private static string[] Of(Piece piece, params Point[][] rows) =>
        [.. RivetWarnings.Of(piece, [.. rows.Select(r => new RivetRow([.. r], D))]).Select(w => w.Rule)];

    private static Point[] Row(double x, double y, double pitch, int count = 4) =>
        [.. Enumerable.Range(0, count).Select(i => new Point(x + i * pitch, y))];

    [Fact]
    public void A_rivet_stands_two_diameters_from_the_edge()
    {
        Assert.Equal(["rivet too near the edge"], Of([new Point(50, 2 * D - Plates.Just)]));
        Assert.Empty(Of([new Point(50, 2 * D + Plates.Just)]));
    }

    [Theory]
    [InlineData(2 * D - 1e-5, 1)]
    [InlineData(2 * D + 1e-5, 0)]
    public void And_from_a_hole_that_is_no_rivet_s(double apart, int warnings) =>
        Assert.Equal(warnings, Of(Plates.With(Plates.Round(50, 50, D), Plates.Round(50 + apart + 10, 50, 20)), [new Point(50, 50)]).Length);

    [Fact]
    public void Rivets_of_a_row_stand_three_diameters_apart()
    {
        Assert.Equal(["rivets too near each other"], Of(Row(50, 50, 3 * D - Plates.Just)));
        Assert.Empty(Of(Row(50, 50, 3 * D + Plates.Just)));
    }

    [Fact]
    public void A_row_is_warned_of_once_at_its_worst_place_with_how_many_there_are()
    {
        var row = new RivetRow([new(50, 5), new(70, 4), new(90, 5.5), new(95, 20)], D);
        var found = RivetWarnings.Of(Plates.With([.. row.Centres.Select(c => Plates.Round(c.X, c.Y, D))]), [row]);
        var warning = Assert.Single(found);
        Assert.Equal(new Point(70, 4), warning.At);
        Assert.Contains("is 4 mm", warning.Text, StringComparison.Ordinal);
        Assert.Contains("3 places", warning.Text, StringComparison.Ordinal);
    }

    [Fact]
    public void Round_a_ring_too()
    {
        Assert.NotEmpty(Of(Ring(3 * D - Plates.Just)));
        Assert.Empty(Of(Ring(3 * D + Plates.Just)));

        static Point[] Ring(double pitch) =>
            [.. Enumerable.Range(0, 8).Select(i => new Point(100, 50) + Vector.Polar(pitch / 2 / Math.Sin(Math.PI / 8), Angle.FromDegrees(45 * i)))];
    }

    // Staggered by half a pitch of 4 D, the rivets themselves are 3 D and more apart: it is the rows that are too near.
    [Theory]
    [InlineData(0)]
    [InlineData(2 * D)]
    public void Rows_lie_two_and_a_half_diameters_apart(double staggered)
    {
        Assert.Equal(["rows of rivets too near each other"], Of(Row(50, 30, 4 * D), Row(50 + staggered, 30 + 2.5 * D - Plates.Just, 4 * D)));
        Assert.Empty(Of(Row(50, 30, 4 * D), Row(50 + staggered, 30 + 2.5 * D + Plates.Just, 4 * D)));
    }

    // Two rows that cross, and two that meet in one rivet at a corner.
    [Fact]
    public void Rows_that_do_not_run_beside_each_other_are_not_too_near()
    {
        Point[] up = [.. Enumerable.Range(0, 4).Select(i => new Point(50 + 6 * D, 50 + (i - 1.5) * 4 * D))];
        Assert.Empty(Of(Row(50, 50, 4 * D), up));
        Point[] corner = [.. Enumerable.Range(0, 4).Select(i => new Point(50, 30 + i * 4 * D))];
        Assert.Empty(Of(Plates.With([.. Row(50, 30, 4 * D).Concat(corner.Skip(1)).Select(c => Plates.Round(c.X, c.Y, D))]), Row(50, 30, 4 * D), corner));
    }

    [Theory]
    [InlineData(0.99, 0, 1)]
    [InlineData(1, 0, 0)]
    [InlineData(3, 0, 0)]
    [InlineData(3.01, 0, 1)]
    [InlineData(3.01, 1.5, 0)]
    [InlineData(1.4, 1.5, 1)]
    public void A_rivet_is_once_to_three_times_as_thick_as_the_thickest_sheet(double diameter, double otherSheet, int warnings)
    {
        var found = RivetWarnings.Of(Plates.With(Plates.Round(50, 50, 4)), [new([new(50, 50)], diameter, otherSheet)]);
        Assert.Equal(warnings, found.Length);
        Assert.All(found, w => Assert.Contains("14018", w.Source, StringComparison.Ordinal));
    }

    [Fact]
    public void A_row_has_a_rivet_and_a_rivet_a_diameter()
    {
        Assert.Throws<ArgumentException>(() => new RivetRow([], 3));
        Assert.Throws<ArgumentException>(() => new RivetRow([Point.Origin], 0));
    }
}
