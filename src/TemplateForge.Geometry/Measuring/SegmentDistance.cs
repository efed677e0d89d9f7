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
        var (on, onOther) = segment.NearestPoints(other);
        return on.DistanceTo(onOther);
    }

    /// <summary>A point of each, as near to each other as any; where the segments meet, one point for both.</summary>
    public static (Point On, Point OnOther) NearestPoints(this Segment segment, Segment other)
    {
        var (points, runs) = (new List<Meeting>(), new List<SharedRun>());
        Meetings.Find(segment, other, points, runs);
        if (points.Count > 0) return (points[0].At, points[0].At);
        if (runs.Count > 0) return (runs[0].From.At, runs[0].From.At);

        // Two curves that do not meet are nearest at an end of one, or where one line is square to both.
        var (nearest, least) = ((segment.Start, other.Start), double.PositiveInfinity);
        Take(segment.Nearest(other.Start), other.Start);
        Take(segment.Nearest(other.End), other.End);
        Take(segment.Start, other.Nearest(segment.Start));
        Take(segment.End, other.Nearest(segment.End));
        Span<Point> square = stackalloc Point[2];
        foreach (var candidate in square[..Meetings.SquareToBoth(segment, other, square)])
        {
            var near = other.Nearest(segment.Nearest(candidate));
            Take(segment.Nearest(near), near);
        }
        return nearest;

        void Take(Point on, Point onOther)
        {
            var distance = on.DistanceTo(onOther);
            if (distance < least) (nearest, least) = ((on, onOther), distance);
        }
    }

    /// <summary>The nearest point, and its share (0 to 1) of the segment's length.</summary>
    internal static (Point At, double Share) NearestPlace(this Segment segment, Point point)
    {
        var frame = new ChordFrame(segment);
        var (foot, share) = frame.NearestTo(frame.Into(point));
        return (share is 0 ? segment.Start : share is 1 ? segment.End : frame.OutOf(foot), share);
    }
}
