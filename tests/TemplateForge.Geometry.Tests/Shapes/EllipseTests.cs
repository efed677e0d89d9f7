using TemplateForge.Testing;

namespace TemplateForge.Geometry.Tests.Shapes;

public class EllipseTests
{
    public static TheoryData<double, double, double> Ellipses => new()
    {
        { 107, 108.0508, 0.001 }, // a component of 190 with a clearance of 12, tilted by 8°
        { 107, 151.321, 0.001 }, // and by 45°
        { 100, 60, 0.001 },
        { 60, 100, 0.05 },
        { 500, 10, 0.001 }, // 50 : 1
        { 10, 500, 0.001 },
        { 50, 1, 0.001 },
        { 4000, 3000, 0.001 },
        { 100, 99.99, 0.001 },
        { 100, 99.9985, 0.001 }, // round to within the tolerance
        { 100, 60, 5 },
    };

    [Theory, MemberData(nameof(Ellipses))]
    public void Every_point_of_the_arcs_is_within_the_tolerance_of_the_true_ellipse(double a, double b, double tolerance)
    {
        var arcs = Outline.Ellipse(Point.Origin, a, b, Angle.Zero, tolerance);
        var worst = 0.0;
        foreach (var segment in arcs.Segments)
        {
            for (var i = 0; i < 40; i++) worst = Math.Max(worst, DistanceToEllipse(a, b, segment.At(i / 40.0)));
        }
        Assert.InRange(worst, 0, tolerance);
        // And they use it: fewer arcs would not do.
        if (tolerance < 1 && arcs.Segments.Length > 20) Assert.InRange(worst, tolerance * 0.4, tolerance);
    }

    [Theory, MemberData(nameof(Ellipses))]
    public void Every_point_of_the_true_ellipse_is_within_the_tolerance_of_the_arcs(double a, double b, double tolerance)
    {
        var region = Given.Region(Outline.Ellipse(Point.Origin, a, b, Angle.Zero, tolerance));
        for (var i = 0; i < 720; i++)
        {
            var t = i * Math.PI / 360;
            Assert.InRange(region.BoundaryDistanceTo(new(a * Math.Cos(t), b * Math.Sin(t))), 0, tolerance);
        }
    }

    [Theory, MemberData(nameof(Ellipses))]
    public void The_arcs_join_without_a_corner_and_are_the_same_in_all_four_quarters(double a, double b, double tolerance)
    {
        var arcs = Outline.Ellipse(Point.Origin, a, b, Angle.Zero, tolerance).Segments;
        for (var i = 0; i < arcs.Length; i++)
        {
            var next = arcs[(i + 1) % arcs.Length];
            Assert.Equal(arcs[i].End, next.Start);
            Approximately.Equal(0, arcs[i].EndDirection.Cross(next.StartDirection), within: 1e-9);
            Assert.True(arcs[i].Bulge > 0);
        }
        foreach (var mirror in new[] { Angle.Zero, Angle.QuarterTurn })
        {
            var images = arcs.Select(s => s.Placed(Placement.Mirrored(Point.Origin, mirror)).Reversed()).ToArray();
            foreach (var arc in arcs)
                Assert.Contains(images, i => i.Start.DistanceTo(arc.Start) < 1e-12 && i.End.DistanceTo(arc.End) < 1e-12 && Math.Abs(i.Bulge - arc.Bulge) < 1e-13);
        }
    }

    [Theory, MemberData(nameof(Ellipses))]
    public void The_area_is_pi_a_b(double a, double b, double tolerance)
    {
        var contour = Outline.Ellipse(new(1000, 2000), a, b, Angle.FromDegrees(30), tolerance);
        // Errors in and out take turns, so they cancel but for a small part of tolerance × boundary.
        Approximately.Equal(Math.PI * a * b, contour.Area, within: tolerance * contour.Length / 4);
    }

