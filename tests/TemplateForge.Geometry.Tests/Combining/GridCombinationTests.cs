using CsCheck;
using TemplateForge.Testing;

namespace TemplateForge.Geometry.Tests;

public class GridCombinationTests
{
    [Fact]
    public void Ten_thousand_pairs_of_grid_shapes_combine_point_by_point() =>
        Gen.Select(Shapes.GridRegion, Shapes.GridRegion).Check(10_000, (a, b) =>
        {
            var (union, intersection) = (a.Union(b), a.Intersect(b));
            var (difference, either) = (a.Subtract(b), a.ExclusiveOr(b));
            Law.IsCombination(union, a, b, (inA, inB) => inA || inB);
            Law.IsCombination(intersection, a, b, (inA, inB) => inA && inB);
            Law.IsCombination(difference, a, b, (inA, inB) => inA && !inB);
            Law.IsCombination(either, a, b, (inA, inB) => inA != inB);
            Law.Holds(Math.Abs(union.Area + intersection.Area - a.Area - b.Area) <= Tolerance.Area(a.Length + b.Length), "A+B");
            foreach (var answer in (ReadOnlySpan<Region>)[union, intersection, difference, either]) Law.IsWellMade(answer);
        });
}
