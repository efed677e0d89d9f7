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
        var (nearest, least) = (Point.Origin, double.PositiveInfinity);
        foreach (var contour in region.Contours)
        {
            foreach (var segment in contour.Segments)
            {
                if (AtLeast(segment, point) > least) continue;
                var near = segment.Nearest(point);
                var distance = near.DistanceTo(point);
                if (distance < least) (nearest, least) = (near, distance);
            }
        }
        return nearest;
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
        foreach (var start in region.Contours.Select(c => c.Segments[0].Start))
        {
            if (other.Surrounds(start)) return (start, start);
        }
        foreach (var start in other.Contours.Select(c => c.Segments[0].Start))
        {
            if (region.Surrounds(start)) return (start, start);
        }

        var (nearest, least) = ((Point.Origin, Point.Origin), double.PositiveInfinity);
        var others = other.Contours.SelectMany(c => c.Segments).Select(s => (Segment: s, s.Bounds)).ToArray();
        foreach (var segment in region.Contours.SelectMany(c => c.Segments))
        {
            var bounds = segment.Bounds;
            foreach (var opposite in others)
            {
                if (Between(bounds, opposite.Bounds) >= least) continue;
                var (on, onOther) = segment.NearestPoints(opposite.Segment);
                var distance = on.DistanceTo(onOther);
                if (distance < least) (nearest, least) = ((on, onOther), distance);
                if (least == 0) return nearest;
            }
        }
        return nearest;
    }

    /// <summary>A lower bound: a segment of at most half a circle lies within half its chord of the chord's middle.</summary>
    private static double AtLeast(Segment segment, Point point)
    {
        var halfChord = segment.Start.DistanceTo(segment.End) / 2;
        return segment.Start.MidpointTo(segment.End).DistanceTo(point) - halfChord - Tolerance.Merge;
    }

    private static double Between(Box a, Box b)
    {
        var across = Math.Max(0, Math.Max(a.Min.X - b.Max.X, b.Min.X - a.Max.X));
        var up = Math.Max(0, Math.Max(a.Min.Y - b.Max.Y, b.Min.Y - a.Max.Y));
        return new Vector(across, up).Length - Tolerance.Merge;
    }
}
