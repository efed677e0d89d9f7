using System.Collections.Immutable;
using System.Globalization;

namespace TemplateForge.Drawing;

/// <summary>An entity, a table's entry or a section's head: its name and the pairs that follow.</summary>
internal sealed record DxfRecord(string Name, int Line, ImmutableArray<DxfPair> Pairs)
{
    public string Layer => Text(8, "0");

    public bool IsOnPaper => Whole(67, 0) == 1;

    /// <summary>The way out of the plane in which its coordinates lie.</summary>
    public Spot Extrusion => Pairs.Any(p => p.Code == 210) ? At(210) : new(0, 0, 1);

    public string Text(int code, string otherwise) => Pairs.FirstOrDefault(p => p.Code == code) is { Line: > 0 } pair ? pair.Value : otherwise;

    public int Whole(int code, int otherwise) =>
        Pairs.FirstOrDefault(p => p.Code == code) is { Line: > 0 } pair && int.TryParse(pair.Value, NumberStyles.AllowLeadingSign, CultureInfo.InvariantCulture, out var number)
            ? number : otherwise;

    /// <summary>A number; not a number where the file has none that can be read.</summary>
    public double Number(int code, double otherwise) =>
        Pairs.FirstOrDefault(p => p.Code == code) is { Line: > 0 } pair ? Number(pair) : otherwise;

    public IEnumerable<double> Numbers(int code) => Pairs.Where(p => p.Code == code).Select(Number);

    /// <summary>A point whose y and z have the codes 10 and 20 above that of its x.</summary>
    public Spot At(int code) => new(Number(code, 0), Number(code + 10, 0), Number(code + 20, 0));

    public ImmutableArray<Spot> AllAt(int code)
    {
        var found = ImmutableArray.CreateBuilder<Spot>();
        foreach (var pair in Pairs)
        {
            if (pair.Code == code) found.Add(new(Number(pair), 0, 0));
            else if (found.Count > 0 && pair.Code == code + 10) found[^1] = found[^1] with { Y = Number(pair) };
            else if (found.Count > 0 && pair.Code == code + 20) found[^1] = found[^1] with { Z = Number(pair) };
        }
        return found.ToImmutable();
    }

    public static double Number(DxfPair pair) =>
        double.TryParse(pair.Value, NumberStyles.Float, CultureInfo.InvariantCulture, out var number) ? number : double.NaN;
}
