namespace TemplateForge.Geometry.Tests;

/// <summary>What must hold of every answer, whatever was asked.</summary>
internal static class Law
{
    /// <summary>Contours turned the right way, every segment long enough, and unchanged when put in again.</summary>
    public static void IsWellMade(Region region)
    {
        foreach (var contour in region.Contours)
        {
            Holds(contour.Area > 0, "a contour has no area");
            foreach (var s in contour.Segments)
                Holds(s.Start.DistanceTo(s.End) >= Tolerance.Merge && Math.Abs(s.Bulge) <= 1, $"{s} is no segment");
        }
        var again = Region.FromContours(region.Contours);
        Holds(
            again.Contours.Length == region.Contours.Length
            && again.Contours.Sum(c => c.Segments.Length) == region.Contours.Sum(c => c.Segments.Length),
            $"put in again it has {Counts(again)} segments, not {Counts(region)}");
        Holds(
            Math.Abs(again.Area - region.Area) <= Tolerance.Area(region.Length),
            $"put in again its area is {again.Area}, not {region.Area}");
    }

    /// <summary>An offset is where the distance says, tried on its own boundary and beside where the source asks for one.</summary>
    public static void IsOffset(Region offset, Region source, double distance)
    {
        var (answer, asked) = (new ByDefinition(offset), new ByDefinition(source));
        foreach (var (point, _) in BoundarySamples(offset, perSegment: 2))
        {
            var signed = asked.SignedDistance(point);
            Holds(Math.Abs(signed - distance) <= Tolerance.Length, $"{point} of the boundary lies at {signed}, not at {distance}");
        }
        foreach (var (point, along) in BoundarySamples(source, perSegment: 2))
        {
            foreach (var aside in (ReadOnlySpan<double>)[distance - 0.01, distance + 0.01, 0.5 * distance])
            {
                var beside = point - along.Left * aside;
                var signed = asked.SignedDistance(beside);
                if (Math.Abs(signed - distance) < 1e-4) continue;
                Holds(answer.Encloses(beside) == signed < distance, $"{beside} lies at {signed}");
            }
        }
    }

    /// <summary>Union, intersection, difference and exclusive or are right beside the boundaries of both, and their areas add up.</summary>
    public static void AreCombined(Region a, Region b)
    {
        var (union, intersection) = (a.Union(b), a.Intersect(b));
        var (difference, either) = (a.Subtract(b), a.ExclusiveOr(b));
        var (first, second) = (new ByDefinition(a), new ByDefinition(b));
        var (inUnion, inIntersection) = (new ByDefinition(union), new ByDefinition(intersection));
        var (inDifference, inEither) = (new ByDefinition(difference), new ByDefinition(either));
        foreach (var (point, along) in BoundarySamples(a, perSegment: 1).Concat(BoundarySamples(b, perSegment: 1)))
        {
            foreach (var aside in (ReadOnlySpan<double>)[-0.01, 0.01])
            {
                var beside = point - along.Left * aside;
                if (first.DistanceToBoundary(beside) < 1e-4 || second.DistanceToBoundary(beside) < 1e-4) continue;
                var (inA, inB) = (first.Encloses(beside), second.Encloses(beside));
                Holds(inUnion.Encloses(beside) == (inA || inB), $"{beside} is on the wrong side of the union");
                Holds(inIntersection.Encloses(beside) == (inA && inB), $"{beside} is on the wrong side of the intersection");
                Holds(inDifference.Encloses(beside) == (inA && !inB), $"{beside} is on the wrong side of the difference");
                Holds(inEither.Encloses(beside) == (inA != inB), $"{beside} is on the wrong side of the exclusive or");
            }
        }
        var tolerance = Tolerance.Area(a.Length + b.Length);
        AreEqual(a.Area + b.Area, union.Area + intersection.Area, tolerance, "|A ∪ B| + |A ∩ B|");
        AreEqual(a.Area, difference.Area + intersection.Area, tolerance, "|A − B| + |A ∩ B|");
        AreEqual(union.Area, either.Area + intersection.Area, tolerance, "|A xor B| + |A ∩ B|");
        foreach (var answer in (ReadOnlySpan<Region>)[union, intersection, difference, either]) IsWellMade(answer);
    }

    /// <summary>Points spread along the boundary, with the direction there.</summary>
    public static IEnumerable<(Point Point, Vector Along)> BoundarySamples(Region region, int perSegment) =>
        from contour in region.Contours
        from segment in contour.Segments
        from i in Enumerable.Range(0, perSegment)
        let share = (i + 0.5) / perSegment
        select (segment.At(share), segment.DirectionAt(share));

    public static void AreEqual(double expected, double actual, double within, string what) =>
        Holds(Math.Abs(actual - expected) <= within, $"{what} is {actual}, not {expected}");

    public static void Holds(bool condition, string otherwise)
    {
        if (!condition) throw new InvalidOperationException(otherwise);
    }

    private static string Counts(Region region) => string.Join(" + ", region.Contours.Select(c => c.Segments.Length));
}
