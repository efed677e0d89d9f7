using System.Collections.Immutable;

namespace TemplateForge.Geometry;

/// <summary>A region with rounded corners, and the corners that would not take the radius and were left sharp.</summary>
public sealed record Rounding(Region Region, ImmutableArray<UnfitCorner> Unfit);

/// <summary>A corner that was left sharp, and the largest radius in mm that would fit if the corners beside it had it too.</summary>
public sealed record UnfitCorner(Point At, double LargestRadius);

/// <summary>Fillets: arcs in place of corners, which run into both sides without a corner.</summary>
public static class RoundCorners
{
    /// <summary>Two segments that turn by less than this at their joint, in radians, meet without a corner.</summary>
    internal const double Tangent = 1e-5;

    /// <summary>The points at which the boundary has a true corner, pointing outwards or inwards.</summary>
    public static ImmutableArray<Point> Corners(this Region region) =>
        [.. region.Contours.SelectMany(c => CornersOf(c).Select(i => c.Segments[i].Start))];

    /// <summary>Every corner with a fillet of one radius; where it does not fit, the corner stays as it is and is listed.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The radius is not more than 0.</exception>
    public static Rounding RoundedCorners(this Region region, double radius) => region.RoundedCorners(radius, _ => true);

    /// <summary>Every wanted corner with a fillet of one radius; where it does not fit, the corner stays as it is and is listed.</summary>
    /// <param name="region">The region.</param>
    /// <param name="radius">Radius of the fillets in mm, more than 0.</param>
    /// <param name="where">Whether the corner at this point is to be rounded.</param>
    /// <exception cref="ArgumentOutOfRangeException">The radius is not more than 0.</exception>
    /// <remarks>
    /// A fillet may reach along everything that joins on to a side without a corner. It fits where it touches both sides before
    /// they end in their next corner, leaves room there for the fillet of that corner, and crosses nothing else.
    /// </remarks>
    public static Rounding RoundedCorners(this Region region, double radius, Func<Point, bool> where)
    {
        if (!(radius >= Tolerance.Length && double.IsFinite(radius)))
            throw new ArgumentOutOfRangeException(nameof(radius), radius, "A fillet has a radius.");
        var contours = ImmutableArray.CreateBuilder<Contour>();
        var unfit = ImmutableArray.CreateBuilder<UnfitCorner>();
        foreach (var contour in region.Contours)
        {
            var corners = CornersOf(contour);
            if (corners.IsEmpty)
            {
                contours.Add(contour);
                continue;
            }
            var sides = new CorneredContour(contour, corners, where, region);
            var fillets = sides.Fillets(radius);
            contours.Add(sides.Rounded(fillets));
            for (var i = 0; i < corners.Length; i++)
            {
                var at = contour.Segments[corners[i]].Start;
                if (fillets[i] is null && where(at)) unfit.Add(new(at, sides.LargestRadius(i, radius)));
            }
        }
        return new(new Region(contours.ToImmutable()), unfit.ToImmutable());
    }

    /// <summary>The segments that begin at a corner, by index.</summary>
    private static ImmutableArray<int> CornersOf(Contour contour)
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
