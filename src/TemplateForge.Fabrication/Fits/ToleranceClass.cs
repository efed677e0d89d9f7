using System.Collections.Immutable;

namespace TemplateForge.Fabrication;

/// <summary>What a letter and a grade, as H7 or g6, allow a hole or a shaft to be off its nominal size.</summary>
/// <remarks>ISO 286-2, up to 30 mm. Capitals are holes, small letters shafts; H and h begin at the nominal size.</remarks>
public static class ToleranceClass
{
    // "Over … up to and including": 6 mm belongs to the second row.
    private static readonly ImmutableArray<double> UpTo = [3, 6, 10, 18, 30];

    // In µm, lower and upper, a row for each range. H7 and h6 were read (BS 4500 data in a data book for aeronautical engineers, and tables of
    // steel makers for up to 3 mm), g6 over 6 mm as well, F7 over 10 mm as the mirror of shaft f7; the others are from memory, and keep to the
    // formulas of ISO 286-1.
    private static readonly ImmutableDictionary<string, ImmutableArray<(int Lower, int Upper)>> Table =
        ImmutableDictionary.CreateRange<string, ImmutableArray<(int, int)>>(StringComparer.Ordinal,
        [
            new("F7", [(6, 16), (10, 22), (13, 28), (16, 34), (20, 41)]),
            new("H7", [(0, 10), (0, 12), (0, 15), (0, 18), (0, 21)]),
            new("g6", [(-8, -2), (-12, -4), (-14, -5), (-17, -6), (-20, -7)]),
            new("h6", [(-6, 0), (-8, 0), (-9, 0), (-11, 0), (-13, 0)]),
            new("m6", [(2, 8), (4, 12), (6, 15), (7, 18), (8, 21)]),
            new("n6", [(4, 10), (8, 16), (10, 19), (12, 23), (15, 28)]),
        ]);

    /// <summary>The limit deviations of a class at a size.</summary>
    /// <param name="name">F7 or H7 of holes, g6, h6, m6 or n6 of shafts, as the standard writes them.</param>
    /// <param name="diameter">The nominal size in mm, more than 0.</param>
    /// <param name="limits">What was found.</param>
    /// <returns>Whether the class is known, and the size within its ranges.</returns>
    public static bool TryLimits(string name, double diameter, out LimitDeviations limits)
    {
        limits = default;
        var row = UpTo.TakeWhile(most => diameter > most).Count();
        if (!(diameter > 0) || row == UpTo.Length || !Table.TryGetValue(name, out var rows)) return false;
        limits = new(rows[row].Lower / 1000.0, rows[row].Upper / 1000.0);
        return true;
    }
}

/// <summary>How far a size may be off its nominal.</summary>
/// <param name="Lower">The least size less the nominal, in mm.</param>
/// <param name="Upper">The largest size less the nominal, in mm.</param>
public readonly record struct LimitDeviations(double Lower, double Upper);
