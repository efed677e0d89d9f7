using System.Collections.Immutable;
using TemplateForge.Notation;

namespace TemplateForge.Profiles;

/// <summary>Reads a point that is found on something: on a shape, along a line, among stations.</summary>
internal static class PointReader
{
    private static readonly Word Furthest = new("furthest", "the point of a shape that lies furthest in some direction",
        Field.Must("furthest", Holds.Name, "the shape"), Field.Must("towards", Holds.Expression, "the direction"));

    private static readonly Word Station = new("station", "one of a row of stations",
        Field.Must("station", Holds.Expression, "its number, from 1"), Field.Must("of", Holds.Name, "the row"));

    private static readonly Word ClearanceOf = new("clearance_of", "the point of what stays that is nearest to a component",
        Field.Must("clearance_of", Holds.Name, "the shape of what stays"), Field.Must("to", Holds.Name, "the component"));

    private static readonly Word ClearanceIn = new("clearance_in", "the point all round an opening that is nearest to a component",
        Field.Must("clearance_in", Holds.Name, "the opening"), Field.Must("to", Holds.Name, "the component"));

    public static ImmutableArray<Word> Words { get; } = [Furthest, Station, ClearanceOf, ClearanceIn, CurvedPanelReader.Point, .. StationsReader.PointWords];

    public static PointTerm Read(Reading reading, MappingNode mapping)
    {
        if (!reading.TryOpen(mapping, "The point", Words, out var fields, out var word)) return new NamedPoint(mapping.Place, "");
        if (word == Furthest) return new FurthestPoint(mapping.Place, reading.Shape(fields, "furthest"), reading.Angle(fields, "towards"));
        if (word == ClearanceOf || word == ClearanceIn)
        {
            var shape = reading.Shape(fields, word.Name);
            return new ClearancePoint(
                mapping.Place, shape, word == ClearanceIn, fields.Required("to", out var to) ? reading.Component(to) : new("", mapping.Place));
        }
        if (word == CurvedPanelReader.Point) return CurvedPanelReader.ReadPoint(reading, fields);
        if (word != Station) return StationsReader.ReadPoint(reading, fields);
        var number = reading.Number(fields, "station");
        return new StationPoint(mapping.Place, number, fields.Required("of", out var row) ? reading.Stations(row) : new("", mapping.Place));
    }
}
