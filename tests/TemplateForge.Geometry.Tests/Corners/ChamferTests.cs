using TemplateForge.Testing;

namespace TemplateForge.Geometry.Tests.Corners;

public class ChamferTests
{
    private static readonly Region Rectangle = Given.Region(Outline.Rectangle(new(new(0, 0), new(40, 20))));

    [Fact]
    public void A_rectangle_chamfered_by_one_word_is_an_octagon()
    {
        foreach (var image in Symmetries.Of(Rectangle))
        {
            var chamfering = image.Shape.ChamferedCorners(4);
            Assert.Empty(chamfering.Unfit);
            Assert.Equal(8, chamfering.Region.Corners().Length);
            Approximately.Equal(800 - 4 * 8, chamfering.Region.Area, within: 1e-8);
            Approximately.Equal(120 - 32 + 16 * Math.Sqrt(2), chamfering.Region.Length, within: 1e-8);
        }
    }

    [Fact]
    public void Before_and_after_are_meant_as_the_boundary_runs()
    {
        Point[] expected = [new(0, 7), new(3, 0), new(33, 0), new(40, 3), new(40, 13), new(37, 20), new(7, 20), new(0, 17)];
        Assert.Equal(expected.ToHashSet(), [.. Rectangle.ChamferedCorners(before: 7, after: 3).Region.Corners()]);
        // A plate around it has the same corners the other way round, so that its boundary arrives where the other leaves.
        var around = Given.WithHole(Outline.Rectangle(new(new(-50, -50), new(90, 70))), Rectangle.Contours[0]);
        var hole = around.ChamferedCorners(before: 3, after: 7).Region.Contours[1];
        Assert.Equal(expected.ToHashSet(), [.. hole.Segments.Select(s => s.Start)]);
    }

    [Fact]
    public void Only_the_corners_asked_for_are_chamfered_and_only_they_need_room()
    {
        var chamfering = Rectangle.ChamferedCorners(15, p => p == new Point(40, 20));
        Assert.Empty(chamfering.Unfit);
        Assert.Equal([new(0, 0), new(40, 0), new(40, 5), new(25, 20), new(0, 20)], chamfering.Region.Corners());
    }

    // An inward corner fills: an L gains half the square of the setback there and loses as much at each of the five others.
    [Fact]
    public void Outward_corners_lose_and_inward_corners_gain()
    {
        var l = Given.Region(Outline.Polygon(new Point(0, 0), new(40, 0), new(40, 10), new(10, 10), new(10, 40), new(0, 40)));
        foreach (var image in Symmetries.Of(l))
        {
            var chamfering = image.Shape.ChamferedCorners(3);
            Assert.Empty(chamfering.Unfit);
            Approximately.Equal(700 - 4 * 4.5, chamfering.Region.Area, within: 1e-8);
        }
    }

    // Places along the sides by turning about their centres, the area by triangle and circle segments.
    [Fact]
    public void Between_any_line_or_arc_and_any_other_a_chamfer_runs_from_setback_to_setback()
    {
        var made = 0;
        foreach (var tooth in Tooth.All(length: 25))
        {
            foreach (var (before, after) in new[] { (2.0, 2.0), (1.5, 4) })
            {
                // Where a side bends back by then, the line could not but cross it; that is another test.
                var isStraightOn = tooth.Inner.Degrees is > 170 and < 190;
                if (isStraightOn && (tooth.Arriving.Curvature * tooth.Turns < -1e-4 || tooth.Leaving.Curvature * tooth.Turns < -1e-4)) continue;
                foreach (var (name, by, region) in tooth.Images())
                {
                    // A mirror image, and a hole, run the other way: what arrived leaves.
                    var swapped = by.Mirrors != region.Contours.Length > 1;
                    var corner = by.Of(tooth.Corner);
                    var chamfering = region.ChamferedCorners(swapped ? after : before, swapped ? before : after, p => p.DistanceTo(corner) < 1e-6);
                    made++;
                    CutLaw.Holds(name, () =>
                    {
                        Assert.Empty(chamfering.Unfit);
                        var line = Assert.Single(CutLaw.NewIn(chamfering.Region, region));
                        Assert.True(line.IsLine);
                        CutLaw.RunsBetween(by.Of(tooth.Arriving.At(before)), by.Of(tooth.Leaving.At(after)), [line], within: 1e-8);
                        var sign = region.Contours.Length == 1 ? -1 : 1;
                        Approximately.Equal(sign * tooth.TipArea(before, after), chamfering.Region.Area - region.Area, within: 1e-6);
                    });
                }
            }
        }
        Assert.InRange(made, 3000, 8000);
    }

