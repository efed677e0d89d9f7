using System.Globalization;
using System.Text;

namespace TemplateForge.Drawing.Tests.Dxf.Reading;

/// <summary>A DXF as a person would type it, pair by pair, to be read.</summary>
internal static class WrittenDxf
{
    public static string Entity(string name, params (int Code, object Value)[] pairs) =>
        Pair(0, name) + string.Concat(pairs.Select(p => Pair(p.Code, p.Value)));

    public static byte[] File(string entities, string header = "  9\n$INSUNITS\n 70\n4\n", string tables = "", string blocks = "") =>
        Encoding.UTF8.GetBytes(
            Section("HEADER", header) + Section("TABLES", tables) + Section("BLOCKS", blocks) + Section("ENTITIES", entities) + Pair(0, "EOF"));

    public static DxfContents Read(byte[] file)
    {
        Assert.True(DxfReader.TryRead(file, AskedUnit.None, DxfReader.Exact, out var contents, out var fault), $"{fault}");
        return contents;
    }

    public static string Pair(int code, object value) => string.Create(CultureInfo.InvariantCulture, $"{code}\n{value}\n");

    public static string Line(double x1, double y1, double x2, double y2, string layer = "0") =>
        Entity("LINE", (8, layer), (10, x1), (20, y1), (11, x2), (21, y2));

    private static string Section(string name, string inside) => Pair(0, "SECTION") + Pair(2, name) + inside + Pair(0, "ENDSEC");
}
