using System.Globalization;

namespace TemplateForge.Drawing;

/// <summary>Numbers as they stand in files: rounded, so that every build on every platform writes the same bytes.</summary>
internal static class Written
{
    /// <summary>Every whole number below it is a double of its own, and ten times as much a long integer.</summary>
    private const double MostSteps = 9e14;

    /// <summary>A coordinate or length, rounded to 1e-8 mm.</summary>
    public static string Length(double mm) => Rounded(mm, 8);

    /// <summary>The same in another unit, so many mm long, rounded to 1e-10 of it.</summary>
    public static string LengthIn(double unit, double mm) => Rounded(mm / unit, 10);

    /// <summary>A bulge, or an angle in degrees, rounded to 1e-12.</summary>
    public static string Ratio(double value) => Rounded(value, 12);

    // What the runtime's formats F8, F10 and F12 write, in a third of their time, where a long integer holds all digits; two numbers in a
    // hundred thousand differ from theirs by one in the last digit, for the product is rounded too.
    private static string Rounded(double value, int decimals)
    {
        var scale = decimals switch { 8 => 1e8, 10 => 1e10, _ => 1e12 };
        if (!(Math.Abs(value) * scale < MostSteps)) return Trimmed(value.ToString($"F{decimals}", CultureInfo.InvariantCulture));
        var steps = (long)Math.Round(Math.Abs(value) * scale, MidpointRounding.AwayFromZero);
        var (whole, rest) = Math.DivRem(steps, (long)scale);
        Span<char> digits = stackalloc char[40];
        var length = 0;
        if (value < 0 && steps > 0) digits[length++] = '-';
        whole.TryFormat(digits[length..], out var written, provider: CultureInfo.InvariantCulture);
        length += written;
        if (rest > 0)
        {
            digits[length++] = '.';
            for (var left = rest; left > 0; left = left * 10 % (long)scale) digits[length++] = (char)('0' + left * 10 / (long)scale);
        }
        return digits[..length].ToString();
    }

    private static string Trimmed(string digits)
    {
        var trimmed = digits.TrimEnd('0').TrimEnd('.');
        return trimmed == "-0" ? "0" : trimmed;
    }
}
