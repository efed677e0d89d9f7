using TemplateForge.Testing;

namespace TemplateForge.Geometry.Tests.Shapes;

public class OutlineTests
{
    [Fact]
    public void A_circle_is_two_half_circles()
    {
        var circle = Outline.Circle(new(3, 4), 5);
        Assert.Equal(2, circle.Segments.Length);
        Assert.True(circle.IsCounterClockwise);
        Approximately.Equal(25 * Math.PI, circle.Area, within: 1e-12);
        Approximately.Equal(new Box(new(-2, -1), new(8, 9)), circle.Bounds, within: 1e-14);
    }

    [Theory]
    [InlineData(0, 4)]
    [InlineData(5, 8)]
    [InlineData(10, 6)] // half the height: no straight is left on the short sides
    public void A_rounded_rectangle_lacks_what_its_corners_lose(double radius, int segments)
    {
        var rectangle = Outline.RoundedRectangle(new(new(10, 20), new(50, 40)), radius);
        Assert.Equal(segments, rectangle.Segments.Length);
        Assert.True(rectangle.IsCounterClockwise);
        Approximately.Equal(800 - (4 - Math.PI) * radius * radius, rectangle.Area, within: 1e-11);
        Approximately.Equal(new Box(new(10, 20), new(50, 40)), rectangle.Bounds, within: 1e-13);
        for (var i = 0; i < segments && radius > 0; i++)
            Approximately.Equal(1, rectangle.Segments[i].EndDirection.Dot(rectangle.Segments[(i + 1) % segments].StartDirection), within: 1e-14);
    }

    [Fact]
    public void A_square_rounded_by_half_its_side_is_a_circle_and_by_more_is_refused()
    {
        Box square = new(new(0.1, 0.2), new(0.4, 0.5)); // sides that differ in the last place
        Assert.True(Outline.RoundedRectangle(square, 0.15).TryAsCircle(out var centre, out _));
        Approximately.Equal(new Point(0.25, 0.35), centre, within: 1e-12);
        Assert.Throws<ArgumentOutOfRangeException>(() => Outline.RoundedRectangle(square, 0.151));
        Assert.Throws<ArgumentOutOfRangeException>(() => Outline.RoundedRectangle(square, -1));
        Assert.Throws<ArgumentOutOfRangeException>(() => Outline.RoundedRectangle(square, double.NaN));
    }

    [Fact]
    public void A_slot_about_one_point_is_a_circle()
    {
        Assert.True(Outline.Slot(new(5, 5), new(5, 5), 8).TryAsCircle(out _, out var radius));
        Approximately.Equal(4, radius, within: 1e-14);
        Assert.Throws<ArgumentOutOfRangeException>(() => Outline.Slot(new(0, 0), new(5, 5), 0));
    }

    [Fact]
    public void A_polygon_runs_counter_clockwise_whichever_way_it_was_given()
    {
        Point[] clockwise = [new(0, 0), new(0, 10), new(20, 10), new(20, 0), new(0, 0)];
        foreach (var polygon in new[] { Outline.Polygon(clockwise), Outline.Polygon(clockwise.Reverse()) })
        {
            Assert.Equal(4, polygon.Segments.Length);
            Assert.Equal(200, polygon.SignedArea);
        }
        Assert.Throws<ArgumentException>(() => Outline.Polygon(new Point(0, 0), new(1, 1), new(0, 0)));
        Assert.Throws<ArgumentException>(() => Outline.Polygon(new Point(0, 0), new(1, 1), new(2, 2)));
    }
}
