namespace TemplateForge.Geometry;

/// <summary>Every place that a region passes over when it is moved in a straight line.</summary>
public static class Sweep
{
    /// <summary>The region, swept along a vector: its Minkowski sum with the vector as a segment.</summary>
    /// <remarks>
    /// What lies outside the region and is passed over was entered through a part of the boundary that faces ahead, so the swept
    /// region is what has winding ≥ 1 in the sum of the region and the strips that those parts pass over. In the sum a part that
    /// faces ahead is found at its new place only, and at the ends of such a run lies a line along the way.
    /// </remarks>
    public static Region Swept(this Region region, Vector by)
    {
        if (!double.IsFinite(by.LengthSquared))
            throw new ArgumentOutOfRangeException(nameof(by), by, "A region is swept by a finite way.");
        if (by.Length < Tolerance.Merge) return region;
        using var arrangement = Arrangement.Rent();
        foreach (var contour in region.Contours)
        {
            var parts = contour.Segments.SelectMany(s => SplitAlong(s, by)).ToList();
            var facedAhead = FacesAhead(parts[^1], by);
            foreach (var part in parts)
            {
                var facesAhead = FacesAhead(part, by);
                if (facesAhead && !facedAhead) arrangement.Add(part.Start, part.Start + by, bulge: 0, count: 1);
                if (!facesAhead && facedAhead) arrangement.Add(part.Start + by, part.Start, bulge: 0, count: 1);
                var shift = facesAhead ? by : Vector.Zero;
                arrangement.Add(part.Start + shift, part.End + shift, part.Bulge, count: 1);
                facedAhead = facesAhead;
            }
        }
        return arrangement.Where(winding => winding >= 1);
    }

    private static bool FacesAhead(Segment part, Vector by) => (part.End - part.Start).Cross(by) < 0;

    /// <summary>An arc is split where it runs along the way; so each part faces ahead or back as a whole.</summary>
    private static IEnumerable<Segment> SplitAlong(Segment segment, Vector by)
    {
        if (segment.IsLine) return [segment];
        var curve = Curve.Between(segment.Start, segment.End, segment.Bulge);
        // Place where the tangent is along or against the way: tan(θ / 2) = sin θ / (1 + cos θ).
        var way = by.Unit * Math.CopySign(1, curve.Along.Dot(by));
        var place = curve.Along.Cross(way) / (1 + curve.Along.Dot(way)) / curve.Curvature;
        var split = curve.At(place);
        if (!curve.Reaches(place) || split.DistanceTo(segment.Start) < Tolerance.Merge || split.DistanceTo(segment.End) < Tolerance.Merge)
            return [segment];
        return
        [
            Segment.Arc(segment.Start, split, curve.BulgeBetween(-curve.Reach, place)),
            Segment.Arc(split, segment.End, curve.BulgeBetween(place, curve.Reach)),
        ];
    }
}
