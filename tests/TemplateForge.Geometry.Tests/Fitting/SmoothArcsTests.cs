using CsCheck;
using TemplateForge.Testing;

namespace TemplateForge.Geometry.Tests.Fitting;

public class SmoothArcsTests
{
    private const double Fine = 0.001;

    private sealed record Curve(string Name, Func<double, Point> At, double From, double To);

    private static readonly Curve[] Curves = [
        new("half an ellipse", t => new(100 * Math.Cos(t), 60 * Math.Sin(t)), 0, Math.PI),
        new("spiral", t => new((20 + 5 * t) * Math.Cos(t), (20 + 5 * t) * Math.Sin(t)), 0, 4 * Math.PI),
        new("S-curve", t => Bezier(t, new(0, 0), new(60, 0), new(20, 80), new(90, 80)), 0, 1),
        new("sine", t => new(t, 10 * Math.Sin(t / 10)), 0, 40 * Math.PI),
        new("parabola", t => new(t, t * t / 50), -60, 60),
    ];

    public static TheoryData<string, double> Cases => [.. from c in Curves from e in (double[])[0.1, 0.01, Fine, 1e-5] select (c.Name, e)];

    [Theory, MemberData(nameof(Cases))]
    public void The_arcs_and_the_curve_stray_from_each_other_by_no_more_than_the_tolerance(string name, double tolerance)
    {
        var curve = Curves.Single(c => c.Name == name);
        var arcs = SmoothArcs.Along(curve.At, curve.From, curve.To, tolerance);
        Assert.InRange(BothWays(arcs, curve), tolerance * 0.2, tolerance);
        AssertSmooth(arcs.Segments, within: 1e-6);
    }

    // An arc over the length w on the slope κ' of the curvature errs by κ' w³ / 192 at least: the cubic of least maximum. So there are
    // ∫ ∛(κ' / (192 ε)) ds arcs at least, even if they need not join without a corner.
    [Theory]
    [InlineData("half an ellipse", 1.5)]
    [InlineData("spiral", 1.5)]
    [InlineData("S-curve", 1.5)]
    [InlineData("sine", 1.5)]
    [InlineData("parabola", 1.5)]
    public void There_are_hardly_more_arcs_than_the_least_possible(string name, double times)
    {
        var curve = Curves.Single(c => c.Name == name);
        var least = Least(curve, 1e-4);
        var count = SmoothArcs.Along(curve.At, curve.From, curve.To, 1e-4).Segments.Length;
        Assert.True(count > least - 1 && count <= times * least + 4, $"{name}: {count} arcs, least {least:0.0}: {count / least:0.00}");
    }

    [Fact]
    public void A_straight_curve_is_one_line()
    {
        var line = SmoothArcs.Cubic(new(1, 2), new(3, 4), new(6, 7), new(10, 11));
        Assert.Equal([Segment.Line(new(1, 2), new(10, 11))], line.Segments.Select(s => Segment.Line(s.Start, s.End)));
        Approximately.Equal(0, line.Segments[0].Bulge, within: 1e-12);
    }

    [Fact]
    public void A_circle_is_a_few_arcs_of_its_radius()
    {
        var circle = SmoothArcs.Around(t => new(7 + 5 * Math.Cos(t), 5 * Math.Sin(t)), 0, 2 * Math.PI);
        Assert.InRange(circle.Segments.Length, 2, 8);
        Approximately.Equal(Math.PI * 25, circle.SignedArea, within: 1e-3 * 10 * Math.PI);
    }

    [Fact]
    public void A_closed_curve_joins_without_a_corner_at_its_seam()
    {
        var closed = SmoothArcs.Around(t => new(50 * Math.Cos(t) + 8 * Math.Cos(3 * t), 40 * Math.Sin(t)), 0.3, 0.3 + 2 * Math.PI);
        AssertSmooth([.. closed.Segments, closed.Segments[0]], within: 1e-6);
    }

    [Fact]
    public void A_cusp_stays_a_corner_and_is_reached()
    {
        // The control points cross so that the speed vanishes midway.
        var cusp = SmoothArcs.Cubic(new(0, 0), new(100, 100), new(0, 100), new(100, 0));
        var tip = new Point(50, 75);
        Assert.Contains(cusp.Segments, s => s.Start.DistanceTo(tip) < 1e-3);
        Assert.InRange(BothWays(cusp, new("", t => Bezier(t, new(0, 0), new(100, 100), new(0, 100), new(100, 0)), 0, 1)), 0, Fine);
    }

