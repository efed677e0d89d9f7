using System.Collections.Immutable;
using TemplateForge.Fabrication;
using TemplateForge.Notation;

namespace TemplateForge.Shop;

/// <summary>Reads the cutters of <c>machines.yaml</c>; what is left out has the value that <see cref="Cutter"/> gives it.</summary>
internal static class CutterTable
{
    public static ImmutableDictionary<string, Cutter> Read(
        Fields table, ImmutableDictionary<string, Caution> cautions, ICollection<Complaint> complaints)
    {
        var cutters = ImmutableDictionary.CreateBuilder<string, Cutter>(StringComparer.Ordinal);
        foreach (var (name, entry) in ShopFields.Entries(table, "cutters", "cutter", complaints))
            cutters[name.Text] = Read(name.Text, entry, cautions, complaints);
        return cutters.ToImmutable();
    }

    private static Cutter Read(string name, Fields entry, ImmutableDictionary<string, Caution> cautions, ICollection<Complaint> complaints)
    {
        // One width for all sheets, or one for each thickness.
        var isByThickness = entry.Optional("kerf", out var kerf) && kerf is MappingNode;
        var usual = new Cutter(
            name,
            ShopFields.Words(entry, "title"),
            isByThickness ? double.PositiveInfinity : ShopFields.LengthOr(double.PositiveInfinity, entry, "kerf", least: 0, most: 20, complaints),
            ShopFields.Length(entry, "least_hole", least: 0, most: 500, complaints));
        var cutter = usual with
        {
            Kerfs = isByThickness ? ShopFields.LengthByThickness(entry, "kerf", least: 0, most: 20, complaints) : ByThickness.Unstated,
            LeastHoleRatio = ShopFields.NumberOr(0, entry, "least_hole_ratio", least: 0, most: 20, complaints),
            Compensates = entry.Optional("compensates", out _) && ShopFields.Truth(entry, "compensates", complaints),
            PartOn = IsSecond(entry, "part_on", "left", "right", complaints) ? Side.Right : Side.Left,
            Lead = IsSecond(entry, "lead", "arc", "line", complaints) ? LeadKind.Line : LeadKind.Arc,
            LeadIn = ShopFields.LengthOr(usual.LeadIn, entry, "lead_in", least: 0.1, most: 100, complaints),
            LeadOut = ShopFields.LengthOr(usual.LeadOut, entry, "lead_out", least: 0, most: 100, complaints),
            LeastLead = ShopFields.LengthOr(usual.LeastLead, entry, "least_lead", least: 0.05, most: 100, complaints),
            Overcut = ShopFields.LengthOr(usual.Overcut, entry, "overcut", least: 0, most: 100, complaints),
            Tab = ShopFields.LengthOr(usual.Tab, entry, "tab", least: 0.1, most: 100, complaints),
            Spread = ShopFields.LengthOr(usual.Spread, entry, "spread", least: 0, most: 5000, complaints),
            Feed = ShopFields.NumberByThickness(entry, "feed", least: 1, most: 100_000, complaints),
            PierceTime = ShopFields.NumberByThickness(entry, "pierce_time", least: 0, most: 60, complaints),
            Families = Families(entry, complaints),
            Cautions = Cautions(entry, cautions, complaints),
            RapidFeed = ShopFields.NumberOr(usual.RapidFeed, entry, "rapid", least: 1, most: 1_000_000, complaints),
        };
        if (cutter.LeastLead > cutter.LeadIn)
            complaints.Add(Wordings.LeastLeadOverLead(entry.Place, Quantity.Length(cutter.LeastLead), Quantity.Length(cutter.LeadIn)));
        entry.RequiredText("source", out _); // for whoever reads the table
        entry.Done();
        return cutter;
    }

    private static ImmutableArray<MetalFamily> Families(Fields entry, ICollection<Complaint> complaints)
    {
        var found = ImmutableArray.CreateBuilder<MetalFamily>();
        if (!entry.OptionalList("cuts", out var list)) return [];
        foreach (var item in list.Items)
        {
            if (!item.TryText("A family of metals", complaints, out var name)) continue;
            if (MaterialTable.TryFamily(name.Text, out var family)) found.Add(family);
            else complaints.Add(Wordings.UnknownFamily(name.Place, name.Text, MaterialTable.FamilyNames));
        }
        return found.ToImmutable();
    }

    private static ImmutableArray<Caution> Cautions(Fields entry, ImmutableDictionary<string, Caution> known, ICollection<Complaint> complaints)
    {
        var found = ImmutableArray.CreateBuilder<Caution>();
        if (!entry.OptionalList("cautions", out var list)) return [];
        foreach (var item in list.Items)
        {
            if (!item.TryText("A caution", complaints, out var name)) continue;
            if (known.TryGetValue(name.Text, out var caution)) found.Add(caution);
            else complaints.Add(Wordings.UnknownCaution(name.Place, name.Text, known.Keys.Order(StringComparer.Ordinal)));
        }
        return found.ToImmutable();
    }

    // Whether the second of two words stands there; the first is meant where nothing does.
    private static bool IsSecond(Fields entry, string key, string first, string second, ICollection<Complaint> complaints)
    {
        if (!entry.OptionalText(key, out var word)) return false;
        if (word.Text != first && word.Text != second) complaints.Add(Wordings.OneOfTwoWanted(word.Place, key, word.Text, first, second));
        return word.Text == second;
    }
}
