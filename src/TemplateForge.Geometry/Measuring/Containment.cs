namespace TemplateForge.Geometry;

/// <summary>Whether a point is inside.</summary>
public static class Containment
{
    /// <summary>Whether the point is inside or within <see cref="Tolerance.Length"/> of the boundary.</summary>
    public static bool Contains(this Region region, Point point) =>
        region.Surrounds(point) || region.BoundaryDistanceTo(point) <= Tolerance.Length;

    /// <summary>Whether the region winds round the point; on the boundary itself the answer is either.</summary>
    internal static bool Surrounds(this Region region, Point point) => region.Boundary.WindingAround(point) > 0;

    /// <summary>How often the contour runs counter-clockwise round a point that does not lie on it.</summary>
    internal static int WindingAround(this Contour contour, Point point)
    {
        var winding = 0;
        foreach (var segment in contour.Segments) winding += segment.WindingAround(point);
        return winding;
    }

    /// <summary>What a segment adds to that; nothing if it lies all above, all below or all to the left of the point.</summary>
    /// <remarks>
    /// A ray to the right counts where it crosses the chords; the piece between an arc and its chord adds one where the point
    /// is in it. Both ask on which side of the chord the point is, and must get one and the same answer when it is on it:
    /// the answer of a point that lies a hair higher, and where the chord is upright a hair further right.
    /// </remarks>
    internal static int WindingAround(this Segment segment, Point point)
    {
        var (from, to) = (segment.Start - point, segment.End - point);
        var rises = from.Y <= 0 && to.Y > 0;
        var falls = from.Y > 0 && to.Y <= 0;
        if (segment.IsLine && !rises && !falls) return 0;

        var side = from.Cross(to);
        var isLeft = side != 0 ? side > 0 : falls || (!rises && to.X > from.X);
        var winding = rises && isLeft ? 1 : falls && !isLeft ? -1 : 0;
        if (segment.IsLine || isLeft == segment.Bulge > 0) return winding;

        var frame = new ChordFrame(segment);
        var right = frame.RightOf(frame.Into(point));
        if (segment.Bulge > 0 && right < 0) return winding + 1;
        if (segment.Bulge < 0 && right > 0) return winding - 1;
        return winding;
    }
}