    [Fact]
    public void A_corner_of_a_function_stays_where_it_is()
    {
        var path = SmoothArcs.Along(t => new(t, Math.Abs(Math.Sin(t))), 0.5, 5.5);
        Assert.Contains(path.Segments, s => s.Start.DistanceTo(new(Math.PI, 0)) < 1e-6);
    }

    [Fact]
    public void A_curve_that_turns_back_on_its_own_line_goes_there_and_back()
    {
        var path = SmoothArcs.Cubic(new(20, 60), new(80, 60), new(20, 60), new(0, 60));
        Assert.All(path.Segments, s => Approximately.Equal(0, s.Bulge, within: 1e-9));
        Assert.Equal(2, path.Segments.Length);
    }

    [Fact]
    public void No_speed_at_the_ends_leaves_the_direction_of_its_limit()
    {
        var path = SmoothArcs.Cubic(new(0, 0), new(0, 0), new(30, 40), new(30, 40));
        Approximately.Equal(new Vector(0.6, 0.8), path.Segments[0].StartDirection, within: 1e-6);
        var bent = SmoothArcs.Cubic(new(0, 0), new(0, 0), new(30, 40), new(80, 0));
        Approximately.Equal(new Vector(0.6, 0.8), bent.Segments[0].StartDirection, within: 1e-5);
        Assert.InRange(BothWays(bent, new("", t => Bezier(t, new(0, 0), new(0, 0), new(30, 40), new(80, 0)), 0, 1)), 0, Fine);
    }

    [Fact]
    public void A_curve_runs_through_its_points_in_order()
    {
        Point[] points = [new(0, 0), new(20, 5), new(35, 25), new(30, 50), new(60, 55), new(60, 55), new(90, 20)];
        var path = SmoothArcs.Through(points);
        foreach (var p in points) Assert.InRange(path.Segments.Min(s => s.DistanceTo(p)), 0, Fine);
        AssertSmooth(path.Segments, within: 1e-6);
        Assert.Equal((points[0], points[^1]), (path.Start, path.End));
    }

    [Fact]
    public void A_part_of_an_ellipse_lies_on_it()
    {
        var path = SmoothArcs.Ellipse(Point.Origin, 80, 30, Angle.Zero, Angle.FromDegrees(10), Angle.FromDegrees(200));
        Assert.InRange(BothWays(path, new("", t => new(80 * Math.Cos(t), 30 * Math.Sin(t)), 10 * Math.PI / 180, 200 * Math.PI / 180)), 0, Fine);
    }

    [Fact]
    public void What_is_no_curve_is_refused()
    {
        Assert.ThrowsAny<ArgumentException>(() => SmoothArcs.Cubic(new(1, 1), new(1, 1), new(1, 1), new(1, 1)));
        Assert.ThrowsAny<ArgumentException>(() => SmoothArcs.Along(t => new(t, double.NaN), 0, 1));
        Assert.ThrowsAny<ArgumentException>(() => SmoothArcs.Along(t => new(t, t), 1, 1));
        Assert.ThrowsAny<ArgumentException>(() => SmoothArcs.Along(t => new(t, t), 0, 1, tolerance: 0));
        Assert.ThrowsAny<ArgumentException>(() => SmoothArcs.Around(t => new(t, t), 0, 1));
        Assert.ThrowsAny<ArgumentException>(() => SmoothArcs.Through([new(1, 1), new(1, 1)]));
    }

