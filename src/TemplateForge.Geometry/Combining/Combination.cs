namespace TemplateForge.Geometry;

/// <summary>Regions joined, cut and compared. A region counts 0 or 1 at every point, so the sum of the counts decides.</summary>
public static class Combination
{
    /// <summary>What lies in either.</summary>
    public static Region Union(this Region a, Region b) => Union([a, b]);

    /// <summary>What lies in any of them.</summary>
    public static Region Union(IEnumerable<Region> regions)
    {
        using var arrangement = Arrangement.Rent();
        foreach (var region in regions) arrangement.Add(region, count: 1);
        return arrangement.Where(count => count >= 1);
    }

    /// <summary>What lies in the first and not in the second.</summary>
    public static Region Subtract(this Region a, Region b) => Of(a, b, countOfSecond: -1, count => count == 1);

    /// <summary>What lies in both.</summary>
    public static Region Intersect(this Region a, Region b) => Of(a, b, countOfSecond: 1, count => count == 2);

    /// <summary>What lies in one but not in both.</summary>
    public static Region ExclusiveOr(this Region a, Region b) => Of(a, b, countOfSecond: 1, count => count == 1);

    private static Region Of(Region a, Region b, int countOfSecond, Predicate<int> inside)
    {
        using var arrangement = Arrangement.Rent();
        arrangement.Add(a, count: 1);
        arrangement.Add(b, countOfSecond);
        return arrangement.Where(inside);
    }
}
