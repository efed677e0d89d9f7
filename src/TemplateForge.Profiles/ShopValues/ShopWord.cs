using System.Collections.Immutable;
using TemplateForge.Fabrication;
using TemplateForge.Notation;
using TemplateForge.Shop;

namespace TemplateForge.Profiles;

/// <summary>A value that a profile may ask of the shop's tables by its name.</summary>
/// <param name="Name">As the profile writes it.</param>
/// <param name="Table">The table that has it.</param>
/// <param name="Dimension">What it is a quantity of.</param>
/// <param name="Sizes">Names of the lengths by which it goes: none, a thickness, or an inside radius and a thickness.</param>
/// <param name="Meaning">What it says, in a few words.</param>
/// <param name="Find">Finds it for an entry and those lengths in mm; false where the table does not say.</param>
internal sealed record ShopWord(
    string Name, ShopTable Table, Dimension Dimension, ImmutableArray<string> Sizes, string Meaning, ShopWord.Finder Find)
{
    public const string Thickness = "thickness";
    public const string InsideRadius = "inside_radius";

    public delegate bool Finder(ShopTables shop, string entry, ImmutableArray<double> sizes, out double value);

    /// <summary>Every word, in the order of the tables.</summary>
    public static ImmutableArray<ShopWord> All { get; } =
    [
        OfMaterial("density", "in kg/m³", m => m.Density),
        OfMaterial("least_inside_radius", "of a bend, in thicknesses", m => m.LeastInsideRadius),
        OfMaterial("k_factor", "in thicknesses", m => m.NeutralLine),
        new("stretch_limit", ShopTable.Materials, Dimension.Number, [Thickness], "of an edge, as a share of its length", FindStretchLimit),
        OfMaterial("greatest_yield", "in N/mm²", m => m.GreatestYield),
        new("zinc_both_faces", ShopTable.Materials, Dimension.Number, [], "in g/m²", FindZinc),
        new("dipped_zinc", ShopTable.Materials, Dimension.Length, [Thickness], "on a face of a steel part that is galvanised when it is finished", FindDippedZinc),
        new("springback", ShopTable.Materials, Dimension.Number, [InsideRadius, Thickness], "the share of a bend's angle that stays", FindSpringback),
        new("next_thickness", ShopTable.Materials, Dimension.Length, [Thickness], "the thinnest sheet that is sold and no thinner", FindThickness),
        OfBrake("brake_length", "the longest bend", b => b.Length),
        OfBrake("brake_thickness", "the thickest sheet that it bends", b => b.GreatestThickness),
        OfBrake("nose_radius", "of the edge of its nose", b => b.NoseRadius),
        OfCutter("kerf", "width of the slot", c => c.Kerf),
        OfCutter("least_hole", "diameter of the least round hole", c => c.LeastHole),
        OfProcess("weld_gap", "between butt-welded edges, after tacking", p => p.WeldGap),
        OfProcess("plug_hole", "in the upper sheet of a plug weld", p => p.PlugHole),
        OfProcess("tack_pitch", "the most from tack to tack", p => p.TackPitch),
        OfProcess("weld_run", "the longest run of weld without a stop", p => p.WeldRun),
        OfProcess("zinc_strip", "cleaned on either side of a weld", p => p.ZincStrip),
        OfBolt("clearance_hole_fine", "ISO 273 fine", FastenerHole.ClearanceFine),
        OfBolt("clearance_hole", "ISO 273 medium", FastenerHole.ClearanceMedium),
        OfBolt("clearance_hole_coarse", "ISO 273 coarse", FastenerHole.ClearanceCoarse),
        OfBolt("tapping_drill", "before a thread is tapped", FastenerHole.Tapping),
        new("rivet_hole", ShopTable.Rivets, Dimension.Length, [], "drilled for a rivet", (ShopTables s, string e, ImmutableArray<double> _, out double v) =>
            s.Rivets[e].TryHole(FastenerHole.Rivet, out v)),
    ];

    private static ShopWord OfMaterial(string name, string meaning, Func<Material, double> value) =>
        Always(name, ShopTable.Materials, Dimension.Number, meaning, (shop, entry) => value(shop.Materials[entry]));

    private static ShopWord OfBrake(string name, string meaning, Func<Brake, double> value) =>
        Always(name, ShopTable.Brakes, Dimension.Length, meaning, (shop, entry) => value(shop.NamedBrakes.First(b => b.Name == entry).Brake));

    private static ShopWord OfCutter(string name, string meaning, Func<Cutter, double> value) =>
        Always(name, ShopTable.Cutters, Dimension.Length, meaning, (shop, entry) => value(shop.Cutters[entry]));

    private static ShopWord OfProcess(string name, string meaning, Func<WeldingProcess, double> value) =>
        Always(name, ShopTable.Processes, Dimension.Length, meaning, (shop, entry) => value(shop.Processes[entry]));

    private static ShopWord OfProcess(string name, string meaning, Func<WeldingProcess, ByThickness> rows) =>
        new(name, ShopTable.Processes, Dimension.Length, [Thickness], meaning, (ShopTables s, string e, ImmutableArray<double> sizes, out double v) =>
            rows(s.Processes[e]).TryFind(sizes[0], out v));

    private static ShopWord OfBolt(string name, string meaning, FastenerHole hole) =>
        new(name, ShopTable.Bolts, Dimension.Length, [], meaning, (ShopTables s, string e, ImmutableArray<double> _, out double v) =>
            s.Bolts[e].TryHole(hole, out v));

    // A number without end is one of which nobody has said anything.
    private static ShopWord Always(string name, ShopTable table, Dimension dimension, string meaning, Func<ShopTables, string, double> value) =>
        new(name, table, dimension, [], meaning, (ShopTables s, string e, ImmutableArray<double> _, out double v) =>
        {
            v = value(s, e);
            return double.IsFinite(v);
        });

    private static bool FindStretchLimit(ShopTables shop, string entry, ImmutableArray<double> sizes, out double value)
    {
        value = shop.Materials[entry].StretchLimitAt(sizes[0]);
        return true;
    }

    private static bool FindDippedZinc(ShopTables shop, string entry, ImmutableArray<double> sizes, out double value)
    {
        value = DippedZinc.On(sizes[0]).Mean / 1000;
        return shop.Materials[entry].Family == MetalFamily.Steel;
    }

    private static bool FindZinc(ShopTables shop, string entry, ImmutableArray<double> sizes, out double value)
    {
        value = shop.Materials[entry].Zinc.BothFaces;
        return value > 0 || !shop.Materials[entry].IsZincCoated;
    }

    private static bool FindSpringback(ShopTables shop, string entry, ImmutableArray<double> sizes, out double value)
    {
        var found = Springback.TryFromTable(shop.Materials[entry].SpringbackRow, sizes[0] / sizes[1], out var springback);
        value = springback.Factor;
        return found;
    }

    private static bool FindThickness(ShopTables shop, string entry, ImmutableArray<double> sizes, out double value)
    {
        var found = shop.Materials[entry].TryThickness(sizes[0], out var thickness);
        value = thickness.Millimetres;
        return found;
    }
}
