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
        foreach (var (point, _) in offset.BoundarySamples(perSegment: 4))
        {
            var is_ = source.SignedDistance(point);
            Holds(Math.Abs(is_ - distance) <= Tolerance.Length, $"{point} of the boundary lies at {is_}, not at {distance}");
        }
        foreach (var (point, along) in source.BoundarySamples(perSegment: 3))
        {
            foreach (var aside in (ReadOnlySpan<double>)[distance - 0.01, distance + 0.01, 0.5 * distance, 1.5 * distance])
            {
                var beside = point - along.Left * aside;
                var signed = source.SignedDistance(beside);
                if (Math.Abs(signed - distance) < 1e-4) continue;
                Holds(offset.Encloses(beside) == signed < distance, $"{beside} lies at {signed}");
            }
        }
    }

    /// <summary>Two regions and an answer agree beside the boundaries of both.</summary>
    public static void IsCombination(Region answer, Region a, Region b, Func<bool, bool, bool> rule)
    {
        foreach (var (point, along) in a.BoundarySamples(perSegment: 3).Concat(b.BoundarySamples(perSegment: 3)))
        {
            foreach (var aside in (ReadOnlySpan<double>)[-0.01, 0.01])
            {
                var beside = point - along.Left * aside;
                if (a.DistanceToBoundary(beside) < 1e-4 || b.DistanceToBoundary(beside) < 1e-4) continue;
                Holds(answer.Encloses(beside) == rule(a.Encloses(beside), b.Encloses(beside)), $"{beside} is on the wrong side");
            }
        }
    }

    public static void Holds(bool condition, string otherwise)
    {
        if (!condition) throw new InvalidOperationException(otherwise);
    }

    private static string Counts(Region region) => string.Join(" + ", region.Contours.Select(c => c.Segments.Length));
}
