using TemplateForge.Testing;

namespace TemplateForge.Geometry.Tests.Measuring;

public class InsideRadiusTests
{
    private static readonly Box Plate = new(new(0, 0), new(100, 60));

    public static TheoryData<string, double, double, double> Known => new()
    {
        { "round hole", 8, 50, 30 },
        { "square hole", 0, 50, 30 },
        { "slot", 5, 50, 30 },
        { "notch with round bottom", 10, 50, 50 },
        { "nearly straight", 100.0 * 100 / 8 / 1e-9, 50, 1e-9 },
    };

    private static Region Named(string name) => name switch
    {
        "round hole" => Given.WithHole(Outline.Rectangle(Plate), Outline.Circle(new(50, 30), 8)),
        "square hole" => Given.WithHole(Outline.Rectangle(Plate), Outline.Rectangle(new(new(45, 25), new(55, 35)))),
        "slot" => Given.WithHole(Outline.RoundedRectangle(Plate, 3), Outline.Slot(new(40, 30), new(60, 30), 10)),
        "notch with round bottom" => Given.Region(new Contour(
            Segment.Line(new(0, 0), new(100, 0)), Segment.Line(new(100, 0), new(100, 60)), Segment.Line(new(100, 60), new(60, 60)),
            Segment.Arc(new(60, 60), new(40, 60), -1), Segment.Line(new(40, 60), new(0, 60)), Segment.Line(new(0, 60), new(0, 0)))),
        "nearly straight" => Given.Region(new Contour(
            Segment.Arc(new(0, 0), new(100, 0), -2e-9 / 100), Segment.Line(new(100, 0), new(50, 60)), Segment.Line(new(50, 60), new(0, 0)))),
        _ => throw new ArgumentOutOfRangeException(nameof(name)),
    };

    [Theory, MemberData(nameof(Known))]
    public void It_is_that_of_the_hole_or_the_notch_wherever_the_part_lies(string name, double radius, double x, double y)
    {
        foreach (var image in Symmetries.Of(Named(name)))
        {
            // A nearly straight arc is made of coordinates that are 1.5e-11 wrong at 100 m, which is 1 part in 1e11 of its chord.
            Assert.True(image.Shape.TrySmallestInsideRadius(out var found, out var at), image.Name);
            Approximately.Equal(radius, found, within: 1e-10 * radius);
            Approximately.Equal(0, image.Shape.BoundaryDistanceTo(at), within: 1e-10);
            var expected = image.By.Of(new Point(x, y));
            if (name is "notch with round bottom" or "nearly straight") Approximately.Equal(expected, at, within: 1e-9);
            else Assert.InRange(at.DistanceTo(expected), 0, 15.1);
        }
    }

    [Fact]
    public void What_bends_outwards_alone_has_none()
    {
        foreach (var contour in new[] { Outline.Rectangle(Plate), Outline.Circle(new(0, 0), 5), Outline.Slot(new(0, 0), new(9, 0), 4), Outline.RoundedRectangle(Plate, 30) })
            Assert.All(Symmetries.Of(Given.Region(contour)), image => Assert.False(image.Shape.TrySmallestInsideRadius(out _, out _), image.Name));
        Assert.False(Region.Empty.TrySmallestInsideRadius(out _, out _));
    }

    // A half disc cut out of a half disc on the same side leaves two horns whose sides touch in a tip; the other way round they are slits.
    [Fact]
    public void A_tip_that_turns_all_the_way_back_is_a_needle_or_a_slit()
    {
        var crescent = new Contour(
            Segment.Arc(new(-10, 0), new(0, 0), 1), Segment.Line(new(0, 0), new(0, 8)), Segment.Line(new(0, 8), new(-20, 8)), Segment.Line(new(-20, 8), new(-20, 0)),
            Segment.Arc(new(-20, 0), new(-10, 0), 1));
        // Where the two half circles meet at (−10, 0) the boundary comes up and goes down again: material is above and beside, a slit from below.
        Assert.True(Given.Region(crescent).TrySmallestInsideRadius(out var radius, out var at));
        Assert.Equal((0, new Point(-10, 0)), (radius, at));
        var needle = new Contour(
            Segment.Arc(new(20, 0), new(0, 0), -1), Segment.Arc(new(0, 0), new(-20, 0), -1), Segment.Line(new(-20, 0), new(-20, -40)), Segment.Line(new(-20, -40), new(20, -40)),
            Segment.Line(new(20, -40), new(20, 0)));
        Assert.True(Given.Region(needle).TrySmallestInsideRadius(out radius, out _));
        Approximately.Equal(10, radius, within: 1e-12);
    }

    // The circle through three neighbouring samples, where they turn right, has the radius of curvature there; at a corner
    // it is as small as the samples are near.
    [Fact]
    public void It_is_the_least_circle_through_three_neighbouring_samples() => Testing.Shapes.GridRegion.Check(100, region =>
    {
        var smooth = region.Offset(1.7).Offset(-3.1).Offset(1.2);
        var sampled = double.PositiveInfinity;
        foreach (var contour in smooth.Contours)
        {
            var points = contour.PointsEvery(0.01);
            for (var i = 2; i < points.Length; i++)
            {
                var (a, b) = (points[i - 1] - points[i - 2], points[i] - points[i - 1]);
                var turn = a.Cross(b);
                // Three that lie on two arcs have a circle between the two.
                if (turn < -1e-8) sampled = Math.Min(sampled, a.Length * b.Length * (a + b).Length / (-2 * turn));
            }
        }
        var has = smooth.TrySmallestInsideRadius(out var radius, out var at);
        Assert.Equal(double.IsFinite(sampled), has);
        if (!has || (radius == 0 && sampled < 1)) return;
        Approximately.Equal(sampled, radius, within: 1e-4 * radius);
        Approximately.Equal(0, smooth.BoundaryDistanceTo(at), within: 1e-9);
    });
}
