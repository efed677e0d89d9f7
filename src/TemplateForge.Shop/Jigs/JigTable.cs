using System.Collections.Immutable;
using TemplateForge.Fabrication;
using TemplateForge.Notation;

namespace TemplateForge.Shop;

/// <summary>Reads <c>jigs.yaml</c>: of what the shop makes jig plates.</summary>
internal static class JigTable
{
    private static readonly ImmutableArray<(string Word, GuideKind Kind)> Kinds =
        [("scriber", GuideKind.Scriber), ("bush", GuideKind.Bush), ("shroud", GuideKind.Shroud), ("drill", GuideKind.Drill)];

    public static ImmutableDictionary<string, PlateStock> Read(Fields table, ICollection<Complaint> complaints)
    {
        var plates = ImmutableDictionary.CreateBuilder<string, PlateStock>(StringComparer.Ordinal);
        foreach (var (name, entry) in ShopFields.Entries(table, "plates", "jig plate", complaints))
        {
            plates[name.Text] = new(
                name.Text,
                ShopFields.Words(entry, "title"),
                ShopFields.Length(entry, "thickness", least: 1, most: 50, complaints),
                ShopFields.Number(entry, "density", least: 100, most: 20_000, complaints),
                ShopFields.Truth(entry, "burns", complaints),
                Guides(entry, complaints),
                ShopFields.Truth(entry, "kept", complaints));
            entry.RequiredText("source", out _); // for whoever reads the table
            entry.Done();
        }
        table.Done();
        return plates.ToImmutable();
    }

    // A board that burns is not for a torch, whatever its list says.
    private static ImmutableArray<GuideKind> Guides(Fields entry, ICollection<Complaint> complaints)
    {
        if (!entry.RequiredList("guides", out var list)) return [];
        var found = ImmutableArray.CreateBuilder<GuideKind>();
        foreach (var item in list.Items)
        {
            var word = item is ScalarNode text ? text.Text : "";
            var known = Kinds.Where(k => k.Word == word).ToList();
            if (known.Count == 0) complaints.Add(Wordings.UnknownGuide(item.Place, word, Kinds.Select(k => k.Word)));
            else if (known[0].Kind == GuideKind.Shroud && entry.Optional("burns", out var burns) && burns is ScalarNode { Text: "yes" })
                complaints.Add(Wordings.BurnsUnderATorch(item.Place));
            else found.Add(known[0].Kind);
        }
        return found.ToImmutable();
    }
}
