namespace TemplateForge.Geometry;

/// <summary>Regions joined, cut and compared. A region counts 0 or 1 at every point, so the sum of the counts decides.</summary>
public static class Combination
{
    /// <summary>What lies in either.</summary>
    public static Region Union(this Region a, Region b) => Union([a, b]);

    /// <summary>What lies in any of them; of none, nothing.</summary>
    public static Region Union(IEnumerable<Region> regions)
    {
        using var arrangement = Arrangement.Rent();
        foreach (var region in regions) arrangement.Add(region, count: 1);
        return arrangement.Where(count => count >= 1);
    }

    /// <summary>What lies in the first and not in the second.</summary>
    public static Region Subtract(this Region a, Region b) => a.Subtract([b]);

    /// <summary>What lies in the first and in none of the rest.</summary>
    public static Region Subtract(this Region first, IEnumerable<Region> rest)
    {
        using var arrangement = Arrangement.Rent();
        arrangement.Add(first, count: 1);
        foreach (var region in rest) arrangement.Add(region, count: -1);
        return arrangement.Where(count => count == 1);
    }

    /// <summary>What lies in both.</summary>
    public static Region Intersect(this Region a, Region b) => Intersection([a, b]);

    /// <summary>What lies in all of them.</summary>
    /// <exception cref="ArgumentException">There is none: in all of no regions lies the whole plane, which is not a region.</exception>
    public static Region Intersection(IEnumerable<Region> regions)
    {
        using var arrangement = Arrangement.Rent();
        var all = 0;
        foreach (var region in regions)
        {
            arrangement.Add(region, count: 1);
            all++;
        }
        if (all == 0) throw new ArgumentException("An intersection needs a region at least.", nameof(regions));
        return arrangement.Where(count => count == all);
    }

    /// <summary>What lies in one but not in both.</summary>
    public static Region ExclusiveOr(this Region a, Region b) => ExclusiveOr([a, b]);

    /// <summary>What lies in an odd number of them: in one or three, not in two; of none, nothing.</summary>
    public static Region ExclusiveOr(IEnumerable<Region> regions)
    {
        using var arrangement = Arrangement.Rent();
        foreach (var region in regions) arrangement.Add(region, count: 1);
        return arrangement.Where(count => count % 2 != 0);
    }
}
