using System.Collections.Immutable;
using TemplateForge.Geometry;

namespace TemplateForge.Fabrication;

/// <summary>Places at equal distances round an outline.</summary>
public static class EvenSpacing
{
    /// <summary>So many places, clockwise as one looks at the drawing, the first straight above the outline's middle.</summary>
    public static ImmutableArray<Point> FromTheTop(Contour outline, int count)
    {
        ArgumentOutOfRangeException.ThrowIfNegative(count);
        var clockwise = outline.IsCounterClockwise ? outline.Reversed() : outline;
        var top = DistanceToTop(clockwise);
        return [.. Enumerable.Range(0, count).Select(i => clockwise.PointAlong(top + clockwise.Length * i / count))];
    }

    /// <summary>How many places come nearest to a pitch, but at least four.</summary>
    /// <param name="outline">What they go round.</param>
    /// <param name="pitch">The wanted distance along the outline, in mm, more than 0.</param>
    public static int CountNearest(Contour outline, double pitch)
    {
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(pitch);
        return Math.Max(4, (int)Math.Round(outline.Length / pitch, MidpointRounding.AwayFromZero));
    }

    /// <summary>Along the outline, in mm from its start, to where a line straight up from its middle leaves it.</summary>
    public static double DistanceToTop(Contour outline)
    {
        var bounds = outline.Bounds;
        var region = Region.Of(outline);
        var middle = bounds.Centre;
        var up = new Path(Segment.Line(middle, new(middle.X, bounds.Max.Y + 1)));
        var exits = up.PartsOutside(region);
        var top = exits.IsEmpty ? region.Extreme(new(0, 1)) : exits[^1].Start;
        return DistanceAlong(outline, top);
    }

    /// <summary>Along the outline, in mm from its start, to a place on it.</summary>
    public static double DistanceAlong(Contour outline, Point place)
    {
        var nearest = outline.Segments.Select((s, i) => (Segment: s, Index: i)).MinBy(s => s.Segment.DistanceTo(place));
        var before = outline.Segments.Take(nearest.Index).Sum(s => s.Length);
        var chord = nearest.Segment.Start.DistanceTo(place);
        return before + (nearest.Segment.IsLine
            ? chord
            : 2 * nearest.Segment.Radius * Math.Asin(Math.Min(1, chord / (2 * nearest.Segment.Radius))));
    }
}
