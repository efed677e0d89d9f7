using TemplateForge.Testing;

namespace TemplateForge.Geometry.Tests.Measuring;

public class FlatteningTests
{
    public static TheoryData<double, double> Arcs => [.. from bulge in (double[])[1, -1, 0.4, 1e-3, -1e-6, 1e-9] from tolerance in (double[])[1e-9, 1e-6, 1e-3, 1, 1e6] select (bulge, tolerance)];

    // The rise of a chord over the angle θ of a circle of radius R is R (1 − cos θ/2) = 2 R sin² θ/4.
    [Theory, MemberData(nameof(Arcs))]
    public void Chords_stay_within_the_tolerance_and_one_fewer_would_not(double bulge, double tolerance)
    {
        var arc = Segment.Arc(new(10, 20), new(13, 24), bulge);
        var points = new Path(arc).Flattened(tolerance);
        var chords = points.Length - 1;
        double Rise(int count) => 2 * arc.Radius * Math.Pow(Math.Sin(arc.Sweep.Radians / count / 4), 2);
        Assert.InRange(Rise(chords), 0, tolerance * (1 + 1e-6));
        if (chords > 1) Assert.True(Rise(chords - 1) > tolerance);
        foreach (var p in points.Where((_, i) => i % (chords / 50 + 1) == 0)) Approximately.Equal(0, arc.DistanceTo(p), within: 1e-12);
        Assert.Equal((arc.Start, arc.End), (points[0], points[^1]));
    }

    [Fact]
    public void Chords_take_area_from_a_disc() =>
        // A regular polygon in the circle: n/2 R² sin 2π/n. At a rise of 0.1 the 100 mm circle takes 2π / (4 asin √(0.1 / 200)) = 70.2, in halves 72.
        Approximately.Equal(
            36 * 1e4 * Math.Sin(2 * Math.PI / 72),
            Outline.Polygon(Outline.Circle(Point.Origin, 100).Flattened(0.1)).Area,
            within: 1e-8);
}
