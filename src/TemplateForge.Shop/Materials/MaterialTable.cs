using System.Collections.Immutable;
using TemplateForge.Fabrication;
using TemplateForge.Notation;

namespace TemplateForge.Shop;

/// <summary>Reads <c>materials.yaml</c>: sheet metals by the names that profiles call them.</summary>
internal static class MaterialTable
{
    public static ImmutableArray<string> FamilyNames { get; } = ["steel", "stainless steel", "aluminium", "other"];

    public static bool TryFamily(string word, out MetalFamily family)
    {
        var found = FamilyNames.IndexOf(word);
        family = (MetalFamily)Math.Max(0, found);
        return found >= 0;
    }

    public static ImmutableDictionary<string, Material> Read(Fields table, ICollection<Complaint> complaints)
    {
        var materials = ImmutableDictionary.CreateBuilder<string, Material>(StringComparer.Ordinal);
        foreach (var (name, entry) in ShopFields.Entries(table, "materials", "material", complaints))
        {
            var title = ShopFields.Words(entry, "title");
            var family = MetalFamily.Steel;
            if (entry.RequiredText("family", out var word) && !TryFamily(word.Text, out family)) complaints.Add(Wordings.UnknownFamily(word.Place, word.Text, FamilyNames));
            var density = ShopFields.Number(entry, "density", least: 1000, most: 12_000, complaints);
            var radius = ShopFields.Number(entry, "least_inside_radius", least: 0, most: 20, complaints);
            var factor = ShopFields.Number(entry, "k_factor", least: 0, most: 0.5, complaints);
            var stretch = ShopFields.Number(entry, "stretch_limit", least: 0.01, most: 1, complaints);
            var isCoated = ShopFields.Truth(entry, "zinc", complaints);
            materials[name.Text] = new(name.Text, title, family, density, radius, factor, stretch, isCoated)
            {
                Zinc = ReadZinc(entry, isCoated, complaints),
                ThinStretchLimits = ShopFields.NumberByThickness(entry, "thin_stretch_limits", least: 0.01, most: 1, complaints),
                GreatestYield = ShopFields.NumberOr(double.PositiveInfinity, entry, "greatest_yield", least: 10, most: 2000, complaints),
                SpringbackRow = ReadSpringback(entry, complaints),
                Thicknesses = ReadThicknesses(entry, complaints),
            };
            entry.RequiredText("source", out _); // for whoever reads the table
            entry.Done();
        }
        table.Done();
        return materials.ToImmutable();
    }

    // By its designation, or in g/m² as somebody has measured it.
    private static ZincCoating ReadZinc(Fields entry, bool isCoated, ICollection<Complaint> complaints)
    {
        if (!entry.Optional("coating", out var node)) return ZincCoating.None;
        if (!isCoated) complaints.Add(Wordings.CoatingWithoutZinc(node.Place));
        if (node is ScalarNode name)
        {
            if (!ZincDesignation.TryFind(name.Text, out var designated)) complaints.Add(Wordings.UnknownCoating(name.Place, name.Text, ZincDesignation.Names));
            return designated;
        }
        if (!entry.OptionalGroup("coating", out var group)) return ZincCoating.None;
        var coating = new Fields(group, "The coating", complaints);
        var both = ShopFields.Number(coating, "both_faces", least: 10, most: 1000, complaints);
        var one = ShopFields.Number(coating, "least_on_one_face", least: 3, most: 500, complaints);
        coating.Done();
        if (one > both / 2) complaints.Add(Wordings.FaceOverHalf(group.Place, one, both));
        return new(both, one);
    }

    private static string ReadSpringback(Fields entry, ICollection<Complaint> complaints)
    {
        if (!entry.OptionalText("springback", out var row)) return "";
        if (!Springback.Tabled.Contains(row.Text)) complaints.Add(Wordings.UnknownSpringback(row.Place, row.Text, Springback.Tabled));
        return row.Text;
    }

    // In mm, inches, or the gauge of a named system; a gauge alone is asked about.
    private static ImmutableArray<SheetThickness> ReadThicknesses(Fields entry, ICollection<Complaint> complaints)
    {
        if (!entry.OptionalList("thicknesses", out var list)) return [];
        var found = ImmutableArray.CreateBuilder<SheetThickness>();
        foreach (var item in list.Items)
        {
            if (item.TryText("A thickness", complaints, out var text)
                && ShopFields.TryWithin(text, "thicknesses", Unit.Millimetre, Quantity.Length(0.1), Quantity.Length(25), complaints, out var thickness))
                found.Add(new(thickness, text.Text.Trim()));
        }
        return [.. found.OrderBy(t => t.Millimetres)];
    }
}
