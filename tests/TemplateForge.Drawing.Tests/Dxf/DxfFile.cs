using System.Globalization;
using System.Text;

namespace TemplateForge.Drawing.Tests.Dxf;

/// <summary>A DXF as pairs, strictly: every code a number, nothing after the end.</summary>
internal sealed record DxfFile(IReadOnlyList<(int Code, string Value)> Pairs)
{
    public static DxfFile Of(LineDrawing drawing) => Of(drawing, DxfFormat.Usual);

    public static DxfFile Of(LineDrawing drawing, DxfFormat format)
    {
        var lines = Encoding.ASCII.GetString(DxfWriter.Write(drawing, format)).Split("\r\n");
        Assert.Equal("", lines[^1]);
        Assert.Equal(1, lines.Length % 2);
        Assert.DoesNotContain(lines, l => l.Contains('\n', StringComparison.Ordinal));
        return new([.. Enumerable.Range(0, lines.Length / 2).Select(i => (int.Parse(lines[2 * i], CultureInfo.InvariantCulture), lines[2 * i + 1]))]);
    }

    public IEnumerable<string> Sections => Pairs.Zip(Pairs.Skip(1)).Where(p => p.First == (0, "SECTION")).Select(p => p.Second.Value);

    /// <summary>The objects of a section: each begins at a group 0.</summary>
    public IReadOnlyList<DxfObject> Section(string name)
    {
        var start = Enumerable.Range(0, Pairs.Count - 1).Single(i => Pairs[i] == (0, "SECTION") && Pairs[i + 1] == (2, name)) + 2;
        var objects = new List<DxfObject>();
        for (var i = start; Pairs[i] != (0, "ENDSEC"); i++)
        {
            if (Pairs[i].Code == 0) objects.Add(new(Pairs[i].Value, []));
            else if (objects.Count > 0) objects[^1].Groups.Add(Pairs[i]);
        }
        return objects;
    }

    public string Header(string variable)
    {
        var at = Enumerable.Range(0, Pairs.Count).Single(i => Pairs[i] == (9, variable));
        return Pairs[at + 1].Value;
    }
}

internal sealed record DxfObject(string Type, List<(int Code, string Value)> Groups)
{
    public string this[int code] => Groups.First(g => g.Code == code).Value;

    public bool Has(int code) => Groups.Any(g => g.Code == code);

    public IReadOnlyList<double> Numbers(int code) => [.. Groups.Where(g => g.Code == code).Select(g => double.Parse(g.Value, CultureInfo.InvariantCulture))];

    public double Number(int code) => Assert.Single(Numbers(code));

    public int Handle => int.Parse(this[Type == "DIMSTYLE" ? 105 : 5], NumberStyles.HexNumber, CultureInfo.InvariantCulture);

    public int Owner => int.Parse(this[330], NumberStyles.HexNumber, CultureInfo.InvariantCulture);
}
