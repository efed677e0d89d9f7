using TemplateForge.Testing;

namespace TemplateForge.Geometry.Tests.Clipping;

public class MeetingsTests
{
    private static (List<Meeting> Points, List<SharedRun> Runs) Find(Segment first, Segment second)
    {
        var (points, runs) = (new List<Meeting>(), new List<SharedRun>());
        Meetings.Find(first, second, points, runs);
        foreach (var (at, onFirst, onSecond) in points.Concat(runs.SelectMany(r => new[] { r.From, r.To })))
        {
            Approximately.Equal(at, first.At(onFirst), within: 2e-7);
            Approximately.Equal(at, second.At(onSecond), within: 2e-7);
        }
        return (points, runs);
    }

    /// <summary>The meetings of a pair, which must be the same in every place, in either direction and in either order.</summary>
    private static void Meet(Segment first, Segment second, params Point[] expected) => Meet(1e-9, first, second, expected);

    /// <summary>A touch: its place along the curves is uncertain by √(2 r δ), 2e-5 for r = 10 where 100 m away δ = 1.5e-11.</summary>
    private static void Touch(Segment first, Segment second, Point expected) => Meet(5e-5, first, second, expected);

    private static void Meet(double within, Segment first, Segment second, params Point[] expected)
    {
        foreach (var (_, by) in Symmetries.Placements)
        {
            foreach (var (a, b) in new[] { (first, second), (first.Reversed(), second), (second, first) })
            {
                var (points, runs) = Find(a.Placed(by), b.Placed(by));
                Assert.Empty(runs);
                var found = points.Select(p => p.At).ToArray();
                Assert.Equal(expected.Length, found.Length);
                foreach (var p in expected)
                    Assert.Contains(found, f => f.DistanceTo(by.Of(p)) < within);
            }
        }
    }

    private static Segment Line(double x1, double y1, double x2, double y2) => Segment.Line(new(x1, y1), new(x2, y2));

    private static readonly Segment Upper = Segment.Arc(new(10, 0), new(-10, 0), 1); // half circle of 10 about the origin
    private static readonly Segment Right = Segment.Arc(new(0, -10), new(0, 10), 1);

    [Fact]
    public void Lines_cross_in_a_point_or_not_at_all()
    {
        Meet(Line(0, 0, 10, 10), Line(0, 10, 10, 0), new Point(5, 5));
        Meet(Line(0, 0, 10, 0), Line(10, 0, 10, 5), new Point(10, 0));
        Meet(Line(0, 0, 10, 0), Line(4, 0, 4, 5), new Point(4, 0));
        Meet(Line(0, 0, 10, 0), Line(0, 1, 10, 1));
        Meet(Line(0, 0, 10, 0), Line(11, -1, 11, 1));
        Meet(Line(0, 0, 10, 0), Line(10, 0, 20, 0), new Point(10, 0)); // in line, end to end
        Meet(Line(0, 0, 10, 0), Line(11, 0, 20, 0));
    }

    [Fact]
    public void A_line_crosses_an_arc_up_to_twice_and_touches_it_once()
    {
        Meet(Line(-20, 6, 20, 6), Upper, new(8, 6), new Point(-8, 6));
        Meet(Line(0, 6, 20, 6), Upper, new Point(8, 6));
        Meet(Line(-20, -6, 20, -6), Upper);
        Touch(Line(-20, 10, 20, 10), Upper, new Point(0, 10));
        Meet(Line(-20, 10.001, 20, 10.001), Upper);
        Meet(Line(-20, 0, 20, 0), Upper, new(10, 0), new Point(-10, 0)); // through both its ends
        Touch(Line(10, -5, 10, 5), Upper, new Point(10, 0)); // tangent in its end
    }

    [Fact]
    public void Arcs_cross_up_to_twice_and_touch_once_from_outside_and_from_inside()
    {
        // 6-8-10: circles of 10 about (0, 0) and (12, 0) cross at (6, ±8); half circles that face each other have both.
        Meet(Right, Segment.Arc(new(12, 10), new(12, -10), 1), new(6, 8), new Point(6, -8));
        Meet(Upper, Segment.Arc(new(12, 10), new(12, -10), 1), new Point(6, 8));
        Touch(Right, Segment.Arc(new(20, 10), new(20, -10), 1), new Point(10, 0)); // touch outside
        Touch(Right, Segment.Arc(new(7, -3), new(7, 3), 1), new Point(10, 0)); // touch inside
        Meet(Right, Segment.Arc(new(0, -9), new(0, 9), 1)); // about one centre
        Meet(Right, Segment.Arc(new(0, 10), new(0, -10), 1), new(0, 10), new Point(0, -10)); // the two halves of a circle
        Meet(Upper, Segment.Arc(new(10, 0), new(-10, 0), 0.5), new(10, 0), new Point(-10, 0));
    }

