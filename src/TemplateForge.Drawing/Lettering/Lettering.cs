using TemplateForge.Geometry;

namespace TemplateForge.Drawing;

/// <summary>Words in the project's single-stroke alphabet, always to be read from the front.</summary>
/// <param name="Text">One line of text.</param>
/// <param name="At">Where the anchor is.</param>
/// <param name="Height">Height of the capitals in mm, more than 0.</param>
/// <param name="Turn">Direction of writing.</param>
/// <param name="Anchor">Which point of the text lies at <paramref name="At"/>.</param>
/// <exception cref="ArgumentOutOfRangeException">The height is not more than 0.</exception>
public sealed record Lettering(string Text, Point At, double Height, Angle Turn, Anchor Anchor) : Mark
{
    public double Height { get; init => field = Checked(value); } = Checked(Height);

    /// <summary>Bounds of the strokes, without the width of the pen; where there are none, the place of the anchor.</summary>
    public override Box Bounds => Alphabet.Bounds(this);

    private static double Checked(double height) => height > 0 && double.IsFinite(height)
        ? height
        : throw new ArgumentOutOfRangeException(nameof(height), height, "Letters are more than 0 mm high.");
}
