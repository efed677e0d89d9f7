using System.Collections.Immutable;
using NetTopologySuite.Operation.Overlay;
using TemplateForge.Geometry;

namespace TemplateForge.Testing;

/// <summary>All laws, each over one trial. Cheap ones are tried on every case, dear ones on a share.</summary>
public static class Laws
{
    /// <summary>Loose contours become what they enclose, under either rule.</summary>
    public static NamedLaw Repair { get; } = new(1, trial =>
    {
        foreach (var shape in trial.Shapes)
        {
            foreach (var rule in (ReadOnlySpan<FillRule>)[FillRule.NonZero, FillRule.EvenOdd])
            {
                var region = Region.FromContours(shape, rule);
                Law.IsWellMade(region);
                Law.IsEnclosed(region, shape, rule);
            }
        }
    });

    /// <summary>Every point of an offset lies at its distance from the source, none nearer, and nothing is missing.</summary>
    public static NamedLaw Distance { get; } = new(1, trial =>
    {
        var offset = trial.Regions[0].Offset(trial.First);
        Law.IsWellMade(offset);
        Law.IsOffset(offset, trial.Regions[0], trial.First);
    });

    /// <summary>By a and then by b the same way is by a + b; and area grows with the distance.</summary>
    public static NamedLaw Sum { get; } = new(2, trial =>
    {
        var source = trial.Regions[0];
        var first = source.Offset(trial.First);
        var (twice, once) = (first.Offset(trial.Second), source.Offset(trial.First + trial.Second));
        Law.IsOffset(twice, first, trial.Second);
        // Two operations, each right to the tolerance.
        Law.HaveSameBoundary(once, twice, 2 * Tolerance.Length, $"By {trial.First} and then by {trial.Second} it", source);
        ReadOnlySpan<Region> growing = !double.IsNegative(trial.First)
            ? [source, source.Offset(trial.First / 2), first, once]
            : [once, first, source.Offset(trial.First / 2), source];
        for (var i = 1; i < growing.Length; i++)
        {
            Law.Holds(
                growing[i].Area >= growing[i - 1].Area - Tolerance.Area(growing[i - 1].Length),
                $"farther out the area is {growing[i].Area}, farther in {growing[i - 1].Area}");
        }
    });

    /// <summary>Of two regions, union, intersection, difference and exclusive or hold the points and areas that they say.</summary>
    public static NamedLaw Combination { get; } = new(1, trial =>
    {
        if (trial.Regions is [var a, var b, ..]) Law.AreCombined(a, b);
    });

    /// <summary>The union of many holds what lies in any, whatever their order, all at once or one by one.</summary>
    public static NamedLaw Many { get; } = new(1, trial =>
    {
        if (trial.Regions.Length < 3) return;
        var union = Geometry.Combination.Union(trial.Regions);
        Law.IsUnion(union, trial.Regions);
        Law.HaveSameBoundary(union, Geometry.Combination.Union(trial.Regions.Reverse()), Tolerance.Length, "In another order the union");
        var oneByOne = trial.Regions.AsEnumerable().Aggregate((a, b) => a.Union(b));
        Law.HaveSameBoundary(union, oneByOne, 2 * Tolerance.Length, "One by one the union");
    });

    /// <summary>Moved, turned, mirrored, 100 m away, begun elsewhere, run the other way, in another order: repair gives the same.</summary>
    public static NamedLaw SymmetryOfRepair { get; } = new(20, trial =>
    {
        foreach (var shape in trial.Shapes)
        {
            var expected = Region.FromContours(shape);
            foreach (var (name, by) in Symmetries.Placements)
            {
                Same(expected.Placed(by), [.. shape.Select(c => c.Placed(by))], name);
                Same(expected.Placed(by), [.. shape.Reverse().Select(c => c.Placed(by).Reversed())], name + ", reversed");
            }
            for (var i = 1; i < shape.Max(c => c.Segments.Length); i++)
                Same(expected, [.. shape.Select(c => Symmetries.BegunAt(i % c.Segments.Length, c))], $"begun at {i}");
        }

        static void Same(Region expected, ImmutableArray<Contour> image, string name) =>
            Law.HaveSameBoundary(expected, Region.FromContours(image), Tolerance.Length, $"{name}, the region");
    });