    [Fact]
    public void In_a_cusp_a_chamfer_runs_across_from_arc_to_arc()
    {
        foreach (var (name, by, region) in Cusp.Images())
        {
            var chamfering = region.ChamferedCorners(20, p => p.DistanceTo(by.Of(Cusp.Tip)) < 1e-6);
            CutLaw.Holds(name, () =>
            {
                Assert.Empty(chamfering.Unfit);
                var outer = by.Of(Point.Origin + Vector.Polar(50, Angle.FromRadians(20 / 50.0)));
                var inner = by.Of(new Point(10, 0) + Vector.Polar(40, Angle.FromRadians(20 / 40.0)));
                CutLaw.RunsBetween(outer, inner, CutLaw.NewIn(chamfering.Region, region), within: 1e-8);
            });
        }
    }

    [Fact]
    public void At_a_corner_that_is_hardly_one_a_chamfer_has_its_setbacks_still()
    {
        foreach (var turn in new[] { 2e-5, 1e-4, 1e-3 })
        {
            var tooth = new Tooth(Angle.FromRadians(Math.PI - turn), 0, 0, length: 25);
            foreach (var (name, by, region) in tooth.Images())
            {
                var chamfering = region.ChamferedCorners(7, p => p.DistanceTo(by.Of(tooth.Corner)) < 1e-6);
                CutLaw.Holds(name, () =>
                {
                    Assert.Empty(chamfering.Unfit);
                    CutLaw.RunsBetween(by.Of(tooth.Arriving.At(7)), by.Of(tooth.Leaving.At(7)), CutLaw.NewIn(chamfering.Region, region), within: 1e-8);
                });
            }
        }
    }

    // A setback of 15 goes 10 along the line and 5 on, half a radian, round the arc of 10 that joins it without a corner.
    [Fact]
    public void A_setback_is_measured_on_across_joints_without_a_corner()
    {
        var tongue = Given.Region(new Contour(
            Segment.Line(new(0, 0), new(6, 0)), Segment.Line(new(6, 0), new(10, 0)), Segment.Arc(new(10, 0), new(10, 20), 1),
            Segment.Line(new(10, 20), new(0, 20)), Segment.Line(new(0, 20), new(0, 0))));
        foreach (var image in Symmetries.Of(tongue))
        {
            var corner = image.By.Of(Point.Origin);
            var chamfering = image.By.Mirrors
                ? image.Shape.ChamferedCorners(before: 15, after: 8, p => p.DistanceTo(corner) < 1e-6)
                : image.Shape.ChamferedCorners(before: 8, after: 15, p => p.DistanceTo(corner) < 1e-6);
            Assert.Empty(chamfering.Unfit);
            var end = new Point(10 + 10 * Math.Sin(0.5), 10 - 10 * Math.Cos(0.5));
            foreach (var p in new[] { new(0, 8), end }.Select(image.By.Of))
                Assert.Contains(chamfering.Region.Corners(), c => c.DistanceTo(p) < 1e-8);
            Assert.Equal(4, chamfering.Region.Contours[0].Segments.Length);
        }
    }

    [Fact]
    public void A_side_that_is_used_up_exactly_vanishes()
    {
        foreach (var image in Symmetries.Of(Rectangle))
        {
            foreach (var left in new[] { -0.9e-7, 0, 0.5e-7, 0.9e-7, 1e-7, 1.5e-7, 1.99e-7 })
            {
                var chamfering = image.Shape.ChamferedCorners(10 - left / 2);
                Assert.Empty(chamfering.Unfit);
                Assert.Equal(6, chamfering.Region.Contours[0].Segments.Length);
                Approximately.Equal(800 - 4 * 50, chamfering.Region.Area, within: Tolerance.Area(120));
            }
        }
    }

    [Fact]
    public void A_side_that_is_too_short_gives_the_setback_that_just_uses_it_up()
    {
        foreach (var image in Symmetries.Of(Rectangle))
        {
            var at = image.By.Of(new Point(40, 20));
            var unfit = Assert.Single(image.Shape.ChamferedCorners(33, p => p.DistanceTo(at) < 1e-6).Unfit);
            Approximately.Equal(at, unfit.At, within: 1e-9);
            Approximately.Equal(20, unfit.LargestBefore, within: 1e-6);
            Assert.Equal(unfit.LargestBefore, unfit.LargestAfter);
        }
    }

    // Each side is shared by the setback after one corner and that before the next: 21 of the 20 that the shorter sides have.
    [Fact]
    public void A_neighbours_chamfer_in_the_way_gives_both_setbacks_in_the_proportion_asked_for()
    {
        foreach (var image in Symmetries.Of(Rectangle))
        {
            var chamfering = image.Shape.ChamferedCorners(before: 5, after: 16);
            Assert.Equal(image.Shape.Contours[0].Segments, chamfering.Region.Contours[0].Segments);
            Assert.Equal(4, chamfering.Unfit.Length);
            Assert.All(chamfering.Unfit, u => Approximately.Equal(5 * 20 / 21.0, u.LargestBefore, within: 1e-6));
            Assert.All(chamfering.Unfit, u => Approximately.Equal(16 * 20 / 21.0, u.LargestAfter, within: 1e-6));
            Assert.Empty(image.Shape.ChamferedCorners(chamfering.Unfit[0].LargestBefore, chamfering.Unfit[0].LargestAfter).Unfit);
        }
    }

