using System.Collections.Immutable;

namespace TemplateForge.Geometry;

/// <summary>Paths moved aside, and slots along them.</summary>
public static class PathOffsetting
{
    /// <summary>How near, in mm, a boundary must come to a curve to run along it: both may be out by the promised length.</summary>
    private const double Beside = 2 * Tolerance.Length;

    /// <summary>All points within half a width of the path.</summary>
    /// <param name="path">The middle of the slot. It may cross itself, or run twice along itself.</param>
    /// <param name="width">Of the slot, in mm.</param>
    /// <param name="ends">
    /// Flat ends leave out what is near an end of the path only: what remains lies square to a side of a segment, or between the
    /// normals of two neighbours that part. A path that ends in its start has no ends, but a corner there.
    /// </param>
    /// <remarks>Corners that part are rounded. No point of the boundary is out by more than <see cref="Tolerance.Length"/>.</remarks>
    /// <exception cref="ArgumentOutOfRangeException">The width is not finite or not more than twice <see cref="Tolerance.Length"/>.</exception>
    public static Region Slot(this Path path, double width, PathEnds ends = PathEnds.Round)
    {
        if (!(width > 2 * Tolerance.Length && double.IsFinite(width)))
            throw new ArgumentOutOfRangeException(nameof(width), width, "A slot has a finite width, and more than that of the tolerance.");
        if (ends is not (PathEnds.Round or PathEnds.Flat))
            throw new ArgumentOutOfRangeException(nameof(ends), ends, "There are no such ends.");
        return new PathOutline(path, width / 2, ends).Slot();
    }

    /// <summary>The runs beside the path, in its direction: at the distance from it, to its right, and nowhere nearer to any of it.</summary>
    /// <param name="path">It may cross itself. Where it ends in its start, that is a corner like any other.</param>
    /// <param name="distance">How far aside in mm.</param>
    /// <returns>
    /// Runs of which each ends where it would come too near to the path, or square to the path's end; in the order in which
    /// they begin beside the path. A run that closes ends in its start. There is none where all of that side is too near.
    /// </returns>
    /// <remarks>
    /// A point belongs to them when its distance from the path is the given one, and a nearest point of the path is either not a
    /// corner, with the point to its right, or an inner corner that turns left, with the point between the normals of the segments
    /// there. So corners that part are rounded. Where the path runs back along itself the point of return is a corner for both
    /// sides. A single point is no run; and what lies between two parts of the path which are exactly twice the distance apart is left
    /// out, as it has no width.
    /// </remarks>
    /// <exception cref="ArgumentOutOfRangeException">The distance is not finite or not more than <see cref="Tolerance.Length"/>.</exception>
    public static ImmutableArray<Path> OffsetToRight(this Path path, double distance)
    {
        if (!(distance > Tolerance.Length && double.IsFinite(distance)))
            throw new ArgumentOutOfRangeException(nameof(distance), distance, "A path is moved by a finite distance, more than the tolerance.");
        // Whatever is no nearer than the distance bounds the slot; of its boundary, what runs along the moved path is wanted.
        var outline = new PathOutline(path, distance, PathEnds.Round);
        var sides = outline.Right.Select(s => new Side(s, s.Bounds.Grown(Beside))).ToArray();
        return
        [
            .. outline.Slot().Contours
                .SelectMany(contour => Runs(contour, sides))
                .OrderBy(run => Array.FindIndex(sides, side => side.IsBeside(run.Segments[0].At(0.5))))
        ];
    }

    /// <summary>The runs to the left of the path, in its direction; otherwise as <see cref="OffsetToRight"/>.</summary>
    public static ImmutableArray<Path> OffsetToLeft(this Path path, double distance) =>
        [.. path.Reversed().OffsetToRight(distance).Reverse().Select(run => run.Reversed())];

    /// <summary>The runs of a contour that lie along the sides, round its start as well.</summary>
    private static IEnumerable<Path> Runs(Contour contour, Side[] sides)
    {
        var parts = contour.Segments.SelectMany(s => Parts(s, sides)).ToArray();
        var gap = Array.FindIndex(parts, part => !part.IsBeside);
        var run = new List<Segment>();
        for (var i = 1; i <= parts.Length; i++)
        {
            // Begun after a gap, no run goes on past the last part; without a gap the contour is one run.
            var part = parts[(gap + i) % parts.Length];
            if (part.IsBeside) run.Add(part.Segment);
            if ((!part.IsBeside || i == parts.Length) && run.Count > 0)
            {
                yield return new(run);
                run = [];
            }
        }
    }

    /// <summary>A segment, cut where a side begins or ends on it: each part is either beside the sides or not.</summary>
    private static List<(Segment Segment, bool IsBeside)> Parts(Segment segment, Side[] sides)
    {
        var bounds = segment.Bounds;
        var near = sides.Where(side => side.Bounds.Touches(bounds)).ToArray();
        if (near.Length == 0) return [(segment, false)];
        var least = 10 * Tolerance.Length / segment.Length;
        List<double> cuts = [.. near.SelectMany(side => new[] { side.Segment.Start, side.Segment.End }).SelectMany(CutsAt)];
        cuts.Sort();
        var parts = new List<(Segment, bool)>();
        var from = 0.0;
        foreach (var to in cuts.Append(1))
        {
            if (to - from <= least && to < 1) continue;
            var part = segment.Part(from, to);
            parts.Add((part, near.Any(side => side.RunsBeside(part))));
            from = to;
        }
        return parts;

        IEnumerable<double> CutsAt(Point p)
        {
            var (at, share) = segment.NearestPlace(p);
            return at.DistanceTo(p) <= Beside && share > least && share < 1 - least ? [share] : [];
        }
    }

    private readonly record struct Side(Segment Segment, Box Bounds)
    {
        /// <summary>Of a part that neither begins nor ends on the way along the side. In one point two curves may just touch.</summary>
        public bool RunsBeside(Segment part) => IsBeside(part.At(0.5)) && IsBeside(part.At(0.2)) && IsBeside(part.At(0.9));

        public bool IsBeside(Point p) => Bounds.Contains(p) && Segment.DistanceTo(p) <= Beside;
    }
}
