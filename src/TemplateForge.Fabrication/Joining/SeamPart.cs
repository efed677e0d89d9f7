using TemplateForge.Geometry;

namespace TemplateForge.Fabrication;

/// <summary>Parts of a seam by their distances along it.</summary>
public static class SeamPart
{
    /// <summary>What lies between two distances from the start, in mm; from less than to.</summary>
    public static Path Part(this Path seam, double from, double to)
    {
        var (before, segments) = (0.0, new List<Segment>());
        foreach (var segment in seam.Segments)
        {
            var length = segment.Length;
            var (first, last) = (Share(from), Share(to));
            if ((last - first) * length > Tolerance.Merge) segments.Add(segment.Part(first, last));
            before += length;

            // A sliver that nothing could be welded along is left to the neighbour.
            double Share(double at)
            {
                var share = Math.Clamp((at - before) / length, 0, 1);
                return share * length <= Tolerance.Merge ? 0 : (1 - share) * length <= Tolerance.Merge ? 1 : share;
            }
        }
        return new(segments);
    }

    /// <summary>Once round an outline, clockwise as one looks at the drawing, from straight above its middle.</summary>
    public static Path OnceRound(Contour outline)
    {
        var clockwise = outline.IsCounterClockwise ? outline.Reversed() : outline;
        var top = EvenSpacing.DistanceToTop(clockwise);
        var (all, length) = (new Path(clockwise.Segments), clockwise.Length);
        if (top <= Tolerance.Merge || top >= length - Tolerance.Merge) return all;
        return new([.. all.Part(top, length).Segments, .. all.Part(0, top).Segments]);
    }
}