    // The line x + y = s comes as near to the corner as s / √2; the disc of 2 at (3, 3) as near as 3√2 − 2.
    [Fact]
    public void A_hole_or_another_part_in_the_way_gives_the_setback_that_just_touches_it()
    {
        var plate = Given.WithHole(Outline.Rectangle(new(new(0, 0), new(40, 40))), Outline.Circle(new(3, 3), 2));
        var l = Outline.Polygon(new Point(-20, -20), new(40, -20), new(40, 0), new(0, 0), new(0, 40), new(-20, 40));
        foreach (var image in Symmetries.Of(plate).Concat(Symmetries.Of(new Region([l, Outline.Circle(new(3, 3), 2)]))))
        {
            var corner = image.By.Of(Point.Origin);
            foreach (var asked in new[] { 5.0, 12 })
            {
                var unfit = Assert.Single(image.Shape.ChamferedCorners(asked, p => p.DistanceTo(corner) < 1e-6).Unfit);
                Approximately.Equal(Math.Sqrt(2) * (3 * Math.Sqrt(2) - 2), unfit.LargestBefore, within: 1e-5);
            }
        }
    }

    // The line from −a on the one side to the other is a tangent of its arc where it may go no farther: (B − A) · (B − centre) = 0.
    [Fact]
    public void A_side_that_bends_away_takes_a_chamfer_until_it_would_cross_the_side()
    {
        var tooth = new Tooth(Angle.FromDegrees(170), 0, -1 / 50.0, length: 30);
        var centre = tooth.Corner + tooth.Leaving.Away.Left * -50;
        var (fits, tooLarge) = (1.0, 20.0);
        while (tooLarge - fits > 1e-9)
        {
            var a = (fits + tooLarge) / 2;
            var (from, to) = (tooth.Arriving.At(a), tooth.Leaving.At(a));
            if ((to - from).Dot(to - centre) < 0) fits = a;
            else tooLarge = a;
        }
        foreach (var (name, by, region) in tooth.Images())
        {
            // Of 6 the line crosses the side; of 19 and 29 it runs past the corner on the other hand.
            foreach (var asked in new[] { 6.0, 19, 29 })
            {
                var chamfering = region.ChamferedCorners(asked, p => p.DistanceTo(by.Of(tooth.Corner)) < 1e-6);
                CutLaw.Holds(name, () => Approximately.Equal(fits, Assert.Single(chamfering.Unfit).LargestBefore, within: 1e-5));
            }
        }
    }

    // Beside the corner a bump of 4 stands in from the side, without a corner; a line that ends on its far flank would cross it.
    [Fact]
    public void The_largest_that_fits_is_told_even_where_less_does_not_fit()
    {
        var plate = WithBump();
        Assert.Equal(4, plate.Corners().Length);
        Assert.NotEmpty(plate.ChamferedCorners(17.5, p => p == Point.Origin).Unfit);
        var unfit = Assert.Single(plate.ChamferedCorners(35, p => p == Point.Origin).Unfit);
        Approximately.Equal(30, unfit.LargestBefore, within: 1e-6);
    }

    [Fact]
    public void A_side_that_stands_in_the_way_halfway_is_not_crossed()
    {
        // From 3 before the corner to 24 after it a line is nowhere more than 3 from the side, and the bump stands 4 out.
        foreach (var image in Symmetries.Of(WithBump()))
        {
            var corner = image.By.Of(Point.Origin);
            var (before, after) = image.By.Mirrors ? (24.0, 3.0) : (3.0, 24.0);
            var unfit = Assert.Single(image.Shape.ChamferedCorners(before, after, p => p.DistanceTo(corner) < 1e-6).Unfit);
            // The largest ends on the bump's top, 60° of radius 4 on from where the bump begins, and touches it there.
            var along = Math.Max(unfit.LargestBefore, unfit.LargestAfter);
            var centre = new Point(0, 5 + 4 * Math.Sqrt(3));
            var end = centre + Vector.Polar(4, Angle.FromDegrees(240) - Angle.FromRadians((along - 5 - 4 * Math.PI / 3) / 4));
            Approximately.Equal(0, (end - new Point(-along / 8, 0)).Unit.Dot((end - centre).Unit), within: 1e-6);
        }
    }

