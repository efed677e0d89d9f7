using CsCheck;
using TemplateForge.Testing;

namespace TemplateForge.Geometry.Tests;

public class ManyRegionsTests
{
    private static readonly Gen<(Region[], int)> Handfuls =
        Gen.Select(Testing.Shapes.GridRegion.Array[1, 6], Gen.Int[0, int.MaxValue]);

    // Definition: in how many of them a point lies, counted one by one. Tried on either side of all their boundaries.
    [Fact]
    public void A_handful_of_grid_shapes_combines_as_the_counts_of_its_points_say() => Handfuls.Check(40, (regions, _) =>
    {
        ByDefinition[] asked = [.. regions.Select(r => new ByDefinition(r))];
        var (union, intersection) = (new ByDefinition(Combination.Union(regions)), new ByDefinition(Combination.Intersection(regions)));
        var odd = new ByDefinition(Combination.ExclusiveOr(regions));
        var rest = new ByDefinition(regions[0].Subtract(regions[1..]));
        foreach (var (point, along) in regions.SelectMany(r => Law.BoundarySamples(r, perSegment: 1)))
        {
            foreach (var aside in (ReadOnlySpan<double>)[-0.01, 0.01])
            {
                var beside = point - along.Left * aside;
                if (asked.Any(a => a.DistanceToBoundary(beside) < 1e-4)) continue;
                var count = asked.Count(a => a.Encloses(beside));
                Law.Holds(union.Encloses(beside) == count >= 1, $"{beside} is in {count}, and on the wrong side of the union");
                Law.Holds(intersection.Encloses(beside) == (count == regions.Length), $"{beside} is in {count} of all: intersection");
                Law.Holds(odd.Encloses(beside) == (count % 2 == 1), $"{beside} is in {count}, and on the wrong side of the exclusive or");
                var isInFirstOnly = count == 1 && asked[0].Encloses(beside);
                Law.Holds(rest.Encloses(beside) == isInFirstOnly, $"{beside} is on the wrong side of the difference");
            }
        }
    });

    // |A or B or C …| of all, two at a time, is what it is at once; and their order does not matter.
    [Fact]
    public void At_once_or_one_by_one_in_any_order_areas_are_the_same() => Handfuls.Check(40, (regions, seed) =>
    {
        Region[] shuffled = [.. regions];
        new Random(seed).Shuffle(shuffled);
        var tolerance = Tolerance.Area(regions.Sum(r => r.Length));
        Same(Combination.Union, (a, b) => a.Union(b), "The union");
        Same(Combination.Intersection, (a, b) => a.Intersect(b), "The intersection");
        Same(Combination.ExclusiveOr, (a, b) => a.ExclusiveOr(b), "The exclusive or");
        Same(all => regions[0].Subtract(all), (a, b) => a.Union(b), "The difference", regions[0].Subtract);

        void Same(
            Func<IEnumerable<Region>, Region> atOnce, Func<Region, Region, Region> two, string what, Func<Region, Region>? last = null)
        {
            var oneByOne = shuffled.Aggregate(two);
            var expected = last is null ? oneByOne : last(oneByOne);
            Law.AreEqual(expected.Area, atOnce(regions).Area, tolerance, what);
            Law.AreEqual(expected.Area, atOnce(shuffled).Area, tolerance, what + " in another order");
            Law.IsWellMade(atOnce(regions));
        }
    });

    // Three discs of radius 10 about the corners of an equilateral triangle of 10 mm: a Reuleaux triangle, ½ (π − √3) s², is in all.
    [Fact]
    public void Three_discs_have_a_Reuleaux_triangle_in_common()
    {
        Region[] discs = [Draw.Disc(new(0, 0), 10), Draw.Disc(new(10, 0), 10), Draw.Disc(new(5, 5 * Math.Sqrt(3)), 10)];
        var common = Combination.Intersection(discs);
        var reuleaux = (Math.PI - Math.Sqrt(3)) / 2 * 100;
        Approximately.Equal(reuleaux, common.Area, within: Tolerance.Area(common.Length));
        Assert.Equal(3, Assert.Single(common.Contours).Segments.Length);

        var lens = 2 * 100 * Math.Acos(0.5) - 5 * Math.Sqrt(300);
        var one = 100 * Math.PI - 2 * lens + reuleaux;
        Approximately.Equal(3 * one + reuleaux, Combination.ExclusiveOr(discs).Area, within: Tolerance.Area(200));
        Approximately.Equal(one, discs[0].Subtract(discs[1..]).Area, within: Tolerance.Area(200));
    }

    [Fact]
    public void Of_no_regions_there_is_nothing_joined_and_no_answer_to_what_they_share()
    {
        Assert.True(Combination.Union([]).IsEmpty);
        Assert.True(Combination.ExclusiveOr([]).IsEmpty);
        Assert.Throws<ArgumentException>(() => Combination.Intersection([]));
        Assert.Equal(1600, Draw.Rectangle(0, 0, 40, 40).Subtract([]).Area);
        Assert.True(Combination.Intersection([Draw.Rectangle(0, 0, 40, 40), Region.Empty]).IsEmpty);
    }
}
