using System.Collections.Immutable;
using TemplateForge.Fabrication;
using TemplateForge.Notation;

namespace TemplateForge.Shop;

/// <summary>Reads <c>fasteners.yaml</c>: bolts and rivets, and what is drilled for each.</summary>
internal static class FastenerTable
{
    private static readonly ImmutableArray<(string Key, FastenerHole Hole)> BoltHoles =
    [
        ("clearance_fine", FastenerHole.ClearanceFine),
        ("clearance_medium", FastenerHole.ClearanceMedium),
        ("clearance_coarse", FastenerHole.ClearanceCoarse),
        ("tapping_drill", FastenerHole.Tapping),
    ];

    private static readonly ImmutableArray<(string Key, FastenerHole Hole)> RivetHoles = [("drill", FastenerHole.Rivet)];

    /// <summary>A shop that has no such table.</summary>
    public static (ImmutableDictionary<string, Fastener> Bolts, ImmutableDictionary<string, Fastener> Rivets) None { get; } =
        (ImmutableDictionary<string, Fastener>.Empty, ImmutableDictionary<string, Fastener>.Empty);

    public static (ImmutableDictionary<string, Fastener> Bolts, ImmutableDictionary<string, Fastener> Rivets) Read(
        Fields table, ICollection<Complaint> complaints)
    {
        var fasteners = (Read(table, "bolts", "bolt", BoltHoles, complaints), Read(table, "rivets", "rivet", RivetHoles, complaints));
        table.Done();
        return fasteners;
    }

    // Not every size has every hole: the sources give some of inch bolts only.
    private static ImmutableDictionary<string, Fastener> Read(
        Fields table, string key, string what, ImmutableArray<(string Key, FastenerHole Hole)> holes, ICollection<Complaint> complaints)
    {
        var found = ImmutableDictionary.CreateBuilder<string, Fastener>(StringComparer.Ordinal);
        foreach (var (name, entry) in ShopFields.Entries(table, key, what, complaints))
        {
            var given = holes.Where(h => entry.Optional(h.Key, out _))
                .ToImmutableDictionary(h => h.Hole, h => ShopFields.Length(entry, h.Key, least: 0.5, most: 100, complaints));
            if (given.IsEmpty) complaints.Add(Wordings.NoHole(name.Place, name.Text, holes.Select(h => h.Key)));
            found[name.Text] = new(name.Text, given);
            entry.RequiredText("source", out _); // for whoever reads the table
            entry.Done();
        }
        return found.ToImmutable();
    }
}
