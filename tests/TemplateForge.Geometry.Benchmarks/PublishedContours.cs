using System.IO;
using System.Text.Json;

namespace TemplateForge.Geometry.Benchmarks;

/// <summary>Contours that libraries of arcs are measured on, read from a file, each offset by all distances of its list.</summary>
/// <remarks>
/// There a positive distance moves the contour to the left of its travel. Offsets that leave something and offsets that collapse
/// are two cases, since a collapse is over sooner in one library than in another.
/// </remarks>
internal static class PublishedContours
{
    public const string Table = "offsets";
    public const string Leaves = "leaves something";
    public const string Collapses = "collapses";

    /// <summary>How many times as fast as NetTopologySuite two libraries of arcs were measured to be: the older, and the newer.</summary>
    public static IReadOnlyDictionary<string, (double Floor, double Goal)> Marks { get; } = new Dictionary<string, (double, double)>
    {
        ["square-40"] = (12, 13),
        ["diamond-40"] = (9, 13),
        ["circle-r40"] = (57, 65),
        ["rounded-rect-40x20-r5"] = (13, 22),
        ["profile-6v"] = (16, 22),
        ["profile-11v"] = (13, 23),
        ["alternating-semicircle-ring-10"] = (43, 100),
        ["alternating-semicircle-ring-25"] = (60, 220),
        ["alternating-semicircle-ring-50"] = (37, 135),
        ["alternating-semicircle-ring-100"] = (30, 106),
    };

    public static IEnumerable<Case> Read(string path)
    {
        using var file = JsonDocument.Parse(File.ReadAllText(path));
        return [.. file.RootElement.EnumerateArray().SelectMany(Cases)];
    }

    private static IEnumerable<Case> Cases(JsonElement entry)
    {
        var name = entry.GetProperty("name").GetString()!;
        var vertices = entry.GetProperty("vertices").EnumerateArray()
            .Select(v => (At: new Point(v[0].GetDouble(), v[1].GetDouble()), Bulge: v[2].GetDouble())).ToArray();
        var contour = new Contour(vertices.Select((v, i) => Segment.Arc(v.At, vertices[(i + 1) % vertices.Length].At, v.Bulge)));
        var outwards = contour.IsCounterClockwise ? -1 : 1;
        var region = Region.Of(contour);
        var polygons = Polygons.Of(region);
        foreach (var group in entry.GetProperty("offsets").EnumerateArray().Select(d => d.GetDouble() * outwards)
            .GroupBy(d => region.Offset(d).IsEmpty).OrderBy(g => g.Key))
        {
            double[] distances = [.. group];
            yield return new(Table, name, group.Key ? Collapses : Leaves, vertices.Length, distances.Length,
                () => [.. distances.Select(d => region.Offset(d))],
                () => [.. distances.Select(d => polygons.Buffer(d))]);
        }
    }
}
