using TemplateForge.Testing;

namespace TemplateForge.Geometry.Tests;

public class SegmentTests
{
    // Columns of any table of circular segments: h = r (1 − cos θ/2), c = 2 r sin θ/2, bulge = tan θ/4 (the drawing-exchange
    // format's definition, printed pair 0.57735 ↔ 120°). Six decimals: 2e-6 rad of sweep, 1.2e-4°, or 4e-6 of a radius.
    [Theory]
    [InlineData(30, 0.131652, 0.517638, 0.034074, 0.523599)]
    [InlineData(60, 0.267949, 1.000000, 0.133975, 1.047198)]
    [InlineData(90, 0.414214, 1.414214, 0.292893, 1.570796)]
    [InlineData(120, 0.577350, 1.732051, 0.500000, 2.094395)]
    [InlineData(180, 1, 2, 1, 3.141593)]
    public void An_arc_has_the_chord_rise_and_length_of_the_tables(double sweep, double bulge, double chord, double rise, double length)
    {
        var arc = Segment.Arc(Point.Origin, new(chord, 0), bulge);
        Approximately.Equal(sweep, arc.Sweep.Degrees, within: 1.2e-4);
        Approximately.Equal(1, arc.Radius, within: 5e-6);
        Approximately.Equal(length, arc.Length, within: 2e-6);
        Approximately.Equal(new Point(chord / 2, -rise), arc.At(0.5), within: 1e-6); // it turns left, so it bulges to the right
    }

    // r = c² / 8h + h / 2 with c = 21, h = 6 is exactly 12.1875, b = 2h / c = 4/7; θ = 118.97953° to its digits.
    [Fact]
    public void A_chord_of_21_that_rises_6_has_a_radius_of_12_1875()
    {
        var arc = Segment.Arc(new(0, 0), new(21, 0), 4.0 / 7);
        Approximately.Equal(12.1875, arc.Radius, within: 1e-13);
        Approximately.Equal(118.97953, arc.Sweep.Degrees, within: 1e-5);
        Approximately.Equal(new Point(10.5, 12.1875 - 6), arc.Centre, within: 1e-13);
    }

    [Fact]
    public void Every_point_of_an_arc_is_its_radius_from_its_centre_also_100_m_away()
    {
        foreach (var bulge in new[] { 1, -1, 0.5, -0.01, 0.2 })
        {
            var arc = Segment.Arc(new(100_000, -100_000), new(100_080, -99_940), bulge);
            for (var i = 0; i <= 10; i++)
            {
                // 1.5e-11 is one step of a double there; a few of them.
                Approximately.Equal(arc.Radius, arc.At(i / 10.0).DistanceTo(arc.Centre), within: 2e-10);
                Approximately.Equal(0, arc.DirectionAt(i / 10.0).Dot(arc.At(i / 10.0) - arc.Centre), within: 2e-9);
            }
        }
    }

    // Rise and place of a flat arc from the parabola that it is: y = h (1 − (2x/c)²), within h³/c² of the circle.
    [Theory]
    [InlineData(1e-3)]
    [InlineData(1e-6)]
    [InlineData(1e-9)]
    [InlineData(1e-11)]
    public void A_nearly_straight_arc_of_100_mm_is_exact_all_along(double rise)
    {
        var arc = Segment.Arc(new(0, 0), new(100, 0), -2 * rise / 100);
        for (var i = 0; i <= 8; i++)
        {
            var x = 100.0 * i / 8;
            var t = 2 * x / 100 - 1;
            Approximately.Equal(new Point(x, rise * (1 - t * t)), arc.At(i / 8.0), within: 1e-9 * rise + rise * rise / 100 + 3e-14);
        }
        Approximately.Equal(rise, arc.Bounds.Max.Y, within: 1e-9 * rise + 1e-15);
        Approximately.Equal(0, arc.Bounds.Min.X, within: 0);
        Approximately.Equal(100, arc.Length, within: rise * rise / 10 + 1e-12);
    }

    [Fact]
    public void An_arc_whose_rise_no_double_can_tell_is_a_line()
    {
        Assert.True(Segment.Arc(new(0, 0), new(100, 0), 1e-17).IsLine);
        Assert.False(Segment.Arc(new(0, 0), new(100, 0), 1e-12).IsLine);
    }

