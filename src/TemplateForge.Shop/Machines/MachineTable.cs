using System.Collections.Immutable;
using TemplateForge.Fabrication;
using TemplateForge.Geometry;
using TemplateForge.Notation;

namespace TemplateForge.Shop;

/// <summary>Reads <c>machines.yaml</c>: what the shop bends and cuts with.</summary>
internal static class MachineTable
{
    /// <summary>A shop that has no such table.</summary>
    public static (ImmutableArray<(string Name, Brake Brake)> Brakes, ImmutableDictionary<string, Cutter> Cutters) None { get; } =
        ([], ImmutableDictionary<string, Cutter>.Empty);

    public static (ImmutableArray<(string Name, Brake Brake)> Brakes, ImmutableDictionary<string, Cutter> Cutters) Read(
        Fields table, ImmutableDictionary<string, Caution> cautions, ICollection<Complaint> complaints)
    {
        var machines = (ReadBrakes(table, complaints), ShopFields.Has(table, "cutters") ? CutterTable.Read(table, cautions, complaints) : ImmutableDictionary<string, Cutter>.Empty);
        table.Done();
        return machines;
    }

    private static ImmutableArray<(string Name, Brake Brake)> ReadBrakes(Fields table, ICollection<Complaint> complaints)
    {
        var brakes = ImmutableArray.CreateBuilder<(string, Brake)>();
        foreach (var (name, entry) in ShopFields.Entries(table, "brakes", "brake", complaints))
        {
            var brake = new Brake(
                ShopFields.Words(entry, "title"),
                ShopFields.Length(entry, "length", least: 50, most: 10_000, complaints),
                ShopFields.Length(entry, "table_depth", least: 1, most: 1000, complaints),
                ShopFields.Length(entry, "leaf_width", least: 1, most: 1000, complaints),
                ShopFields.Length(entry, "nose_depth", least: 1, most: 1000, complaints),
                ShopFields.Length(entry, "nose_height", least: 1, most: 1000, complaints),
                Angle.FromDegrees(ShopFields.Angle(entry, "nose_angle", least: 10, most: 80, complaints)))
            {
                GreatestThickness = ShopFields.LengthOr(double.PositiveInfinity, entry, "thickness", least: 0.3, most: 25, complaints),
                NoseRadius = ShopFields.LengthOr(0, entry, "nose_radius", least: 0, most: 50, complaints),
            };
            brakes.Add((name.Text, brake));
            entry.RequiredText("source", out _); // for whoever reads the table
            entry.Done();
        }
        return brakes.ToImmutable();
    }
}
