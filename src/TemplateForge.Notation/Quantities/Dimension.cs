using System.Globalization;

namespace TemplateForge.Notation;

/// <summary>What a quantity is a quantity of: a length, an angle, an area, or any product of their powers.</summary>
/// <param name="LengthPower">0 for a plain number, 1 for a length, 2 for an area.</param>
/// <param name="AnglePower">1 for an angle.</param>
public readonly record struct Dimension(int LengthPower, int AnglePower)
{
    public static Dimension Number => default;
    public static Dimension Length => new(1, 0);
    public static Dimension Angle => new(0, 1);
    public static Dimension Area => new(2, 0);

    /// <summary>As it is said in a sentence: "a length", "an angle", "an area", "a plain number".</summary>
    public string Name => (LengthPower, AnglePower) switch
    {
        (0, 0) => "a plain number",
        (1, 0) => "a length",
        (0, 1) => "an angle",
        (2, 0) => "an area",
        (3, 0) => "a volume",
        _ => $"a quantity in {Symbol}",
    };

    /// <summary>The base unit as it is printed: mm, mm², °; empty for a plain number.</summary>
    public string Symbol => (LengthPower, AnglePower) switch
    {
        (_, 0) => Raised("mm", LengthPower),
        (0, _) => Raised("°", AnglePower),
        _ => Raised("mm", LengthPower) + "·" + Raised("°", AnglePower),
    };

    public static Dimension operator *(Dimension a, Dimension b) => new(a.LengthPower + b.LengthPower, a.AnglePower + b.AnglePower);

    public static Dimension operator /(Dimension a, Dimension b) => new(a.LengthPower - b.LengthPower, a.AnglePower - b.AnglePower);

    public Dimension Power(int exponent) => new(LengthPower * exponent, AnglePower * exponent);

    public static Dimension Multiply(Dimension left, Dimension right) => left * right;

    public static Dimension Divide(Dimension left, Dimension right) => left / right;

    private static string Raised(string unit, int power) => power switch
    {
        0 => "",
        1 => unit,
        2 => unit + "²",
        3 => unit + "³",
        _ => unit + "^" + power.ToString(CultureInfo.InvariantCulture),
    };
}
