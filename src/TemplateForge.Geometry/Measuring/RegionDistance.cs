namespace TemplateForge.Geometry;

/// <summary>Least distances between regions and points, in mm. From an empty region everything is infinitely far.</summary>
public static class RegionDistance
{
    /// <summary>0 inside and on the boundary.</summary>
    public static double DistanceTo(this Region region, Point point) =>
        region.Surrounds(point) ? 0 : region.BoundaryDistanceTo(point);

    /// <summary>Distance to the nearest point of the boundary, holes included, from inside as from outside.</summary>
    public static double BoundaryDistanceTo(this Region region, Point point) =>
        region.IsEmpty ? double.PositiveInfinity : region.NearestBoundaryPoint(point).DistanceTo(point);

    /// <exception cref="InvalidOperationException">The region is empty.</exception>
    public static Point NearestBoundaryPoint(this Region region, Point point)
    {
        if (region.IsEmpty) throw new InvalidOperationException("An empty region has no boundary.");
        return region.Boundary.Nearest(point);
    }

    /// <summary>0 where the regions touch, overlap, or one lies in the other.</summary>
    public static double DistanceTo(this Region region, Region other)
    {
        if (region.IsEmpty || other.IsEmpty) return double.PositiveInfinity;
        var (on, onOther) = region.NearestPoints(other);
        return on.DistanceTo(onOther);
    }

    /// <summary>A point of each, as near to each other as any; where the regions touch or overlap, one point for both.</summary>
    /// <exception cref="InvalidOperationException">A region is empty.</exception>
    public static (Point On, Point OnOther) NearestPoints(this Region region, Region other)
    {
        if (region.IsEmpty || other.IsEmpty) throw new InvalidOperationException("An empty region has no points.");
        // Without a crossing, a part lies wholly in the other region or wholly outside; any point of it tells which.
        foreach (var start in Starts(region))
        {
            if (other.Surrounds(start)) return (start, start);
        }
        foreach (var start in Starts(other))
        {
            if (region.Surrounds(start)) return (start, start);
        }
        if (region.Boundary.Segments.Length <= other.Boundary.Segments.Length) return region.Boundary.Nearest(other.Boundary);
        var (onOther, on) = other.Boundary.Nearest(region.Boundary);
        return (on, onOther);
    }

    /// <summary>A point of every part of a region; its holes have no part of their own.</summary>
    private static IEnumerable<Point> Starts(Region region) => region.Contours.Where(c => c.IsCounterClockwise).Select(c => c.Segments[0].Start);
}
