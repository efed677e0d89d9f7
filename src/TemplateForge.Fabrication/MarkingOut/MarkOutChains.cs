using System.Collections.Immutable;
using TemplateForge.Geometry;

namespace TemplateForge.Fabrication;

/// <summary>Stretches of line that end where others begin, as the lines that they are together.</summary>
internal static class MarkOutChains
{
    /// <summary>Ends this near to each other, in mm, are one.</summary>
    private const double Same = 0.02;

    /// <summary>The lines, each as long as it can be, in the order of their first stretches. Where more than two stretches meet none runs on.</summary>
    public static List<Path> Of(ImmutableArray<Path> stretches)
    {
        var (left, lines) = (stretches.ToList(), new List<Path>());
        while (left.Count > 0)
        {
            var line = left[0];
            left.RemoveAt(0);
            while (!IsClosed(line) && TryTakeNext(line.End, stretches, left, out var next)) line = new([.. line.Segments, .. From(line.End, next).Segments]);
            while (!IsClosed(line) && TryTakeNext(line.Start, stretches, left, out var before)) line = new([.. From(line.Start, before).Reversed().Segments, .. line.Segments]);
            lines.Add(line);
        }
        return lines;
    }

    private static bool TryTakeNext(Point end, ImmutableArray<Path> all, List<Path> left, out Path next)
    {
        next = all[0];
        if (all.Sum(p => (IsSame(p.Start, end) ? 1 : 0) + (IsSame(p.End, end) ? 1 : 0)) != 2) return false;
        var at = left.FindIndex(p => IsSame(p.Start, end) || IsSame(p.End, end));
        if (at < 0) return false;
        next = left[at];
        left.RemoveAt(at);
        return true;
    }

    // The stretch as it is gone along from one of its ends, which is put exactly where the line is.
    private static Path From(Point end, Path stretch)
    {
        var way = IsSame(stretch.Start, end) ? stretch : stretch.Reversed();
        var first = way.Segments[0];
        return new([Segment.Arc(end, first.End, first.Bulge), .. way.Segments.Skip(1)]);
    }

    private static bool IsClosed(Path path) => path.Segments.Length > 1 && IsSame(path.Start, path.End);

    private static bool IsSame(Point a, Point b) => a.DistanceTo(b) < Same;
}
