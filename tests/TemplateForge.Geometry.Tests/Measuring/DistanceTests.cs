using TemplateForge.Testing;

namespace TemplateForge.Geometry.Tests.Measuring;

public class DistanceTests
{
    private static readonly Segment Upper = Segment.Arc(new(10, 0), new(-10, 0), 1); // half circle of 10 about the origin

    [Theory]
    [InlineData(0, 15, 5, 0, 10)] // outside
    [InlineData(3, 4, 5, 6, 8)] // inside
    [InlineData(12, -5, 5.385164807134504, 10, 0)] // past an end: √(2² + 5²)
    [InlineData(-30, 0, 20, -10, 0)]
    public void A_half_circle_is_nearest_square_to_it_or_at_an_end(double x, double y, double distance, double nearX, double nearY)
    {
        foreach (var (_, by) in Symmetries.Placements)
        {
            var (arc, p) = (Upper.Placed(by), by.Of(new Point(x, y)));
            Approximately.Equal(distance, arc.DistanceTo(p), within: 1e-9);
            Approximately.Equal(by.Of(new Point(nearX, nearY)), arc.Nearest(p), within: 1e-9);
            Approximately.Equal(distance, arc.Reversed().DistanceTo(p), within: 1e-9);
        }
    }

    [Fact]
    public void From_the_centre_an_arc_is_its_radius_away() => Approximately.Equal(10, Upper.DistanceTo(Point.Origin), within: 1e-14);

    [Theory]
    [InlineData(1)]
    [InlineData(1e-4)]
    [InlineData(1e-8)]
    [InlineData(1e-11)]
    public void A_point_is_told_from_a_nearly_straight_arc_as_exactly_as_from_any(double rise)
    {
        var arc = Segment.Arc(new(0, 0), new(1000, 0), -2 * rise / 1000);
        foreach (var share in new[] { 0.001, 0.3, 0.5, 0.9 })
        {
            foreach (var off in new[] { 0.0, 1e-6, -30, 200 })
            {
                var p = arc.At(share) + arc.DirectionAt(share).Left * off;
                Approximately.Equal(Math.Abs(off), arc.DistanceTo(p), within: 1e-10);
                Approximately.Equal(arc.At(share), arc.Nearest(p), within: 1e-9);
            }
        }
        Approximately.Equal(5, arc.DistanceTo(new Point(1003, -4)), within: 1e-10 + rise / 100);
        Approximately.Equal(5, arc.DistanceTo(new Point(-3, 4)), within: 1e-10 + rise / 50);
    }

    [Fact]
    public void Least_distances_between_segments_are_what_a_dense_search_finds()
    {
        var random = new Random(2);
        for (var n = 0; n < 400; n++)
        {
            Segment Any() => Segment.Arc(At(), At(), random.Next(3) == 0 ? 0 : (random.NextDouble() * 2 - 1) * (random.Next(3) == 0 ? 1e-4 : 1));
            Point At() => new(random.NextDouble() * 60, random.NextDouble() * 60);
            var (a, b) = (Any(), Any());
            var distance = a.DistanceTo(b);
            var searched = Enumerable.Range(0, 401).Min(i => b.DistanceTo(a.At(i / 400.0)));
            Assert.InRange(searched, distance - 1e-9, distance + (distance == 0 ? 0.3 : 0.05));
            Approximately.Equal(distance, b.DistanceTo(a), within: 1e-12);
        }
    }

    // A ring of 10 about the origin and a circle of 2 about (20, 0), a line x = 13: closed forms.
    [Fact]
    public void Arcs_and_lines_are_nearest_where_one_line_is_square_to_both()
    {
        var right = Segment.Arc(new(0, -10), new(0, 10), 1);
        var small = Segment.Arc(new(20, 2), new(20, -2), 1);
        Approximately.Equal(8, right.DistanceTo(small), within: 1e-13);
        Approximately.Equal(3, right.DistanceTo(Segment.Line(new(13, -50), new(13, 50))), within: 1e-13);
        Approximately.Equal(10 - 7.5, right.DistanceTo(Segment.Arc(new(0.5, -7), new(0.5, 7), 1)), within: 1e-13); // one inside the other
        Assert.Equal(0, right.DistanceTo(Segment.Line(new(10 + 9e-8, -50), new(10 + 9e-8, 50))));
    }

    [Fact]
    public void Regions_apart_are_as_far_apart_as_the_referee_says()
    {
        var random = new Random(3);
        for (var n = 0; n < 60; n++)
        {
            var a = Given.Star(random, new(0, 0), 50);
            var b = Given.Star(random, new(60 + 60 * random.NextDouble(), 40 * random.NextDouble()), 40);
            // The referee's chords stray by 1e-4 on either shape.
            Approximately.Equal(Given.Polygons(a).Distance(Given.Polygons(b)), a.DistanceTo(b), within: 2.1e-4);
        }
    }

    [Fact]
    public void A_region_inside_another_or_touching_it_is_0_away_and_one_in_its_hole_is_not()
    {
        var washer = Given.WithHole(Outline.Circle(Point.Origin, 20), Outline.Circle(Point.Origin, 10));
        Region Disc(double x, double r) => Given.Region(Outline.Circle(new(x, 0), r));
        foreach (var (_, by) in Symmetries.Placements)
        {
            double Apart(Region a, Region b) => a.Placed(by).DistanceTo(b.Placed(by));
            Assert.Equal(0, Apart(washer, Disc(15, 1)));
            Assert.Equal(0, Apart(Disc(15, 1), washer));
            Assert.Equal(0, Apart(washer, Disc(25, 5)));
            Approximately.Equal(6, Apart(washer, Disc(0, 4)), within: 1e-10);
            Approximately.Equal(3, Apart(washer, Disc(3, 4)), within: 1e-10);
            Approximately.Equal(75, Apart(washer, Disc(100, 5)), within: 1e-10);
        }
        Assert.Equal(double.PositiveInfinity, washer.DistanceTo(Region.Empty));
        Assert.Equal(double.PositiveInfinity, Region.Empty.DistanceTo(Point.Origin));
        Assert.Throws<InvalidOperationException>(() => Region.Empty.NearestBoundaryPoint(Point.Origin));
    }

    [Fact]
    public void Points_are_as_far_from_a_region_and_its_boundary_as_the_referee_says()
    {
        var random = new Random(4);
        for (var n = 0; n < 20; n++)
        {
            var region = Given.Star(random, new(0, 0), 50);
            var polygons = Given.Polygons(region);
            for (var i = 0; i < 25; i++)
            {
                Point p = new(random.NextDouble() * 140 - 70, random.NextDouble() * 140 - 70);
                var referee = Given.Point(p);
                Approximately.Equal(polygons.Distance(referee), region.DistanceTo(p), within: 1.1e-4);
                Approximately.Equal(polygons.Boundary.Distance(referee), region.BoundaryDistanceTo(p), within: 1.1e-4);
                Approximately.Equal(region.BoundaryDistanceTo(p), region.NearestBoundaryPoint(p).DistanceTo(p), within: 1e-12);
            }
        }
    }
}
