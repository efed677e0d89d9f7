using TemplateForge.Geometry;
using TemplateForge.Testing;

namespace TemplateForge.Fabrication.Tests;

// Back-step and skip: US Navy Steelworker text (read). Rounds quartered like a clock: common practice, no source.
public class WeldPlanTests
{
    private static readonly Path Bowed = new(
        Segment.Line(new(0, 0), new(70, 0)), Segment.Arc(new(70, 0), new(110, 40), Math.Tan(Math.PI / 8)), Segment.Line(new(110, 40), new(110, 95)));

    // Closed forms: 100 mm in runs of 25 at most is four, in runs of 24 five of 20.
    [Theory]
    [InlineData(25, 4)]
    [InlineData(24, 5)]
    [InlineData(100, 1)]
    [InlineData(500, 1)]
    public void There_are_as_few_equal_runs_as_are_no_longer_than_the_longest(double longest, int count)
    {
        var seam = WeldPlan.Along(Path.Line(new(0, 0), new(100, 0)), longest, WeldOrder.BackStep);
        Assert.Equal(count, seam.Runs.Length);
        Assert.All(seam.Runs, r => Approximately.Equal(100.0 / count, r.Along.Length, within: 1e-9));
    }

    // "Short runs each laid against the direction of travel": the first ends where the seam begins.
    [Fact]
    public void Back_step_goes_along_the_seam_and_lays_each_run_the_other_way()
    {
        var runs = WeldPlan.Along(Path.Line(new(0, 0), new(100, 0)), 25, WeldOrder.BackStep).Runs;
        Assert.Equal([(25.0, 0.0), (50, 25), (75, 50), (100, 75)], runs.Select(r => (r.Along.Start.X, r.Along.End.X)));
        Assert.Equal([1, 2, 3, 4], runs.Select(r => r.Number));
    }

    // "Start, middle, far end, then back to the end of the first": of five runs the first, third, fifth, second, fourth.
    [Theory]
    [InlineData(5, "0 2 4 1 3")]
    [InlineData(8, "0 3 7 1 4 2 5 6")]
    [InlineData(2, "0 1")]
    [InlineData(1, "0")]
    public void Skip_takes_the_start_the_middle_and_the_far_end_first(int count, string places)
    {
        var runs = WeldPlan.Along(Path.Line(new(0, 0), new(10 * count, 0)), 10, WeldOrder.Skip).Runs;
        Assert.Equal(places, string.Join(' ', runs.Select(r => Math.Round(r.Along.End.X / 10))));
    }

    [Fact]
    public void Round_a_patch_the_first_four_of_a_skipped_seam_lie_opposite_and_square_to_each_other()
    {
        var runs = WeldPlan.Round(Outline.Circle(Point.Origin, 50), 40, WeldOrder.Skip).Runs;
        Assert.Equal(8, runs.Length); // 314 mm in runs of 40 at most
        var middles = runs.Select(r => r.Along.PointAlong(r.Along.Length / 2) - Point.Origin).ToList();
        Approximately.Equal(-1, middles[0].Unit.Dot(middles[1].Unit), within: 1e-9);
        Approximately.Equal(0, middles[0].Unit.Dot(middles[2].Unit), within: 1e-9);
        Approximately.Equal(-1, middles[2].Unit.Dot(middles[3].Unit), within: 1e-9);
    }

    // Clockwise from the top is the way round; so each run turns anticlockwise, a 10 o'clock end to a 12 o'clock one reversed.
    [Fact]
    public void Round_a_patch_each_run_is_laid_anticlockwise()
    {
        var runs = WeldPlan.Round(Outline.RoundedRectangle(new(new(-60, -40), new(60, 40)), 15), 30, WeldOrder.BackStep).Runs;
        Approximately.Equal(new Point(0, 40), runs[0].Along.End, within: 1e-9);
        Assert.All(runs, r => Assert.True((r.Along.Start - Point.Origin).Cross(r.Along.End - Point.Origin) > 0));
    }

    public static TheoryData<int> Seeds => [.. Enumerable.Range(1, 40)];

    // Law: whatever the seam, the longest run, the order and the tacks, runs cover it once, and each runs against it.
    [Theory, MemberData(nameof(Seeds))]
    public void Runs_cover_a_seam_once_and_none_is_longer_than_the_longest(int seed)
    {
        var random = new Random(seed);
        var (longest, tacks) = (5 + 60 * random.NextDouble(), random.Next(2) * (10 + 50 * random.NextDouble()));
        var order = random.Next(2) == 0 ? WeldOrder.BackStep : WeldOrder.Skip;
        var outline = Outline.RoundedRectangle(new(new(0, 0), new(40 + 100 * random.NextDouble(), 40 + 60 * random.NextDouble())), 1 + 18 * random.NextDouble());
        Covers(Bowed.Length, WeldPlan.Along(Bowed, longest, order, tacks), d => Bowed.PointAlong(d));
        var clockwise = outline.IsCounterClockwise ? outline.Reversed() : outline;
        var top = EvenSpacing.DistanceToTop(clockwise);
        Covers(outline.Length, WeldPlan.Round(outline, longest, order, tacks), d => clockwise.PointAlong(top + d));

        void Covers(double length, WeldSeam seam, Func<double, Point> at)
        {
            Assert.Equal(Enumerable.Range(1, seam.Runs.Length), seam.Runs.Select(r => r.Number));
            Assert.True(seam.LongestRun <= longest + 1e-6);
            Approximately.Equal(length, seam.Length, within: 1e-6);
            // From the start of the seam every run ends where the one before it along the seam begins: no gap and nothing twice.
            var (along, left) = (0.0, seam.Runs.ToList());
            while (left.Count > 0)
            {
                var next = left.Find(r => r.Along.End.DistanceTo(at(along)) < 1e-6);
                Assert.NotNull(next);
                left.Remove(next);
                Approximately.Equal(at(along + next.Along.Length / 3), next.Along.PointAlong(next.Along.Length * 2 / 3), within: 1e-6);
                along += next.Along.Length;
            }
        }
    }

    [Theory]
    [InlineData(30, 20)]
    [InlineData(30, 100)]
    [InlineData(45, 45)]
    public void With_tacks_every_run_begins_and_ends_at_a_tack_or_shares_a_gap_evenly(double apart, double longest)
    {
        var outline = Outline.Circle(Point.Origin, 60);
        var tacks = TackPlan.Quartered(outline, apart);
        var runs = WeldPlan.Round(outline, longest, WeldOrder.BackStep, apart).Runs;
        var ends = runs.Select(r => r.Along.End).ToList();
        // Either all runs end at tacks, or there is a run's end at all tacks.
        Assert.True(
            ends.TrueForAll(e => tacks.Any(t => t.At.DistanceTo(e) < 1e-6)) || tacks.All(t => ends.Exists(e => e.DistanceTo(t.At) < 1e-6)));
    }

    [Fact]
    public void A_run_of_no_length_is_refused() =>
        Assert.Throws<ArgumentOutOfRangeException>(() => WeldPlan.Along(Bowed, 0, WeldOrder.BackStep));
}
