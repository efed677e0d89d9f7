using System.Collections.Frozen;
using System.Collections.Immutable;

namespace TemplateForge.Notation;

/// <summary>The functions that every expression knows.</summary>
/// <remarks>
/// <para><c>sin cos tan</c> of an angle, exact at multiples of 30 and 90 degrees (tan also at 45); <c>asin acos atan</c> of a plain
/// number and <c>atan2(up, along)</c> of two alike, which answer an angle.</para>
/// <para><c>sqrt</c> (of an area: a length), <c>hypot(a, b)</c> = sqrt(a² + b²), <c>abs</c>, <c>min</c> and <c>max</c> of two or more.</para>
/// <para><c>round floor ceil</c> to whole mm, degrees or numbers, or to the step that stands second: <c>round(x, 0.5 mm)</c>. Halves
/// are rounded away from zero. What is within a billionth of a whole step is that step, so that 0.9/0.3 is three and not four.</para>
/// </remarks>
internal static class Functions
{
    private static readonly FrozenDictionary<string, Function> Known = new Function[]
    {
        new("sin", Signature.OfAngle, 1, 1, a => Sin(a[0])),
        new("cos", Signature.OfAngle, 1, 1, a => Sin(90 - Math.Abs(a[0] % 360))),
        new("tan", Signature.OfAngle, 1, 1, a => Tan(a[0])),
        new("asin", Signature.ToAngle, 1, 1, a => Snapped(double.RadiansToDegrees(Math.Asin(a[0])))),
        new("acos", Signature.ToAngle, 1, 1, a => Snapped(double.RadiansToDegrees(Math.Acos(a[0])))),
        new("atan", Signature.ToAngle, 1, 1, a => Snapped(double.RadiansToDegrees(Math.Atan(a[0])))),
        new("atan2", Signature.DirectionOf, 2, 2, a => a[0] == 0 && a[1] == 0
            ? double.NaN
            : Snapped(double.RadiansToDegrees(Math.Atan2(a[0], a[1])))),
        new("sqrt", Signature.Root, 1, 1, a => Math.Sqrt(a[0])),
        new("abs", Signature.Alike, 1, 1, a => Math.Abs(a[0])),
        new("min", Signature.Alike, 2, int.MaxValue, a => a.Min()),
        new("max", Signature.Alike, 2, int.MaxValue, a => a.Max()),
        new("hypot", Signature.Alike, 2, 2, a => double.Hypot(a[0], a[1])),
        new("round", Signature.Alike, 1, 2, a => Stepped(a, x => Math.Round(x, MidpointRounding.AwayFromZero))),
        new("floor", Signature.Alike, 1, 2, a => Stepped(a, Math.Floor)),
        new("ceil", Signature.Alike, 1, 2, a => Stepped(a, Math.Ceiling)),
    }.ToFrozenDictionary(function => function.Name, StringComparer.Ordinal);

    public static IEnumerable<string> Names => Known.Keys.Order(StringComparer.Ordinal);

    public static bool IsKnown(string name) => Known.ContainsKey(name);

    public static bool TryFind(string name, out Function function)
    {
        if (Known.TryGetValue(name, out var found))
        {
            function = found;
            return true;
        }
        function = Known["abs"];
        return false;
    }

    /// <summary>Two numbers within a billionth of each other, or of one, are equal: sums of decimals are not exact.</summary>
    public static bool AreEqual(double a, double b) => Math.Abs(a - b) <= 1e-9 * Math.Max(1, Math.Max(Math.Abs(a), Math.Abs(b)));

    /// <summary>Sine of degrees; exact wherever it is 0, ±1/2 or ±1.</summary>
    private static double Sin(double degrees)
    {
        var within = degrees % 360;
        var size = Math.Abs(within);
        var sign = Math.Sign(within);
        if (size > 180)
            (size, sign) = (size - 180, -sign);
        if (size > 90)
            size = 180 - size;
        return sign * size switch
        {
            0 => 0,
            30 => 0.5,
            90 => 1,
            _ => Math.Sin(double.DegreesToRadians(size)),
        };
    }

    private static double Tan(double degrees)
    {
        var within = degrees % 180;
        return Math.Abs(within) switch
        {
            90 => double.NaN,
            45 or 135 => Math.Abs(within) == 45 ? Math.Sign(within) : -Math.Sign(within),
            _ => Sin(within) / Sin(90 - Math.Abs(within)),
        };
    }

    /// <summary>An angle within a few last digits of a whole multiple of 15° is that multiple.</summary>
    private static double Snapped(double degrees)
    {
        var whole = Math.Round(degrees / 15) * 15;
        return Math.Abs(degrees - whole) < 1e-13 * Math.Max(1, Math.Abs(degrees)) ? whole : degrees;
    }

    private static double Stepped(ImmutableArray<double> a, Func<double, double> rounded)
    {
        var step = a.Length > 1 ? a[1] : 1;
        if (!(step > 0))
            return double.NaN;
        var steps = a[0] / step;
        var whole = Math.Round(steps);
        return step * (AreEqual(steps, whole) ? whole : rounded(steps));
    }
}