    [Fact]
    public void Bounds_of_an_arc_reach_as_far_as_it_does_and_no_further()
    {
        var random = new Random(1);
        for (var n = 0; n < 300; n++)
        {
            Point start = new(random.NextDouble() * 50, random.NextDouble() * 50), end = new(random.NextDouble() * 50, random.NextDouble() * 50);
            var arc = Segment.Arc(start, end, random.NextDouble() * 2 - 1);
            var sampled = Box.Around(Enumerable.Range(0, 2001).Select(i => arc.At(i / 2000.0)));
            // Between two samples an arc of 80 mm rises at most (0.04)² / (8 × 12 mm).
            Approximately.Equal(sampled, arc.Bounds, within: 1e-4);
            Assert.True(arc.Bounds.Grown(1e-12).Contains(sampled.Min) && arc.Bounds.Grown(1e-12).Contains(sampled.Max));
        }
    }

    [Fact]
    public void A_half_circle_reaches_its_radius_past_its_chord()
    {
        var bounds = Segment.Arc(new(10, 0), new(-10, 0), 1).Bounds;
        Approximately.Equal(new Box(new(-10, 0), new(10, 10)), bounds, within: 1e-14);
    }

    [Fact]
    public void A_part_lies_on_the_whole_and_has_its_share_of_the_length()
    {
        foreach (var bulge in new[] { 0, 1, -1, 0.3, 1e-7 })
        {
            var whole = Segment.Arc(new(3, 4), new(50, -20), bulge);
            var part = whole.Part(0.2, 0.9);
            Approximately.Equal(0.7 * whole.Length, part.Length, within: 1e-12);
            Approximately.Equal(whole.At(0.55), part.At(0.5), within: 1e-12);
            Approximately.Equal(whole.DirectionAt(0.9), part.EndDirection, within: 1e-13);
            Assert.Equal(whole, whole.Part(0, 1));
        }
    }

    [Fact]
    public void Reversed_twice_it_is_itself_and_reversed_once_it_runs_the_same_points_backwards()
    {
        var arc = Segment.Arc(new(3, 4), new(50, -20), 0.7);
        Assert.Equal(arc, arc.Reversed().Reversed());
        Approximately.Equal(arc.At(0.3), arc.Reversed().At(0.7), within: 1e-13);
        Approximately.Equal(-arc.StartDirection, arc.Reversed().EndDirection, within: 1e-15);
    }

    [Fact]
    public void Two_ends_in_one_point_and_more_than_half_a_circle_are_refused()
    {
        Assert.Throws<ArgumentException>(() => Segment.Line(new(1, 1), new(1, 1 + 5e-8)));
        Assert.Throws<ArgumentException>(() => Segment.Arc(new(1, 1), new(2, 2), 1.0000001));
        Assert.Throws<ArgumentException>(() => Segment.Arc(new(1, 1), new(2, 2), double.NaN));
        Assert.Throws<ArgumentException>(() => Segment.Arc(new(1, double.NaN), new(2, 2), 0));
        Assert.Throws<InvalidOperationException>(() => Segment.Line(new(1, 1), new(2, 2)).Centre);
    }

    [Fact]
    public void Placing_a_segment_places_all_its_points()
    {
        var arc = Segment.Arc(new(3, 4), new(50, -20), 0.7);
        foreach (var (_, by) in Symmetries.Placements)
            Approximately.Equal(by.Of(arc.At(0.3)), arc.Placed(by).At(0.3), within: 1e-10);
    }

    [Fact]
    public void Points_vectors_and_segments_print_themselves()
    {
        Assert.Equal("(1.5, -2)", new Point(1.5, -2).ToString());
        Assert.Equal("(1.5, -2)", new Vector(1.5, -2).ToString());
        Assert.Equal("line (0, 0) to (1, 0)", Segment.Line(new(0, 0), new(1, 0)).ToString());
        Assert.Equal("arc (0, 0) to (1, 0), bulge -0.5", Segment.Arc(new(0, 0), new(1, 0), -0.5).ToString());
    }
}
