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

    public static ImmutableArray<Word> Words { get; } = [Furthest, Station, CurvedPanelReader.Point, .. StationsReader.PointWords];

    public static PointTerm Read(Reading reading, MappingNode mapping)
    {
        if (!reading.TryOpen(mapping, "The point", Words, out var fields, out var word)) return new NamedPoint(mapping.Place, "");
        if (word == Furthest) return new FurthestPoint(mapping.Place, reading.Shape(fields, "furthest"), reading.Angle(fields, "towards"));
        if (word == CurvedPanelReader.Point) return CurvedPanelReader.ReadPoint(reading, fields);
        if (word != Station) return StationsReader.ReadPoint(reading, fields);
        var number = reading.Number(fields, "station");
        return new StationPoint(mapping.Place, number, fields.Required("of", out var row) ? reading.Stations(row) : new("", mapping.Place));
    }
}
