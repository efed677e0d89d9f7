namespace TemplateForge.Geometry;

/// <summary>Where a flat part balances.</summary>
public static class CentreOfArea
{
    /// <summary>The point on which a sheet of this shape balances. It may lie in a hole or outside a bent shape.</summary>
    /// <exception cref="InvalidOperationException">The region is empty.</exception>
    /// <remarks>Σ area × centroid ÷ Σ area over the triangles under the chords and the circle segments beside them.</remarks>
    public static Point Centroid(this Region region)
    {
        if (region.IsEmpty) throw new InvalidOperationException("An empty region has no centroid.");
        var origin = region.Contours[0].Segments[0].Start; // near by, so that 100 m away nothing is lost
        var (area, moment) = (0.0, Vector.Zero);
        foreach (var segment in region.Contours.SelectMany(c => c.Segments))
        {
            var (from, to) = (segment.Start - origin, segment.End - origin);
            var triangle = from.Cross(to) / 2;
            area += triangle;
            moment += (from + to) * (triangle / 3);
            if (segment.IsLine) continue;

            var (beside, fromChord) = CircleSegment(segment);
            var chord = to - from;
            area += beside;
            moment += (from + to) * (beside / 2) - chord.Left * (fromChord / chord.Length);
        }
        return origin + moment / area;
    }

    /// <summary>
    /// Area between an arc and its chord, positive for an arc that turns left, and the moment of that area about the chord:
    /// with s half the sweep, R² (s − sin s cos s) and R³ (⅔ sin³ s − (s − sin s cos s) cos s).
    /// </summary>
    private static (double Area, double Moment) CircleSegment(Segment arc)
    {
        var s = Math.Abs(arc.Sweep.Radians) / 2;
        var (sin, cos, radius) = (Math.Sin(s), Math.Cos(s), arc.Radius);
        // The differences lose their digits where s is small; their series do not.
        var area = s < 0.02 ? 2 * s * s * s / 3 * (1 - s * s / 5) : s - sin * cos;
        var moment = s < 0.02 ? 2 * Math.Pow(s, 5) / 15 * (1 - 11 * s * s / 42) : 2 * sin * sin * sin / 3 - area * cos;
        return (Math.Sign(arc.Bulge) * radius * radius * area, radius * radius * radius * moment);
    }
}