    // Control points on a grid: doubled, in line, crossing and turning back on themselves.
    [Fact]
    public void Cubics_on_a_grid_are_kept_and_moving_turning_mirroring_and_reversing_them_changes_nothing() =>
        (from p in Gen.Select(Gen.Int[0, 4], Gen.Int[0, 4]).Array[4] select p.Select(q => new Point(20 * q.Item1, 20 * q.Item2)).ToArray())
            .Check(60, p =>
            {
                if (p.Distinct().Count() < 2) return;
                var path = SmoothArcs.Cubic(p[0], p[1], p[2], p[3], 0.01);
                var far = BothWays(path, new("", t => Bezier(t, p[0], p[1], p[2], p[3]), 0, 1), 300);
                Assert.True(far <= 0.01, $"{far} from {string.Join(", ", p)}");

                var by = Placement.Turned(Angle.FromDegrees(37), Point.Origin).Then(Placement.Mirrored(new(3, 4), Angle.FromDegrees(20)));
                var placed = SmoothArcs.Cubic(by.Of(p[0]), by.Of(p[1]), by.Of(p[2]), by.Of(p[3]), 0.01);
                AssertSame(path.Placed(by), placed);
                AssertSame(path.Reversed(), SmoothArcs.Cubic(p[3], p[2], p[1], p[0], 0.01));
            });

    private static void AssertSame(Path expected, Path actual)
    {
        Assert.True(expected.Segments.Length == actual.Segments.Length, $"{expected.Segments.Length} arcs, not {actual.Segments.Length}, from {string.Join("; ", actual.Segments)}");
        foreach (var (e, a) in expected.Segments.Zip(actual.Segments)) Approximately.Equal(e.At(0.5), a.At(0.5), within: 0.01);
    }

    private static void AssertSmooth(IReadOnlyList<Segment> segments, double within)
    {
        for (var i = 1; i < segments.Count; i++)
            Approximately.Equal(segments[i - 1].EndDirection, segments[i].StartDirection, within);
    }

    private static Point Bezier(double t, Point a, Point b, Point c, Point d)
    {
        var s = 1 - t;
        return new(s * s * s * a.X + 3 * s * s * t * b.X + 3 * s * t * t * c.X + t * t * t * d.X,
            s * s * s * a.Y + 3 * s * s * t * b.Y + 3 * s * t * t * c.Y + t * t * t * d.Y);
    }

    /// <summary>Curve to arcs at many samples, and arcs to the curve by thirds in every valley of the distance.</summary>
    private static double BothWays(Path path, Curve curve, int samples = 3000)
    {
        double T(double i) => curve.From + (curve.To - curve.From) * Math.Clamp(i / samples, 0, 1);
        var points = Enumerable.Range(0, samples + 1).Select(i => curve.At(T(i))).ToArray();
        var worst = points.Max(p => path.Segments.Min(s => s.DistanceTo(p)));
        foreach (var segment in path.Segments)
        {
            for (var k = 0; k <= 8; k++)
            {
                var p = segment.At(k / 8.0);
                var far = points.Select(q => q.DistanceTo(p)).ToArray();
                var least = far.Min();
                for (var i = 0; i <= samples && least > 0; i++)
                {
                    // Every valley of the distance: two branches of the curve may be near.
                    if (far[i] > far[Math.Max(i - 1, 0)] || far[i] > far[Math.Min(i + 1, samples)]) continue;
                    double low = i - 1, high = i + 1;
                    for (var round = 0; round < 50; round++)
                    {
                        var (l, h) = (low + (high - low) / 3, high - (high - low) / 3);
                        if (curve.At(T(l)).DistanceTo(p) < curve.At(T(h)).DistanceTo(p)) high = h; else low = l;
                    }
                    least = Math.Min(least, curve.At(T(low)).DistanceTo(p));
                }
                worst = Math.Max(worst, least);
            }
        }
        return worst;
    }

    private static double Least(Curve curve, double tolerance)
    {
        const int steps = 4000;
        var points = Enumerable.Range(0, steps + 1).Select(i => curve.At(curve.From + (curve.To - curve.From) * i / steps)).ToArray();
        double Curvature(int i) =>
            4 * (points[i] - points[i - 1]).Cross(points[i + 1] - points[i]) / 2
            / (points[i].DistanceTo(points[i - 1]) * points[i + 1].DistanceTo(points[i]) * points[i + 1].DistanceTo(points[i - 1]));
        var least = 0.0;
        for (var i = 20; i < steps - 20; i += 10)
        {
            var length = points[i - 5].DistanceTo(points[i + 5]);
            least += Math.Cbrt(Math.Abs(Curvature(i + 5) - Curvature(i - 5)) / length / (192 * tolerance)) * length;
        }
        return least;
    }
}
