using System.Collections.Immutable;
using TemplateForge.Notation;

namespace TemplateForge.Profiles;

/// <summary>Reads a component: its form, where it stands, how it moves.</summary>
internal static class ComponentReader
{
    private static readonly Field Height = Field.May("height", Holds.Expression, "how far above the face that is up, below 0 behind it; 0 if nothing is said");
    private static readonly Field Towards = Field.May("towards", Holds.Expression, "the way that it leans; 0 if nothing is said");

    private static readonly Word RocksWord = new("rocks", "rocks as far to one side as to the other",
        Field.Must("by", Holds.Expression, "how far to each side"),
        Field.Must("about", Holds.Point, "where the axis that it rocks about goes through"),
        Height,
        Field.May("tilt", Holds.Expression, "how far that axis leans off square to the panel; 90 deg, along the panel, if nothing is said"),
        Towards);

    private static readonly Word TravelsWord = new("travels", "travels in a straight line from where it stands",
        Field.Must("by", Holds.Expression, "how far"),
        Field.May("tilt", Holds.Expression, "how far the way leans off straight away from you; 90 deg, along the panel, if nothing is said"),
        Towards);

    private static readonly ImmutableArray<Field> Common =
    [
        Field.Must("at", Holds.Point, "its reference point as seen on the face that is up"),
        Height,
        Field.May("tilt", Holds.Expression, "how far its axis leans off square to the panel; 0 if nothing is said"),
        Field.May("towards", Holds.Expression, "the way the axis moves as it goes through the sheet, away from you; 0 if nothing is said"),
        Field.May("turned", Holds.Expression, "how far it is turned about its own axis; 0 if nothing is said"),
        Field.Must("sheet", Holds.Expression, "thickness of the sheet that must clear it"),
        Field.May("rocks", Holds.Group(RocksWord), RocksWord.Meaning),
        Field.May("travels", Holds.Group(TravelsWord), TravelsWord.Meaning),
    ];

    private static readonly Word Revolved = new("half_profile", "a round component by what a half plane cuts out of it",
        [Field.Must("half_profile", Holds.AnyOf(Holds.Defined("steps"), Holds.Name), "steps or a shape: along the axis from the reference point, away from you; up the radius"), .. Common]);

    private static readonly Word Box = new("box", "a box about its reference point",
        [Field.Must("box", Holds.ListOf(Holds.Expression, 3, 3), "length, width, and height along its axis"), .. Common]);

    public static ImmutableArray<Word> Words { get; } = [Revolved, Box];

    public static ComponentRecipe Read(Reading reading, Node node)
    {
        reading.TryOpen(node, "The component", Words, out var fields, out var word);
        return new(
            fields.Place,
            ReadForm(reading, fields, word),
            new(
                fields.Place, reading.Point(fields, "at"), LengthOr(reading, fields, "height", "0 mm"), AngleOr(reading, fields, "tilt", "0 deg"),
                AngleOr(reading, fields, "towards", "0 deg"), AngleOr(reading, fields, "turned", "0 deg")),
            reading.Length(fields, "sheet"),
            fields.Optional("rocks", out var rocks) && reading.TryOpen(rocks, "What rocks", RocksWord, out var rocking) ? [ReadRocks(reading, rocking)] : [],
            fields.Optional("travels", out var travels) && reading.TryOpen(travels, "What travels", TravelsWord, out var travel) ? [ReadTravels(reading, travel)] : []);
    }

    private static FormRecipe ReadForm(Reading reading, Fields fields, Word word)
    {
        fields.Required(word.Name, out var form);
        if (word == Box)
        {
            if (form is SequenceNode { Items: [var length, var width, var height] })
                return new BoxRecipe(form.Place, [reading.Length(length), reading.Length(width), reading.Length(height)]);
            reading.Complain(Wordings.ThreeLengthsWanted(form.Place));
            return new BoxRecipe(form.Place, []);
        }
        return form is SequenceNode
            ? new RevolvedRecipe(form.Place, [OutlineReader.Read(reading, form)], [])
            : new RevolvedRecipe(form.Place, [], [reading.Shape(form)]);
    }

    private static RocksTerm ReadRocks(Reading reading, Fields fields) => new(
        reading.Angle(fields, "by"), reading.Point(fields, "about"), LengthOr(reading, fields, "height", "0 mm"),
        AngleOr(reading, fields, "tilt", "90 deg"), AngleOr(reading, fields, "towards", "0 deg"));

    private static TravelsTerm ReadTravels(Reading reading, Fields fields) => new(
        reading.Length(fields, "by"), AngleOr(reading, fields, "tilt", "90 deg"), AngleOr(reading, fields, "towards", "0 deg"));

    private static Term LengthOr(Reading reading, Fields fields, string key, string otherwise) =>
        fields.Optional(key, out var node) ? reading.Length(node) : reading.Standing(otherwise, fields.Place);

    private static Term AngleOr(Reading reading, Fields fields, string key, string otherwise) =>
        fields.Optional(key, out var node) ? reading.Angle(node) : reading.Standing(otherwise, fields.Place);
}
