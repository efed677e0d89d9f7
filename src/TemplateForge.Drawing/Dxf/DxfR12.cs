namespace TemplateForge.Drawing;

/// <summary>Release 12 (AC1009): a header, three tables and the entities are all that an old controller needs.</summary>
internal static class DxfR12
{
    /// <summary>What a comment says before the unit: the release itself has no place for one.</summary>
    public const string UnitComment = "Unit: ";

    public static DxfTags Of(LineDrawing drawing, DxfFormat format)
    {
        var tags = new DxfTags(format.Unit).Add(999, UnitComment + format.Unit.Name)
            .Add(0, "SECTION").Add(2, "HEADER").Add(9, "$ACADVER").Add(1, "AC1009");
        if (DxfEntities.Bounds(drawing) is { } bounds)
            tags.Add(9, "$EXTMIN").AddPointInSpace(10, bounds.Min).Add(9, "$EXTMAX").AddPointInSpace(10, bounds.Max);
        return tags.Add(0, "ENDSEC")
            .Add(Tables(drawing, format.Unit))
            .Add(DxfEntities.Section(drawing, new(), format))
            .Add(0, "EOF");
    }

    private static DxfTags Tables(LineDrawing drawing, DxfUnit unit)
    {
        var colours = DxfColour.OfLayers(drawing);
        var tags = new DxfTags(unit).Add(0, "SECTION").Add(2, "TABLES")
            .Add(0, "TABLE").Add(2, "LTYPE").Add(70, 1)
            .Add(0, "LTYPE").Add(2, "CONTINUOUS").Add(70, 0).Add(3, "Solid line").Add(72, 65).Add(73, 0).AddLength(40, 0)
            .Add(0, "ENDTAB")
            .Add(0, "TABLE").Add(2, "LAYER").Add(70, colours.Count + 1);
        AddLayer("0", 7);
        foreach (var (name, colour) in colours) AddLayer(name, colour);
        return tags.Add(0, "ENDTAB")
            .Add(0, "TABLE").Add(2, "STYLE").Add(70, 1)
            .Add(0, "STYLE").Add(2, "STANDARD").Add(70, 0).AddLength(40, 0).AddNumber(41, 1).AddNumber(50, 0).Add(71, 0).AddLength(42, 2.5)
            .Add(3, "txt").Add(4, "")
            .Add(0, "ENDTAB")
            .Add(0, "ENDSEC");

        void AddLayer(string name, int colour) => tags.Add(0, "LAYER").Add(2, name).Add(70, 0).Add(62, colour).Add(6, "CONTINUOUS");
    }
}
