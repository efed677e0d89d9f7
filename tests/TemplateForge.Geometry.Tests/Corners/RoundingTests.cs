using TemplateForge.Testing;

namespace TemplateForge.Geometry.Tests.Corners;

public class RoundingTests
{
    private static readonly Func<Point, bool> Everywhere = _ => true;

    [Fact]
    public void A_rectangle_with_rounded_corners_is_a_rounded_rectangle()
    {
        Box box = new(new(10, 20), new(50, 40));
        foreach (var image in Symmetries.Of(Given.Region(Outline.Rectangle(box))))
        {
            var rounding = image.Shape.RoundedCorners(4, Everywhere);
            Assert.Empty(rounding.Unfit);
            Assert.Equal(8, rounding.Region.Contours[0].Segments.Length);
            Approximately.Equal(Outline.RoundedRectangle(box, 4).Area, rounding.Region.Area, within: 1e-8);
            IsSmooth(rounding.Region);
        }
    }

    [Fact]
    public void A_side_that_is_used_up_exactly_vanishes()
    {
        foreach (var image in Symmetries.Of(Given.Region(Outline.Rectangle(new(new(0, 0), new(40, 20))))))
        {
            var rounding = image.Shape.RoundedCorners(10, Everywhere);
            Assert.Empty(rounding.Unfit);
            Assert.Equal(6, rounding.Region.Contours[0].Segments.Length);
            Approximately.Equal(800 - (4 - Math.PI) * 100, rounding.Region.Area, within: 1e-7);
        }
    }

    [Fact]
    public void Corners_that_would_share_too_short_a_side_are_left_sharp_and_told_what_fits()
    {
        foreach (var image in Symmetries.Of(Given.Region(Outline.Rectangle(new(new(0, 0), new(40, 20))))))
        {
            var rounding = image.Shape.RoundedCorners(10.001, Everywhere);
            Assert.Equal(image.Shape.Contours[0].Segments, rounding.Region.Contours[0].Segments);
            Assert.Equal(4, rounding.Unfit.Length);
            Assert.All(rounding.Unfit, u => Approximately.Equal(10, u.LargestRadius, within: 1e-6));
            Assert.Empty(image.Shape.RoundedCorners(rounding.Unfit.Min(u => u.LargestRadius), Everywhere).Unfit);
        }
    }

    [Fact]
    public void Only_the_corners_asked_for_are_rounded_and_only_they_need_room()
    {
        var rectangle = Given.Region(Outline.Rectangle(new(new(0, 0), new(40, 20))));
        var rounding = rectangle.RoundedCorners(15, p => p == new Point(40, 20));
        Assert.Empty(rounding.Unfit);
        Approximately.Equal(800 - (1 - Math.PI / 4) * 225, rounding.Region.Area, within: 1e-11);
        Assert.Equal([new(0, 0), new(40, 0), new(0, 20)], rounding.Region.Corners());
    }

    [Fact]
    public void Joints_without_a_corner_are_no_corners()
    {
        Assert.Empty(Given.Region(Outline.Circle(new(1e5, 1e5), 10)).Corners());
        Assert.Empty(Given.Region(Outline.Slot(new(3, 4), new(50, 60), 7)).Corners());
        Assert.Empty(Given.Region(Outline.Ellipse(new(1e5, 1e5), 500, 10, Angle.FromDegrees(17))).Corners());
        Assert.Equal(4, Given.WithHole(Outline.Rectangle(new(new(0, 0), new(40, 20))), Outline.Circle(new(20, 10), 3)).Corners().Length);
        var ellipse = Given.Region(Outline.Ellipse(Point.Origin, 50, 20, Angle.Zero));
        Assert.Equal(ellipse.Contours[0].Segments, ellipse.RoundedCorners(5, Everywhere).Region.Contours[0].Segments);
    }

    // An inward corner fills: an L gains (1 − π/4) r² there, and loses as much at each of the five others.
    [Fact]
    public void Outward_corners_lose_and_inward_corners_gain()
    {
        var l = Given.Region(Outline.Polygon(new Point(0, 0), new(40, 0), new(40, 10), new(10, 10), new(10, 40), new(0, 40)));
        foreach (var image in Symmetries.Of(l))
        {
            var rounding = image.Shape.RoundedCorners(3, Everywhere);
            Approximately.Equal(700 - 4 * (1 - Math.PI / 4) * 9, rounding.Region.Area, within: 1e-8);
            IsSmooth(rounding.Region);
        }
    }

