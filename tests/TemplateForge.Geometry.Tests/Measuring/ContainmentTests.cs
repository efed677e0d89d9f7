using TemplateForge.Testing;

namespace TemplateForge.Geometry.Tests.Measuring;

public class ContainmentTests
{
    [Fact]
    public void A_point_is_inside_where_the_referee_has_it_inside()
    {
        var random = new Random(5);
        for (var n = 0; n < 60; n++)
        {
            var region = Given.Star(random, new(0, 0), 50);
            var polygons = Given.Polygons(region);
            for (var i = 0; i < 60; i++)
            {
                Point p = new(random.NextDouble() * 120 - 60, random.NextDouble() * 120 - 60);
                if (region.BoundaryDistanceTo(p) < 2 * Given.Chords) continue; // where the referee's chords do not tell
                Assert.Equal(polygons.Contains(Given.Point(p)), region.Contains(p));
            }
        }
    }

    // Where rays run through corners, along edges and chords, and touch arcs: all points of a half millimetre grid.
    [Fact]
    public void On_the_grid_of_its_own_corners_a_shape_has_inside_what_formulas_have_inside()
    {
        var shape = new Contour(
            Segment.Line(new(0, 0), new(6, 0)),
            Segment.Arc(new(6, 0), new(6, 4), 1), // half circle of 2 about (6, 2), outwards
            Segment.Line(new(6, 4), new(4, 4)),
            Segment.Arc(new(4, 4), new(2, 4), -1), // half circle of 1 about (3, 4), inwards
            Segment.Line(new(2, 4), new(0, 4)),
            Segment.Line(new(0, 4), new(0, 0)));
        foreach (var image in Symmetries.Of(Given.Region(shape)))
        {
            for (var x = -1.0; x <= 9; x += 0.5)
            {
                for (var y = -1.0; y <= 5; y += 0.5)
                {
                    var (toRight, toNotch) = (new Point(x, y).DistanceTo(new(6, 2)), new Point(x, y).DistanceTo(new(3, 4)));
                    var inside = ((x >= 0 && x <= 6 && y >= 0 && y <= 4) || (x >= 6 && toRight <= 2)) && toNotch >= 1;
                    if (y == 4 && toNotch == 1) inside = true;
                    Assert.True(inside == image.Shape.Contains(image.By.Of(new Point(x, y))), $"({x}, {y}) {image.Name}");
                }
            }
        }
    }

    [Fact]
    public void The_boundary_counts_as_inside_to_a_millionth_of_a_millimetre_also_100_m_away()
    {
        foreach (var image in Symmetries.Of(Given.WithHole(Outline.Circle(new(5, 5), 10), Outline.Circle(new(5, 5), 3))))
        {
            for (var i = 0; i < 12; i++)
            {
                var way = Vector.Polar(1, Angle.FromDegrees(30 * i + 0.001 * i));
                bool Has(double radius) => image.Shape.Contains(image.By.Of(new Point(5, 5) + way * radius));
                Assert.True(Has(10) && Has(10 + 0.9e-6) && !Has(10 + 1.1e-6), image.Name);
                Assert.True(Has(3) && Has(3 - 0.9e-6) && !Has(3 - 1.1e-6), image.Name);
                Assert.True(Has(6) && !Has(0), image.Name);
            }
        }
    }

    [Fact]
    public void Nothing_is_inside_an_empty_region() => Assert.False(Region.Empty.Contains(Point.Origin));
}
