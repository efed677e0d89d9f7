using System.Collections.Immutable;
using TemplateForge.Fabrication;
using TemplateForge.Notation;

namespace TemplateForge.Shop;

/// <summary>Reads <c>processes.yaml</c>: how the shop welds.</summary>
internal static class ProcessTable
{
    public static ImmutableDictionary<string, WeldingProcess> Read(Fields table, ICollection<Complaint> complaints)
    {
        var processes = ImmutableDictionary.CreateBuilder<string, WeldingProcess>(StringComparer.Ordinal);
        foreach (var (name, entry) in ShopFields.Entries(table, "processes", "welding process", complaints))
        {
            processes[name.Text] = new(
                name.Text,
                ShopFields.Words(entry, "title"),
                ShopFields.LengthByThickness(entry, "weld_gap", least: 0, most: 20, complaints),
                TackPitch(entry, complaints),
                ShopFields.Length(entry, "zinc_strip", least: 0, most: 200, complaints),
                ShopFields.LengthByThickness(entry, "plug_hole", least: 2, most: 50, complaints),
                ShopFields.LengthByThickness(entry, "weld_run", least: 5, most: 500, complaints));
            entry.RequiredText("source", out _); // for whoever reads the table
            entry.Done();
        }
        table.Done();
        return processes.ToImmutable();
    }

    // One length is for every thickness: so it stands in tables from before it went by the sheet.
    private static ByThickness TackPitch(Fields entry, ICollection<Complaint> complaints) =>
        entry.Required("tack_pitch", out var pitch) && pitch is ScalarNode
            ? new((double.PositiveInfinity, ShopFields.Length(entry, "tack_pitch", least: 5, most: 500, complaints)))
            : ShopFields.LengthByThickness(entry, "tack_pitch", least: 5, most: 500, complaints);
}
