using TemplateForge.Geometry;

namespace TemplateForge.Fabrication.Tests;

// Quartering a patch and halving what lies between, each tack far from those before: common practice, no source.
public class TackPlanTests
{
    [Fact]
    public void The_first_four_tacks_stand_at_12_6_3_and_9_o_clock()
    {
        var tacks = TackPlan.Quartered(Outline.Circle(Point.Origin, 10), pitch: 30);
        Assert.Equal(["12", "6", "3", "9"], tacks.Select(t => OClock(t.At)));
    }

    // Nine places: ends, middle, quarters, eighths.
    [Fact]
    public void A_strip_is_tacked_at_its_ends_then_its_middle_then_between()
    {
        var tacks = TackPlan.OfStrip([.. Enumerable.Range(0, 9).Select(i => new Point(i, 0))]);
        Assert.Equal([0, 8, 4], tacks[..3].Select(t => t.At.X));
        Assert.Equal([2, 6], tacks[3..5].Select(t => t.At.X).Order());
        Assert.Equal(Enumerable.Range(1, 9), tacks.Select(t => t.Number));
        Assert.Equal(9, tacks.Select(t => t.At).Distinct().Count());
        // No two of the last follow each other closely.
        Assert.All(tacks[5..].Zip(tacks[6..]), pair => Assert.True(Math.Abs(pair.First.At.X - pair.Second.At.X) > 1));
    }

    [Theory]
    [InlineData(0)]
    [InlineData(1)]
    [InlineData(2)]
    [InlineData(6)]
    public void A_strip_of_any_number_of_places_is_tacked_at_each_once(int count) =>
        Assert.Equal(count, TackPlan.OfStrip([.. Enumerable.Range(0, count).Select(i => new Point(i, 0))]).Select(t => t.At).Distinct().Count());

    [Fact]
    public void What_lies_between_is_halved_next()
    {
        var tacks = TackPlan.Quartered(Outline.Circle(Point.Origin, 40), pitch: 32); // 251 mm round, so eight of them
        Assert.Equal(8, tacks.Length);
        var firstFour = tacks[..4].Select(t => t.At).ToList();
        Assert.All(tacks[4..], t => Assert.Equal(2 * 40 * Math.Sin(Math.PI / 8), firstFour.Min(f => f.DistanceTo(t.At)), 1e-9));
    }

    [Theory]
    [InlineData(15, 30)]
    [InlineData(75, 25)]
    [InlineData(60, 30)]
    public void Neighbours_are_never_further_apart_than_the_pitch(double radius, double pitch)
    {
        var tacks = TackPlan.Quartered(Outline.Circle(Point.Origin, radius), pitch);
        Assert.True(2 * Math.PI * radius / tacks.Length <= pitch + 1e-9);
        Assert.True(2 * Math.PI * radius / (tacks.Length - 4) > pitch || tacks.Length == 4);
    }

    [Fact]
    public void Of_any_number_of_places_no_tack_comes_next_to_the_one_before_it_while_there_is_room()
    {
        for (var count = 6; count <= 40; count++)
        {
            var ring = EvenSpacing.FromTheTop(Outline.Circle(Point.Origin, 100), count);
            var tacks = TackPlan.Numbered(ring);
            Assert.Equal(count, tacks.Select(t => t.At).Distinct().Count());
            var half = tacks[..(count / 2)];
            var neighbours = 2 * 100 * Math.Sin(Math.PI / count) + 1e-9;
            for (var i = 1; i < half.Length; i++) Assert.True(half[i].At.DistanceTo(half[i - 1].At) > neighbours);
        }
    }

    [Fact]
    public void Places_run_clockwise_from_straight_above_the_middle_of_a_rectangle_too()
    {
        var places = EvenSpacing.FromTheTop(Outline.Rectangle(new(new(0, 0), new(60, 40))), 4);
        Assert.Equal(new Point(30, 40), places[0]);
        Assert.Equal(new Point(60, 20), places[1]);
        Assert.Equal(new Point(30, 0), places[2]);
        Assert.Equal(new Point(0, 20), places[3]);
    }

    [Theory]
    [InlineData(10, 30, 4)]    // 63 mm would take two; four is the least
    [InlineData(20, 30, 4)]    // 126 / 30 = 4.2
    [InlineData(50, 30, 10)]   // 314 / 30 = 10.5
    public void The_number_of_plug_holes_comes_nearest_to_their_pitch(double radius, double pitch, int count) =>
        Assert.Equal(count, EvenSpacing.CountNearest(Outline.Circle(Point.Origin, radius), pitch));

    // From the middle, so that a sheet that swells is driven outwards: common practice, no source.
    [Fact]
    public void Welds_over_a_region_go_from_its_middle_outwards_and_across_and_across()
    {
        var places = HolePattern.Over(Region.Of(Outline.Rectangle(new(new(0, 0), new(200, 120)))), 30, 15, staggered: true);
        var tacks = TackPlan.FromTheMiddle(places);
        Assert.Equal(places.Order(Comparer<Point>.Create((a, b) => (a.X, a.Y).CompareTo((b.X, b.Y)))), tacks.Select(t => t.At).Order(Comparer<Point>.Create((a, b) => (a.X, a.Y).CompareTo((b.X, b.Y)))));
        Assert.True(tacks[0].At.DistanceTo(new(100, 60)) <= places.Min(p => p.DistanceTo(new(100, 60))) + 1e-6);
        // No weld stands further in, by more than half the least spacing, than one that was laid before it.
        var spacing = places.Min(p => places.Where(q => q != p).Min(q => q.DistanceTo(p)));
        var middle = new Point(places.Average(p => p.X), places.Average(p => p.Y));
        var outwards = tacks.Select(t => t.At.DistanceTo(middle)).ToList();
        Assert.All(Enumerable.Range(0, outwards.Count), i => Assert.True(outwards[..(i + 1)].Max() <= outwards[i] + spacing / 2 + 1e-6));
        // Once there is a ring, the next weld is laid across the middle from the last, mostly.
        Assert.True(tacks.Skip(2).Zip(tacks.Skip(3)).Count(pair => pair.First.At.DistanceTo(pair.Second.At) > spacing + 1) > 0.7 * tacks.Length);
    }

    private static string OClock(Point at)
    {
        var hour = (int)Math.Round(Math.Atan2(at.X, at.Y) / (Math.PI / 6));
        return ((hour + 11) % 12 + 1).ToString(System.Globalization.CultureInfo.InvariantCulture);
    }
}
