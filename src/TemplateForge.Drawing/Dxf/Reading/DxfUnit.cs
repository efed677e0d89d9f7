using System.Collections.Immutable;

namespace TemplateForge.Drawing;

/// <summary>A unit of length that a DXF can declare.</summary>
/// <param name="Name">Its name.</param>
/// <param name="Number">Its number in the header, $INSUNITS.</param>
/// <param name="Millimetres">How many mm one of it is.</param>
public sealed record DxfUnit(string Name, int Number, double Millimetres)
{
    public static DxfUnit Millimetre { get; } = new("mm", 4, 1);
    public static DxfUnit Inch { get; } = new("in", 1, 25.4);

    /// <summary>Whether it is an inch or a multiple or part of one, against metric.</summary>
    public bool IsImperial => Name is "in" or "ft" or "yd" or "thou" or "µin";

    /// <summary>The units that a drawing of a part may be in, as the format numbers them.</summary>
    public static ImmutableArray<DxfUnit> All { get; } =
    [
        Inch, new("ft", 2, 304.8), Millimetre, new("cm", 5, 10), new("m", 6, 1000), new("µin", 8, 25.4e-6), new("thou", 9, 0.0254),
        new("yd", 10, 914.4), new("µm", 13, 0.001), new("dm", 14, 100),
    ];
}
