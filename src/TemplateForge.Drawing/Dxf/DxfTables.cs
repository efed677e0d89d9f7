namespace TemplateForge.Drawing;

/// <summary>The tables and blocks that stand before the entities.</summary>
internal static class DxfTables
{
    public static DxfTags Section(LineDrawing drawing, DxfHandles handles, DxfUnit unit)
    {
        handles.TakeSpaces();
        var tags = new DxfTags(unit).Add(0, "SECTION").Add(2, "TABLES");
        AddTable("VPORT", ["*ACTIVE"], (name, entry) => AddViewport(name, drawing, entry));
        AddTable("LTYPE", ["ByBlock", "ByLayer", "Continuous"], (name, entry) => entry
            .Add(100, "AcDbLinetypeTableRecord").Add(2, name).Add(70, 0).Add(3, "").Add(72, 65).Add(73, 0).AddLength(40, 0));
        var colours = DxfColour.OfLayers(drawing);
        AddTable("LAYER", ["0", .. colours.Keys], (name, entry) => entry
            .Add(100, "AcDbLayerTableRecord").Add(2, name).Add(70, 0).Add(62, colours.GetValueOrDefault(name, 7)).Add(6, "Continuous"));
        AddTable("STYLE", ["Standard"], (name, entry) => entry
            .Add(100, "AcDbTextStyleTableRecord").Add(2, name).Add(70, 0).AddLength(40, 0).AddNumber(41, 1).AddNumber(50, 0)
            .Add(71, 0).AddLength(42, 2.5).Add(3, "txt").Add(4, ""));
        AddTable("VIEW", [], (_, _) => { });
        AddTable("UCS", [], (_, _) => { });
        AddTable("APPID", ["ACAD"], (name, entry) => entry.Add(100, "AcDbRegAppTableRecord").Add(2, name).Add(70, 0));
        AddTable("DIMSTYLE", ["Standard"], (name, entry) => entry.Add(100, "AcDbDimStyleTableRecord").Add(2, name).Add(70, 0));
        var spaces = new Dictionary<string, int>(StringComparer.Ordinal)
        {
            ["*Model_Space"] = handles.ModelSpace,
            ["*Paper_Space"] = handles.PaperSpace,
        };
        AddTable("BLOCK_RECORD", ["*Model_Space", "*Paper_Space"], (name, entry) => entry
            .Add(100, "AcDbBlockTableRecord").Add(2, name).Add(340, "0"), name => spaces[name]);
        return tags.Add(0, "ENDSEC");

        void AddTable(string name, string[] entries, Action<string, DxfTags> add, Func<string, int>? handleOf = null)
        {
            var table = handles.Take();
            tags.Add(0, "TABLE").Add(2, name).AddHandle(5, table).Add(330, "0").Add(100, "AcDbSymbolTable").Add(70, entries.Length);
            if (name == "DIMSTYLE") tags.Add(100, "AcDbDimStyleTable").Add(71, entries.Length);
            foreach (var entry in entries)
            {
                tags.Add(0, name)
                    .AddHandle(name == "DIMSTYLE" ? 105 : 5, handleOf is null ? handles.Take() : handleOf(entry))
                    .AddHandle(330, table).Add(100, "AcDbSymbolTableRecord");
                add(entry, tags);
            }
            tags.Add(0, "ENDTAB");
        }
    }

    public static DxfTags Blocks(DxfHandles handles, DxfUnit unit)
    {
        var tags = new DxfTags(unit).Add(0, "SECTION").Add(2, "BLOCKS");
        AddBlock("*Model_Space", handles.ModelSpace, onPaper: false);
        AddBlock("*Paper_Space", handles.PaperSpace, onPaper: true);
        return tags.Add(0, "ENDSEC");

        void AddBlock(string name, int owner, bool onPaper)
        {
            tags.Add(0, "BLOCK").AddHandle(5, handles.Take()).AddHandle(330, owner).Add(100, "AcDbEntity");
            if (onPaper) tags.Add(67, 1);
            tags.Add(8, "0").Add(100, "AcDbBlockBegin").Add(2, name).Add(70, 0).AddPointInSpace(10, default).Add(3, name).Add(1, "")
                .Add(0, "ENDBLK").AddHandle(5, handles.Take()).AddHandle(330, owner).Add(100, "AcDbEntity");
            if (onPaper) tags.Add(67, 1);
            tags.Add(8, "0").Add(100, "AcDbBlockEnd");
        }
    }

    /// <summary>What a viewer shows first: everything.</summary>
    private static void AddViewport(string name, LineDrawing drawing, DxfTags entry)
    {
        var shown = DxfEntities.Bounds(drawing) ?? new(default, new(100, 100));
        entry
            .Add(100, "AcDbViewportTableRecord").Add(2, name).Add(70, 0)
            .AddPoint(10, new(0, 0)).AddPoint(11, new(1, 1)).AddPoint(12, shown.Centre)
            .AddPoint(13, new(0, 0)).AddPoint(14, new(10, 10)).AddPoint(15, new(10, 10))
            .AddNumber(16, 0).AddNumber(26, 0).AddNumber(36, 1)
            .AddPointInSpace(17, default)
            .AddLength(40, Math.Max(1, Math.Max(shown.Height, shown.Width)) * 1.1).AddNumber(41, 1).AddNumber(42, 50)
            .AddLength(43, 0).AddLength(44, 0).AddNumber(50, 0).AddNumber(51, 0)
            .Add(71, 0).Add(72, 100).Add(73, 1).Add(74, 3).Add(75, 0).Add(76, 0).Add(77, 0).Add(78, 0);
    }
}
