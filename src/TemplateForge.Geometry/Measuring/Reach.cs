namespace TemplateForge.Geometry;

/// <summary>What comes of a region under a round cutter, and what the cutter cannot get at.</summary>
/// <param name="Made">The region as the cutter makes it.</param>
/// <param name="LeftOver">What the cutter leaves standing although it should not stand.</param>
public sealed record Reach(Region Made, Region LeftOver);

/// <summary>Where a round cutter gets to.</summary>
/// <remarks>
/// The cutter counts as <see cref="Tolerance.Length"/> smaller in radius than it is, so that it gets through where it fits exactly.
/// What is left over is given without parts that are thinner than that all along.
/// </remarks>
public static class CutterReach
{
    /// <summary>The region as a pocket that a cutter clears without cutting past its edge: every place on which it can be put.</summary>
    /// <param name="region">The pocket; its holes are islands that stay.</param>
    /// <param name="radius">Radius of the cutter in mm, more than 1e-6.</param>
    /// <returns>What is cleared, the union of all discs of that radius in the region; and what stays in its corners and necks.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The radius is too small or not finite.</exception>
    /// <remarks>region.Offset(−r).Offset(r). A pocket that is cut in two by a neck needs the cutter lifted.</remarks>
    public static Reach ClearedBy(this Region region, double radius)
    {
        var r = Effective(radius);
        var made = region.Offset(-r).Offset(r);
        return new(made, Parts(region.Subtract(made)));
    }

    /// <summary>The region as a part that a cutter cuts free without cutting into it, running round its outline and in its holes.</summary>
    /// <param name="region">The part.</param>
    /// <param name="radius">Radius of the cutter in mm, more than 1e-6.</param>
    /// <returns>The part as it comes off, all but the union of all discs of that radius beside the region; and what stays on it.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The radius is too small or not finite.</exception>
    /// <remarks>region.Offset(r).Offset(−r). A hole that the cutter does not fit into stays closed.</remarks>
    public static Reach CutOutBy(this Region region, double radius)
    {
        var r = Effective(radius);
        var made = region.Offset(r).Offset(-r);
        return new(made, Parts(made.Subtract(region)));
    }

    private static double Effective(double radius)
    {
        if (!(radius > Tolerance.Length && double.IsFinite(radius)))
            throw new ArgumentOutOfRangeException(nameof(radius), radius, "A cutter has a radius.");
        return radius - Tolerance.Length;
    }

    private static Region Parts(Region leftOver) =>
        new([.. leftOver.Parts().Where(p => p.Area > Tolerance.Area(p.Length)).SelectMany(p => p.Contours)]);
}
