using TemplateForge.Testing;

namespace TemplateForge.Geometry.Tests;

public class ExtremesTests
{
    // The corner of a square is a quarter circle of 40 chords, each 1e-5 mm long.
    [Fact]
    public void A_chain_of_segments_of_a_hundred_thousandth_of_a_millimetre()
    {
        const int chords = 40;
        const double radius = chords * 1e-5 / (Math.PI / 2);
        var chain = Enumerable.Range(0, chords + 1).Select(i =>
            new Point(40 - radius, 40 - radius) + Vector.Polar(radius, Angle.QuarterTurn * ((double)i / chords)));
        var square = Region.Of(Outline.Polygon([new(0, 0), new(40, 0), .. chain, new(0, 40)]));
        Assert.True(square.Contours[0].Segments.Length > chords);
        Everywhere.Grows(square, 5);
        Everywhere.Grows(square, 1e-4);
        Everywhere.Offsets(square, -5, area: 900, contours: 1);
    }

    // The chord of 2e-5 mm that closes it is all that is not a circle.
    [Fact]
    public void A_nearly_full_circle()
    {
        const double gap = 1e-6;
        var (above, below) = (Vector.Polar(10, Angle.FromRadians(gap)), Vector.Polar(10, Angle.FromRadians(-gap)));
        var bulge = Math.Tan((Math.PI - gap) / 4);
        var circle = Region.Of(Draw.Outline((above.X, above.Y, bulge), (-10, 0, bulge), (below.X, below.Y, 0)));
        Everywhere.Grows(circle, 5);
        Everywhere.Offsets(circle, -5, area: 25 * Math.PI, contours: 1);
        Everywhere.Combines(circle, Draw.Disc(new(0, 0), 10), union: 100 * Math.PI, intersection: 100 * Math.PI);
    }

    [Theory, InlineData(1e-9), InlineData(1e-7), InlineData(1e-6), InlineData(1e-4), InlineData(0.01)]
    public void Nearly_straight_arcs(double rise)
    {
        var bulge = 2 * rise / 100;
        var bar = Region.Of(Draw.Outline((0, 0, bulge), (100, 0, 0), (100, 20, bulge), (0, 20, 0)));
        Everywhere.Grows(bar, 5);
        Everywhere.Offsets(bar, -5, area: 90 * 10 + 2 * AreaUnder(rise, 100, from: 5), contours: 1);
        Everywhere.Combines(
            bar, Draw.Rectangle(0, 0, 100, 20), union: 2000 + 2 * AreaUnder(rise, 100, from: 0), intersection: 2000);
    }

    [Fact]
    public void A_circle_and_a_lens_of_two_vertices()
    {
        var lens = Region.Of(Draw.Outline((0, 0, 0.3), (40, 0, 0.2)));
        Everywhere.Grows(Draw.Disc(new(0, 0), 10), 5);
        Everywhere.Grows(lens, 5);
        Everywhere.Offsets(Draw.Disc(new(0, 0), 10), -9.99, area: 1e-4 * Math.PI, contours: 1);
        Everywhere.Offsets(Draw.Disc(new(0, 0), 10), -10, area: 0, contours: 0);
    }

    [Theory, InlineData(1e-5), InlineData(1e-3), InlineData(0.1)]
    public void Needles_outwards_and_inwards(double width)
    {
        var needle = Region.Of(Draw.Polygon((0, 0), (100, width / 2), (0, width)));
        Everywhere.Grows(needle, 3);
        var plate = Draw.Rectangle(-10, -30, 150, 30).Subtract(needle);
        foreach (var distance in (double[])[-3, 3]) Law.IsOffset(plate.Offset(distance), plate, distance);
        // A hole as thin as this closes.
        Everywhere.Offsets(plate, 3, area: 160 * 60 + 440 * 3 + 9 * Math.PI, contours: 1);
    }

    // Notches of 0.01 mm close when their plate, 100 m off, grows by half of it: but for what the quarter circles about their
    // corners leave uncovered above each.
    [Fact]
    public void A_hundred_metres_with_details_of_a_hundredth_of_a_millimetre()
    {
        const int notches = 50;
        const double detail = 0.01;
        var corners = new List<(double, double)> { (-100_000, -100_000), (100_000, -100_000), (100_000, 99_999) };
        for (var i = 0; i < notches; i++)
        {
            var at = 100_000 - 1 - 2 * i * detail;
            corners.AddRange([(at, 99_999), (at, 99_999 - detail), (at - detail, 99_999 - detail), (at - detail, 99_999)]);
        }
        corners.Add((-100_000, 99_999));
        var plate = Region.Of(Draw.Polygon([.. corners]));
        var window = Draw.Rectangle(99_990, 99_998, 99_999.5, 100_001);
        const double gap = detail * detail / 2 - Math.PI * detail * detail / 8;
        var grown = plate.Offset(detail / 2);
        Law.IsWellMade(grown);
        Approximately.Equal(
            9.5 * (1 + detail / 2) - notches * gap, grown.Intersect(window).Area, within: Tolerance.Area(25));
        var shrunk = plate.Offset(-detail / 4).Intersect(window);
        // Notches of 0.015 by 0.01 mm, their two lower corners rounded with 0.0025 mm.
        var notch = 0.015 * 0.01 - 2 * (1 - Math.PI / 4) * 0.0025 * 0.0025;
        Approximately.Equal(9.5 * (1 - 0.0025) - notches * notch, shrunk.Area, within: Tolerance.Area(25));
        Law.IsWellMade(shrunk);
    }

    // Shrinking a shape of right angles: A − L d, d² back at each convex corner, a quarter of π d² less at each reflex one.
    [Fact]
    public void A_hundred_thousand_segments()
    {
        const int teeth = 25_000;
        var corners = new List<(double, double)> { (0, -10), (8 * teeth, -10) };
        for (var i = teeth - 1; i >= 0; i--) corners.AddRange([(8 * i + 8, 4), (8 * i + 4, 4), (8 * i + 4, 0), (8 * i, 0)]);
        var comb = Region.Of(Draw.Polygon([.. corners]));
        Assert.True(comb.Contours[0].Segments.Length >= 100_000);
        var (convex, reflex) = (2 * teeth + 2, 2 * teeth - 2);
        var offset = comb.Offset(-0.5);
        Approximately.Equal(
            comb.Area - comb.Length * 0.5 + convex * 0.25 - reflex * Math.PI / 16, offset.Area, within: Tolerance.Area(comb.Length));
        var other = comb.Placed(Placement.Moved(new(4, 0)));
        Approximately.Equal(8.0 * teeth * 14 + 4 * 10, comb.Union(other).Area, within: Tolerance.Area(2 * comb.Length));
    }

    /// <summary>Under a flat arc over a span, from so far inside both ends: (2/3) rise × span, a parabola to within rise³.</summary>
    private static double AreaUnder(double rise, double span, double from)
    {
        var half = span / 2 - from;
        return rise * 2 * (half - half * half * half / (3 * (span / 2) * (span / 2)));
    }
}
