using System.Collections.Immutable;

namespace TemplateForge.Geometry;

/// <summary>A region with chamfered corners, and the corners that would not take the chamfer and were left sharp.</summary>
public sealed record Chamfering(Region Region, ImmutableArray<UnfitChamfer> Unfit);

/// <summary>
/// A corner that was left sharp, and the largest setbacks in mm, one to the other as those asked for, that would fit if the
/// corners beside it had them too.
/// </summary>
public sealed record UnfitChamfer(Point At, double LargestBefore, double LargestAfter);

/// <summary>Chamfers: straight lines in place of corners.</summary>
/// <remarks>
/// <code>
///               │ leaving        A setback is the length of side that the chamfer takes the place of, measured along it,
///               │                on lines and arcs alike, and on across joints without a corner. Before and after are
///            ╱  ┤ after          meant as the boundary runs, with the inside on its left.
///         ╱     │
///   ────┴───────┘
///  arriving  before
/// </code>
/// </remarks>
public static class ChamferCorners
{
    /// <summary>Every corner with a chamfer of one setback; where it does not fit, the corner stays as it is and is listed.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The setback is not more than 0.</exception>
    public static Chamfering ChamferedCorners(this Region region, double setback) => region.ChamferedCorners(setback, setback);

    /// <summary>Every wanted corner with a chamfer of one setback; where it does not fit, the corner stays as it is and is listed.</summary>
    /// <param name="region">The region.</param>
    /// <param name="setback">Setback along both sides in mm, more than 0.</param>
    /// <param name="where">Whether the corner at this point is to be chamfered.</param>
    /// <exception cref="ArgumentOutOfRangeException">The setback is not more than 0.</exception>
    public static Chamfering ChamferedCorners(this Region region, double setback, Func<Point, bool> where) =>
        region.ChamferedCorners(setback, setback, where);

    /// <summary>Every corner with a chamfer of two setbacks; where it does not fit, the corner stays as it is and is listed.</summary>
    /// <exception cref="ArgumentOutOfRangeException">A setback is not more than 0.</exception>
    public static Chamfering ChamferedCorners(this Region region, double before, double after) =>
        region.ChamferedCorners(before, after, _ => true);

    /// <summary>Every wanted corner with a chamfer of two setbacks; where it does not fit, the corner stays as it is and is listed.</summary>
    /// <param name="region">The region.</param>
    /// <param name="before">Setback along the side that arrives at the corner, in mm, more than 0.</param>
    /// <param name="after">Setback along the side that leaves it, in mm, more than 0.</param>
    /// <param name="where">Whether the corner at this point is to be chamfered.</param>
    /// <exception cref="ArgumentOutOfRangeException">A setback is not more than 0.</exception>
    /// <remarks>
    /// A chamfer fits where both sides are as long as its setbacks, leave room there for the chamfer of the next corner, and the
    /// line between them lies on the hand to which the corner turns and meets nothing else.
    /// </remarks>
    public static Chamfering ChamferedCorners(this Region region, double before, double after, Func<Point, bool> where)
    {
        Positive(before, nameof(before));
        Positive(after, nameof(after));
        var (cut, unfit) = CornerCutting.Cut(region, where, Math.Max(before, after), (arriving, leaving, share) =>
            Chamfer.Between(arriving, leaving, before * share, after * share));
        return new(cut, [.. unfit.Select(u => new UnfitChamfer(u.At, before * u.Share, after * u.Share))]);
    }

    private static void Positive(double setback, string name)
    {
        if (!(setback >= Tolerance.Length && double.IsFinite(setback)))
            throw new ArgumentOutOfRangeException(name, setback, "A chamfer has two setbacks.");
    }
}
