using System.Collections.Immutable;
using TemplateForge.Notation;

namespace TemplateForge.Profiles;

/// <summary>Reads lines to go along, points on them and rows of stations.</summary>
internal static class StationsReader
{
    private static readonly ImmutableArray<Field> Starting =
    [
        Field.May("starting_at", Holds.Point, "round an outline: next to this point; else straight above its middle"),
        Field.May("going", Holds.OneOf("clockwise", "anticlockwise"), "round an outline: the way, clockwise if nothing is said"),
    ];

    private static readonly ImmutableArray<Field> One =
    [
        Field.May("at", Holds.Expression, "distance from the start; half-way if nothing is said"),
        Field.May("from_end", Holds.Expression, "distance from the end"),
    ];

    private static readonly ImmutableArray<Field> Many =
    [
        Field.May("at", Holds.ListOf(Holds.Expression, 1), "distances from the start"),
        Field.May("from_end", Holds.ListOf(Holds.Expression, 1), "distances from the end"),
        Field.May("count", Holds.Expression, "so many, evenly"),
        Field.May("pitch", Holds.Expression, "evenly, as near to this apart as fits"),
        Field.May("most_apart", Holds.Expression, "evenly, no more than this apart"),
        Field.May("margin", Holds.Expression, "how far from both ends the first and the last stand"),
    ];

    private static readonly Word Along = new("along", "along the outline of a shape, or along a path",
        [Field.Must("along", Holds.Name, "a shape or a path"), .. Starting]);

    private static readonly Word Between = new("between", "straight from one point to another",
        Field.Must("between", Holds.TwoPoints, "two points"));

    public static ImmutableArray<Word> PointWords { get; } = [Along.With(One), Between.With(One)];

    public static ImmutableArray<Word> RowWords { get; } = [Along.With(Many), Between.With(Many)];

    public static PointTerm ReadPoint(Reading reading, Fields fields)
    {
        var line = ReadLine(reading, fields);
        ImmutableArray<Term> at = fields.Optional("at", out var start) ? [reading.Length(start)] : [];
        ImmutableArray<Term> fromEnd = fields.Optional("from_end", out var end) ? [reading.Length(end)] : [];
        if (at.Length + fromEnd.Length > 1) reading.Complain(Wordings.OneOfWanted(fields.Place, "at", "from_end"));
        return new PointAlong(fields.Place, line, at, fromEnd);
    }

    public static StationsRecipe Read(Reading reading, Node node)
    {
        var nothing = new ListedStations(node.Place, new LineOfPath(node.Place, ""), [], []);
        if (!reading.TryOpen(node, "The stations", RowWords, out var fields, out _)) return nothing;
        var line = ReadLine(reading, fields);
        var margin = fields.Optional("margin", out var aside) ? reading.Length(aside) : reading.Standing("0 mm", fields.Place);
        var isListed = fields.Optional("at", out var at) | fields.Optional("from_end", out var fromEnd);
        var even = new List<StationsRecipe>();
        if (fields.Optional("count", out var count)) even.Add(new EvenStations(fields.Place, line, Spacing.Count, reading.Number(count), margin));
        if (fields.Optional("pitch", out var pitch)) even.Add(new EvenStations(fields.Place, line, Spacing.Nearest, reading.Length(pitch), margin));
        if (fields.Optional("most_apart", out var most)) even.Add(new EvenStations(fields.Place, line, Spacing.MostApart, reading.Length(most), margin));
        if (even.Count + (isListed ? 1 : 0) != 1) reading.Complain(Wordings.SpacingWanted(fields.Place));
        if (even.Count > 0) return even[0];
        return new ListedStations(fields.Place, line, Distances(reading, fields, "at"), Distances(reading, fields, "from_end"));
    }

    private static ImmutableArray<Term> Distances(Reading reading, Fields fields, string key)
    {
        if (!fields.Optional(key, out var node)) return [];
        ImmutableArray<Term> found = [.. reading.Items(node).Take(Evaluation.MostRepeats + 1).Select(reading.Length)];
        if (found.IsEmpty && node is SequenceNode) reading.Complain(Wordings.TooFew(node.Place, 1, "distances"));
        if (found.Length > Evaluation.MostRepeats) reading.Complain(Wordings.TooManyRepeats(node.Place, found.Length));
        return found;
    }

    private static LineTerm ReadLine(Reading reading, Fields fields)
    {
        if (fields.Optional("between", out var between))
        {
            var (from, to) = reading.TwoPoints(between);
            return new LineBetween(between.Place, from, to);
        }
        fields.Optional("along", out var along);
        var startsSomewhere = fields.Optional("starting_at", out var start);
        var goes = fields.Optional("going", out var going);
        if (along is ScalarNode scalar && reading.Names.IsPath(scalar.Text))
        {
            if (startsSomewhere || goes) reading.Complain(Wordings.PathHasItsStart((startsSomewhere ? start : going).Place, scalar.Text));
            return new LineOfPath(along.Place, scalar.Text);
        }
        var clockwise = !goes || reading.OneOf(going, "clockwise", "anticlockwise") == "clockwise";
        return new LineRound(along.Place, reading.ShapeOrPath(along), startsSomewhere ? [reading.Point(start)] : [], clockwise);
    }
}
