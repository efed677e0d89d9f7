namespace TemplateForge.Fabrication;

/// <summary>A hole and a shaft of one nominal size, as H7/g6: a drill bush in its plate, a locating pin in its hole.</summary>
/// <param name="Hole">Of the hole.</param>
/// <param name="Shaft">Of the shaft.</param>
public readonly record struct Fit(LimitDeviations Hole, LimitDeviations Shaft)
{
    /// <summary>Between the least hole and the largest shaft, in mm; below 0 where they may be tight.</summary>
    public double LeastClearance => Hole.Lower - Shaft.Upper;

    /// <summary>Between the largest hole and the least shaft, in mm.</summary>
    public double MostClearance => Hole.Upper - Shaft.Lower;

    /// <summary>The fit of two classes of <see cref="ToleranceClass"/> at a size.</summary>
    /// <param name="name">The hole's class, a stroke, the shaft's: H7/g6.</param>
    /// <param name="diameter">The nominal size in mm, more than 0.</param>
    /// <param name="fit">What was found.</param>
    /// <returns>Whether both classes are known, the first of a hole, the second of a shaft, and the size is within their ranges.</returns>
    public static bool TryFind(string name, double diameter, out Fit fit)
    {
        fit = default;
        if (name.Split('/') is not [[>= 'A' and <= 'Z', ..] holeClass, [>= 'a' and <= 'z', ..] shaftClass]) return false;
        if (!ToleranceClass.TryLimits(holeClass, diameter, out var hole) || !ToleranceClass.TryLimits(shaftClass, diameter, out var shaft)) return false;
        fit = new(hole, shaft);
        return true;
    }
}
