using TemplateForge.Testing;

namespace TemplateForge.Geometry.Tests.Measuring;

public class AlongTests
{
    // Straight 10 to the right, then a half circle of 10 / π, 10 long, that comes back above it.
    private static readonly Path Hook = new(
        Segment.Line(new(0, 0), new(10, 0)), Segment.Arc(new(10, 0), new(10, 20 / Math.PI), 1));

    [Fact]
    public void A_place_along_a_path_is_told_by_its_distance()
    {
        var r = 10 / Math.PI;
        Approximately.Equal(new Point(4, 0), Hook.PointAlong(4), within: 1e-14);
        Approximately.Equal(new Point(10 + r, r), Hook.PointAlong(15), within: 1e-13);
        Approximately.Equal(Hook.End, Hook.PointAlong(20), within: 1e-13);
        Approximately.Equal(new Vector(0, 1), Hook.DirectionAlong(15), within: 1e-14);
        Approximately.Equal(new Vector(-1, 0), Hook.DirectionAlong(20), within: 1e-14);
        Approximately.Equal(new Vector(1, 0), Hook.DirectionAlong(0), within: 0);
        Assert.Throws<ArgumentOutOfRangeException>(() => Hook.PointAlong(20.001));
        Assert.Throws<ArgumentOutOfRangeException>(() => Hook.DirectionAlong(-0.001));
    }

    [Fact]
    public void Round_a_contour_distances_go_on_and_back()
    {
        var square = Outline.Rectangle(new(new(0, 0), new(10, 10)));
        Approximately.Equal(new Point(10, 5), square.PointAlong(15), within: 1e-13);
        Approximately.Equal(new Point(10, 5), square.PointAlong(15 + 400), within: 1e-12);
        Approximately.Equal(new Point(0, 1), square.PointAlong(-1), within: 1e-13);
        Approximately.Equal(new Vector(0, 1), square.DirectionAlong(10), within: 0);
        Approximately.Equal(new Vector(0, -1), square.DirectionAlong(-1), within: 0);
    }

    [Fact]
    public void Points_at_a_spacing_begin_at_the_start_and_never_double_it()
    {
        var r = 10 / Math.PI;
        Approximately.Equal([new(0, 0), new(5, 0), new(10, 0), new(10 + r, r), Hook.End], Hook.PointsEvery(5), within: 1e-12);
        Assert.Equal(3, Hook.PointsEvery(9).Length);
        Assert.Single(Hook.PointsEvery(21));
        var circle = Outline.Circle(new(0, 0), 50);
        Approximately.Equal([new(50, 0), new(0, 50), new(-50, 0), new(0, -50)], circle.PointsEvery(25 * Math.PI), within: 1e-12);
        Assert.Equal(4, circle.PointsEvery(circle.Length / 3.5).Length);
        Assert.Single(circle.PointsEvery(1000));
        Assert.Throws<ArgumentOutOfRangeException>(() => circle.PointsEvery(0));
        Assert.Throws<ArgumentOutOfRangeException>(() => Hook.PointsEvery(double.NaN));
    }

    [Fact]
    public void Chords_keep_within_the_tolerance_and_use_it()
    {
        foreach (var tolerance in new[] { 1, 0.01, 1e-4 })
        {
            foreach (var bulge in new[] { 1, -0.4, 0.01 })
            {
                var arc = Segment.Arc(new(3, 4), new(60, 80), bulge);
                var points = new Path(arc).Flattened(tolerance);
                Assert.Equal((arc.Start, arc.End), (points[0], points[^1]));
                var worst = points.Zip(points.Skip(1)).Max(c => arc.DistanceTo(c.First.MidpointTo(c.Second)));
                Assert.InRange(worst, points.Length > 3 ? tolerance / 4 : 0, tolerance * 1.000001);
            }
        }
        var slot = Outline.Slot(new(0, 0), new(10, 0), 4);
        var flat = slot.Flattened(0.01);
        Assert.All(slot.Segments, s => Assert.Contains(s.Start, flat));
        Assert.Equal(flat.Length, flat.Distinct().Count());
        Assert.Equal(4, slot.Flattened(100).Length);
        Assert.Throws<ArgumentOutOfRangeException>(() => slot.Flattened(0));
    }

    [Fact]
    public void A_circle_is_known_in_however_many_pieces_and_nothing_else_is()
    {
        var centre = new Point(12, 34);
        Contour Pieces(int count, double radius) => new(Enumerable.Range(0, count).Select(i =>
            Segment.Arc(At(i, radius, count), At(i + 1, radius, count), Math.Tan(Math.PI / 2 / count))));
        Point At(int i, double radius, int count) => centre + Vector.Polar(radius, Angle.FullTurn * (i % count) / count);
        foreach (var count in new[] { 2, 3, 50 })
        {
            foreach (var image in Symmetries.Of(Pieces(count, 25)))
            {
                Assert.True(image.Shape.TryAsCircle(out var found, out var radius), image.Name);
                Approximately.Equal(image.By.Of(centre), found, within: 1e-9);
                Approximately.Equal(25, radius, within: 1e-9);
            }
        }
        Assert.False(Outline.Rectangle(new(new(0, 0), new(10, 10))).TryAsCircle(out _, out _));
        Assert.False(Outline.Slot(new(0, 0), new(1e-5, 0), 10).TryAsCircle(out _, out _));
        Assert.False(Outline.Ellipse(Point.Origin, 10, 10.01, Angle.Zero).TryAsCircle(out _, out _));
        Assert.False(Outline.RoundedRectangle(new(new(0, 0), new(10, 10)), 4).TryAsCircle(out _, out _));
    }
}
