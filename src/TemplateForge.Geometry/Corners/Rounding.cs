using System.Collections.Immutable;

namespace TemplateForge.Geometry;

/// <summary>A region with rounded corners, and the corners that would not take the radius and were left sharp.</summary>
public sealed record Rounding(Region Region, ImmutableArray<UnfitCorner> Unfit);

/// <summary>A corner that was left sharp, and the largest radius in mm that would fit if the corners beside it had it too.</summary>
public sealed record UnfitCorner(Point At, double LargestRadius);

/// <summary>Fillets: arcs in place of corners, which run into both sides without a corner.</summary>
public static class RoundCorners
{
    /// <summary>The points at which the boundary has a true corner, pointing outwards or inwards.</summary>
    public static ImmutableArray<Point> Corners(this Region region) =>
        [.. region.Contours.SelectMany(c => CornerCutting.CornersOf(c).Select(i => c.Segments[i].Start))];

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
        var (cut, unfit) = CornerCutting.Cut(region, where, radius, (arriving, leaving, share) =>
            Fillet.Between(arriving, leaving, radius * share));
        return new(cut, [.. unfit.Select(u => new UnfitCorner(u.At, radius * u.Share))]);
    }
}
