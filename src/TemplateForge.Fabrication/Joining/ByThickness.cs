using System.Collections.Immutable;

namespace TemplateForge.Fabrication;

/// <summary>A value that goes by the thickness of the sheet, a length in mm or a share: each row holds up to its thickness, and no row beyond the last.</summary>
public sealed class ByThickness
{
    // A thickness typed in inches comes to a row in mm only to within rounding.
    private const double Same = 1e-9;

    /// <param name="rows">Thicknesses in mm and the values that go with them; in any order.</param>
    /// <exception cref="ArgumentException">Two rows have one thickness.</exception>
    public ByThickness(params IEnumerable<(double UpTo, double Value)> rows)
    {
        Rows = [.. rows.OrderBy(r => r.UpTo)];
        if (Rows.Zip(Rows.Skip(1)).Any(pair => pair.First.UpTo == pair.Second.UpTo))
            throw new ArgumentException("Two rows have one thickness.", nameof(rows));
    }

    /// <summary>No row: nothing is said for any thickness.</summary>
    public static ByThickness Unstated { get; } = new();

    /// <summary>From the thinnest up.</summary>
    public ImmutableArray<(double UpTo, double Value)> Rows { get; }

    /// <summary>The value that goes with a sheet so thick: that of the first row that reaches so far.</summary>
    /// <returns>Whether a row reaches so far.</returns>
    public bool TryFind(double thickness, out double value)
    {
        foreach (var (upTo, found) in Rows)
        {
            if (thickness > upTo + Same) continue;
            value = found;
            return true;
        }
        value = 0;
        return false;
    }
}
