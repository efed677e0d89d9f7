using CsCheck;
using TemplateForge.Testing;

namespace TemplateForge.Geometry.Tests.Measuring;

public class BoundaryTests
{
    /// <summary>A wheel of many segments, arcs of any bend among them, nearly straight ones too.</summary>
    private static Region Wheel(int seed, int corners, double radius, Point centre)
    {
        var random = new Random(seed);
        double Bulge() => random.Next(3) switch { 0 => 0, 1 => 1e-9 * random.NextDouble(), _ => random.NextDouble() - 0.5 };
        return new([Testing.Shapes.ThroughPoints(
            [.. Enumerable.Range(0, corners).Select(i => centre + Vector.Polar(radius * (1 + 0.1 * random.NextDouble()), Angle.FullTurn * i / corners))],
            [.. Enumerable.Range(0, corners).Select(_ => Bulge())])]);
    }

    [Theory, InlineData(2), InlineData(7), InlineData(60), InlineData(700)]
    public void A_point_is_as_far_from_a_boundary_as_from_the_nearest_of_all_its_segments(int corners) =>
        Gen.Select(Gen.Int, Gen.Double[-150, 150], Gen.Double[-150, 150]).Check(100, drawn =>
        {
            foreach (var centre in (ReadOnlySpan<Point>)[new(0, 0), new(100_000, -100_000)])
            {
                var region = Wheel(drawn.Item1, corners, 80, centre);
                var p = centre + new Vector(drawn.Item2, drawn.Item3);
                var least = region.Contours[0].Segments.Min(s => s.DistanceTo(p));
                Assert.Equal(least, region.BoundaryDistanceTo(p));
                Assert.Equal(least, region.NearestBoundaryPoint(p).DistanceTo(p));
                Assert.Equal(region.Contours[0].WindingAround(p) > 0, region.Surrounds(p));
            }
        });

    // Every ray through a vertex, and every point in line with one.
    [Fact]
    public void A_point_level_with_vertices_is_inside_as_all_segments_together_say() =>
        Testing.Shapes.GridRegion.Check(60, region =>
        {
            for (var x = -40; x <= 40; x += 5)
            {
                for (var y = -40; y <= 40; y += 5)
                {
                    var p = new Point(x, y);
                    if (region.BoundaryDistanceTo(p) > 1e-6) Assert.Equal(region.Contours.Sum(c => c.WindingAround(p)) > 0, region.Surrounds(p));
                }
            }
        });

    [Theory, InlineData(3, 700), InlineData(40, 5), InlineData(150, 130)]
    public void Two_regions_are_as_far_apart_as_the_nearest_pair_of_all_segments(int corners, int others) =>
        Gen.Select(Gen.Int, Gen.Double[-30, 300]).Check(12, (seed, apart) =>
        {
            foreach (var centre in (ReadOnlySpan<Point>)[new(0, 0), new(100_000, -100_000)])
            {
                var one = Wheel(seed, corners, 40, centre);
                var other = Wheel(seed + 1, others, 90, centre + new Vector(apart, 20));
                var least = Least(one, other);
                if (one.Surrounds(other.Contours[0].Segments[0].Start) || other.Surrounds(one.Contours[0].Segments[0].Start)) least = 0;
                Assert.Equal(least, one.DistanceTo(other));
                Approximately.Equal(least, other.DistanceTo(one), within: 1e-10);
                var (on, onOther) = one.NearestPoints(other);
                Approximately.Equal(0, one.DistanceTo(on) + other.DistanceTo(onOther), within: Tolerance.Length);
            }
        });

    private static double Least(Region one, Region other) =>
        one.Contours[0].Segments.Min(s => other.Contours[0].Segments.Min(o => s.DistanceTo(o)));

    // The combs face each other along their whole length, so that the box about a tooth that reaches across to the other comb holds
    // thousands. Trying all pairs would take minutes. One tooth is longer by 1, and opposite it is another.
    [Fact]
    public void Two_combs_of_twenty_thousand_segments_are_told_apart_at_once()
    {
        const int corners = 20_000;
        IEnumerable<Point> Teeth(double roots, double tips, int longest, double longer) =>
            Enumerable.Range(0, corners).Select(i => new Point(i / 10.0, i % 2 == 0 ? roots : tips + (i == longest ? longer : 0)));
        var upper = Outline.Polygon([.. Teeth(2, 0, 7777, -1), new(corners * 0.1, 10), new(0, 10)]);
        var lower = Outline.Polygon([.. Teeth(-503, -500, 0, 0), new(corners * 0.1, -510), new(0, -510)]);
        var (on, onOther) = Given.Region(upper).NearestPoints(Given.Region(lower));
        Assert.Equal((new Point(777.7, -1), new Point(777.7, -500)), (on, onOther));
    }
}
