using CsCheck;
using NetTopologySuite.Operation.Overlay;
using TemplateForge.Testing;

namespace TemplateForge.Geometry.Tests;

public class GridCombinationTests
{
    private static readonly Gen<(Region, Region)> Pairs = Gen.Select(Testing.Shapes.GridRegion, Testing.Shapes.GridRegion);

    // On a grid two shapes share edges and arcs, run along each other, and touch in corners and tangents.
    [Fact]
    public void Ten_thousand_pairs_of_grid_shapes_combine_as_their_points_and_areas_say() => Pairs.Check(10_000, Law.AreCombined);

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
}
