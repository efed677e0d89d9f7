using TemplateForge.Geometry;
using TemplateForge.Testing;

namespace TemplateForge.Fabrication.Tests;

/// <summary>Clearance regions against closed forms, all of them plane geometry and Pythagoras.</summary>
public class ClearanceRegionTests
{
    private const double C = 12, T = 1.4;

    private static readonly Point At = new(10, 20);

    private static Component Round(Region half, double height = 0, double tilt = 0, double towards = 0, double sheet = T) =>
        new(new RevolvedForm(half), new(At, height, Angle.FromDegrees(tilt), Angle.FromDegrees(towards), Angle.Zero), sheet);

    private static Region Can(double radius, double from, double to) => Region.Of(Outline.Rectangle(new(new(from, 0), new(to, radius))));

    private static readonly Region Ball = Region.Of(new(Segment.Line(new(-40, 0), new(40, 0)), Segment.Arc(new(40, 0), new(-40, 0), 1)));

    private static Contour Single(Region region) => Assert.Single(region.Contours);

    private static void IsCircle(double radius, Region region, double within = 1e-6)
    {
        foreach (var segment in Single(region).Segments)
        {
            Approximately.Equal(radius, segment.Radius, within);
            Approximately.Equal(0, segment.Centre.DistanceTo(At), within);
        }
    }

    // The sphere grown by c is cut by the nearest face: √((R + c)² − h²), h its centre's height over that face; its widest where the
    // centre lies in the sheet.
    [Theory]
    [InlineData(30, 30)]
    [InlineData(-31.4, 30)]
    [InlineData(-0.7, 0)]
    [InlineData(45, 45)]
    public void A_sphere_leaves_a_circle(double height, double overFace) =>
        IsCircle(Math.Sqrt((40 + C) * (40 + C) - overFace * overFace), ClearanceRegion.Of([Round(Ball, height)], C));

    [Fact]
    public void A_sphere_that_is_further_off_than_the_clearance_leaves_nothing() =>
        Assert.True(ClearanceRegion.Of([Round(Ball, height: 53)], C).IsEmpty);

    [Fact]
    public void A_cylinder_square_through_leaves_its_circle_grown() =>
        IsCircle(95 + C, ClearanceRegion.Of([Round(Can(95, -100, 100))], C));

    // The rim lies 5 mm over the face: there the clearance reaches √(12² − 5²) past it.
    [Fact]
    public void A_cylinder_that_ends_above_the_sheet_leaves_less() =>
        IsCircle(95 + Math.Sqrt(C * C - 25), ClearanceRegion.Of([Round(Can(95, -100, -5))], C));

    // The plane cuts the cylinder of radius R + c in an ellipse, and through the sheet the ellipse drifts by t tan(tilt).
    [Theory, InlineData(8, 70), InlineData(30, 200), InlineData(45, 315)]
    public void A_tilted_cylinder_leaves_the_swept_ellipse(double tilt, double towards)
    {
        var (lean, way) = (Angle.FromDegrees(tilt), Angle.FromDegrees(towards));
        var ellipse = Region.Of(Outline.Ellipse(At, (95 + C) / lean.Cos, 95 + C, way)).Swept(Vector.Polar(T * lean.Tan, way));
        var region = ClearanceRegion.Of([Round(Can(95, -300, 300), tilt: tilt, towards: towards)], C);
        foreach (var (one, other) in new[] { (ellipse, region), (region, ellipse) })
        {
            var contour = Single(one);
            for (var i = 0; i < 500; i++)
                Assert.True(other.BoundaryDistanceTo(contour.PointAlong(contour.Length * i / 500)) < 0.008);
        }
        Assert.Equal(2, Single(region).Segments.Count(s => s.IsLine));
    }

    // Lying 20 mm over the face: a band of half width √((R + c)² − 20²), straight along the axis.
    [Fact]
    public void A_cylinder_lying_along_leaves_a_straight_band()
    {
        var region = ClearanceRegion.Of([Round(Can(30, -60, 60), height: 20, tilt: 90)], C);
        var half = Math.Sqrt((30 + C) * (30 + C) - 400);
        var lines = Single(region).Segments.Where(s => s.IsLine && Math.Abs(s.StartDirection.Y) < 1e-6).ToList();
        Assert.Equal(2, lines.Count);
        Assert.All(lines, l => Approximately.Equal(half, Math.Abs(l.Start.Y - At.Y), within: 1e-6));
        Assert.All(lines, l => Approximately.Equal(120, l.Length, within: 1e-3));
        // Beyond its flat ends it reaches c, over as much as lies no higher than the face.
        Approximately.Equal(At.X + 60 + C, region.Bounds.Max.X, within: 1e-6);
    }

