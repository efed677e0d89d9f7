using TemplateForge.Notation;

namespace TemplateForge.Profiles;

/// <summary>Reads a panel that is curved one way, and what is carried onto it.</summary>
internal static class CurvedPanelReader
{
    private static readonly Holds Face = Holds.ByChoice(Holds.OneOf("outside", "inside"));

    public static Word Word { get; } = new("curved_panel", "a panel that is curved one way only",
        Field.Must("section", Holds.ByChoice(Holds.Name), "the path of its section: across to the right, outside above it"),
        Field.Must("thickness", Holds.Expression, "sheet thickness"),
        Field.May("measured_on", Face, "the face on which the section was measured; outside if nothing is said"),
        Field.May("lies_on", Face, "the face that the flat pattern is held to; outside if nothing is said"),
        Field.May("cut", Holds.ByChoice(Holds.OneOf("square", "straight")), "how an opening goes through: square to the sheet if nothing is said, or straight on as it is seen"),
        Field.May("datum", Holds.Expression, "how far across the drawing's line through [0, 0] lies; 0 if nothing is said"),
        Field.May("rulings", Holds.Expression, "the direction in the drawing in which the panel is straight; 0 deg if nothing is said"),
        Field.May("seen", Holds.ByChoice(Holds.OneOf("edge", "panel")), "whether one looks square at the straight edge, if nothing is said, or at the panel"),
        Field.May("square_at", Holds.Expression, "the place across at which one looks square at the panel; the datum if nothing is said"),
        Field.May("tilted", Holds.Expression, "how far off square to the straight edge one looks, turned about the rulings"));

    public static Word Shape { get; } = new("carried_onto", "a shape of the flat view, as it lies on a curved panel, laid flat",
        Field.Must("panel", Holds.Name, "the curved panel"), Field.Must("shape", Holds.Name, "the shape, as one looks at the outside"));

    public static Word Point { get; } = new("carried_onto", "a point of the flat view on the flat pattern",
        Field.Must("carried_onto", Holds.Name, "the curved panel"), Field.Must("point", Holds.Point, "the point, as one looks at the outside"));

    public static Word OnPiece { get; } = new("on_panel", "what is printed of the curved panel that the piece lies on",
        Field.Must("panel", Holds.Name, "the curved panel"),
        Field.May("steps", Holds.Expression, "steps along the panel that are compared with what is seen; 50 mm if nothing is said"));

    public static CurvedPanelRecipe Read(Reading reading, Node node)
    {
        reading.TryOpen(node, "The curved panel", Word, out var fields);
        var (looksSquare, isTilted) = (fields.Optional("square_at", out var square), fields.Optional("tilted", out var tilted));
        if (looksSquare && isTilted) reading.Complain(Wordings.OneOfWanted(tilted.Place, "square_at", "tilted"));
        if (fields.Optional("seen", out var seen) && isTilted) reading.Complain(Wordings.OneOfWanted(tilted.Place, "seen", "tilted"));
        var section = fields.Required("section", out var path) ? reading.Chosen(path, n => SectionPath(reading, n)) : Chosen<string>.Always("", fields.Place);
        return new CurvedPanelRecipe
        {
            Place = fields.Place,
            Section = section,
            Thickness = reading.Length(fields, "thickness"),
            IsMeasuredInside = IsOther(reading, fields, "measured_on", "outside", "inside"),
            LiesInside = IsOther(reading, fields, "lies_on", "outside", "inside"),
            IsCutStraight = IsOther(reading, fields, "cut", "square", "straight"),
            Datum = fields.Optional("datum", out var datum) ? reading.Length(datum) : reading.Standing("0 mm", fields.Place),
            Rulings = fields.Optional("rulings", out var rulings) ? reading.Angle(rulings) : reading.Standing("0 deg", fields.Place),
            SeesThePanel = looksSquare && seen is ScalarNode { Text: "" }
                ? Chosen<bool>.Always(true, square.Place)
                : IsOther(reading, fields, "seen", "edge", "panel"),
            SquareAt = looksSquare ? [reading.Length(square)] : [],
            Tilted = isTilted ? reading.Angle(tilted) : reading.Standing("0 deg", fields.Place),
        };
    }

    public static ShapeRecipe ReadShape(Reading reading, Fields fields) =>
        new CarriedRecipe(fields.Place, Panel(reading, fields, "panel"), reading.Shape(fields, "shape"));

    public static PointTerm ReadPoint(Reading reading, Fields fields) =>
        new CarriedPoint(fields.Place, Panel(reading, fields, "carried_onto"), reading.Point(fields, "point"));

    public static OnPanelRecipe ReadOnPiece(Reading reading, Node node)
    {
        reading.TryOpen(node, "What is printed of the panel", OnPiece, out var fields);
        return new(Panel(reading, fields, "panel"), fields.Optional("steps", out var steps) ? reading.Length(steps) : reading.Standing("50 mm", fields.Place));
    }

    private static string SectionPath(Reading reading, Node node)
    {
        var name = node is ScalarNode scalar ? scalar.Text : "";
        if (!reading.Names.IsPath(name)) reading.Complain(Wordings.UnknownPath(node.Place, name, reading.Names.Paths));
        return name;
    }

    private static CurvedPanelName Panel(Reading reading, Fields fields, string key)
    {
        if (!fields.Required(key, out var node)) return new("", fields.Place);
        var name = node is ScalarNode scalar ? scalar.Text : "";
        if (!reading.Names.IsCurvedPanel(name)) reading.Complain(Wordings.UnknownCurvedPanel(node.Place, name, reading.Names.CurvedPanels));
        return new(name, node.Place);
    }

    /// <summary>Whether it is the second of two words; the first if nothing is said.</summary>
    private static Chosen<bool> IsOther(Reading reading, Fields fields, string key, string usual, string other) =>
        fields.Optional(key, out var node)
            ? reading.Chosen(node, n => reading.OneOf(n, usual, other) == other)
            : Chosen<bool>.Always(false, fields.Place);
}
