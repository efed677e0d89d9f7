using TemplateForge.Testing;

namespace TemplateForge.Geometry.Tests;

public class ContourTests
{
    [Fact]
    public void Area_and_length_of_a_slot_are_those_of_a_rectangle_and_a_circle()
    {
        var slot = Outline.Slot(new(0, 0), new(30, 40), 20);
        foreach (var image in Symmetries.Of(slot))
        {
            // 50 × 20 and a circle of 10; rounded coordinates 100 m away are worth 1.5e-11 on each mm of boundary.
            Approximately.Equal(50 * 20 + Math.PI * 100, image.Shape.Area, within: 1e-8);
            Approximately.Equal(100 + Math.PI * 20, image.Shape.Length, within: 1e-9);
        }
        Assert.True(slot.IsCounterClockwise);
        Approximately.Equal(-slot.Area, slot.Reversed().SignedArea, within: 1e-12);
    }

    // Between arc and chord: R² (θ − sin θ) / 2; for a small rise h, ⅔ c h (1 + …h²/c²).
    [Theory]
    [InlineData(1e-2)]
    [InlineData(1e-5)]
    [InlineData(1e-8)]
    public void The_area_beside_a_nearly_straight_arc_is_two_thirds_of_chord_and_rise(double rise)
    {
        var with = new Contour(Segment.Arc(new(0, 0), new(100, 0), 2 * rise / 100), Segment.Line(new(100, 0), new(50, 80)), Segment.Line(new(50, 80), new(0, 0)));
        Approximately.Equal(2.0 / 3 * 100 * rise, with.Area - 4000, within: 100 * rise * rise * rise + 1e-11);
    }

    [Fact]
    public void The_area_grows_smoothly_where_the_series_takes_over_from_the_formula()
    {
        foreach (var sweep in new[] { 0.0499999, 0.0500001 })
        {
            var arc = Segment.Arc(new(0, 0), new(100, 0), Math.Tan(sweep / 4));
            var area = new Contour(arc, Segment.Line(new(100, 0), new(0, 0))).SignedArea;
            // Simpson's rule on the height above the chord, 2000 steps: error far below 1e-9.
            var radius = 50 / Math.Sin(sweep / 2);
            double Height(double x) => Math.Sqrt(radius * radius - (x - 50) * (x - 50)) - Math.Sqrt(radius * radius - 2500);
            var sum = Enumerable.Range(0, 1000).Sum(i => (Height(i / 10.0) + 4 * Height((i + 0.5) / 10.0) + Height((i + 1) / 10.0)) / 60);
            Approximately.Equal(sum, area, within: 1e-9);
        }
    }

    [Fact]
    public void Segments_that_do_not_meet_are_refused()
    {
        Assert.Throws<ArgumentException>(() => new Contour(Segment.Line(new(0, 0), new(1, 0))));
        Assert.Throws<ArgumentException>(() => new Contour(
            Segment.Line(new(0, 0), new(1, 0)), Segment.Line(new(1, 0), new(1, 1)), Segment.Line(new(1, 1), new(0, 1e-6))));
        Assert.Throws<ArgumentException>(() => new Path(Segment.Line(new(0, 0), new(1, 0)), Segment.Line(new(1, 1e-6), new(1, 1))));
        Assert.Throws<ArgumentException>(() => new Path());
    }

    [Fact]
    public void A_path_runs_from_its_first_to_its_last_point_and_back_when_reversed()
    {
        var path = new Path(Segment.Line(new(0, 0), new(10, 0)), Segment.Arc(new(10, 0), new(10, 20), 1));
        Assert.Equal((new Point(0, 0), new Point(10, 20)), (path.Start, path.End));
        Assert.Equal((new Point(10, 20), new Point(0, 0)), (path.Reversed().Start, path.Reversed().End));
        Approximately.Equal(10 + 10 * Math.PI, path.Length, within: 1e-13);
        Approximately.Equal(new Box(new(0, 0), new(20, 20)), path.Bounds, within: 1e-14);
    }
}
