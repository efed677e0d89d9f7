using CsCheck;
using TemplateForge.Testing;

namespace TemplateForge.Geometry.Tests.Measuring;

public class NarrowestWebTests
{
    private static readonly Box Plate = new(new(0, 0), new(100, 40));

    private static Region Polygon(params (double X, double Y)[] corners) => Given.Region(Outline.Polygon(corners.Select(c => new Point(c.X, c.Y))));

    private static Region Less(Contour outer, params Contour[] holes) => holes.Aggregate(Given.Region(outer), (r, hole) => r.Subtract(Given.Region(hole)));

    /// <summary>A shape, the width of its narrowest web, and its two ends where these are certain.</summary>
    public static TheoryData<string, double> Known => new()
    {
        { "a plate: its lesser side", 40 },
        { "a slot: its width", 8 },
        { "a disc: its diameter", 20 },
        { "half a disc: its radius", 10 },
        { "a disc without a quarter: its radius", 10 },
        { "a ring: its thickness", 4 },
        { "a ring off centre: where it is thinnest", 20 - 6 - 5 },
        { "a hole near an edge", 4 },
        { "two holes near each other", 2.5 },
        { "a square hole near an edge", 3 },
        { "a hole whose corner is near an edge", 20 - 10 * 1.4142135623730951 },
        { "an L: the width of its thinner leg", 15 },
        { "two notches opposite each other", 10 },
        { "two notches not quite opposite: from tip to tip", 12.206555615733702 },
        { "two round notches", 10 },
        { "one notch", 12 },
        { "a triangle: its least height", 48 },
        { "a taper: where it begins", 10 / 1.00019998000399979 },
        { "a regular pentagon: from a corner to the side opposite", 10 * 1.8090169943749475 },
        { "a hole that touches the edge", 0 },
        { "a neck between fillets", 6 },
        { "one slit beside another", 5 },
    };

    private static Region Named(string name) => name[..Math.Max(name.IndexOf(':'), 0)] switch
    {
        "a plate" => Given.Region(Outline.Rectangle(Plate)),
        "a slot" => Given.Region(Outline.Slot(new(0, 0), new(30, 0), 8)),
        "a disc" => Given.Region(Outline.Circle(new(3, 4), 10)),
        "half a disc" => Given.Region(new Contour(Segment.Arc(new(10, 0), new(-10, 0), 1), Segment.Line(new(-10, 0), new(10, 0)))),
        "a disc without a quarter" => Given.Region(new Contour(
            Segment.Line(new(0, 0), new(10, 0)), Segment.Arc(new(10, 0), new(-10, 0), 1), Segment.Arc(new(-10, 0), new(0, -10), Math.Tan(Math.PI / 8)),
            Segment.Line(new(0, -10), new(0, 0)))),
        "a ring" => Less(Outline.Circle(new(0, 0), 10), Outline.Circle(new(0, 0), 6)),
        "a ring off centre" => Less(Outline.Circle(new(0, 0), 20), Outline.Circle(new(3, 4), 6)),
        "an L" => Polygon((0, 0), (60, 0), (60, 15), (18, 15), (18, 50), (0, 50)),
        "two notches not quite opposite" => Polygon((0, 0), (40, 0), (45, 15), (50, 0), (100, 0), (100, 40), (60, 40), (52, 25), (44, 40), (0, 40)),
        "a triangle" => Polygon((0, 0), (60, 0), (0, 80)),
        "a taper" => Polygon((0, -5), (100, -3), (100, 3), (0, 5)),
        "a regular pentagon" => Given.Region(Outline.Polygon(Enumerable.Range(0, 5).Select(i => Point.Origin + Vector.Polar(10, Angle.FromDegrees(72 * i))))),
        _ => name switch
        {
            "a hole near an edge" => Less(Outline.Rectangle(Plate), Outline.Circle(new(50, 10), 6)),
            "two holes near each other" => Less(Outline.Rectangle(Plate), Outline.Circle(new(40, 20), 6), Outline.Circle(new(55, 20), 6.5)),
            "a square hole near an edge" => Less(Outline.Rectangle(Plate), Outline.Rectangle(new(new(50, 3), new(70, 20)))),
            "a hole whose corner is near an edge" => Less(
                Outline.Rectangle(Plate), Outline.Rectangle(new(new(40, 10), new(60, 30))).Placed(Placement.Turned(Angle.FromDegrees(45), new(50, 20)))),
            "two notches opposite each other" => Polygon((0, 0), (45, 0), (50, 15), (55, 0), (100, 0), (100, 40), (55, 40), (50, 25), (45, 40), (0, 40)),
            "two round notches" => Less(Outline.Rectangle(Plate), Outline.Circle(new(50, 0), 15), Outline.Circle(new(50, 40), 15)),
            "one notch" => Polygon((0, 0), (100, 0), (100, 40), (55, 40), (50, 12), (45, 40), (0, 40)),
            "a hole that touches the edge" => Less(Outline.Rectangle(Plate), Outline.Circle(new(50, 10), 10)),
            "a neck between fillets" => Given.Region(Outline.Rectangle(new(new(0, 0), new(30, 30)))).Union(Given.Region(Outline.Rectangle(new(new(50, 0), new(80, 30)))))
                .Union(Given.Region(Outline.Rectangle(new(new(20, 12), new(60, 18))))).Offset(9).Offset(-9),
            "one slit beside another" => Less(
                Outline.Rectangle(Plate), Outline.Rectangle(new(new(40, -1), new(42, 30))), Outline.Rectangle(new(new(47, 20), new(49, 41)))),
            _ => throw new ArgumentOutOfRangeException(nameof(name)),
        },
    };

