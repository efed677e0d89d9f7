namespace TemplateForge.Geometry;

/// <summary>A region grown or shrunk by a distance, all round alike.</summary>
public static class Offsetting
{
    /// <summary>All points nearer than a distance to the region; or, for a negative one, all farther than it from what is outside.</summary>
    /// <param name="region">What is grown or shrunk.</param>
    /// <param name="distance">How far in mm: positive grows, negative shrinks.</param>
    /// <remarks>Corners that part are rounded; no point of the boundary is out by more than <see cref="Tolerance.Length"/>.</remarks>
    public static Region Offset(this Region region, double distance)
    {
        if (!double.IsFinite(distance))
            throw new ArgumentOutOfRangeException(nameof(distance), distance, "A region is offset by a finite distance.");
        if (Math.Abs(distance) < Tolerance.Merge) return region;
        if (distance < 0 && IsNarrow(region, -2 * distance)) return Region.Empty;
        using var arrangement = Arrangement.Rent();
        // What is nearer to a corner than the distance is inside what grows, and outside what shrinks.
        arrangement.Known.Of(Math.Abs(distance), winding: distance > 0 ? 1 : 0);
        var raw = new RawOffset(arrangement, arrangement.Strips, distance);
        foreach (var contour in region.Contours) raw.Add(contour);
        return arrangement.Where(winding => winding >= 1);
    }

    /// <summary>Whether the whole region lies between two upright or two level lines so near each other that no disc fits in.</summary>
    private static bool IsNarrow(Region region, double disc)
    {
        var box = Bounds.None;
        foreach (var contour in region.Contours)
        {
            foreach (var s in contour.Segments) box = box.Joined(Bounds.Around(s.Start, s.End, s.Bulge, margin: 0));
        }
        return Math.Min(box.MaxX - box.MinX, box.MaxY - box.MinY) < disc + Tolerance.Merge;
    }
}
