using System.Buffers;
using System.Text;

namespace TemplateForge.Drawing;

/// <summary>Writes the strokes of a drawing as a DXF for a cutting table: release R2000 (AC1015), millimetres, true arcs.</summary>
/// <remarks>
/// <para>Coordinates are rounded to 1e-8 mm, bulges and degrees to 1e-12. Order and direction are the drawing's own, except that
/// the format knows a circle and a single arc only counter-clockwise. Lettering is strokes; fills and dashes are left out.</para>
/// <para>Handles, owners, tables and dictionaries are all there, because a reader that finds one missing may refuse the file or
/// repair it in silence. Lines end in CR LF, as older readers need.</para>
/// </remarks>
public static class DxfWriter
{
    private static readonly SearchValues<char> LayerCharacters = SearchValues.Create("ABCDEFGHIJKLMNOPQRSTUVWXYZ0123456789-");

    /// <exception cref="ArgumentException">A layer's name is not of ASCII capitals, digits and hyphens.</exception>
    public static byte[] Write(LineDrawing drawing)
    {
        foreach (var layer in drawing.Layers)
        {
            if (layer.Name is "" or "0" || layer.Name.Length > 255 || layer.Name.AsSpan().ContainsAnyExcept(LayerCharacters))
                throw new ArgumentException($"“{layer.Name}” is no name for a layer: it takes ASCII capitals, digits and hyphens.", nameof(drawing));
        }

        // The header says which handle comes next, so it is made last and put first.
        var handles = new DxfHandles();
        var body = new DxfTags()
            .Add(DxfTables.Section(drawing, handles))
            .Add(DxfTables.Blocks(handles))
            .Add(DxfEntities.Section(drawing, handles))
            .Add(Objects(handles));
        var whole = Header(drawing, handles.Next).Add(body).Add(0, "EOF");
        return Encoding.ASCII.GetBytes(whole.ToString());
    }

    private static DxfTags Header(LineDrawing drawing, int seed)
    {
        var tags = new DxfTags()
            .Add(0, "SECTION").Add(2, "HEADER")
            .Add(9, "$ACADVER").Add(1, "AC1015")
            .Add(9, "$DWGCODEPAGE").Add(3, "ANSI_1252")
            .Add(9, "$INSUNITS").Add(70, 4)
            .Add(9, "$MEASUREMENT").Add(70, 1)
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

    private static DxfTags Objects(DxfHandles handles)
    {
        var (root, groups) = (handles.Take(), handles.Take());
        return new DxfTags()
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