    [Fact]
    public void Near_misses_of_less_than_merging_are_touches_and_of_more_are_none()
    {
        foreach (var gap in new[] { 0, 5e-8 })
        {
            Assert.Single(Find(Line(-20, 10 + gap, 20, 10 + gap), Upper).Points);
            Assert.Single(Find(Right, Segment.Arc(new(20 + gap, 10), new(20 + gap, -10), 1)).Points);
            Assert.Single(Find(Right, Segment.Arc(new(0.01 - gap, -9.99), new(0.01 - gap, 9.99), 1)).Points); // nearly the same radius
        }
        Assert.Empty(Find(Line(-20, 10 + 2e-7, 20, 10 + 2e-7), Upper).Points);
        Assert.Empty(Find(Right, Segment.Arc(new(20 + 2e-7, 10), new(20 + 2e-7, -10), 1)).Points);
    }

    [Fact]
    public void Nearly_straight_arcs_cross_as_lines_do()
    {
        foreach (var bulge in new[] { 1e-6, -1e-9, 1e-11, -1e-13 })
        {
            var flat = Segment.Arc(new(0, 0), new(1000, 0), bulge);
            Meet(flat, Line(250, -10, 250, 10), flat.Nearest(new(250, 0)));
            Meet(flat, Segment.Arc(new(250, -50), new(250, 50), 0.3), Find(flat, Segment.Arc(new(250, -50), new(250, 50), 0.3)).Points.Single().At);
            var other = Segment.Arc(new(300, -100), new(500, 100), -bulge);
            Approximately.Equal(new Point(400, 0), Find(flat, other).Points.Single().At, within: 1100 * Math.Abs(bulge) + 1e-9);
        }
    }

    [Fact]
    public void Segments_that_coincide_share_a_run_whichever_way_they_lie()
    {
        void Share(Segment first, Segment second, Point from, Point to)
        {
            foreach (var (_, by) in Symmetries.Placements)
            {
                foreach (var other in new[] { second, second.Reversed() })
                {
                    var (points, runs) = Find(first.Placed(by), other.Placed(by));
                    Assert.Empty(points);
                    Approximately.Equal(by.Of(from), Assert.Single(runs).From.At, within: 1e-9);
                    Approximately.Equal(by.Of(to), runs[0].To.At, within: 1e-9);
                }
            }
        }
        Share(Line(0, 0, 10, 0), Line(4, 0, 20, 0), new(4, 0), new(10, 0));
        Share(Line(0, 0, 10, 0), Line(4, 0, 7, 0), new(4, 0), new(7, 0));
        Share(Line(0, 0, 10, 0), Line(0, 0, 10, 0), new(0, 0), new(10, 0));
        Share(Upper, Right, new(10, 0), new(0, 10));
        Share(Upper, Upper, new(10, 0), new(-10, 0));
        Share(Line(0, 0, 100, 0), Segment.Arc(new(20, 0), new(80, 0), 1e-9), new(20, 0), new(80, 0)); // rises 3e-8
        Share(Segment.Arc(new(0, 0), new(100, 0), 2e-10), Segment.Arc(new(20, 0), new(80, 0), -3e-10), new(20, 0), new(80, 0));
        Assert.Empty(Find(Line(0, 0, 100, 0), Segment.Arc(new(20, 0), new(80, 0), 1e-7)).Runs);
    }

    [Fact]
    public void Any_two_segments_meet_where_a_fine_search_sees_them_cross()
    {
        var random = new Random(8);
        Point At() => new(random.NextDouble() * 40, random.NextDouble() * 40);
        Segment Any() => Segment.Arc(At(), At(), random.Next(3) == 0 ? 0 : (random.NextDouble() * 2 - 1) * (random.Next(3) == 0 ? 1e-5 : 1));
        for (var n = 0; n < 2000; n++)
        {
            var (a, b) = (Any(), Any());
            var found = Find(a, b).Points;
            Assert.All(found, m => Assert.InRange(Math.Max(a.DistanceTo(m.At), b.DistanceTo(m.At)), 0, 1e-9));
            // Chords fine enough that each crossing of theirs belongs to one of the curves and the other way round, but for
            // near tangents, which either may miss.
            var (pa, pb) = (Chords(a), Chords(b));
            var crossings = 0;
            for (var i = 0; i + 1 < pa.Length; i++)
            {
                for (var k = 0; k + 1 < pb.Length; k++) crossings += Cross(pa[i], pa[i + 1], pb[k], pb[k + 1]) ? 1 : 0;
            }
            if (crossings != found.Count) Assert.True(IsNearTangentOrEnd(a, b), $"{a} and {b}: {found.Count}, searched {crossings}");
        }

        static Point[] Chords(Segment s) => s.IsLine ? [s.Start, s.End] : [.. Enumerable.Range(0, 41).Select(i => s.At(i / 40.0))];
        static bool Cross(Point p, Point q, Point r, Point s) =>
            (q - p).Cross(r - p) > 0 != (q - p).Cross(s - p) > 0 && (s - r).Cross(p - r) > 0 != (s - r).Cross(q - r) > 0;
        static bool IsNearTangentOrEnd(Segment a, Segment b) =>
            new[] { a.Start, a.End }.Any(p => b.DistanceTo(p) < 0.02) || new[] { b.Start, b.End }.Any(p => a.DistanceTo(p) < 0.02)
            || Enumerable.Range(0, 400).Any(i => b.DistanceTo(a.At(i / 400.0)) < 0.1
                && Math.Abs(a.DirectionAt(i / 400.0).Cross(b.DirectionAt(b.NearestPlace(a.At(i / 400.0)).Share))) < 0.15);
    }
}
