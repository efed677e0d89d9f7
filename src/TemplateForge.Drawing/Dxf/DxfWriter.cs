using System.Buffers;
using System.Text;

namespace TemplateForge.Drawing;

/// <summary>Writes the strokes of a drawing as a DXF for a cutting table, with true arcs.</summary>
/// <remarks>
/// <para>Coordinates are rounded to 1e-8 mm (1e-10 in), bulges and degrees to 1e-12. Order and direction are the drawing's own, except that
/// the format knows a circle and a single arc only counter-clockwise. Lettering is strokes; fills and dashes are left out.</para>
/// <para>Handles, owners, tables and dictionaries are all there, because a reader that finds one missing may refuse the file or
/// repair it in silence. Lines end in CR LF, as older readers need.</para>
/// </remarks>
public static class DxfWriter
{
    private static readonly SearchValues<char> LayerCharacters = SearchValues.Create("ABCDEFGHIJKLMNOPQRSTUVWXYZ0123456789-");

    /// <summary>Release R2000 in millimetres.</summary>
    /// <exception cref="ArgumentException">A layer's name is not of ASCII capitals, digits and hyphens.</exception>
    public static byte[] Write(LineDrawing drawing) => Write(drawing, DxfFormat.Usual);

    /// <exception cref="ArgumentException">A layer's name is not of ASCII capitals, digits and hyphens, or longer than the release takes.</exception>
    public static byte[] Write(LineDrawing drawing, DxfFormat format)
    {
        var longest = format.Release == DxfRelease.R12 ? 31 : 255;
        foreach (var layer in drawing.Layers)
        {
            if (layer.Name is "" or "0" || layer.Name.Length > longest || layer.Name.AsSpan().ContainsAnyExcept(LayerCharacters))
                throw new ArgumentException($"“{layer.Name}” is no name for a layer: it takes up to {longest} ASCII capitals, digits and hyphens.", nameof(drawing));
        }

        return Encoding.ASCII.GetBytes((format.Release == DxfRelease.R12 ? DxfR12.Of(drawing, format) : R2000(drawing, format)).ToString());
    }

    private static DxfTags R2000(LineDrawing drawing, DxfFormat format)
    {
        // The header says which handle comes next, so it is made last and put first.
        var handles = new DxfHandles();
        var body = new DxfTags(format.Unit)
            .Add(DxfTables.Section(drawing, handles, format.Unit))
            .Add(DxfTables.Blocks(handles, format.Unit))
            .Add(DxfEntities.Section(drawing, handles, format))
            .Add(Objects(handles, format.Unit));
        return Header(drawing, handles.Next, format.Unit).Add(body).Add(0, "EOF");
    }

    private static DxfTags Header(LineDrawing drawing, int seed, DxfUnit unit)
    {
        var tags = new DxfTags(unit)
            .Add(0, "SECTION").Add(2, "HEADER")
            .Add(9, "$ACADVER").Add(1, "AC1015")
            .Add(9, "$DWGCODEPAGE").Add(3, "ANSI_1252")
            .Add(9, "$INSUNITS").Add(70, unit.Number)
            .Add(9, "$MEASUREMENT").Add(70, unit == DxfUnit.Inch ? 0 : 1)
            .Add(9, "$HANDSEED").AddHandle(5, seed);
        if (DxfEntities.Bounds(drawing) is { } bounds)
        {
            tags.Add(9, "$EXTMIN").AddPointInSpace(10, bounds.Min)
                .Add(9, "$EXTMAX").AddPointInSpace(10, bounds.Max);
        }
        return tags
            .Add(0, "ENDSEC")
            .Add(0, "SECTION").Add(2, "CLASSES").Add(0, "ENDSEC");
    }

    private static DxfTags Objects(DxfHandles handles, DxfUnit unit)
    {
        var (root, groups) = (handles.Take(), handles.Take());
        return new DxfTags(unit)
            .Add(0, "SECTION").Add(2, "OBJECTS")
            .Add(0, "DICTIONARY").AddHandle(5, root).Add(330, "0").Add(100, "AcDbDictionary").Add(281, 1)
            .Add(3, "ACAD_GROUP").AddHandle(350, groups)
            .Add(0, "DICTIONARY").AddHandle(5, groups).AddHandle(330, root).Add(100, "AcDbDictionary").Add(281, 1)
            .Add(0, "ENDSEC");
    }
}

/// <summary>Hands out the numbers by which the objects of one DXF know each other.</summary>
internal sealed class DxfHandles
{
    public int Next { get; private set; } = 1;
    public int ModelSpace { get; private set; }
    public int PaperSpace { get; private set; }

    public int Take() => Next++;

    public void TakeSpaces() => (ModelSpace, PaperSpace) = (Take(), Take());
}