    [Theory, MemberData(nameof(Known))]
    public void The_narrowest_web_is(string name, double width)
    {
        foreach (var image in Symmetries.Of(Named(name)))
        {
            Assert.True(image.Shape.TryNarrowestWeb(out var web), image.Name);
            Approximately.Equal(width, web.Width, within: Tolerance.Length);
            IsWeb(image.Shape, web);
        }
    }

    [Fact]
    public void It_lies_where_it_is_expected()
    {
        void Between(Point one, Point other, string name)
        {
            foreach (var (_, by) in Symmetries.Placements)
            {
                Assert.True(Named(name).Placed(by).TryNarrowestWeb(out var web));
                var (from, to) = web.From.DistanceTo(by.Of(one)) < web.To.DistanceTo(by.Of(one)) ? (web.From, web.To) : (web.To, web.From);
                Approximately.Equal(by.Of(one), from, within: Tolerance.Length);
                Approximately.Equal(by.Of(other), to, within: Tolerance.Length);
            }
        }
        Between(new(50, 0), new(50, 4), "a hole near an edge");
        Between(new(46, 20), new(48.5, 20), "two holes near each other");
        Between(new(45, 15), new(52, 25), "two notches not quite opposite: from tip to tip");
        Between(new(50, 15), new(50, 25), "two round notches");
        Between(new(50, 0), new(50, 12), "one notch");
        Between(new(12, 16), new(6.6, 8.8), "a ring off centre: where it is thinnest");
        Between(new(50, 0), new(50, 40), "a plate: its lesser side");
    }

    // Along a circle of 10 that comes within 1e-7 of a line, the place of the touch is known to √(2 × 10 × 1e-7) = 1.4e-3 only.
    [Fact]
    public void A_web_of_no_width_lies_at_the_touch()
    {
        foreach (var (_, by) in Symmetries.Placements)
        {
            Assert.True(Named("a hole that touches the edge").Placed(by).TryNarrowestWeb(out var web));
            Approximately.Equal(by.Of(new Point(50, 0)), web.From, within: 1.5e-3);
            Assert.Equal(web.From, web.To);
        }
    }

    // Sides of 100 mm that rise by h: into the material 40 − 2h is left in the middle, outwards 40 + 2h are there.
    [Theory, InlineData(1), InlineData(1e-3), InlineData(1e-6), InlineData(1e-9), InlineData(1e-11)]
    public void Sides_that_are_nearly_straight_are_nearest_in_the_middle(double rise)
    {
        foreach (var way in new[] { 1, -1 })
        {
            var bulge = way * 2 * rise / 100;
            var plate = Given.Region(new Contour(
                Segment.Arc(new(0, 0), new(100, 0), bulge), Segment.Line(new(100, 0), new(100, 40)), Segment.Arc(new(100, 40), new(0, 40), bulge),
                Segment.Line(new(0, 40), new(0, 0))));
            foreach (var image in Symmetries.Of(plate))
            {
                Assert.True(image.Shape.TryNarrowestWeb(out var web), image.Name);
                Approximately.Equal(40 + 2 * way * rise, web.Width, within: 1e-9);
            }
        }
    }

