using System.Collections.Immutable;
using TemplateForge.Drawing;
using TemplateForge.Fabrication;

namespace TemplateForge.Shop;

/// <summary>A shop's own tables, read from its YAML files and handed on as plain values.</summary>
public sealed record ShopTables
{
    /// <summary>Name of the shop, for the heading of its sheets.</summary>
    public required string Name { get; init; }

    /// <summary>The sheets that its printer takes, in the order of the table.</summary>
    public required ImmutableArray<Paper> Papers { get; init; }

    /// <summary>What is in the printer unless somebody says otherwise.</summary>
    public required Paper UsualPaper { get; init; }

    /// <summary>How far neighbouring pages lie over each other, in mm.</summary>
    public required double Overlap { get; init; }

    public required ImmutableDictionary<string, Caution> Cautions { get; init; }

    /// <summary>Sheet metals by the names that profiles call them; none where the shop has no such table.</summary>
    public ImmutableDictionary<string, Material> Materials { get; init; } = ImmutableDictionary<string, Material>.Empty;

    /// <summary>Brakes by their names, in the order of the table; the first is the one that is used.</summary>
    public ImmutableArray<(string Name, Brake Brake)> NamedBrakes { get; init; } = [];

    /// <summary>In the order of the table; the first is the one that is used.</summary>
    public ImmutableArray<Brake> Brakes => [.. NamedBrakes.Select(b => b.Brake)];

    /// <summary>What cuts sheet, by name.</summary>
    public ImmutableDictionary<string, Cutter> Cutters { get; init; } = ImmutableDictionary<string, Cutter>.Empty;

    /// <summary>Name of the cutter that is used unless somebody says otherwise; empty where cut files show finished edges.</summary>
    public string UsualCutter { get; init; } = "";

    /// <summary>Release and unit of cut files unless somebody says otherwise.</summary>
    public DxfFormat UsualDxf { get; init; } = DxfFormat.Usual;

    /// <summary>Welding processes by name.</summary>
    public ImmutableDictionary<string, WeldingProcess> Processes { get; init; } = ImmutableDictionary<string, WeldingProcess>.Empty;

    /// <summary>Bolts by their size.</summary>
    public ImmutableDictionary<string, Fastener> Bolts { get; init; } = ImmutableDictionary<string, Fastener>.Empty;

    /// <summary>Rivets by their size.</summary>
    public ImmutableDictionary<string, Fastener> Rivets { get; init; } = ImmutableDictionary<string, Fastener>.Empty;

    /// <summary>Steps of the work that are the same in many profiles, by name.</summary>
    public ImmutableDictionary<string, ShopStep> Steps { get; init; } = ImmutableDictionary<string, ShopStep>.Empty;

    /// <summary>Of what jig plates are made, by name.</summary>
    public ImmutableDictionary<string, PlateStock> JigPlates { get; init; } = ImmutableDictionary<string, PlateStock>.Empty;
}
