using CsCheck;
using NetTopologySuite.Operation.Overlay;
using TemplateForge.Testing;

namespace TemplateForge.Geometry.Tests;

public class GridCombinationTests
{
    private static readonly Gen<(Region, Region)> Pairs = Gen.Select(Testing.Shapes.GridRegion, Testing.Shapes.GridRegion);

    // On a grid two shapes share edges and arcs, run along each other, and touch in corners and tangents.
    [Fact]
    public void Five_thousand_pairs_of_grid_shapes_combine_all_four_ways_as_their_points_and_areas_say() => Pairs.Check(5_000, Law.AreCombined);

    // Referee: NetTopologySuite 2.6, arcs flattened to 0.5 µm.
    [Fact]
    public void An_independent_polygon_engine_finds_the_same_areas() => Pairs.Check(400, (a, b) =>
    {
        var tolerance = Referee.Flattening * (a.Length + b.Length);
        Law.AreEqual(Referee.CombinedArea(a, b, SpatialFunction.Union), a.Union(b).Area, tolerance, "The union");
        Law.AreEqual(Referee.CombinedArea(a, b, SpatialFunction.Intersection), a.Intersect(b).Area, tolerance, "The intersection");
        Law.AreEqual(Referee.CombinedArea(a, b, SpatialFunction.Difference), a.Subtract(b).Area, tolerance, "The difference");
        Law.AreEqual(Referee.CombinedArea(a, b, SpatialFunction.SymDifference), a.ExclusiveOr(b).Area, tolerance, "The exclusive or");
    });

    [Fact]
    public void Stars_with_needles_combine_as_their_points_and_areas_say() =>
        Gen.Select(Testing.Shapes.Star, Testing.Shapes.Star).Check(300, (a, b) => Law.AreCombined(Region.Of(a), Region.Of(b)));

    // Edges that almost coincide: from 3e-10 mm apart, which is as good as together, to 3e-6 mm, which is apart.
    [Fact]
    public void Shapes_that_miss_each_other_by_about_the_tolerance_combine_as_if_they_met() =>
        Gen.Select(Testing.Shapes.ShakenGridRegion, Testing.Shapes.GridRegion).Check(500, (shaken, b) =>
        {
            var (a, almostA, amount) = shaken;
            var tolerance = Math.Max(amount, Tolerance.Length) * 2 * (a.Length + b.Length);
            Law.AreEqual(a.Union(b).Area, almostA.Union(b).Area, tolerance, "The union");
            Law.AreEqual(a.Subtract(b).Area, almostA.Subtract(b).Area, tolerance, "The difference");
            Law.AreEqual(0, almostA.Subtract(a).Area, tolerance, "What it loses");
            Law.AreEqual(a.Area, almostA.Union(a).Area, tolerance, "Both together");
            foreach (var answer in (ReadOnlySpan<Region>)[almostA.Union(b), almostA.Subtract(b), almostA.Subtract(a), almostA.Union(a)])
                Law.IsWellMade(answer);
            Law.IsOffset(almostA.Offset(-2.5), almostA, -2.5);
        });
}