    // The thickness of a flat ring, thinner than nearly everything about it.
    [Theory, InlineData(1e3), InlineData(1e6), InlineData(1e9)]
    public void A_strip_between_arcs_about_one_far_centre_is_as_wide_as_their_radii_differ(double radius)
    {
        Segment About(double r, int way)
        {
            var half = 50 * r / radius;
            var rise = half * half / (r + Math.Sqrt(r * r - half * half));
            Point left = new(-half, r - radius - rise), right = new(half, r - radius - rise);
            return way > 0 ? Segment.Arc(left, right, -rise / half) : Segment.Arc(right, left, rise / half);
        }
        var (inner, outer) = (About(radius, 1), About(radius + 3, -1));
        foreach (var image in Symmetries.Of(Given.Region(new Contour(inner, Segment.Line(inner.End, outer.Start), outer, Segment.Line(outer.End, inner.Start)))))
        {
            Assert.True(image.Shape.TryNarrowestWeb(out var web), image.Name);
            Approximately.Equal(3, web.Width, within: Tolerance.Length);
        }
    }

    [Fact]
    public void An_ellipse_is_as_narrow_as_its_lesser_axis()
    {
        Assert.True(Given.Region(Outline.Ellipse(new(3, 4), 50, 30, Angle.FromDegrees(20))).TryNarrowestWeb(out var web));
        Approximately.Equal(60, web.Width, within: 2 * Tolerance.Curve);
    }

    [Fact]
    public void An_empty_region_has_no_web() => Assert.False(Region.Empty.TryNarrowestWeb(out _));

    // Between two rays that lie on either side of it, 0.05 mm apart, the line is looked for by halves.
    [Fact]
    public void It_is_what_rays_from_all_along_the_boundary_find() => Gen.Int.Check(60, seed => IsWhatRaysFind(Given.Star(new Random(seed), new(0, 0), 30)));

    // On a grid two sides may face each other at one point alone, where the normals come up to the line and turn back: rays do not see that.
    [Fact]
    public void Among_plates_on_a_grid_rays_find_none_that_is_narrower() => Testing.Shapes.GridRegion.Check(60, region =>
    {
        if (region.IsEmpty) return;
        var rays = Webs.Least(region, step: 0.2);
        Assert.True(region.TryNarrowestWeb(out var web) || double.IsInfinity(rays));
        Assert.InRange(web.Width, 0, rays + 1e-4);
        IsWeb(region, web);
    });

    [Fact]
    public void Where_a_shape_lies_does_not_matter() => Gen.Int.Check(20, seed =>
    {
        var star = Given.Star(new Random(seed), new(0, 0), 30);
        Assert.True(star.TryNarrowestWeb(out var web));
        foreach (var image in Symmetries.Of(star))
        {
            Assert.True(image.Shape.TryNarrowestWeb(out var same), image.Name);
            Approximately.Equal(web.Width, same.Width, within: Tolerance.Length);
            IsWeb(image.Shape, same);
        }
    });

    // A polygon of many sides is a disc but for (1 − cos π/n) R.
    [Fact]
    public void Of_four_thousand_segments_it_is_found_in_a_moment()
    {
        var round = Given.Region(Outline.Polygon(Enumerable.Range(0, 4000).Select(i => Point.Origin + Vector.Polar(50, Angle.FullTurn * i / 4000))));
        Assert.True(round.TryNarrowestWeb(out var web));
        Approximately.Equal(100 * Math.Cos(Math.PI / 4000), web.Width, within: 1e-9);
        // Teeth with flanks along radii are narrowest at their roots.
        var gear = Given.Region(Testing.Shapes.ThroughPoints(
            [.. Enumerable.Range(0, 4000).Select(i => Point.Origin + Vector.Polar(i % 4 is 1 or 2 ? 2005 : 2000, Angle.FullTurn * (i / 2) / 2000))],
            [.. new double[4000]]));
        Assert.True(gear.TryNarrowestWeb(out web));
        Approximately.Equal(4000 * Math.Sin(Math.PI / 2000), web.Width, within: 1e-9);
    }

    private static void IsWhatRaysFind(Region region)
    {
        if (region.IsEmpty) return;
        var rays = Webs.Least(region, step: 0.05);
        Assert.Equal(double.IsFinite(rays), region.TryNarrowestWeb(out var web));
        if (web.Width == 0) return; // touches; rays begin at 1e-6
        Approximately.Equal(rays, web.Width, within: 1e-4);
        IsWeb(region, web);
    }

    /// <summary>Both ends on the boundary, and all between inside.</summary>
    private static void IsWeb(Region region, Web web)
    {
        Approximately.Equal(0, region.BoundaryDistanceTo(web.From) + region.BoundaryDistanceTo(web.To), within: 1e-9);
        for (var i = 1; i < 20; i++) Assert.True(region.Contains(web.From + (web.To - web.From) * (i / 20.0)));
    }
}
