namespace TemplateForge.Geometry;

/// <summary>Least distances between segments and points, in mm.</summary>
public static class SegmentDistance
{
    public static double DistanceTo(this Segment segment, Point point) => segment.Nearest(point).DistanceTo(point);

    /// <summary>The point of the segment that is nearest. From the centre of an arc all are; then it is one of them.</summary>
    public static Point Nearest(this Segment segment, Point point) => segment.NearestPlace(point).At;

    /// <summary>0 where the segments meet, which they do within <see cref="Tolerance.Merge"/>.</summary>
    public static double DistanceTo(this Segment segment, Segment other)
    {
        if (Meetings.Any(segment, other)) return 0;
        // Two curves that do not meet are nearest at an end of one, or where one line is square to both.
        var least = Math.Min(
            Math.Min(segment.DistanceTo(other.Start), segment.DistanceTo(other.End)),
            Math.Min(other.DistanceTo(segment.Start), other.DistanceTo(segment.End)));
        Span<Point> square = stackalloc Point[2];
        foreach (var candidate in square[..Meetings.SquareToBoth(segment, other, square)])
        {
            var near = other.Nearest(segment.Nearest(candidate));
            least = Math.Min(least, segment.DistanceTo(near));
        }
        return least;
    }

    /// <summary>The nearest point, and its share (0 to 1) of the segment's length.</summary>
    internal static (Point At, double Share) NearestPlace(this Segment segment, Point point)
    {
        var frame = new ChordFrame(segment);
        var (foot, share) = frame.NearestTo(frame.Into(point));
        return (share is 0 ? segment.Start : share is 1 ? segment.End : frame.OutOf(foot), share);
    }
}