    /// <summary>The same of offsets.</summary>
    public static NamedLaw SymmetryOfOffsets { get; } = new(20, trial =>
    {
        var source = trial.Regions[0];
        var expected = source.Offset(trial.First);
        foreach (var image in Symmetries.Of(source))
        {
            Law.HaveSameBoundary(
                expected.Placed(image.By), image.Shape.Offset(trial.First), Tolerance.Length, $"{image.Name}, the offset", image.Shape);
        }
    });

    /// <summary>The same of union, intersection, difference and exclusive or.</summary>
    public static NamedLaw SymmetryOfCombination { get; } = new(20, trial =>
    {
        if (trial.Regions is not [var a, var b, ..]) return;
        foreach (var (name, by) in Symmetries.Placements)
        {
            var (placedA, placedB) = (a.Placed(by), b.Placed(by));
            Same(a.Union(b).Placed(by), placedB.Union(placedA), $"{name}, the union");
            Same(a.Intersect(b).Placed(by), placedB.Intersect(placedA), $"{name}, the intersection");
            Same(a.Subtract(b).Placed(by), placedA.Subtract(placedB), $"{name}, the difference");
            Same(a.ExclusiveOr(b).Placed(by), placedB.ExclusiveOr(placedA), $"{name}, the exclusive or");
        }

        static void Same(Region expected, Region actual, string what) => Law.HaveSameBoundary(expected, actual, Tolerance.Length, what);
    });

    /// <summary>Scaling by 1e-3 to 1e4 commutes, as far as no segment becomes shorter than ten tolerances and nothing reaches past 100 m.</summary>
    /// <remarks>The tolerance does not scale: what was right to 1e-6 mm and is then scaled by s is right to s 1e-6, and once more 1e-6.</remarks>
    public static NamedLaw Scaling { get; } = new(10, trial =>
    {
        var source = trial.Regions[0];
        if (source.IsEmpty) return;
        var offset = source.Offset(trial.First);
        var shortest = source.Contours.Concat(offset.Contours).Min(c => c.Segments.Min(s => s.Start.DistanceTo(s.End)));
        var farthest = Reach(source.Bounds) + Math.Abs(trial.First);
        foreach (var wanted in (ReadOnlySpan<double>)[1e-3, 0.037, 25.4, 1e4])
        {
            var scale = Math.Min(Math.Max(wanted, 10 * Tolerance.Merge / shortest), 100_000 / farthest);
            var by = Placement.Scaled(scale, Point.Origin);
            var scaled = source.Placed(by);
            Law.HaveSameBoundary(
                offset.Placed(by), scaled.Offset(trial.First * scale), Tolerance.Length * (1 + scale), $"scaled by {scale}, the offset", scaled);
        }

        static double Reach(Box bounds) =>
            Math.Max(Math.Max(-bounds.Min.X, -bounds.Min.Y), Math.Max(bounds.Max.X, bounds.Max.Y));
    });

    /// <summary>NetTopologySuite, arcs flattened to 0.5 µm, finds the same areas, where the flattened input is valid.</summary>
    public static NamedLaw OtherEngine { get; } = new(100, trial =>
    {
        if (!trial.Regions.All(r => Referee.Takes(r) && Referee.Takes(r, Math.Abs(trial.First)))) return;
        var source = trial.Regions[0];
        var offset = source.Offset(trial.First);
        Law.AreEqual(
            Referee.OffsetArea(source, trial.First), offset.Area, Referee.Flattening * 2 * (source.Length + offset.Length), "The area of the offset");
        if (trial.Regions is not [var a, var b, ..]) return;
        var tolerance = Referee.Flattening * (a.Length + b.Length);
        Law.AreEqual(Referee.CombinedArea(a, b, SpatialFunction.Union), a.Union(b).Area, tolerance, "The union");
        Law.AreEqual(Referee.CombinedArea(a, b, SpatialFunction.Intersection), a.Intersect(b).Area, tolerance, "The intersection");
        Law.AreEqual(Referee.CombinedArea(a, b, SpatialFunction.Difference), a.Subtract(b).Area, tolerance, "The difference");
        Law.AreEqual(Referee.CombinedArea(a, b, SpatialFunction.SymDifference), a.ExclusiveOr(b).Area, tolerance, "The exclusive or");
    });

    public static ImmutableArray<NamedLaw> All { get; } =
        [Repair, Distance, Sum, Combination, Many, SymmetryOfRepair, SymmetryOfOffsets, SymmetryOfCombination, Scaling, OtherEngine];
}
