using System.Collections.Immutable;

namespace TemplateForge.Geometry;

/// <summary>Cuts the corners of a region, whatever the cut.</summary>
internal static class CornerCutting
{
    /// <summary>Two segments that turn by less than this at their joint, in radians, meet without a corner.</summary>
    internal const double Tangent = 1e-5;

    /// <summary>The region cut, and the corners that stay as they are, each with the largest share of the size that would fit.</summary>
    /// <param name="region">The region.</param>
    /// <param name="where">Whether the corner at this point is to be cut.</param>
    /// <param name="size">The size of a cut, in mm, by which the share is told to within half of <see cref="Tolerance.Length"/>.</param>
    /// <param name="cutter">Makes the cuts.</param>
    public static (Region Region, ImmutableArray<(Point At, double Share)> Unfit) Cut(
        Region region, Func<Point, bool> where, double size, Cutter cutter)
    {
        var contours = ImmutableArray.CreateBuilder<Contour>();
        var unfit = ImmutableArray.CreateBuilder<(Point, double)>();
        foreach (var contour in region.Contours)
        {
            var corners = CornersOf(contour);
            if (corners.IsEmpty)
            {
                contours.Add(contour);
                continue;
            }
            var sides = new CorneredContour(contour, corners, where, region, cutter);
            var cuts = sides.Cuts();
            var cut = sides.With(cuts);
            // Two cuts that meet from end to end leave nothing.
            if (cut.Area > Tolerance.Merge * cut.Length / 2) contours.Add(cut);
            for (var i = 0; i < corners.Length; i++)
            {
                var at = contour.Segments[corners[i]].Start;
                if (cuts[i] is null && where(at)) unfit.Add((at, sides.LargestShare(i, Tolerance.Length / 2 / size)));
            }
        }
        return (new Region(contours.ToImmutable()), unfit.ToImmutable());
    }

    /// <summary>The segments that begin at a corner, by index.</summary>
    public static ImmutableArray<int> CornersOf(Contour contour)
    {
        var segments = contour.Segments;
        return
        [
            .. Enumerable.Range(0, segments.Length).Where(i =>
            {
                var before = segments[(i + segments.Length - 1) % segments.Length];
                var (arriving, leaving) = (before.EndDirection, segments[i].StartDirection);
                return Math.Abs(Math.Atan2(arriving.Cross(leaving), arriving.Dot(leaving))) > Tangent;
            }),
        ];
    }
}