    // A half disc of 50: a fillet of r at the end of its straight touches the line at √((50 − r)² − r²) from the middle.
    [Fact]
    public void Between_a_line_and_an_arc_the_fillet_touches_where_the_right_triangle_says()
    {
        var half = Given.Region(new Contour(Segment.Arc(new(50, 0), new(-50, 0), 1), Segment.Line(new(-50, 0), new(50, 0))));
        foreach (var image in Symmetries.Of(half))
        {
            var rounding = image.Shape.RoundedCorners(8, Everywhere);
            Assert.Empty(rounding.Unfit);
            var line = rounding.Region.Contours[0].Segments.Single(s => s.IsLine);
            Approximately.Equal(2 * Math.Sqrt(42 * 42 - 64), line.Length, within: 1e-9);
            IsSmooth(rounding.Region);
        }
        // The largest circle in a half disc has half its radius; both corners take one of that at most.
        Assert.All(half.RoundedCorners(26, Everywhere).Unfit, u => Approximately.Equal(25, u.LargestRadius, within: 1e-6));
    }

    // The mouth of a notch: an ellipse cut by a straight edge, in both the plate and the piece that falls out, at any angle.
    [Fact]
    public void The_mouth_of_a_notch_is_rounded_wherever_the_edge_cuts_the_ellipse()
    {
        foreach (var depth in new[] { -60.0, -20, 0, 35, 60 })
        {
            var ellipse = Outline.Ellipse(Point.Origin, 107, 120, Angle.FromDegrees(10));
            var edge = new Box(new(-300, -400), new(300, depth));
            var below = Assert.Single(ellipse.PartsInside(Given.Region(Outline.Rectangle(edge))));
            // A plate with the edge along its top and the ellipse cut into it.
            var notched = Given.Region(new Contour(
            [
                .. below.Reversed().Segments,
                Segment.Line(below.Start, new(-300, depth)), Segment.Line(new(-300, depth), new(-300, -400)),
                Segment.Line(new(-300, -400), new(300, -400)), Segment.Line(new(300, -400), new(300, depth)),
                Segment.Line(new(300, depth), below.End),
            ]));
            var piece = Given.Region(new Contour([.. below.Segments, Segment.Line(below.End, below.Start)]));
            foreach (var region in new[] { notched.Contours[0].IsCounterClockwise ? notched : Given.Region(notched.Contours[0].Reversed()), piece })
            {
                foreach (var image in Symmetries.Of(region).Take(8))
                {
                    Point[] mouth = [image.By.Of(below.Start), image.By.Of(below.End)];
                    var rounding = image.Shape.RoundedCorners(10, p => mouth.Any(m => m.DistanceTo(p) < 1e-6));
                    Assert.True(rounding.Unfit.IsEmpty, $"{depth} {image.Name}");
                    Assert.Equal(image.Shape.Corners().Length - 2, rounding.Region.Corners().Length);
                    Touches(image.Shape, rounding.Region, 10, 2);
                }
            }
        }
    }

    [Fact]
    public void Any_corner_of_lines_and_arcs_either_takes_its_fillet_or_is_told_a_smaller_one_that_fits()
    {
        var random = new Random(10);
        var rounded = 0;
        for (var n = 0; n < 120; n++)
        {
            var star = Given.Star(random, new(0, 0), 50);
            var radius = 0.5 + 6 * random.NextDouble();
            var rounding = star.RoundedCorners(radius, Everywhere);
            rounded += Touches(star, rounding.Region, radius, star.Corners().Length - rounding.Unfit.Length);
            Assert.True(Given.Polygons(rounding.Region).IsValid);
            Assert.Equal(rounding.Unfit.Select(u => u.At).ToHashSet(), [.. rounding.Region.Corners().Where(c => star.Corners().Contains(c))]);
            Assert.All(rounding.Unfit, u => Assert.InRange(u.LargestRadius, 0, radius));
            // Alone, a corner that was refused takes what it was told, and not a little more unless neighbours were in its way.
            foreach (var unfit in rounding.Unfit.Where(u => u.LargestRadius > 0.01).Take(2))
            {
                var alone = star.RoundedCorners(unfit.LargestRadius, p => p == unfit.At);
                Assert.Empty(alone.Unfit);
                Touches(star, alone.Region, unfit.LargestRadius, 1);
            }
        }
        Assert.InRange(rounded, 300, 2000);
    }

