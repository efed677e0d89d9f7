using System.Globalization;

namespace TemplateForge.Drawing;

/// <summary>Numbers as they stand in files: rounded, so that every build on every platform writes the same bytes.</summary>
internal static class Written
{
    /// <summary>A coordinate or length, rounded to 1e-8 mm.</summary>
    public static string Length(double mm) => Rounded(mm, 8);

    /// <summary>The same in another unit, so many mm long, rounded to 1e-10 of it.</summary>
    public static string LengthIn(double unit, double mm) => Rounded(mm / unit, 10);

    /// <summary>A bulge, or an angle in degrees, rounded to 1e-12.</summary>
    public static string Ratio(double value) => Rounded(value, 12);

    private static string Rounded(double value, int decimals)
    {
        Span<char> digits = stackalloc char[400]; // no double has more in front of its point
        var format = decimals switch { 8 => "F8", 10 => "F10", _ => "F12" };
        value.TryFormat(digits, out var length, format, CultureInfo.InvariantCulture);
        var trimmed = digits[..length].TrimEnd('0').TrimEnd('.');
        return trimmed is "-0" ? "0" : trimmed.ToString();
    }
}
