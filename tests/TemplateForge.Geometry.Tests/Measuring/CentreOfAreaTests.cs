using TemplateForge.Testing;

namespace TemplateForge.Geometry.Tests.Measuring;

public class CentreOfAreaTests
{
    // Any table of centroids: a half disc's lies 4r / 3π from its straight side.
    [Fact]
    public void A_half_disc_balances_four_r_over_three_pi_from_its_straight_side()
    {
        var half = Given.Region(new Contour(Segment.Arc(new(10, 0), new(-10, 0), 1), Segment.Line(new(-10, 0), new(10, 0))));
        foreach (var image in Symmetries.Of(half))
            Approximately.Equal(image.By.Of(new Point(0, 40 / (3 * Math.PI))), image.Shape.Centroid(), within: 1e-9);
    }

    [Fact]
    public void A_hole_off_the_middle_moves_it_the_other_way()
    {
        var plate = Given.WithHole(Outline.Rectangle(new(new(0, 0), new(40, 20))), Outline.Circle(new(30, 10), 5));
        var hole = 25 * Math.PI;
        Approximately.Equal(new Point((800 * 20 - hole * 30) / (800 - hole), 10), plate.Centroid(), within: 1e-12);
    }

    [Fact]
    public void It_is_where_the_referee_has_it_for_any_shape()
    {
        var random = new Random(6);
        for (var n = 0; n < 60; n++)
        {
            var region = Given.Star(random, new(10, 20), 50);
            var referee = Given.Polygons(region).Centroid;
            Approximately.Equal(new Point(referee.X, referee.Y), region.Centroid(), within: 3e-4);
        }
    }

    // Height of the centroid of the piece beside a flat arc above its chord: ⅖ h; its area ⅔ c h.
    [Theory]
    [InlineData(0.9)] // series
    [InlineData(1.1)] // formula
    [InlineData(1e-4)]
    public void A_nearly_straight_arc_weighs_as_its_parabola(double rise)
    {
        var region = Given.Region(new Contour(Segment.Arc(new(0, 0), new(200, 0), rise / 100), Segment.Line(new(200, 0), new(0, 0))));
        Approximately.Equal(-0.4 * rise, region.Centroid().Y, within: rise * rise * rise / 20_000 + 1e-12);
    }

    [Fact]
    public void The_furthest_point_is_the_referees_furthest_vertex()
    {
        var random = new Random(7);
        for (var n = 0; n < 40; n++)
        {
            var region = Given.Star(random, new(10, 20), 50);
            var way = Vector.Polar(2, Angle.FullTurn * random.NextDouble());
            var expected = Given.Polygons(region).Coordinates.Max(c => new Vector(c.X, c.Y).Dot(way));
            var furthest = region.Extreme(way);
            Approximately.Equal(expected, (furthest - Point.Origin).Dot(way), within: 2.1e-4);
            Assert.True(region.Contains(furthest));
        }
        Assert.Throws<ArgumentException>(() => Given.Region(Outline.Circle(Point.Origin, 1)).Extreme(Vector.Zero));
        Assert.Throws<InvalidOperationException>(() => Region.Empty.Extreme(new(1, 0)));
        Assert.Throws<InvalidOperationException>(() => Region.Empty.Centroid());
    }
}
