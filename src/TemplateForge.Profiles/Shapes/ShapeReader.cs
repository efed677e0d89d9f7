using System.Collections.Immutable;
using TemplateForge.Notation;

namespace TemplateForge.Profiles;

/// <summary>Reads a shape: one word of the language and what belongs to it.</summary>
internal static class ShapeReader
{
    private static readonly ImmutableDictionary<string, Func<Reading, Node, ShapeRecipe>> Words =
        new Dictionary<string, Func<Reading, Node, ShapeRecipe>>(StringComparer.Ordinal)
        {
            ["circle"] = WithFields((r, f) => new CircleRecipe(f.Place, r.Point(f, "centre"), r.Length(f, "diameter"))),
            ["ellipse"] = WithFields(ReadEllipse),
            ["rectangle"] = WithFields((r, f) => new RectangleRecipe(
                f.Place,
                r.Point(f, "from"),
                r.Point(f, "to"),
                f.Optional("corner_radius", out var radius) ? r.Length(radius) : r.Standing("0 mm", f.Place))),
            ["slot"] = WithFields((r, f) => new SlotRecipe(f.Place, r.Point(f, "from"), r.Point(f, "to"), r.Length(f, "width"))),
            ["outline"] = OutlineReader.Read,
            ["same_as"] = (r, n) => new SameRecipe(n.Place, r.Shape(n)),
            ["joined"] = (r, n) => new JoinedRecipe(n.Place, r.Shapes(n, atLeast: 2)),
            ["common"] = (r, n) => new CommonRecipe(n.Place, r.Shapes(n, atLeast: 2)),
            ["subtracted"] = WithFields((r, f) => new SubtractedRecipe(f.Place, r.Shape(f, "from"), ShapesOf(r, f, "take"))),
            ["offset"] = WithFields((r, f) => new OffsetRecipe(f.Place, r.Shape(f, "shape"), r.Length(f, "by"))),
            ["swept"] = WithFields((r, f) => new SweptRecipe(f.Place, r.Shape(f, "shape"), r.Length(f, "by"), r.Angle(f, "towards"))),
            ["rounded"] = WithFields(ReadRounded),
            ["circles_along"] = WithFields((r, f) =>
                new CirclesAlongRecipe(f.Place, r.Shape(f, "outline"), r.Length(f, "diameter"), r.Length(f, "pitch"))),
        }.ToImmutableDictionary(StringComparer.Ordinal);

    public static ShapeRecipe Read(Reading reading, Node node) =>
        node is MappingNode mapping && mapping.Entries.Any(e => e.Key.Text == "by")
            ? new ChosenRecipe(node.Place, reading.Chosen(node, branch => ReadWord(reading, branch)))
            : ReadWord(reading, node);

    private static ShapeRecipe ReadWord(Reading reading, Node node)
    {
        if (node is not MappingNode { Entries: [var (word, thing)] })
        {
            reading.Complain(Wordings.ShapeWanted(node.Place, Words.Keys));
            return Nothing(node);
        }
        if (Words.TryGetValue(word.Text, out var read)) return read(reading, thing);
        reading.Complain(Wordings.UnknownShapeWord(word.Place, word.Text, Words.Keys));
        return Nothing(node);
    }

    private static ShapeRecipe ReadEllipse(Reading reading, Fields fields)
    {
        var centre = reading.Point(fields, "centre");
        var zero = reading.Standing("0 mm", fields.Place);
        var (a, b) = (zero, zero);
        if (fields.Required("half_axes", out var axes))
        {
            if (axes is SequenceNode { Items: [var x, var y] }) (a, b) = (reading.Length(x), reading.Length(y));
            else reading.Complain(Wordings.TwoLengthsWanted(axes.Place));
        }
        var turned = fields.Optional("turned", out var turn) ? reading.Angle(turn) : reading.Standing("0 deg", fields.Place);
        return new EllipseRecipe(fields.Place, centre, a, b, turned);
    }

    private static ShapeRecipe ReadRounded(Reading reading, Fields fields)
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

    private static ImmutableArray<ShapeName> ShapesOf(Reading reading, Fields fields, string key) =>
        fields.Required(key, out var node) ? reading.Shapes(node, atLeast: 1) : [];

    private static SameRecipe Nothing(Node node) => new(node.Place, new("", node.Place));

    private static Func<Reading, Node, ShapeRecipe> WithFields(Func<Reading, Fields, ShapeRecipe> read) => (reading, node) =>
    {
        if (node is not MappingNode mapping)
        {
            reading.Complain(Wordings.NamesWanted(node.Place));
            return Nothing(node);
        }
        var fields = reading.Fields(mapping, "The shape");
        var recipe = read(reading, fields);
        fields.Done();
        return recipe;
    };
}
