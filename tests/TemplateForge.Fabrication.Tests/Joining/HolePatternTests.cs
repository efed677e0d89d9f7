using TemplateForge.Geometry;
using TemplateForge.Testing;

namespace TemplateForge.Fabrication.Tests;

public class HolePatternTests
{
    private const double Inch = 25.4;

    private static Region Plate(double width, double height) => Region.Of(Outline.Rectangle(new(new(0, 0), new(width, height))));

    // Closed forms: over a rectangle W by H less the edge distance e, square (W/p + 1)(H/p + 1) rounded down each; staggered every second
    // row has one less and rows stand √3/2 of the pitch apart.
    [Theory]
    [InlineData(120, 80, 20, 10, false, 6 * 4)]   // 100 by 60
    [InlineData(120, 79.9, 20, 10, false, 6 * 3)]
    [InlineData(120, 80, 20, 10, true, 6 + 5 + 6 + 5)] // 60 / 17.32 = 3.46: four rows
    [InlineData(120, 90, 20, 10, true, 6 + 5 + 6 + 5 + 6)] // 70 / 17.32 = 4.04
    [InlineData(30, 30, 40, 15, false, 1)]
    [InlineData(30, 30, 40, 16, false, 0)]
    [InlineData(20, 100, 20, 10, true, 5)]        // one column: nothing to stand between
    public void A_rectangle_has_as_many_as_its_closed_form(double width, double height, double pitch, double edge, bool staggered, int count) =>
        Assert.Equal(count, HolePattern.Over(Plate(width, height), pitch, edge, staggered).Length);

    [Theory, InlineData(false), InlineData(true)]
    public void The_outermost_rows_stand_at_the_edge_distance(bool staggered)
    {
        var box = Box.Around(HolePattern.Over(Plate(130, 85), 20, 12, staggered));
        Approximately.Equal(new Box(new(12, 12), new(118, 73)), box, within: 1e-9);
    }

    // AC 43.13-1B, para 4-58g (read): 0.032 in sheet 10 in wide, rivets of 1/8 in, 3.7 an inch, which is 37. A double row at the least
    // spacing of 4 D holds 40, so two rows of 19 are taken: 38 rivets, still no nearer than 4 D. Edges 2 D.
    [Fact]
    public void The_worked_splice_of_AC_43_13_1B_finds_room_for_its_rivets()
    {
        const double diameter = Inch / 8;
        Assert.Equal(37, (int)Math.Ceiling(3.7 * 10));
        var strip = Plate(10 * Inch, 4 * diameter + 4 * diameter); // two rows 4 D apart
        Assert.Equal(40, HolePattern.Over(strip, 4 * diameter, 2 * diameter, staggered: false).Length);
        var pitch = (10 * Inch - 4 * diameter) / 18;
        Assert.True(pitch >= 4 * diameter);
        Assert.Equal(2 * 19, HolePattern.Over(Plate(10 * Inch, 4 * diameter + pitch), pitch, 2 * diameter, staggered: false).Length);
    }

    public static TheoryData<int> Seeds => [.. Enumerable.Range(1, 60)];

    // Laws, over random regions with a hole: every centre lies inside by the edge distance, no two are nearer than the pitch. The distance
    // to the edge is looked for among chords of the outline, which lie within 0.0001 mm of it.
    [Theory, MemberData(nameof(Seeds))]
    public void Every_hole_keeps_its_distance_from_the_edge_and_from_every_other(int seed)
    {
        var random = new Random(seed);
        var region = RandomPlate(random);
        var (pitch, edge) = (15 + 30 * random.NextDouble(), 6 + 14 * random.NextDouble());
        var places = HolePattern.Over(region, pitch, edge, staggered: random.Next(2) == 0);
        var chords = region.Contours.SelectMany(c => Chords([.. c.Flattened(1e-4)])).ToList();
        foreach (var place in places)
        {
            Assert.True(region.Contains(place));
            Assert.True(chords.Min(c => Distance(c.From, c.To, place)) >= edge - 2e-4);
        }
        for (var i = 0; i < places.Length; i++)
        {
            for (var j = i + 1; j < places.Length; j++) Assert.True(places[i].DistanceTo(places[j]) >= pitch - 1e-9);
        }
    }

    [Fact]
    public void The_random_plates_have_holes_in_them() =>
        Assert.True(Enumerable.Range(1, 60).Count(seed => !HolePattern.Over(RandomPlate(new(seed)), 30, 12, staggered: true).IsEmpty) > 50);

    // Closed form: 100 mm less two margins of 10 has 80 / 25 = 3 gaps of 26.67.
    [Fact]
    public void Along_a_line_they_stand_evenly_between_the_margins()
    {
        var places = HolePattern.Along(Path.Line(new(0, 5), new(100, 5)), pitch: 25, margin: 10);
        Approximately.Equal([new(10, 5), new(10 + 80 / 3.0, 5), new(10 + 160 / 3.0, 5), new(90, 5)], places, within: 1e-9);
    }

    [Fact]
    public void Where_one_alone_has_room_it_stands_in_the_middle() =>
        Approximately.Equal([new(20, 0)], HolePattern.Along(Path.Line(new(0, 0), new(40, 0)), pitch: 30, margin: 8), within: 1e-9);

    private static Region RandomPlate(Random random)
    {
        var (width, height) = (80 + 160 * random.NextDouble(), 60 + 120 * random.NextDouble());
        var plate = Region.Of(Outline.RoundedRectangle(new(new(0, 0), new(width, height)), 5 + 20 * random.NextDouble()));
        var bite = Region.Of(Outline.Circle(new(width * random.NextDouble(), height), 10 + 20 * random.NextDouble()));
        var hole = Region.Of(Outline.Circle(new(width * (0.3 + 0.4 * random.NextDouble()), height * 0.45), 5 + 12 * random.NextDouble()));
        return plate.Subtract([bite, hole]);
    }

    private static IEnumerable<(Point From, Point To)> Chords(Point[] points) => points.Select((p, i) => (p, points[(i + 1) % points.Length]));

    private static double Distance(Point from, Point to, Point place)
    {
        var way = to - from;
        var share = Math.Clamp((place - from).Dot(way) / Math.Max(way.LengthSquared, 1e-300), 0, 1);
        return (from + way * share).DistanceTo(place);
    }
}
