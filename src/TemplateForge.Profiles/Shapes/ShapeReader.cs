using System.Collections.Immutable;
using TemplateForge.Notation;

namespace TemplateForge.Profiles;

/// <summary>Reads a shape: one word of the language and what belongs to it.</summary>
internal static class ShapeReader
{
    private static readonly Field Shape = Field.Must("shape", Holds.Name, "the shape");
    private static readonly Field Turned = Field.May("turned", Holds.YesOrNo, "whether the copies turn as the line does; yes if nothing is said");

    /// <summary>The words whose fields stand in a group.</summary>
    private static readonly ImmutableArray<(Word Word, Func<Reading, Fields, ShapeRecipe> Read)> Groups =
    [
        (new("circle", "a circle",
            Field.Must("centre", Holds.Point, "its middle"),
            Field.Must("diameter", Holds.Expression, "its diameter")),
            (r, f) => new CircleRecipe(f.Place, r.Point(f, "centre"), r.Length(f, "diameter"))),
        (new("ellipse", "an ellipse",
            Field.Must("centre", Holds.Point, "its middle"),
            Field.Must("half_axes", Holds.TwoExpressions, "half its length along x and along y, before it is turned"),
            Field.May("turned", Holds.Expression, "the angle that it is turned by")),
            ReadEllipse),
        (new("rectangle", "a rectangle between two opposite corners",
            Field.Must("from", Holds.Point, "a corner"),
            Field.Must("to", Holds.Point, "the opposite corner"),
            Field.May("corner_radius", Holds.Expression, "radius of its corners")),
            (r, f) => new RectangleRecipe(
                f.Place, r.Point(f, "from"), r.Point(f, "to"), f.Optional("corner_radius", out var radius) ? r.Length(radius) : r.Standing("0 mm", f.Place))),
        (new("slot", "a slot with round ends",
            Field.Must("from", Holds.Point, "middle of one end"),
            Field.Must("to", Holds.Point, "middle of the other end"),
            Field.Must("width", Holds.Expression, "its width")),
            (r, f) => new SlotRecipe(f.Place, r.Point(f, "from"), r.Point(f, "to"), r.Length(f, "width"))),
        (new("subtracted", "what is in one shape and in none of some others",
            Field.Must("from", Holds.Name, "the shape"),
            Field.Must("take", Holds.ListOf(Holds.Name, 1), "what is taken away; each must lie on the shape"),
            Field.May("take_if_met", Holds.ListOf(Holds.Name, 1), "what is taken away where it lies on the shape")),
            (r, f) => new SubtractedRecipe(f.Place, r.Shape(f, "from"), ShapesOf(r, f, "take"), f.Optional("take_if_met", out var more) ? r.Shapes(more, atLeast: 1) : [])),
        (new("offset", "a shape grown all round, or shrunk",
            Shape,
            Field.Must("by", Holds.Expression, "how far; below 0 to shrink")),
            (r, f) => new OffsetRecipe(f.Place, r.Shape(f, "shape"), r.Length(f, "by"))),
        (new("swept", "everything that a shape passes over when it moves",
            Shape,
            Field.Must("by", Holds.Expression, "how far"),
            Field.Must("towards", Holds.Expression, "the direction")),
            (r, f) => new SweptRecipe(f.Place, r.Shape(f, "shape"), r.Length(f, "by"), r.Angle(f, "towards"))),
        (new("cleared", "what lies nearer to some components than a clearance, anywhere through the sheet",
            Field.Must("components", Holds.ListOf(Holds.Name, 1), "the components"),
            Field.Must("clearance", Holds.Expression, "the distance to be kept")),
            (r, f) => new ClearedRecipe(
                f.Place, f.Required("components", out var components) ? r.Components(components) : [], r.Length(f, "clearance"))),
        (new("rounded", "a shape with its corners rounded",
            Shape,
            Field.Must("radius", Holds.Expression, "radius of the corners"),
            Field.May("where_meet", Holds.ListOf(Holds.Name, 2, 2), "only the corners where the outlines of these two meet")),
            ReadRounded),
        (new("circles_along", "equal round holes evenly round a shape, the first straight above its middle",
            Field.Must("outline", Holds.Name, "the shape"),
            Field.Must("diameter", Holds.Expression, "diameter of the holes"),
            Field.Must("pitch", Holds.Expression, "distance between neighbours, as near as fits")),
            (r, f) => new CirclesAlongRecipe(f.Place, r.Shape(f, "outline"), r.Length(f, "diameter"), r.Length(f, "pitch"))),
        (new("row", "a shape and its copies in a straight row",
            Shape,
            Field.Must("count", Holds.Expression, "how many there are, the first one among them"),
            Field.Must("pitch", Holds.Expression, "distance from one to the next"),
            Field.Must("towards", Holds.Expression, "the direction")),
            (r, f) => new RowRecipe(f.Place, r.Shape(f, "shape"), r.Number(f, "count"), r.Length(f, "pitch"), r.Angle(f, "towards"))),
        (new("ring", "a shape and its copies round a circle",
            Shape,
            Field.Must("centre", Holds.Point, "the middle of the circle"),
            Field.Must("count", Holds.Expression, "how many there are, the first one among them"),
            Field.May("over", Holds.Expression, "the angle from the first to the last; evenly all round if nothing is said"),
            Turned),
            (r, f) => new RingRecipe(
                f.Place, r.Shape(f, "shape"), r.Point(f, "centre"), r.Number(f, "count"), f.Optional("over", out var over) ? [r.Angle(over)] : [], IsTurned(r, f))),
        (new("at_stations", "copies of a shape, one at each station",
            Shape,
            Field.Must("stations", Holds.Name, "the row of stations"),
            Field.May("held_at", Holds.Point, "the point of the shape that comes to lie on the stations; [0, 0] if nothing is said"),
            Turned),
            (r, f) => new AtStationsRecipe(
                f.Place,
                r.Shape(f, "shape"),
                f.Required("stations", out var row) ? r.Stations(row) : new("", f.Place),
                f.Optional("held_at", out var held) ? r.Point(held) : new CoordinatePoint(f.Place, r.Standing("0 mm", f.Place), r.Standing("0 mm", f.Place)),
                IsTurned(r, f))),
        (new("mirrored", "the mirror image of a shape",
            Shape,
            Field.Must("across", Holds.TwoPoints, "two points of the line that is the mirror")),
            (r, f) => r.Shape(f, "shape") is var shape && f.Required("across", out var across) && r.TwoPoints(across) is var (a, b)
                ? new MirroredRecipe(f.Place, shape, a, b)
                : Nothing(f.Place)),
        (new("moved", "a shape moved",
            Shape,
            Field.Must("by", Holds.TwoExpressions, "how far along and up")),
            ReadMoved),
        (new("turned", "a shape turned",
            Shape,
            Field.Must("by", Holds.Expression, "the angle, to the left above 0"),
            Field.Must("about", Holds.Point, "the point that stays where it is")),
            (r, f) => new TurnedRecipe(f.Place, r.Shape(f, "shape"), r.Angle(f, "by"), r.Point(f, "about"))),
        (new("split", "what lies on one side of a line, or one part of a shape that a path cuts in two",
            Shape,
            Field.May("line", Holds.TwoPoints, "two points of a straight line"),
            Field.May("keep", Holds.OneOf("left", "right"), "the side of the line that stays, as one goes from the first point to the second"),
            Field.May("along", Holds.Name, "a path that cuts the shape"),
            Field.May("part_at", Holds.Point, "a point of the part that stays")),
            ReadSplit),
        (new("unfolded", "a bent section laid flat: a blank that begins with the first leg at the bottom",
            Field.Must("section", Holds.Name, "the section"),
            Field.Must("across", Holds.Expression, "how long its bends are")),
            (r, f) => new UnfoldedRecipe(f.Place, f.Required("section", out var section) ? r.Section(section) : new("", f.Place), r.Length(f, "across"))),
        (CurvedPanelReader.Shape, CurvedPanelReader.ReadShape),
        (new("part", "one of the separate parts of a shape",
            Shape,
            Field.Must("at", Holds.Point, "a point of the part")),
            (r, f) => new PartRecipe(f.Place, r.Shape(f, "shape"), r.Point(f, "at"))),
        .. JoiningReader.Shapes,
    ];

