using System.Collections.Immutable;
using TemplateForge.Geometry;

namespace TemplateForge.Fabrication;

/// <summary>Where tabs hold a part: evenly spread, moved off corners as far as need be.</summary>
internal static class TabPlaces
{
    /// <summary>How far a tab may be moved to get off a corner, as a share of what lies between two tabs.</summary>
    private const double MostMoved = 0.4;

    /// <summary>Middles of the tabs, as distances along the path.</summary>
    /// <param name="path">The path.</param>
    /// <param name="count">How many, 0 or more.</param>
    /// <param name="width">How much of the path each takes, in mm.</param>
    public static ImmutableArray<double> Spread(ImmutableArray<Segment> path, int count, double width)
    {
        var length = path.Sum(s => s.Length);
        return [.. Enumerable.Range(0, count).Select(i => OffCorners(path, (i + 0.5) * length / count, width, MostMoved * length / count))];
    }

    /// <summary>The place on a path that is nearest to a point, moved off a corner.</summary>
    public static double NearestTo(ImmutableArray<Segment> path, Point point, double width)
    {
        var (best, least, start) = (0.0, double.PositiveInfinity, 0.0);
        foreach (var segment in path)
        {
            var near = segment.Nearest(point);
            if (near.DistanceTo(point) < least)
            {
                least = near.DistanceTo(point);
                best = start + LengthTo(segment, near);
            }
            start += segment.Length;
        }
        return OffCorners(path, best, width, width);
    }

    // The nearest place at which the whole tab lies on one segment; the place itself where there is none so near.
    private static double OffCorners(ImmutableArray<Segment> path, double wanted, double width, double most)
    {
        var (best, least, start) = (wanted, most, 0.0);
        foreach (var segment in path)
        {
            var length = segment.Length;
            if (length > width)
            {
                var near = Math.Clamp(wanted, start + width / 2, start + length - width / 2);
                if (Math.Abs(near - wanted) < least) (best, least) = (near, Math.Abs(near - wanted));
            }
            start += length;
        }
        return best;
    }

    private static double LengthTo(Segment segment, Point on)
    {
        var chord = segment.Start.DistanceTo(on);
        if (segment.IsLine) return Math.Min(chord, segment.Length);
        return Math.Min(segment.Length, 2 * segment.Radius * Math.Asin(Math.Min(1, chord / (2 * segment.Radius))));
    }
}
