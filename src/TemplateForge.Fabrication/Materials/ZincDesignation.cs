using System.Collections.Immutable;

namespace TemplateForge.Fabrication;

/// <summary>Zinc on galvanised sheet by its designation, as Z275 or G90: the number is of both faces together.</summary>
public static class ZincDesignation
{
    // ASTM A653/A653M, table 1: g/m² by three spots on both faces and on one face, and by one spot on both.
    private static readonly ImmutableArray<(string Name, ZincCoating Coating)> Table =
    [
        ("Z90", new(90, 30) { LeastAtOneSpot = 75 }),
        ("Z120", new(120, 36) { LeastAtOneSpot = 90 }),
        ("Z180", new(180, 60) { LeastAtOneSpot = 150 }),
        ("Z275", new(275, 94) { LeastAtOneSpot = 235 }),
        ("Z350", new(350, 120) { LeastAtOneSpot = 300 }),
        ("Z450", new(450, 154) { LeastAtOneSpot = 385 }),
        ("Z600", new(600, 204) { LeastAtOneSpot = 510 }),
        ("G60", ZincCoating.InOunces(bothFaces: 0.60, leastOnOneFace: 0.20, leastAtOneSpot: 0.50)),
        ("G90", ZincCoating.InOunces(bothFaces: 0.90, leastOnOneFace: 0.32, leastAtOneSpot: 0.80)),
    ];

    /// <summary>Every designation, the metric ones first.</summary>
    public static ImmutableArray<string> Names { get; } = [.. Table.Select(row => row.Name)];

    /// <returns>Whether there is such a designation.</returns>
    public static bool TryFind(string name, out ZincCoating coating)
    {
        coating = Table.FirstOrDefault(row => row.Name == name).Coating;
        return Names.Contains(name);
    }
}
