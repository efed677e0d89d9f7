using CsCheck;
using TemplateForge.Testing;

namespace TemplateForge.Geometry.Tests.Measuring;

public class BoundsTests
{
    private static readonly Vector[] Quarters = [new(1, 0), new(0, 1), new(-1, 0), new(0, -1)];

    // An arc reaches to its ends, and to centre and radius in those of the four directions that it passes. At 100 m a coordinate is
    // worth 1.5e-11 mm, and a centre computed from two of them a few times as much.
    [Theory, InlineData(0, 0, 1e-12), InlineData(100_000, -100_000, 2e-10)]
    public void An_arc_reaches_to_its_ends_and_to_its_circle_where_it_passes_that(double x, double y, double within) =>
        Gen.Select(Gen.Double[0.1, 200], Gen.Double[0, 2 * Math.PI], Gen.Double[-Math.PI, Math.PI]).Check(1000, drawn =>
        {
            var (radius, from, sweep) = drawn;
            if (Math.Abs(sweep) < 0.01) return;
            var centre = new Point(x + 3, y - 7);
            Point On(double angle) => centre + Vector.Polar(radius, Angle.FromRadians(angle));
            var arc = Segment.Arc(On(from), On(from + sweep), Math.Tan(sweep / 4));
            var passed = Quarters.Where(q =>
            {
                var turn = Math.IEEERemainder(q.Direction.Radians - from - sweep / 2, 2 * Math.PI);
                return Math.Abs(turn) < Math.Abs(sweep) / 2;
            });
            var expected = Box.Around([arc.Start, arc.End, .. passed.Select(q => centre + q * radius)]);
            Approximately.Equal(expected, arc.Bounds, within);
        });

    // An arc over a level chord rises h in the middle and h (1 − (2x/c)²) elsewhere; over a chord that slopes by more than it bends it
    // reaches to its ends alone.
    [Theory, InlineData(0, 0, 1e-15), InlineData(100_000, -100_000, 3e-11)]
    public void A_nearly_straight_arc_reaches_as_far_as_it_rises(double x, double y, double within) =>
        Gen.Select(Gen.Double[-11, -2], Gen.Double[1, 1000]).Check(300, drawn =>
        {
            var (rise, chord) = (Math.Pow(10, drawn.Item1), drawn.Item2);
            Point start = new(x, y), end = new(x + chord, y);
            var up = Segment.Arc(start, end, -2 * rise / chord);
            Approximately.Equal(new Box(start, new(end.X, y + rise)), up.Bounds, within + 1e-12 * rise);
            Approximately.Equal(new Box(new(x, y - rise), end), up.Placed(Placement.Mirrored(start, Angle.Zero)).Bounds, within + 1e-12 * rise);
            var slope = Segment.Arc(start, new(x + chord, y + 5 * rise), -2 * rise / chord);
            Approximately.Equal(new Box(slope.Start, slope.End), slope.Bounds, within);
        });

    // Samples lie inside; and since between two of them, s apart, an arc rises s² / 8R at the most, they reach as far but for that.
    [Fact]
    public void Bounds_of_a_region_hold_its_samples_and_no_more() => Testing.Shapes.Star.Check(200, star =>
    {
        foreach (var (name, by) in Symmetries.Placements)
        {
            var region = new Region([star.Placed(by)]);
            var samples = star.Placed(by).Segments.SelectMany(s => Enumerable.Range(0, 201).Select(i => s.At(i / 200.0))).ToArray();
            var sampled = Box.Around(samples);
            var rise = star.Segments.Max(s => s.IsLine ? 0 : Math.Pow(s.Length / 200, 2) / (8 * s.Radius));
            Approximately.Equal(sampled, region.Bounds, within: 1.5 * rise + 1e-10);
            Assert.True(region.Bounds.Grown(1e-10).Touches(sampled) && region.Bounds.Joined(sampled).Width - region.Bounds.Width <= 2e-10, name);
            Assert.True(region.Bounds.Joined(sampled).Height - region.Bounds.Height <= 2e-10, name);
        }
    });
}
