using System.Collections.Immutable;

namespace TemplateForge.Geometry;

/// <summary>Places by their distance along a contour or a path, in mm from its start.</summary>
public static class Along
{
    /// <summary>Wraps round: a distance below 0 counts back from the start, one past the length goes on.</summary>
    public static Point PointAlong(this Contour contour, double distance)
    {
        var (segment, share) = Place(contour.Segments, Wrapped(distance, contour.Length));
        return segment.At(share);
    }

    /// <exception cref="ArgumentOutOfRangeException">The distance is below 0 or more than the length.</exception>
    public static Point PointAlong(this Path path, double distance)
    {
        var (segment, share) = Place(path.Segments, OnPath(path, distance));
        return segment.At(share);
    }

    /// <summary>The unit vector along the contour; at a corner, that of the segment which begins there. Wraps round.</summary>
    public static Vector DirectionAlong(this Contour contour, double distance)
    {
        var (segment, share) = Place(contour.Segments, Wrapped(distance, contour.Length));
        return segment.DirectionAt(share);
    }

    /// <summary>The unit vector along the path; at a corner, that of the segment which begins there.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The distance is below 0 or more than the length.</exception>
    public static Vector DirectionAlong(this Path path, double distance)
    {
        var (segment, share) = Place(path.Segments, OnPath(path, distance));
        return segment.DirectionAt(share);
    }

    /// <summary>Points at 0, spacing, twice the spacing… once round; the last gap, back to the start, may be shorter.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The spacing is not more than 0.</exception>
    public static ImmutableArray<Point> PointsEvery(this Contour contour, double spacing)
    {
        Positive(spacing);
        var steps = (int)Math.Ceiling((contour.Length - Tolerance.Length) / spacing);
        return Points(contour.Segments, spacing, Math.Max(1, steps));
    }

    /// <summary>Points at 0, spacing, twice the spacing… as far as the path reaches; its end only when the spacing meets it.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The spacing is not more than 0.</exception>
    public static ImmutableArray<Point> PointsEvery(this Path path, double spacing)
    {
        Positive(spacing);
        var steps = (int)Math.Floor((path.Length + Tolerance.Length) / spacing);
        return Points(path.Segments, spacing, steps + 1);
    }

    private static ImmutableArray<Point> Points(ImmutableArray<Segment> segments, double spacing, int count)
    {
        var points = ImmutableArray.CreateBuilder<Point>(count);
        var (index, before, length) = (0, 0.0, segments[0].Length);
        for (var i = 0; i < count; i++)
        {
            while (i * spacing - before >= length && index + 1 < segments.Length)
            {
                before += length;
                length = segments[++index].Length;
            }
            points.Add(segments[index].At(Math.Min(1, (i * spacing - before) / length)));
        }
        return points.MoveToImmutable();
    }

    private static (Segment Segment, double Share) Place(ImmutableArray<Segment> segments, double distance)
    {
        for (var i = 0; ; i++)
        {
            var length = segments[i].Length;
            if (distance < length || i == segments.Length - 1) return (segments[i], Math.Min(1, distance / length));
            distance -= length;
        }
    }

    private static double Wrapped(double distance, double length) => distance - length * Math.Floor(distance / length);

    private static double OnPath(Path path, double distance)
    {
        var length = path.Length;
        if (!(distance >= -Tolerance.Length && distance <= length + Tolerance.Length))
            throw new ArgumentOutOfRangeException(nameof(distance), distance, $"The path is {length} mm long.");
        return Math.Clamp(distance, 0, length);
    }

    private static void Positive(double spacing)
    {
        if (!(spacing > 0)) throw new ArgumentOutOfRangeException(nameof(spacing), spacing, "A spacing is more than 0.");
    }
}
