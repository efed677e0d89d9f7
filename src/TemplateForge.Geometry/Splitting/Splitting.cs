using System.Collections.Immutable;

namespace TemplateForge.Geometry;

/// <summary>A region taken apart along a path.</summary>
public static class Splitting
{
    /// <summary>The connected parts that are left of a region when a path is cut through it.</summary>
    /// <param name="region">What is cut.</param>
    /// <param name="path">It may cross itself, run along the boundary, through holes and beyond.</param>
    /// <returns>
    /// Parts that no way within the region joins but across the path. A cut that ends within the region separates nothing by its
    /// last stretch. Together they are the region; with one part, the path separates nothing. Parts thinner than
    /// <see cref="Tolerance.Length"/> vanish.
    /// </returns>
    /// <remarks>
    /// Boundary and cuts make a net. Each cut that closes a loop in it divides what lies inside the loop from what lies outside; the
    /// parts are what no such loop divides any further.
    /// </remarks>
    public static ImmutableArray<Region> SplitBy(this Region region, Path path)
    {
        var parts = new List<Region>(region.Parts());
        foreach (var loop in new CutNet(region, path).Loops())
        {
            var inside = Region.FromContours([loop], FillRule.EvenOdd);
            if (inside.IsEmpty) continue;
            var bounds = inside.Bounds;
            parts = [.. parts.SelectMany(part => part.Bounds.Touches(bounds) ? Divided(part, inside) : [part])];
        }
        return [.. parts];
    }

    private static Region[] Divided(Region part, Region loop)
    {
        Region[] both = [.. part.Intersect(loop).Parts().Where(HasWidth), .. part.Subtract(loop).Parts().Where(HasWidth)];
        return both.Length > 1 ? both : [part];
    }

    private static bool HasWidth(Region part) => part.Area > Tolerance.Area(part.Length) / 2;
}