    /// <summary>The words behind which something else stands: what an editor is told of it, and how it is read.</summary>
    private static readonly ImmutableArray<(string Name, string Meaning, Holds Holds, Func<Reading, Node, ShapeRecipe> Read)> Others =
    [
        ("outline", "lines and arcs, step by step", Holds.Defined("steps"), OutlineReader.Read),
        ("same_as", "another shape under a new name", Holds.Name, (r, n) => new SameRecipe(n.Place, r.Shape(n))),
        ("laid_flat", "a flanged sheet laid flat, its base where it was and its flanges round it; a wrap; or a transition, all its parts or one",
            Holds.AnyOf(Holds.Name, Holds.Group(TransitionReader.LaidFlat)), ReadLaidFlat),
        ("joined", "what is in any of some shapes", Holds.ListOf(Holds.Name, 2), (r, n) => new JoinedRecipe(n.Place, r.Shapes(n, atLeast: 2))),
        ("common", "what is in all of some shapes", Holds.ListOf(Holds.Name, 2), (r, n) => new CommonRecipe(n.Place, r.Shapes(n, atLeast: 2))),
    ];

    private static readonly ImmutableDictionary<string, Func<Reading, Node, ShapeRecipe>> Readers =
        Groups.Select(g => KeyValuePair.Create(g.Word.Name, WithFields(g.Word, g.Read)))
            .Concat(Others.Select(o => KeyValuePair.Create(o.Name, o.Read)))
            .ToImmutableDictionary(StringComparer.Ordinal);

    /// <summary>Every word for a shape as a field of a group that has exactly one.</summary>
    public static ImmutableArray<Field> Words { get; } =
    [
        .. Groups.Select(g => Field.May(g.Word.Name, Holds.Group(g.Word), g.Word.Meaning)),
        .. Others.Select(o => Field.May(o.Name, o.Holds, o.Meaning)),
    ];

