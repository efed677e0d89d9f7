using System.Globalization;

namespace TemplateForge.Drawing;

/// <summary>Numbers as they stand in files: rounded, so that every build on every platform writes the same bytes.</summary>
internal static class Written
{
    /// <summary>A coordinate or length, rounded to 1e-8 mm.</summary>
    public static string Length(double mm) => Trimmed(mm.ToString("F8", CultureInfo.InvariantCulture));

    /// <summary>The same in another unit, so many mm long, rounded to 1e-10 of it.</summary>
    public static string LengthIn(double unit, double mm) => Trimmed((mm / unit).ToString("F10", CultureInfo.InvariantCulture));

    /// <summary>A bulge, or an angle in degrees, rounded to 1e-12.</summary>
    public static string Ratio(double value) => Trimmed(value.ToString("F12", CultureInfo.InvariantCulture));

    private static string Trimmed(string digits)
    {
        var trimmed = digits.TrimEnd('0').TrimEnd('.');
        return trimmed == "-0" ? "0" : trimmed;
    }
}
