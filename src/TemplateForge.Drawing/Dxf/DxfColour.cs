namespace TemplateForge.Drawing;

/// <summary>The seven colours that every reader of DXF knows by number.</summary>
internal static class DxfColour
{
    // 7 is drawn black on white and white on black, so it stands for both.
    private static readonly (int Index, Colour Colour)[] Indexed =
    [
        (7, Colour.Black), (7, Colour.White),
        (1, new(255, 0, 0)), (2, new(255, 255, 0)), (3, new(0, 255, 0)),
        (4, new(0, 255, 255)), (5, new(0, 0, 255)), (6, new(255, 0, 255)),
    ];

    /// <summary>The colour of each layer by its name, in their order. Layers that share a name are one layer here; it looks as the first of them does.</summary>
    public static OrderedDictionary<string, int> OfLayers(LineDrawing drawing)
    {
        var colours = new OrderedDictionary<string, int>(StringComparer.Ordinal);
        foreach (var layer in drawing.Layers) colours.TryAdd(layer.Name, Nearest(layer.Pen.Colour));
        return colours;
    }

    public static int Nearest(Colour colour) => Indexed.MinBy(i => DistanceSquared(i.Colour, colour)).Index;

    private static int DistanceSquared(Colour a, Colour b)
    {
        var (red, green, blue) = (a.Red - b.Red, a.Green - b.Green, a.Blue - b.Blue);
        return red * red + green * green + blue * blue;
    }
}
