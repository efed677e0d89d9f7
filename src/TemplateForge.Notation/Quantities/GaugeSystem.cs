using System.Collections.Immutable;

namespace TemplateForge.Notation;

/// <summary>A system of sheet gauges: what thickness a gauge number stands for, for 10 to 28 gauge.</summary>
/// <remarks>One number means as many thicknesses as there are systems, so a gauge is understood only with its system.</remarks>
public sealed class GaugeSystem
{
    public const int Least = 10;
    public const int Greatest = 28;

    /// <summary>One foot square of sheet, in ounces, from 10 gauge on: Act of 3 March 1893, 15 U.S.C. 206.</summary>
    private static readonly ImmutableArray<double> Ounces = [90, 80, 70, 60, 50, 45, 40, 36, 32, 28, 24, 22, 20, 18, 16, 14, 12, 11, 10];

    private static readonly ImmutableArray<double> Swg =
        [0.128, 0.116, 0.104, 0.092, 0.080, 0.072, 0.064, 0.056, 0.048, 0.040, 0.036, 0.032, 0.028, 0.024, 0.022, 0.020, 0.018, 0.0164, 0.0148];

    private static readonly ImmutableArray<double> Bwg =
        [0.134, 0.120, 0.109, 0.095, 0.083, 0.072, 0.065, 0.058, 0.049, 0.042, 0.035, 0.032, 0.028, 0.025, 0.022, 0.020, 0.018, 0.016, 0.014];

    private static readonly ImmutableArray<double> Bg =
    [
        0.1250, 0.1113, 0.0991, 0.0882, 0.0785, 0.0699, 0.0625, 0.0556, 0.0495, 0.0440, 0.0392, 0.0349, 0.03125,
        0.02782, 0.02476, 0.02204, 0.01961, 0.01745, 0.015625,
    ];

    private readonly Func<int, double> inches;

    private GaugeSystem(string name, string title, Func<int, double> inches, params string[] alsoWritten) =>
        (Name, Title, this.inches, Spellings) = (name, title, inches, [Plain(name), .. alsoWritten]);

    /// <summary>What is written behind the gauge: "steel", "swg".</summary>
    public string Name { get; }

    /// <summary>The system's full name.</summary>
    public string Title { get; }

    private ImmutableArray<string> Spellings { get; }

    /// <summary>Uncoated steel: the ounces of the 1893 act over 41.82 lb/ft² for each inch (AISC handbook, 7th edition).</summary>
    public static GaugeSystem Steel { get; } = new(
        "steel", "Manufacturers' Standard Gauge", gauge => Ounces[gauge - Least] / 16 / 41.82, "msg", "mildsteel");

    /// <summary>Galvanised steel with its coating: 2.5 ounces of zinc on the square foot, both faces together.</summary>
    /// <remarks>From memory; the formula gives every figure of the usual table.</remarks>
    public static GaugeSystem Galvanised { get; } = new(
        "galvanised", "galvanised sheet gauge", gauge => (Ounces[gauge - Least] + 2.5) / 16 / 41.82,
        "galvanized", "galv", "galvanisedsteel", "galvanizedsteel");

    /// <summary>Aluminium and other metals without iron: 0.005 × 92^((36 − n) / 39) in, ASTM B258.</summary>
    public static GaugeSystem Aluminium { get; } = new(
        "aluminium", "American Wire Gauge, also Brown & Sharpe", gauge => 0.005 * Math.Pow(92, (36.0 - gauge) / 39),
        "aluminum", "awg", "b&s", "brownandsharpe", "brown&sharpe");

    /// <summary>The act of 1893 itself: wrought iron of 40 lb/ft² for each inch.</summary>
    public static GaugeSystem UsStandard { get; } = new(
        "us-standard", "U.S. Standard Gauge", gauge => Ounces[gauge - Least] / 16 / 40, "usstandardgauge", "uss");

    /// <summary>Imperial Standard Wire Gauge, 1884; BS 3737.</summary>
    public static GaugeSystem Imperial { get; } = new("swg", "Imperial Standard Wire Gauge", gauge => Swg[gauge - Least]);

    /// <summary>Birmingham Wire Gauge, Holtzapffel's measurements.</summary>
    public static GaugeSystem BirminghamWire { get; } = new("bwg", "Birmingham Wire Gauge", gauge => Bwg[gauge - Least]);

    /// <summary>Birmingham sheet and hoop gauge, Order in Council of 10 July 1914; from 23 gauge on from memory.</summary>
    public static GaugeSystem BirminghamSheet { get; } = new("bg", "Birmingham sheet and hoop gauge", gauge => Bg[gauge - Least]);

    public static ImmutableArray<GaugeSystem> All { get; } =
        [Steel, Galvanised, Aluminium, UsStandard, Imperial, BirminghamWire, BirminghamSheet];

    /// <summary>Thickness in mm of this gauge, 10 to 28; formulas are not rounded to the four decimals of an inch that tables print.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The gauge lies outside 10 to 28.</exception>
    public double Thickness(int gauge)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(gauge, Least);
        ArgumentOutOfRangeException.ThrowIfGreaterThan(gauge, Greatest);
        return inches(gauge) * Unit.Inch.Factor;
    }

    /// <summary>The system that is written so, spaces, hyphens and capitals aside.</summary>
    public static bool TryFind(string text, out GaugeSystem system)
    {
        var written = Plain(text);
        foreach (var known in All)
        {
            if (known.Spellings.Contains(written))
            {
                system = known;
                return true;
            }
        }
        system = Steel;
        return false;
    }

    private static string Plain(string text) =>
        new(text.Where(c => c is not (' ' or '-' or '_' or '.')).Select(char.ToLowerInvariant).ToArray());
}