    public static ShapeRecipe Read(Reading reading, Node node) =>
        Reading.IsChosen(node)
            ? new ChosenRecipe(node.Place, reading.Chosen(node, branch => ReadWord(reading, branch)))
            : ReadWord(reading, node);

    private static ShapeRecipe ReadWord(Reading reading, Node node)
    {
        if (node is not MappingNode { Entries: [var (word, thing)] })
        {
            reading.Complain(Wordings.ShapeWanted(node.Place, Readers.Keys));
            return Nothing(node.Place);
        }
        if (Readers.TryGetValue(word.Text, out var read)) return read(reading, thing);
        reading.Complain(Wordings.UnknownShapeWord(word.Place, word.Text, Readers.Keys));
        return Nothing(node.Place);
    }

    private static EllipseRecipe ReadEllipse(Reading reading, Fields fields)
    {
        var centre = reading.Point(fields, "centre");
        var (a, b) = TwoLengths(reading, fields, "half_axes");
        var turned = fields.Optional("turned", out var turn) ? reading.Angle(turn) : reading.Standing("0 deg", fields.Place);
        return new EllipseRecipe(fields.Place, centre, a, b, turned);
    }

    private static MovedRecipe ReadMoved(Reading reading, Fields fields)
    {
        var shape = reading.Shape(fields, "shape");
        var (along, up) = TwoLengths(reading, fields, "by");
        return new MovedRecipe(fields.Place, shape, along, up);
    }

    private static (Term, Term) TwoLengths(Reading reading, Fields fields, string key)
    {
        var zero = reading.Standing("0 mm", fields.Place);
        if (!fields.Required(key, out var node)) return (zero, zero);
        if (node is SequenceNode { Items: [var x, var y] }) return (reading.Length(x), reading.Length(y));
        reading.Complain(Wordings.TwoLengthsWanted(node.Place));
        return (zero, zero);
    }

    private static RoundedRecipe ReadRounded(Reading reading, Fields fields)
    {
        var shape = reading.Shape(fields, "shape");
        var radius = reading.Length(fields, "radius");
        ImmutableArray<ShapeName> meeting = [];
        if (fields.Optional("where_meet", out var where))
        {
            meeting = reading.Shapes(where, atLeast: 2);
            if (meeting.Length > 2) reading.Complain(Wordings.TwoShapesWanted(where.Place));
        }
        return new RoundedRecipe(fields.Place, shape, radius, meeting);
    }

    private static ShapeRecipe ReadSplit(Reading reading, Fields fields)
    {
        var shape = reading.Shape(fields, "shape");
        var (byLine, keeps) = (fields.Optional("line", out var line), fields.Optional("keep", out var keep));
        var (byPath, hasPart) = (fields.Optional("along", out var along), fields.Optional("part_at", out var part));
        if (byLine && keeps && !byPath && !hasPart)
        {
            var (from, to) = reading.TwoPoints(line);
            return new SideRecipe(fields.Place, shape, from, to, reading.OneOf(keep, "left", "right") == "left");
        }
        if (byPath && hasPart && !byLine && !keeps)
        {
            var name = along is ScalarNode scalar ? scalar.Text : "";
            if (!reading.Names.IsPath(name)) reading.Complain(Wordings.UnknownPath(along.Place, name, reading.Names.Paths));
            return new CutPartRecipe(fields.Place, shape, name, along.Place, reading.Point(part));
        }
        reading.Complain(Wordings.LineOrPathWanted(fields.Place));
        return Nothing(fields.Place);
    }

    private static ShapeRecipe ReadLaidFlat(Reading reading, Node node)
    {
        if (TransitionReader.TryReadLaidFlat(reading, node, out var laid)) return laid;
        var name = node is ScalarNode scalar ? scalar.Text : "";
        if (reading.Names.IsWrap(name)) return new LaidFlatWrapRecipe(node.Place, reading.Wrap(node));
        if (!reading.Names.IsFlanged(name)) reading.Complain(Wordings.UnknownFlat(node.Place, name, reading.Names.Flanged.Concat(reading.Names.Wraps).Concat(reading.Names.Transitions)));
        return new LaidFlatRecipe(node.Place, new(name, node.Place));
    }

    private static bool IsTurned(Reading reading, Fields fields) =>
        !fields.Optional("turned", out var turned) || reading.OneOf(turned, "yes", "no") == "yes";

    private static ImmutableArray<ShapeName> ShapesOf(Reading reading, Fields fields, string key) =>
        fields.Required(key, out var node) ? reading.Shapes(node, atLeast: 1) : [];

    private static SameRecipe Nothing(Place place) => new(place, new("", place));

    private static Func<Reading, Node, ShapeRecipe> WithFields(Word word, Func<Reading, Fields, ShapeRecipe> read) => (reading, node) =>
        reading.TryOpen(node, $"The {word.Name}", word, out var fields) ? read(reading, fields) : Nothing(node.Place);
}
