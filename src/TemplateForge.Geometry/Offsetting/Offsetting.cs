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
        using var arrangement = Arrangement.Rent();
        var raw = new RawOffset(arrangement, arrangement.Strips, distance);
        foreach (var contour in region.Contours) raw.Add(contour);
        return arrangement.Where(winding => winding >= 1);
    }
}
