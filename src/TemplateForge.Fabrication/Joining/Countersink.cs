namespace TemplateForge.Fabrication;

/// <summary>What a countersunk or counterbored hole keeps clear, so that the sheet round it is not drawn out of shape. Lengths in mm.</summary>
/// <remarks>Sheet-metal designers' handbook (read). A plain hole may lie nearer.</remarks>
public static class Countersink
{
    /// <summary>Least distance from its edge to a bend: 4 t + r.</summary>
    /// <param name="thickness">Of the sheet, more than 0.</param>
    /// <param name="insideRadius">Of the bend, 0 or more.</param>
    public static double FromBend(double thickness, double insideRadius) => FromEdge(thickness) + insideRadius;

    /// <summary>Least distance from its edge to the edge of the sheet: 4 t.</summary>
    /// <param name="thickness">Of the sheet, more than 0.</param>
    public static double FromEdge(double thickness) => 4 * thickness;

    /// <summary>Least distance between the edges of two: 8 t.</summary>
    /// <param name="thickness">Of the sheet, more than 0.</param>
    public static double FromAnother(double thickness) => 8 * thickness;
}
