using System.Collections.Immutable;
using TemplateForge.Geometry;

namespace TemplateForge.Fabrication;

/// <summary>How far a bend comes back when it is let go: the angle that stays as a share of the angle that it was bent to.</summary>
public sealed record Springback
{
    // German trade tables, k_R = angle wanted / angle of the tool. The factors were read; the heads of the columns are from memory.
    private static readonly ImmutableArray<double> Ratios = [1, 1.6, 2.5, 4, 6.3, 10, 16, 25, 40, 63, 100];

    private static readonly ImmutableArray<(string Material, ImmutableArray<double> Factors)> Table =
    [
        ("DC04", [0.99, 0.99, 0.99, 0.98, 0.97, 0.97, 0.96, 0.94, 0.91, 0.87, 0.83]),
        ("DC01", [0.99, 0.99, 0.99, 0.97, 0.96, 0.96, 0.93, 0.90, 0.85, 0.77, 0.66]),
        ("X12CrNi18-8", [0.99, 0.98, 0.97, 0.95, 0.93, 0.89, 0.84, 0.76, 0.63]),
        ("EN AW-Al99.0", [0.99, 0.99, 0.99, 0.99, 0.98, 0.98, 0.97, 0.97, 0.96, 0.95, 0.93]),
        ("EN AW-AlCuMg1", [0.98, 0.98, 0.98, 0.98, 0.97, 0.97, 0.96, 0.95, 0.93, 0.91, 0.87]),
        ("EN AW-AlSiMgMn", [0.98, 0.98, 0.97, 0.96, 0.95, 0.93, 0.90, 0.86, 0.82, 0.76, 0.72]),
    ];

    /// <param name="factor">More than 0, at most 1.</param>
    /// <param name="source">Who says so: a trial bend, a table.</param>
    /// <exception cref="ArgumentOutOfRangeException">The factor lies outside its range.</exception>
    public Springback(double factor, string source)
    {
        if (!(factor is > 0 and <= 1)) throw new ArgumentOutOfRangeException(nameof(factor), factor, "A springback factor is more than 0, at most 1.");
        (Factor, Source) = (factor, source);
    }

    /// <summary>Of sheet of which nothing is known: it is bent as far as it is wanted.</summary>
    public static Springback Unstated { get; } = new(1, "not stated");

    /// <summary>Materials of the table.</summary>
    public static ImmutableArray<string> Tabled { get; } = [.. Table.Select(row => row.Material)];

    public double Factor { get; }
    public string Source { get; }

    /// <summary>The tabled factor, even in the logarithm of the ratio between columns; below the first column it is the first.</summary>
    /// <param name="material">One of <see cref="Tabled"/>.</param>
    /// <param name="ratio">Inside radius in thicknesses.</param>
    /// <param name="springback">The factor found, or <see cref="Unstated"/>.</param>
    /// <returns>Whether the table has the material, and the ratio does not pass its last column.</returns>
    public static bool TryFromTable(string material, double ratio, out Springback springback)
    {
        springback = Unstated;
        var factors = Table.FirstOrDefault(row => row.Material == material).Factors;
        if (factors.IsDefault || !(ratio >= 0 && ratio <= Ratios[factors.Length - 1])) return false;
        var upper = Enumerable.Range(0, factors.Length).First(i => ratio <= Ratios[i]);
        var factor = factors[upper];
        if (upper > 0)
        {
            var share = Math.Log(ratio / Ratios[upper - 1]) / Math.Log(Ratios[upper] / Ratios[upper - 1]);
            factor = factors[upper - 1] + share * (factors[upper] - factors[upper - 1]);
        }
        springback = new(factor, "German trade tables, k_R");
        return true;
    }

    /// <summary>How far to bend so that the wanted angle stays.</summary>
    /// <remarks>What is folded flat on itself or curled is pressed or rolled home, and cannot be bent further.</remarks>
    public Angle Overbend(Angle wanted) =>
        wanted >= Angle.HalfTurn ? wanted : Angle.FromRadians(Math.Min(Math.PI, wanted.Radians / Factor));
}
