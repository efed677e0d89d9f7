using TemplateForge.Testing;

namespace TemplateForge.Geometry.Tests.Corners;

public class FilletTests
{
    // Centres by closed form: lines moved aside by r, arcs grown or shrunk by r about their centres.
    [Fact]
    public void Between_any_line_or_arc_and_any_other_a_fillet_touches_where_circles_and_lines_moved_aside_cross()
    {
        var (made, refused) = (0, 0);
        foreach (var tooth in Tooth.All(length: 25))
        {
            var radius = tooth.Inner.Degrees is > 170 and < 190 ? 500 : 3;
            var expected = tooth.Fillet(radius);
            foreach (var (name, by, region) in tooth.Images())
            {
                var corner = by.Of(tooth.Corner);
                var rounding = region.RoundedCorners(radius, p => p.DistanceTo(corner) < 1e-6);
                Assert.True(rounding.Unfit.IsEmpty == expected.HasValue, name);
                if (expected is not var (centre, before, after))
                {
                    refused++;
                    continue;
                }
                made++;
                CutLaw.Holds(name, () =>
                {
                    var arcs = CutLaw.NewIn(rounding.Region, region);
                    CutLaw.RunsBetween(by.Of(tooth.Arriving.At(before)), by.Of(tooth.Leaving.At(after)), arcs, within: 1e-6);
                    foreach (var arc in arcs)
                    {
                        Approximately.Equal(radius, arc.Radius, within: 1e-6);
                        Approximately.Equal(by.Of(centre), arc.Centre, within: 1e-6);
                    }
                    Assert.DoesNotContain(rounding.Region.Corners(), c => c.DistanceTo(corner) < 25.01 && arcs.Any(a => a.DistanceTo(c) < 1e-6));

                    var (from, to) = (tooth.Arriving.At(before) - centre, tooth.Leaving.At(after) - centre);
                    var sweep = Math.Atan2(from.Cross(to), from.Dot(to)) * tooth.Turns;
                    if (sweep < 0) sweep += 2 * Math.PI;
                    var taken = tooth.TipArea(before, after) - tooth.Turns * radius * radius * (sweep - Math.Sin(sweep)) / 2;
                    var sign = region.Contours.Length == 1 ? -1 : 1;
                    Approximately.Equal(sign * taken, rounding.Region.Area - region.Area, within: 1e-6);
                });
            }
        }
        Assert.InRange(made, 2000, 4000);
        Assert.InRange(refused, 20, 1200);
    }

    // Touching from inside: the centre is R − r from that of the outer arc and R' + r from that of the inner, which gives x = 50 − 9 r.
    [Fact]
    public void In_a_cusp_between_two_arcs_that_touch_a_fillet_touches_both_arcs()
    {
        foreach (var (name, by, region) in Cusp.Images())
        {
            foreach (var radius in new[] { 0.05, 1, 2.5 })
            {
                var rounding = region.RoundedCorners(radius, p => p.DistanceTo(by.Of(Cusp.Tip)) < 1e-6);
                var x = 50 - 9 * radius;
                var centre = by.Of(new Point(x, Math.Sqrt((50 - radius) * (50 - radius) - x * x)));
                CutLaw.Holds(name, () =>
                {
                    Assert.Empty(rounding.Unfit);
                    Assert.All(CutLaw.NewIn(rounding.Region, region), arc => Approximately.Equal(centre, arc.Centre, within: 1e-6));
                });
            }
        }
    }

    [Fact]
    public void At_a_corner_that_is_hardly_one_a_fillet_takes_r_tan_of_half_the_turn_from_both_sides()
    {
        foreach (var turn in new[] { 2e-5, 1e-4, 1e-3 })
        {
            foreach (var radius in new[] { 10.0, 1000, 20_000 })
            {
                var tooth = new Tooth(Angle.FromRadians(Math.PI - turn), 0, 0, length: 25);
                foreach (var (name, by, region) in tooth.Images())
                {
                    var rounding = region.RoundedCorners(radius, p => p.DistanceTo(by.Of(tooth.Corner)) < 1e-6);
                    CutLaw.Holds(name, () =>
                    {
                        Assert.Empty(rounding.Unfit);
                        var taken = radius * Math.Tan(turn / 2);
                        var arc = Assert.Single(
                            rounding.Region.Contours.SelectMany(c => c.Segments), s => s.At(0.5).DistanceTo(by.Of(tooth.Corner)) < taken / 2);
                        CutLaw.RunsBetween(by.Of(tooth.Arriving.At(taken)), by.Of(tooth.Leaving.At(taken)), [arc], within: 1e-6);
                    });
                }
            }
        }
    }

    // Sides that all but vanish between two fillets: gaps of this size are neither a segment nor nothing.
    [Fact]
    public void Fillets_that_leave_next_to_nothing_of_a_side_join()
    {
        foreach (var image in Symmetries.Of(Given.Region(Outline.Rectangle(new(new(0, 0), new(40, 20))))))
        {
            foreach (var left in new[] { -0.9e-7, 1e-8, 0.5e-7, 0.9e-7, 1e-7, 1.5e-7, 1.99e-7, 2.01e-7, 4e-7 })
            {
                var rounding = image.Shape.RoundedCorners(10 - left / 2);
                Assert.Empty(rounding.Unfit);
                Assert.True(left > 2e-7 || rounding.Region.Corners().IsEmpty, image.Name); // shorter lines have no direction 100 m away
                Approximately.Equal(800 - (4 - Math.PI) * 100, rounding.Region.Area, within: Tolerance.Area(120));
            }
        }
    }