    // An arc over the width w of normals errs by at least ρ' w³ / 192, ρ' being the slope of the radius of curvature ρ(φ): the
    // cubic of least maximum. So a quarter takes at least ∫ ∛(ρ' / (192 ε)) dφ arcs, even if they need not join smoothly.
    [Theory]
    [InlineData(107, 151.321, 0.001)]
    [InlineData(100, 60, 0.001)]
    [InlineData(500, 10, 0.001)]
    [InlineData(4000, 3000, 0.001)]
    [InlineData(300, 200, 1e-6)]
    public void There_are_hardly_more_arcs_than_the_least_that_any_method_can_do_with(double a, double b, double tolerance)
    {
        double Rho(double phi) => a * a * b * b / Math.Pow(a * a * Math.Cos(phi) * Math.Cos(phi) + b * b * Math.Sin(phi) * Math.Sin(phi), 1.5);
        var least = 0.0;
        const int Steps = 20_000;
        for (var i = 0; i < Steps; i++)
        {
            var (from, to) = (Math.PI / 2 * i / Steps, Math.PI / 2 * (i + 1) / Steps);
            least += Math.Cbrt(Math.Abs(Rho(to) - Rho(from)) / (to - from) / (192 * tolerance)) * (to - from);
        }
        var arcs = Outline.Ellipse(Point.Origin, a, b, Angle.Zero, tolerance).Segments.Length;
        // 1.155 = ∛(192 / 124.7) is the price of joining smoothly, 7 % that of joints by rule, and one more a quarter of whole numbers.
        Assert.InRange(arcs, 4 * least - 4, 4 * (1.24 * least + 1));
    }

    [Fact]
    public void An_ellipse_lies_where_it_is_put_and_turned_counter_clockwise()
    {
        var ellipse = Outline.Ellipse(new(100, 50), 40, 10, Angle.FromDegrees(90));
        Approximately.Equal(new Box(new(90, 10), new(110, 90)), ellipse.Bounds, within: 0.001);
        var tilted = Given.Region(Outline.Ellipse(new(100, 50), 40, 10, Angle.FromDegrees(30)));
        Approximately.Equal(new Point(100, 50) + Vector.Polar(40, Angle.FromDegrees(30)), tilted.Extreme(Vector.Polar(1, Angle.FromDegrees(30))), within: 0.3);
        Assert.True(ellipse.IsCounterClockwise);
    }

    [Fact]
    public void Equal_axes_are_a_circle()
    {
        Assert.True(Outline.Ellipse(new(1, 2), 7, 7, Angle.FromDegrees(10)).TryAsCircle(out var centre, out var radius));
        Assert.Equal((new Point(1, 2), 7.0), (centre, Math.Round(radius, 12)));
    }

    [Fact]
    public void Axes_that_are_no_lengths_are_refused()
    {
        Assert.Throws<ArgumentOutOfRangeException>(() => Outline.Ellipse(Point.Origin, 0, 1, Angle.Zero));
        Assert.Throws<ArgumentOutOfRangeException>(() => Outline.Ellipse(Point.Origin, 1, double.NaN, Angle.Zero));
        Assert.Throws<ArgumentOutOfRangeException>(() => Outline.Ellipse(Point.Origin, 1, 1e300, Angle.Zero));
        Assert.Throws<ArgumentOutOfRangeException>(() => Outline.Ellipse(Point.Origin, 2, 1, Angle.Zero, tolerance: 0));
    }

    /// <summary>Distance from the true ellipse: the foot is where the line to the point is square to the curve, by halving.</summary>
    private static double DistanceToEllipse(double a, double b, Point p)
    {
        var (x, y) = (Math.Abs(p.X), Math.Abs(p.Y));
        // Over the first quarter (b² − a²) sin t cos t + a x sin t − b y cos t rises through 0 at the foot for points near the curve.
        var (low, high) = (0.0, Math.PI / 2);
        for (var i = 0; i < 100; i++)
        {
            var t = (low + high) / 2;
            var slope = (b * b - a * a) * Math.Sin(t) * Math.Cos(t) + a * x * Math.Sin(t) - b * y * Math.Cos(t);
            if (slope < 0) low = t; else high = t;
        }
        var foot = (low + high) / 2;
        return new Point(a * Math.Cos(foot), b * Math.Sin(foot)).DistanceTo(new(x, y));
    }
}