    [Fact]
    public void A_fillet_goes_on_past_the_joint_of_a_side_that_bends_without_a_corner()
    {
        // The lower edge is in three pieces, of which the last is shorter than the fillet needs.
        var pieces = Given.Region(new Contour(
            Segment.Line(new(0, 0), new(20, 0)), Segment.Line(new(20, 0), new(38, 0)), Segment.Line(new(38, 0), new(40, 0)),
            Segment.Line(new(40, 0), new(40, 20)), Segment.Line(new(40, 20), new(0, 20)), Segment.Line(new(0, 20), new(0, 0))));
        var rounding = pieces.RoundedCorners(5, Everywhere);
        Assert.Empty(rounding.Unfit);
        Approximately.Equal(800 - (4 - Math.PI) * 25, rounding.Region.Area, within: 1e-10);
    }

    [Fact]
    public void A_fillet_that_would_run_over_a_hole_is_refused()
    {
        var plate = Given.WithHole(Outline.Rectangle(new(new(0, 0), new(40, 40))), Outline.Circle(new(3, 3), 2));
        var rounding = plate.RoundedCorners(12, Everywhere);
        var unfit = Assert.Single(rounding.Unfit);
        Assert.Equal(new Point(0, 0), unfit.At);
        // The fillet's nearest point to the corner lies (√2 − 1) r from it along the diagonal, the hole 3√2 − 2.
        Approximately.Equal((3 * Math.Sqrt(2) - 2) / (Math.Sqrt(2) - 1), unfit.LargestRadius, within: 1e-5);
    }

    [Fact]
    public void A_radius_that_is_none_is_refused()
    {
        var square = Given.Region(Outline.Rectangle(new(new(0, 0), new(40, 40))));
        Assert.Throws<ArgumentOutOfRangeException>(() => square.RoundedCorners(0, Everywhere));
        Assert.Throws<ArgumentOutOfRangeException>(() => square.RoundedCorners(double.NaN, Everywhere));
        Assert.True(Region.Empty.RoundedCorners(1, Everywhere).Region.IsEmpty);
    }

    private static void IsSmooth(Region region) => Assert.Empty(region.Corners());

    /// <summary>
    /// The new arcs, by definition: each has the radius, its centre is that far from the old boundary and no nearer to it, its ends
    /// lie on the old boundary, and it turns away from it by nothing.
    /// </summary>
    private static int Touches(Region before, Region after, double radius, int expected)
    {
        var count = 0;
        foreach (var contour in after.Contours)
        {
            var segments = contour.Segments;
            for (var i = 0; i < segments.Length; i++)
            {
                var arc = segments[i];
                var (previous, next) = (segments[(i + segments.Length - 1) % segments.Length], segments[(i + 1) % segments.Length]);
                Approximately.Equal(arc.End, next.Start, within: 1e-7);
                Assert.True(arc.Length >= 1e-7);
                if (arc.IsLine || Math.Abs(arc.Radius - radius) > 1e-8 * radius || before.BoundaryDistanceTo(arc.At(0.5)) < 1e-7) continue;
                count++;
                Approximately.Equal(radius, before.BoundaryDistanceTo(arc.Centre), within: 1e-8);
                Approximately.Equal(0, before.BoundaryDistanceTo(arc.Start), within: 1e-9);
                Approximately.Equal(0, before.BoundaryDistanceTo(arc.End), within: 1e-9);
                Approximately.Equal(0, previous.EndDirection.Cross(arc.StartDirection), within: 2e-9);
                Approximately.Equal(0, arc.EndDirection.Cross(next.StartDirection), within: 2e-9);
                Assert.True(previous.EndDirection.Dot(arc.StartDirection) > 0 && arc.EndDirection.Dot(next.StartDirection) > 0);
            }
        }
        Assert.Equal(expected, count);
        return count;
    }
}