    // A quarter turn takes r of each side; the shorter has 20.
    [Fact]
    public void A_side_that_is_too_short_gives_the_radius_that_just_uses_it_up()
    {
        foreach (var image in Symmetries.Of(Given.Region(Outline.Rectangle(new(new(0, 0), new(40, 20))))))
        {
            var at = image.By.Of(new Point(40, 20));
            var unfit = Assert.Single(image.Shape.RoundedCorners(33, p => p.DistanceTo(at) < 1e-6).Unfit);
            Approximately.Equal(at, unfit.At, within: 1e-9);
            Approximately.Equal(20, unfit.LargestRadius, within: 1e-6);
        }
    }

    // In a trapezium 20 high, whose corners of 60° and 120° share a slanted side of 40 / √3: r (cot 30° + cot 60°) = 40 / √3 at r = 10.
    [Fact]
    public void A_neighbours_fillet_in_the_way_gives_the_radius_at_which_both_just_have_room()
    {
        var run = 20 / Math.Sqrt(3);
        var trapezium = Given.Region(Outline.Polygon(new Point(0, 0), new(200, 0), new(200 - run, 20), new(run, 20)));
        foreach (var image in Symmetries.Of(trapezium))
        {
            var unfit = image.Shape.RoundedCorners(10.5).Unfit;
            Assert.Equal(4, unfit.Length);
            Assert.All(unfit, u => Approximately.Equal(10, u.LargestRadius, within: 1e-6));
            // A corner has room for more when its neighbour stays sharp: 20 / sin 60° along the slanted side.
            var low = image.By.Of(new Point(0, 0));
            var alone = Assert.Single(image.Shape.RoundedCorners(20, p => p.DistanceTo(low) < 1e-6).Unfit);
            Approximately.Equal(40.0 / 3, alone.LargestRadius, within: 1e-6);
        }
    }

    // The fillet of an inward corner fills what another part stands in: a disc of 2 at (3, 3) from the corner is 3√2 − 2 from it.
    [Fact]
    public void Another_part_before_an_inward_corner_gives_the_radius_that_just_touches_it()
    {
        var l = Outline.Polygon(new Point(0, 0), new(60, 0), new(60, 10), new(10, 10), new(10, 60), new(0, 60));
        foreach (var image in Symmetries.Of(new Region([l, Outline.Circle(new(13, 13), 2)])))
        {
            var at = image.By.Of(new Point(10, 10));
            var unfit = Assert.Single(image.Shape.RoundedCorners(30, p => p.DistanceTo(at) < 1e-6).Unfit);
            Approximately.Equal((3 * Math.Sqrt(2) - 2) / (Math.Sqrt(2) - 1), unfit.LargestRadius, within: 1e-5);
        }
    }

    [Fact]
    public void A_small_hole_at_the_end_of_a_large_fillet_is_not_overlooked()
    {
        // The hole, of 0.399 about (99.2, 0.4), lies on the side of the fillet that stays while (r − 99.2)² + (r − 0.4)² ≤ (r − 0.399)².
        var plate = Given.WithHole(Outline.Rectangle(new(new(0, 0), new(300, 300))), Outline.Circle(new(99.2, 0.4), 0.399));
        var most = 99.201 + Math.Sqrt(99.201 * 99.201 - 99.2 * 99.2 - 0.001 * 0.799);
        foreach (var image in Symmetries.Of(plate))
        {
            var corner = image.By.Of(Point.Origin);
            foreach (var asked in new[] { 99.7, 100 })
            {
                var unfit = Assert.Single(image.Shape.RoundedCorners(asked, p => p.DistanceTo(corner) < 1e-6).Unfit);
                Approximately.Equal(most, unfit.LargestRadius, within: 1e-4);
            }
        }
    }

    [Fact]
    public void A_fillet_that_would_lie_on_the_edge_of_a_hole_is_refused()
    {
        // A sector's rim on the very arc of the fillet of 10, the hole to the inside of it.
        var rim = Segment.Arc(At(200), At(250), Math.Tan(Math.PI * 50 / 180 / 4));
        var plate = Given.WithHole(
            Outline.Rectangle(new(new(0, 0), new(40, 40))),
            new Contour(rim, Segment.Line(rim.End, new(12, 12)), Segment.Line(new(12, 12), rim.Start)));
        foreach (var image in Symmetries.Of(plate))
        {
            var corner = image.By.Of(Point.Origin);
            var unfit = Assert.Single(image.Shape.RoundedCorners(10, p => p.DistanceTo(corner) < 1e-6).Unfit);
            Approximately.Equal(10, unfit.LargestRadius, within: 1e-5);
        }

        static Point At(double degrees) => new Point(10, 10) + Vector.Polar(10, Angle.FromDegrees(degrees));
    }

    // Half a disc of 50 holds no circle of more than 25, whether or not the other corner is rounded.
    [Fact]
    public void An_arc_too_small_for_the_radius_gives_the_largest_circle_that_it_holds()
    {
        var half = Given.Region(new Contour(Segment.Arc(new(50, 0), new(-50, 0), 1), Segment.Line(new(-50, 0), new(50, 0))));
        foreach (var image in Symmetries.Of(half))
        {
            foreach (var asked in new[] { 25.001, 60 })
            {
                var at = image.By.Of(new Point(50, 0));
                var unfit = Assert.Single(image.Shape.RoundedCorners(asked, p => p.DistanceTo(at) < 1e-6).Unfit);
                Approximately.Equal(25, unfit.LargestRadius, within: 1e-6);
            }
        }
    }
}
