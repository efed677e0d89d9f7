using TemplateForge.Testing;

namespace TemplateForge.Geometry.Tests;

public class RegionTests
{
    private static readonly Region Washer = Given.WithHole(Outline.Circle(new(20, 10), 15), Outline.Circle(new(20, 10), 6));

    [Fact]
    public void A_hole_takes_from_the_area_and_adds_to_the_length()
    {
        foreach (var image in Symmetries.Of(Washer))
        {
            Approximately.Equal(Math.PI * (225 - 36), image.Shape.Area, within: 1e-8);
            Approximately.Equal(2 * Math.PI * 21, image.Shape.Length, within: 1e-9);
            Approximately.Equal(image.By.Of(new Point(20, 10)), image.Shape.Bounds.Centre, within: 1e-10);
            Assert.True(image.Shape.Contours[0].IsCounterClockwise, image.Name);
            Assert.False(image.Shape.Contours[1].IsCounterClockwise, image.Name);
        }
    }

    [Fact]
    public void An_empty_region_has_no_area_and_no_bounds()
    {
        Assert.True(Region.Empty.IsEmpty);
        Assert.Equal(0, Region.Empty.Area);
        Assert.Throws<InvalidOperationException>(() => Region.Empty.Bounds);
    }

    [Fact]
    public void A_box_joins_grows_contains_and_touches()
    {
        Box box = new(new(0, 0), new(10, 5));
        Assert.Equal(new Box(new(-2, 0), new(10, 9)), box.Joined(new(new(-2, 3), new(1, 9))));
        Assert.Equal(new Box(new(-1, -1), new(11, 6)), box.Grown(1));
        Assert.Equal((10, 5, new Point(5, 2.5)), (box.Width, box.Height, box.Centre));
        Assert.True(box.Contains(new(10, 5)) && !box.Contains(new(10.1, 5)));
        Assert.True(box.Touches(new(new(10, 5), new(11, 6))) && !box.Touches(new(new(10.1, 0), new(11, 6))));
        Assert.Throws<ArgumentException>(() => new Box(new(1, 0), new(0, 1)));
        Assert.Throws<ArgumentException>(() => new Box(new(double.NaN, 0), new(0, 1)));
    }

    [Fact]
    public void A_vector_turns_left_and_has_a_direction()
    {
        Assert.Equal(new Vector(-4, 3), new Vector(3, 4).Left);
        Assert.Equal(5, new Vector(3, 4).Length);
        Approximately.Equal(new Vector(0.6, 0.8), new Vector(3, 4).Unit, within: 1e-16);
        Assert.Equal(Vector.Zero, Vector.Zero.Unit);
        Assert.True(new Vector(1, 0).Cross(new(0, 1)) > 0);
        Approximately.Equal(135, new Vector(-1, 1).Direction.Degrees, within: 1e-13);
        Assert.Equal(new Vector(0, 7), Vector.Polar(7, Angle.QuarterTurn));
    }
}
