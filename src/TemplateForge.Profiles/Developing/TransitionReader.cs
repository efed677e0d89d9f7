using System.Diagnostics.CodeAnalysis;
using TemplateForge.Fabrication;
using TemplateForge.Notation;
using TemplateForge.Shop;

namespace TemplateForge.Profiles;

/// <summary>Reads a transition: two outlines, their places, and how the sheet between them is made.</summary>
internal static class TransitionReader
{
    private static readonly string[] Measured = ["outside", "inside", "middle"];
    private static readonly string[] Worked = ["rolled", "pressed"];

    private static readonly Word End = new("end", "an outline and its place",
        Field.Must("outline", Holds.Name, "the shape, or the path where the sheet does not close"),
        Field.May("title", Holds.PlainWords, "what it is called on the pattern"),
        Field.May("height", Holds.Expression, "where its [0, 0] lies, upwards; 0 if nothing is said"),
        Field.May("shift", Holds.TwoExpressions, "where its [0, 0] lies, seen from above"),
        Field.May("tilt", Holds.Expression, "how far its plane is out of level"),
        Field.May("towards", Holds.Expression, "the direction in which it sinks, seen from above"));

    public static Word Word { get; } = new("transition", "a sheet from one outline to another in another plane",
        Field.Must("lower", Holds.Group(End), "the outline where it begins"),
        Field.Must("upper", Holds.Group(End), "the outline where it ends"),
        Field.Must("thickness", Holds.Expression, "sheet thickness"),
        Field.Must("material", Holds.ByChoice(Holds.Name), "what it is made of, by its name in the shop's table or by a parameter"),
        Field.May("measured", Holds.OneOf([.. Measured]), "which face the outlines are measured on; outside if nothing is said"),
        Field.May("worked", Holds.OneOf([.. Worked]), "curved all the way or in flats; rolled if nothing is said"),
        Field.May("divisions", Holds.Expression, "press lines for 90°, or flats to a quarter circle; 6 if nothing is said"),
        Field.May("seam_at", Holds.Point, "the seam begins at the place on the lower outline nearest to this point"),
        Field.May("parts", Holds.Expression, "over how many parts it is spread; 1 if nothing is said"),
        Field.May("fits", Holds.TwoExpressions, "the sheet that each part must fit, for as few parts as can be"),
        Field.May("lap", Holds.Expression, "how wide each part laps over the next; 0 if nothing is said"),
        Field.May("lower_lap", Holds.Expression, "how far it goes on past the lower outline; 0 if nothing is said"),
        Field.May("upper_lap", Holds.Expression, "how far it goes on past the upper outline; 0 if nothing is said"));

    public static Word LaidFlat { get; } = new("transition", "a part of a transition, laid flat",
        Field.Must("transition", Holds.Name, "the transition"),
        Field.Must("part", Holds.Expression, "which part, from 1"));

    public static TransitionRecipe Read(Reading reading, Node node, ShopTables shop)
    {
        reading.TryOpen(node, "The transition", Word, out var fields);
        var zero = reading.Standing("0 mm", fields.Place);
        var hasFits = fields.Optional("fits", out var fits);
        if (hasFits && fields.Optional("parts", out var both)) reading.Complain(Wordings.PartsOrFits(both.Place));
        return new TransitionRecipe
        {
            Place = fields.Place,
            Lower = ReadEnd(reading, fields, "lower"),
            Upper = ReadEnd(reading, fields, "upper"),
            Thickness = reading.Length(fields, "thickness"),
            Material = fields.Required("material", out var material)
                ? reading.Material(material, shop)
                : Chosen<Material>.Always(Material.Unstated, fields.Place),
            Measured = fields.Optional("measured", out var measured) ? reading.OneOf(measured, Measured) : Measured[0],
            IsPressed = fields.Optional("worked", out var worked) && reading.OneOf(worked, Worked) == "pressed",
            Divisions = fields.Optional("divisions", out var divisions) ? reading.Number(divisions) : reading.Standing("6", fields.Place),
            SeamAt = fields.Optional("seam_at", out var seam) ? [reading.Point(seam)] : [],
            Parts = fields.Optional("parts", out var parts) ? reading.Number(parts) : reading.Standing("1", fields.Place),
            Fits = hasFits ? [TwoLengths(reading, fits)] : [],
            Lap = Optional("lap"),
            LowerLap = Optional("lower_lap"),
            UpperLap = Optional("upper_lap"),
        };

        Term Optional(string name) => fields.Optional(name, out var given) ? reading.Length(given) : zero;
    }

    /// <summary>A transition laid flat, all its parts or one; none where the name is of something else.</summary>
    public static bool TryReadLaidFlat(Reading reading, Node node, [MaybeNullWhen(false)] out ShapeRecipe recipe)
    {
        recipe = null;
        if (node is ScalarNode scalar)
        {
            if (reading.Names.IsTransition(scalar.Text)) recipe = new LaidFlatTransitionRecipe(node.Place, new(scalar.Text, node.Place), []);
            return recipe is not null;
        }
        reading.TryOpen(node, "What is laid flat", LaidFlat, out var fields);
        var name = fields.Required("transition", out var named) && named is ScalarNode word ? word.Text : "";
        if (!reading.Names.IsTransition(name)) reading.Complain(Wordings.UnknownTransition(named?.Place ?? node.Place, name, reading.Names.Transitions));
        recipe = new LaidFlatTransitionRecipe(node.Place, new(name, fields.Place), [reading.Number(fields, "part")]);
        return true;
    }

    private static TransitionEndRecipe ReadEnd(Reading reading, Fields fields, string key)
    {
        fields.Required(key, out var node);
        reading.TryOpen(node ?? new MappingNode(fields.Place, []), $"The {key} end", End, out var own);
        var (length, angle) = (reading.Standing("0 mm", own.Place), reading.Standing("0 deg", own.Place));
        var outline = own.Required("outline", out var named) && named is ScalarNode scalar ? scalar.Text : "";
        var (isShape, isPath) = (reading.Names.IsShape(outline), reading.Names.IsPath(outline));
        if (!isShape && !isPath) reading.Complain(Wordings.UnknownShapeOrPath(named?.Place ?? own.Place, outline, reading.Names.ShapesAndPaths));
        return new TransitionEndRecipe
        {
            Place = own.Place,
            Outline = new(outline, named?.Place ?? own.Place),
            IsPath = isPath,
            Title = own.Optional("title", out var title) ? reading.Words(title) : $"{key} edge",
            Height = own.Optional("height", out var height) ? reading.Length(height) : length,
            Shift = own.Optional("shift", out var shift) ? TwoLengths(reading, shift) : (length, length),
            Tilt = own.Optional("tilt", out var tilt) ? reading.Angle(tilt) : angle,
            Towards = own.Optional("towards", out var towards) ? reading.Angle(towards) : angle,
        };
    }

    private static (Term, Term) TwoLengths(Reading reading, Node node)
    {
        if (node is SequenceNode { Items: [var x, var y] }) return (reading.Length(x), reading.Length(y));
        reading.Complain(Wordings.TwoLengthsWanted(node.Place));
        var zero = reading.Standing("0 mm", node.Place);
        return (zero, zero);
    }
}
