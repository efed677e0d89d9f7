using System.Collections.Immutable;

namespace TemplateForge.Geometry;

/// <summary>The connected parts of a region.</summary>
public static class RegionParts
{
    /// <summary>Each outer contour with its holes. Parts that touch in points only are separate.</summary>
    public static ImmutableArray<Region> Parts(this Region region)
    {
        var outers = region.Contours.Where(c => c.IsCounterClockwise).OrderBy(c => c.Area).ToArray();
        if (outers.Length <= 1) return region.IsEmpty ? [] : [region];
        // A hole belongs to the smallest outer contour round it, which one of its points tells that does not lie on that one.
        var holes = region.Contours.Where(c => !c.IsCounterClockwise).ToLookup(hole => Array.FindIndex(outers, o => IsIn(hole, o)));
        return [.. outers.Select((outer, i) => new Region([outer, .. holes[i]]))];
    }

    private static bool IsIn(Contour hole, Contour outer)
    {
        var bounds = outer.Bounds.Grown(Tolerance.Length);
        if (!bounds.Contains(hole.Segments[0].Start)) return false;
        var region = new Region([outer]);
        var clear = hole.Segments.SelectMany(s => new[] { s.Start, s.At(0.5) }).MaxBy(region.BoundaryDistanceTo);
        return region.Surrounds(clear);
    }
}
