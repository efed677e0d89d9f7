namespace TemplateForge.Geometry;

/// <summary>A region grown or shrunk by a distance, all round alike.</summary>
public static class Offsetting
{
    /// <summary>All points nearer than a distance to the region; or, for a negative one, all farther than it from what is outside.</summary>
    /// <param name="region">What is grown or shrunk.</param>
    /// <param name="distance">How far in mm: positive grows, negative shrinks.</param>
    /// <remarks>Corners that part are rounded; no point of the boundary is out by more than <see cref="Tolerance.Length"/>.</remarks>
    public static Region Offset(this Region region, double distance) => region.Offset(distance, CornerStyle.Round);

    /// <summary>The region with the strips that its sides sweep outwards and a piece at every corner; or, shrunk, without those inwards.</summary>
    /// <param name="region">What is grown or shrunk.</param>
    /// <param name="distance">How far in mm: positive grows, negative shrinks.</param>
    /// <param name="corners">What is put where the moved sides part.</param>
    /// <remarks>
    /// As a set, with d for the size of the distance: <i>grown</i> it is the union of the region, the strips and the corner pieces
    /// outwards; <i>shrunk</i> it is the region less the strips and the corner pieces inwards.
    /// <list type="bullet">
    /// <item>The <b>strip</b> of a segment is every point at most d from a point of the segment, along the normal there on the side in
    /// question; of an arc that curves to that side no farther than its centre.</item>
    /// <item>A <b>corner</b> is a joint V that turns away from that side: left, outwards; right, inwards. Its piece lies between V, the
    /// points E and S at d from V along the normals of the two segments there, and for a mitre M, where the tangents at E and S
    /// meet: <see cref="CornerStyle"/> shows it. It depends on V and the two directions alone, not on how long the sides are or how
    /// they curve; and it stays where the strip beside it has stopped at a centre.</item>
    /// </list>
    /// With <see cref="CornerStyle.Round"/> these are the points by their distance. Otherwise corners count, not points alone:
    /// a corner that is broken by the smallest chamfer is two corners, and each gets the piece of its own turn. A flat piece at a point
    /// that turns all the way back has no width. Of the set so defined no point of the boundary is out by more than
    /// <see cref="Tolerance.Length"/>.
    /// </remarks>
    /// <exception cref="ArgumentOutOfRangeException">The distance is not finite.</exception>
    public static Region Offset(this Region region, double distance, CornerStyle corners)
    {
        if (!double.IsFinite(distance))
            throw new ArgumentOutOfRangeException(nameof(distance), distance, "A region is offset by a finite distance.");
        if (Math.Abs(distance) < Tolerance.Merge) return region;
        if (distance < 0 && corners.IsRound && IsNarrow(region, -2 * distance)) return Region.Empty;
        using var arrangement = Arrangement.Rent();
        // What is nearer to a corner than the distance is inside what grows, and outside what shrinks, if corners are round.
        arrangement.Known.Of(corners.IsRound ? Math.Abs(distance) : 0, winding: distance > 0 ? 1 : 0);
        var raw = new RawOffset(arrangement, arrangement.Strips, distance, corners);
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