    [Fact]
    public void A_chamfer_that_would_lie_on_the_next_side_but_one_is_refused()
    {
        var triangle = Given.Region(Outline.Polygon(new Point(0, 0), new(30, 0), new(0, 40)));
        foreach (var image in Symmetries.Of(triangle))
        {
            var corner = image.By.Of(Point.Origin);
            var (before, after) = image.By.Mirrors ? (30.0, 40.0) : (40.0, 30.0);
            var unfit = Assert.Single(image.Shape.ChamferedCorners(before, after, p => p.DistanceTo(corner) < 1e-6).Unfit);
            Approximately.Equal(before, unfit.LargestBefore, within: 1e-5);
        }
    }

    [Fact]
    public void A_piece_of_a_side_that_is_hardly_longer_than_the_tolerance_stays()
    {
        Point[] low = [new(0, 0), new(20, 0), new(20 + 1.5e-7, 0), new(40, 0)];
        var plate = Given.Region(Outline.Polygon([.. low, new(40, 20), new(0, 20)]));
        Approximately.Equal(800 - 32, plate.ChamferedCorners(4).Region.Area, within: 1e-9);
        Approximately.Equal(800 - (4 - Math.PI) * 16, plate.RoundedCorners(4).Region.Area, within: 1e-9);
        Assert.Contains(plate.ChamferedCorners(4).Region.Contours[0].Segments, s => s.Start == low[1] && s.End == low[2]);
    }

    [Fact]
    public void Chamfers_that_leave_nothing_of_a_contour_make_it_vanish()
    {
        foreach (var image in Symmetries.Of(Rectangle))
        {
            Point[] opposite = [image.By.Of(new Point(40, 0)), image.By.Of(new Point(0, 20))];
            var (before, after) = image.By.Mirrors ? (20, 40) : (40, 20);
            var chamfering = image.Shape.ChamferedCorners(before, after, p => opposite.Any(o => o.DistanceTo(p) < 1e-6));
            Assert.Empty(chamfering.Unfit);
            Assert.True(chamfering.Region.IsEmpty);
        }
    }

    [Fact]
    public void Any_corner_of_lines_and_arcs_either_takes_its_chamfer_or_is_told_a_smaller_one_that_fits()
    {
        var random = new Random(11);
        var made = 0;
        for (var n = 0; n < 120; n++)
        {
            var star = Given.Star(random, new(0, 0), 50);
            var (before, after) = (0.5 + 12 * random.NextDouble(), 0.5 + 12 * random.NextDouble());
            var chamfering = star.ChamferedCorners(before, after);
            made += star.Corners().Length - chamfering.Unfit.Length;
            Assert.True(Given.Polygons(chamfering.Region).IsValid);
            Assert.Equal(star.Corners().Length + star.Corners().Length - chamfering.Unfit.Length, chamfering.Region.Corners().Length);
            foreach (var unfit in chamfering.Unfit.Where(u => u.LargestBefore > 0.01).Take(2))
            {
                Assert.InRange(unfit.LargestBefore, 0, before);
                var alone = star.ChamferedCorners(unfit.LargestBefore, unfit.LargestAfter, p => p == unfit.At);
                Assert.Empty(alone.Unfit);
                Assert.Single(CutLaw.NewIn(alone.Region, star), s => s.IsLine);
            }
        }
        Assert.InRange(made, 300, 2000);
    }

    [Fact]
    public void A_setback_that_is_none_is_refused()
    {
        Assert.Throws<ArgumentOutOfRangeException>(() => Rectangle.ChamferedCorners(0));
        Assert.Throws<ArgumentOutOfRangeException>(() => Rectangle.ChamferedCorners(1, -1));
        Assert.Throws<ArgumentOutOfRangeException>(() => Rectangle.ChamferedCorners(double.NaN, 1));
        Assert.Throws<ArgumentOutOfRangeException>(() => Rectangle.ChamferedCorners(double.PositiveInfinity));
        Assert.True(Region.Empty.ChamferedCorners(1).Region.IsEmpty);
    }

    /// <summary>A plate to the left of a side that begins at the origin, with a bump that stands 4 into the plate from 5 to 19 along it.</summary>
    private static Region WithBump()
    {
        var bump = Math.Sqrt(3) * 4;
        Point[] on = [new(0, 5), new(-2, 5 + bump / 2), new(-2, 5 + 1.5 * bump), new(0, 5 + 2 * bump)];
        var sixty = Math.Tan(Math.PI / 12);
        return Given.Region(new Contour(
            Segment.Line(new(-30, 0), new(0, 0)), Segment.Line(new(0, 0), on[0]),
            Segment.Arc(on[0], on[1], sixty), Segment.Arc(on[1], on[2], -Math.Tan(Math.PI / 6)), Segment.Arc(on[2], on[3], sixty),
            Segment.Line(on[3], new(0, 60)), Segment.Line(new(0, 60), new(-30, 60)), Segment.Line(new(-30, 60), new(-30, 0))));
    }
}
