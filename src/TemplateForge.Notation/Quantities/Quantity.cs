using System.Globalization;

namespace TemplateForge.Notation;

/// <summary>A number of millimetres, degrees, square millimetres, or of nothing in particular.</summary>
/// <param name="Value">In base units: mm and degrees. Degrees, so that 8° stays 8 however often it is read and printed.</param>
/// <param name="Dimension">What it is a quantity of.</param>
public readonly record struct Quantity(double Value, Dimension Dimension)
{
    public static Quantity Length(double millimetres) => new(millimetres, Dimension.Length);

    public static Quantity Angle(double degrees) => new(degrees, Dimension.Angle);

    public static Quantity Area(double squareMillimetres) => new(squareMillimetres, Dimension.Area);

    public static Quantity Number(double value) => new(value, Dimension.Number);

    /// <exception cref="ArgumentException">The two are not of one dimension.</exception>
    public static Quantity operator +(Quantity a, Quantity b) => new(a.Value + b.Value, Shared(a, b));

    /// <exception cref="ArgumentException">The two are not of one dimension.</exception>
    public static Quantity operator -(Quantity a, Quantity b) => new(a.Value - b.Value, Shared(a, b));

    public static Quantity operator -(Quantity a) => a with { Value = -a.Value };

    public static Quantity operator *(Quantity a, Quantity b) => new(a.Value * b.Value, a.Dimension * b.Dimension);

    public static Quantity operator /(Quantity a, Quantity b) => new(a.Value / b.Value, a.Dimension / b.Dimension);

    public static Quantity Add(Quantity left, Quantity right) => left + right;

    public static Quantity Subtract(Quantity left, Quantity right) => left - right;

    public static Quantity Negate(Quantity item) => -item;

    public static Quantity Multiply(Quantity left, Quantity right) => left * right;

    public static Quantity Divide(Quantity left, Quantity right) => left / right;

    /// <summary>As it is shown: "190 mm", "1.4 mm", "8°", "12 mm²", "0.5"; three decimals at most.</summary>
    public override string ToString()
    {
        var number = Value.ToString("0.###", CultureInfo.InvariantCulture);
        if (number == "-0")
            number = "0";
        var symbol = Dimension.Symbol;
        return symbol is "" or "°" ? number + symbol : number + " " + symbol;
    }

    private static Dimension Shared(Quantity a, Quantity b) => a.Dimension == b.Dimension
        ? a.Dimension
        : throw new ArgumentException($"{a} is {a.Dimension.Name}, but {b} is {b.Dimension.Name}.", nameof(b));
}
