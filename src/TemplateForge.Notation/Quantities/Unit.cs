using System.Collections.Immutable;

namespace TemplateForge.Notation;

/// <summary>A unit that a quantity may be written in.</summary>
public sealed record Unit
{
    private Unit(string name, Dimension dimension, double factor, params string[] alsoWritten) =>
        (Name, Dimension, Factor, Spellings) = (name, dimension, factor, [name, .. alsoWritten]);

    /// <summary>The short name: "mm", "in", "deg"; "none" for a plain number.</summary>
    public string Name { get; }

    public Dimension Dimension { get; }

    /// <summary>How many base units (mm, degrees, mm²) one of this unit is.</summary>
    public double Factor { get; }

    internal ImmutableArray<string> Spellings { get; }

    /// <summary>The unit of a plain number.</summary>
    public static Unit None { get; } = new("none", Dimension.Number, 1);

    public static Unit Millimetre { get; } =
        new("mm", Dimension.Length, 1, "millimetre", "millimetres", "millimeter", "millimeters");

    public static Unit Centimetre { get; } =
        new("cm", Dimension.Length, 10, "centimetre", "centimetres", "centimeter", "centimeters");

    public static Unit Metre { get; } = new("m", Dimension.Length, 1000, "metre", "metres", "meter", "meters");

    /// <summary>25.4 mm exactly: international yard and pound agreement, 1959.</summary>
    public static Unit Inch { get; } = new("in", Dimension.Length, 25.4, "inch", "inches", "\"", "″", "”");

    public static Unit Foot { get; } = new("ft", Dimension.Length, 304.8, "foot", "feet");

    public static Unit Thou { get; } = new("thou", Dimension.Length, 0.0254);

    public static Unit Degree { get; } = new("deg", Dimension.Angle, 1, "°", "º", "degree", "degrees");

    public static Unit Radian { get; } = new("rad", Dimension.Angle, 180 / Math.PI, "radian", "radians");

    public static Unit Turn { get; } = new("turn", Dimension.Angle, 360, "turns");

    public static Unit SquareMillimetre { get; } = new("mm²", Dimension.Area, 1, "mm2");

    /// <summary>Every unit that can be written behind a number.</summary>
    public static ImmutableArray<Unit> Known { get; } =
        [Millimetre, Centimetre, Metre, Inch, Foot, Thou, Degree, Radian, Turn, SquareMillimetre];

    /// <summary>The unit that is written so, capitals or not: <c>mm</c>, <c>in</c>, <c>"</c>, <c>°</c> and their full names.</summary>
    public static bool TryFind(string text, out Unit unit)
    {
        foreach (var known in Known)
        {
            if (known.Spellings.Contains(text, StringComparer.OrdinalIgnoreCase))
            {
                unit = known;
                return true;
            }
        }
        unit = None;
        return false;
    }

    public override string ToString() => Name;
}
