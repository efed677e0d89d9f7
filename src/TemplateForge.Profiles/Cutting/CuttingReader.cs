using TemplateForge.Notation;

namespace TemplateForge.Profiles;

/// <summary>Reads what a piece asks of whoever cuts it.</summary>
internal static class CuttingReader
{
    public static Word Word { get; } = new("cutting", "what the piece asks of whoever cuts it on a machine",
        Field.May("tabs", Holds.Expression, "how many tabs hold each outline, evenly spread"),
        Field.May("tabs_at", Holds.ListOf(Holds.Point), "where tabs are wanted, each on the nearest cut"),
        Field.May("stop_holes", Holds.Expression, "diameter of the holes that are drilled in inside corners before they are cut"),
        Field.May("drill_marks", Holds.Expression, "round holes up to this diameter are marked to be drilled, and not cut"));

    public static CuttingRecipe Read(Node node, Reading reading)
    {
        if (!reading.TryOpen(node, "The cutting", Word, out var fields)) return new(node.Place, [], [], [], []);
        return new(
            fields.Place,
            fields.Optional("tabs", out var tabs) ? [reading.Number(tabs)] : [],
            fields.Optional("tabs_at", out var at) ? [.. reading.Items(at).Select(reading.Point)] : [],
            fields.Optional("stop_holes", out var stop) ? [reading.Length(stop)] : [],
            fields.Optional("drill_marks", out var drill) ? [reading.Length(drill)] : []);
    }
}