    // Square to a cone's side the clearance is c, along the panel c / cos a; the cone is widest at the lower face.
    [Fact]
    public void A_cone_leaves_the_circle_of_its_wide_end_and_the_clearance_over_the_cosine()
    {
        var a = Angle.FromDegrees(20);
        var cone = Region.Of(Outline.Polygon(new(-50, 0), new(100, 0), new(100, 150 * a.Tan)));
        IsCircle((50 + T) * a.Tan + C / a.Cos, ClearanceRegion.Of([Round(cone)], C));
    }

    [Fact]
    public void A_box_square_through_leaves_a_rounded_rectangle_of_four_lines_and_four_arcs()
    {
        var region = ClearanceRegion.Of([new(new BoxForm(60, 40, 50), new(At, 0, Angle.Zero, Angle.Zero, Angle.FromDegrees(30)), T)], C);
        var segments = Single(region).Segments;
        Assert.Equal((8, 4), (segments.Length, segments.Count(s => s.IsLine)));
        Approximately.Equal(60 * 40 + 2 * C * (60 + 40) + Math.PI * C * C, region.Area, within: 1e-3);
        Assert.All(segments.Where(s => !s.IsLine), s => Approximately.Equal(C, s.Radius, within: 1e-4));
        Assert.Contains(segments, s => s.IsLine && Math.Abs(s.StartDirection.Direction.Degrees - 30) < 1e-4);
    }

    [Fact]
    public void A_ring_leaves_an_island_inside_it()
    {
        var ring = Region.Of(Outline.Rectangle(new(new(-20, 40), new(20, 60))));
        var region = ClearanceRegion.Of([Round(ring)], C);
        Assert.Equal([72, -28], region.Contours.Select(c => Math.Round(c.Segments[0].Radius * (c.IsCounterClockwise ? 1 : -1), 6)).OrderDescending());
    }

    [Fact]
    public void Components_far_apart_leave_two_parts_and_near_ones_a_corner_between()
    {
        Component Peg(double x) => new(new RevolvedForm(Can(20, -30, 30)), new(new(x, 0), 0, Angle.Zero, Angle.Zero, Angle.Zero), T);
        Assert.Equal(2, ClearanceRegion.Of([Peg(0), Peg(70)], C).Contours.Length);
        var both = Single(ClearanceRegion.Of([Peg(0), Peg(40)], C));
        // Two circles of radius 32, 40 apart, meet 20 across and √(32² − 20²) up.
        var corner = both.Segments.Select(s => s.Start).MaxBy(p => -Math.Abs(p.X - 20) + p.Y / 1000);
        Approximately.Equal(0, corner.DistanceTo(new(20, Math.Sqrt(32 * 32 - 400))), within: 1e-6);
        Assert.All(both.Segments, s => Approximately.Equal(32, s.Radius, within: 1e-6));
    }

    [Fact]
    public void What_travels_along_the_panel_leaves_what_is_swept()
    {
        var peg = Round(Can(20, -40, 40));
        var way = Angle.FromDegrees(35);
        var travelled = ClearanceRegion.Of([peg with { Travels = [new(25, Angle.QuarterTurn, way)] }], C);
        var swept = ClearanceRegion.Of([peg], C).Swept(Vector.Polar(25, way));
        Approximately.Equal(0, travelled.ExclusiveOr(swept).Area, within: 1e-3);
    }

    // A sphere that goes 30 mm down through the panel is widest there.
    [Fact]
    public void What_travels_through_the_panel_leaves_its_widest() =>
        IsCircle(40 + C, ClearanceRegion.Of([Round(Ball, height: 20) with { Travels = [new(30, Angle.Zero, Angle.Zero)] }], C));

    // About a point 80 mm away a circle of radius r = 20 + c turns by ± 10°: two half circles and a sector of the ring, 2 r wide.
    [Fact]
    public void What_rocks_about_an_axis_square_to_the_panel_leaves_a_bent_slot()
    {
        var rocking = new Rocking(Angle.FromDegrees(10), At + new Vector(80, 0), 0, Angle.Zero, Angle.Zero);
        var region = ClearanceRegion.Of([Round(Can(20, -40, 40)) with { Rocks = [rocking] }], C);
        const double r = 20 + C;
        Approximately.Equal(Math.PI * r * r + 2 * r * 80 * Math.PI / 9, region.Area, within: 0.01);
        Assert.All(Single(region).Segments, s => Assert.False(s.IsLine));
        Assert.Equal(4, Single(region).Segments.Length);
    }

    [Theory, InlineData(0.4), InlineData(0), InlineData(-1), InlineData(double.NaN)]
    public void A_clearance_that_is_only_a_fit_is_refused(double clearance) =>
        Assert.Throws<ArgumentOutOfRangeException>(() => ClearanceRegion.Of([Round(Ball)], clearance));

    [Fact]
    public void A_half_profile_that_reaches_across_its_axis_is_refused() =>
        Assert.Throws<ArgumentException>(() => new RevolvedForm(Region.Of(Outline.Circle(new(0, 10), 20))));
}
