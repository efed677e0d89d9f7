using System.Collections.Immutable;
using TemplateForge.Notation;

namespace TemplateForge.Profiles;

/// <summary>Reads a wrap: a round tube or a cone that is to be laid flat.</summary>
internal static class WrapReader
{
    private const int MostHoles = 40;
    private static readonly string[] Faces = ["outside", "inside", "middle"];

    private static readonly Field Turned = Field.May("turned", Holds.Expression, "where the tube is shortest; 0 deg if nothing is said");

    private static readonly Word Mitre = new("mitre", "cut by a plane",
        Field.Must("mitre", Holds.Expression, "angle from a square cut, half of that of the joint"), Turned);

    private static readonly Word FishMouth = new("fish_mouth", "cut to sit on another round tube",
        Field.Must("fish_mouth", Holds.Expression, "outside diameter of the other tube"),
        Field.May("angle", Holds.Expression, "between the axes; 90 deg if nothing is said"),
        Field.May("offset", Holds.Expression, "how far the axes pass each other by; 0 if nothing is said"),
        Turned);

    private static readonly ImmutableArray<Word> Ends = [Mitre, FishMouth];

    private static readonly ImmutableArray<Field> Where =
    [
        Field.Must("along", Holds.Expression, "where its axis meets the tube's, or passes it: up from the lower end"),
        Field.May("round", Holds.Expression, "where it points to, round the tube; 0 deg if nothing is said"),
        Field.May("angle", Holds.Expression, "between the axes, below 90 deg where it leans to the upper end; 90 deg if nothing is said"),
        Field.May("offset", Holds.Expression, "how far the axes pass each other by; 0 if nothing is said"),
        Field.When,
    ];

    private static readonly Word Hole = new("hole", "a round hole through the wall", [Field.Must("hole", Holds.Expression, "its diameter"), .. Where]);

    private static readonly Word Footprint = new("footprint", "where another round tube stands on this one: to mark, not to cut",
        [Field.Must("footprint", Holds.Expression, "outside diameter of the other"), Field.Must("label", Holds.PlainWords, "what it is"), .. Where]);

    private static readonly ImmutableArray<Field> Common =
    [
        Field.May("seam", Holds.Expression, "where the pattern begins and ends; 180 deg if nothing is said"),
        Field.May("lap", Holds.Expression, "width of a tab past the seam; 0 if nothing is said"),
        Field.May("paper", Holds.Expression, "thickness of the paper that goes round; 0.1 mm if nothing is said"),
        Field.May("divisions", Holds.Expression, "how many lines along it are drawn, a multiple of 4; 12 if nothing is said"),
    ];

    private static readonly Word Tube = new("round_tube", "a round tube",
        [
            Field.Must("round_tube", Holds.Expression, "its outside diameter"),
            Field.Must("wall", Holds.Expression, "thickness of its wall; 0 for the ordinates of the textbooks"),
            Field.Must("length", Holds.Expression, "along its axis, from one end's point on it to the other's"),
            Field.May("lower", Holds.ByChoice(Holds.AnyOf([.. Ends.Select(Holds.Group)])), "its lower end; square if nothing is said"),
            Field.May("upper", Holds.ByChoice(Holds.AnyOf([.. Ends.Select(Holds.Group)])), "its upper end; square if nothing is said"),
            Field.May("holes", Holds.ListOf(Holds.Group(Hole)), "round holes through its wall"),
            Field.May("footprints", Holds.ListOf(Holds.Group(Footprint)), "where other round tubes stand on it"),
            Field.May("rolled", Holds.YesOrNo, "yes: it is itself rolled from sheet as thick as its wall; no if nothing is said"),
            .. Common,
        ]);

    private static readonly Word Cone = new("cone", "a cone, or what is left of one between two parallel circles",
        [
            Field.Must("cone", Holds.Expression, "diameter of its base, the larger circle"),
            Field.May("top", Holds.Expression, "diameter of the smaller circle; 0, a point, if nothing is said"),
            Field.Must("height", Holds.Expression, "from plane to plane"),
            Field.May("aside", Holds.Expression, "how far the middle of the top lies aside, towards 0 deg; 0 if nothing is said"),
            Field.May("sheet", Holds.Expression, "thickness, where it is rolled from sheet"),
            Field.May("measured", Holds.OneOf([.. Faces]), "the face of the sheet that is measured; outside if nothing is said"),
            .. Common,
        ]);

    public static ImmutableArray<Word> Words { get; } = [Tube, Cone];

    public static WrapRecipe Read(Reading reading, Node node)
    {
        if (!reading.TryOpen(node, "The wrap", Words, out var fields, out var word)) return Nothing(reading, node.Place);
        var common = new WrapCommon(
            fields.Place,
            Angle("seam", "180 deg"), Length("lap", "0 mm"), Length("paper", WrapCommon.OfficePaper),
            fields.Optional("divisions", out var divisions) ? reading.Number(divisions) : reading.Standing("12", fields.Place));
        if (word == Cone)
        {
            var hasSheet = fields.Optional("sheet", out var sheet);
            if (hasSheet && fields.Optional("paper", out var paper)) reading.Complain(Wordings.PaperOrSheet(paper.Place));
            var hasFace = fields.Optional("measured", out var face);
            if (hasFace && !hasSheet) reading.Complain(Wordings.PaperGoesRoundTheOutside(face.Place));
            return new ConeRecipe(
                common, reading.Length(fields, "cone"), Length("top", "0 mm"), reading.Length(fields, "height"), Length("aside", "0 mm"),
                hasSheet ? [reading.Length(sheet)] : [], hasFace ? reading.OneOf(face, Faces) : Faces[0]);
        }
        var rolled = fields.Optional("rolled", out var yes) && reading.OneOf(yes, "yes", "no") == "yes";
        if (rolled && fields.Optional("paper", out var both)) reading.Complain(Wordings.PaperOrSheet(both.Place));
        return new TubeRecipe(common, reading.Length(fields, "round_tube"), reading.Length(fields, "wall"), reading.Length(fields, "length"))
        {
            Lower = End("lower"),
            Upper = End("upper"),
            Holes = Few("holes", reading.List(fields, "holes", Hole, f => ReadHole(reading, f, "hole"))),
            Footprints = Few("footprints", reading.List(fields, "footprints", Footprint, f => ReadHole(reading, f, "footprint"))),
            IsRolled = rolled,
        };

        Term Length(string key, string standing) => fields.Optional(key, out var own) ? reading.Length(own) : reading.Standing(standing, fields.Place);

        Term Angle(string key, string standing) => fields.Optional(key, out var own) ? reading.Angle(own) : reading.Standing(standing, fields.Place);

        Chosen<TubeEndRecipe> End(string key) => fields.Optional(key, out var own)
            ? reading.Chosen(own, n => ReadEnd(reading, n))
            : Chosen<TubeEndRecipe>.Always(new SquareRecipe(), fields.Place);

        ImmutableArray<Conditional<TubeHoleRecipe>> Few(string key, ImmutableArray<Conditional<TubeHoleRecipe>> holes)
        {
            if (holes.Length <= MostHoles) return holes;
            reading.Complain(Wordings.TooMany(fields.Place, key, MostHoles));
            return [];
        }
    }

    private static ConeRecipe Nothing(Reading reading, Place place)
    {
        var one = reading.Standing("1 mm", place);
        return new(new(place, reading.Standing("0 deg", place), one, one, reading.Standing("4", place)), one, one, one, one, [], Faces[0]);
    }

    private static TubeEndRecipe ReadEnd(Reading reading, Node node)
    {
        if (!reading.TryOpen(node, "The end", Ends, out var fields, out var word)) return new SquareRecipe();
        var turned = Angle(reading, fields, "turned", "0 deg");
        if (word == Mitre) return new MitreRecipe(reading.Angle(fields, "mitre"), turned);
        return new FishMouthRecipe(
            fields.Place, reading.Length(fields, "fish_mouth"), Angle(reading, fields, "angle", "90 deg"), Offset(reading, fields), turned);
    }

    private static TubeHoleRecipe ReadHole(Reading reading, Fields fields, string diameter) => new(
        fields.Place, diameter == "footprint" ? reading.Words(fields, "label") : "", reading.Length(fields, diameter), reading.Length(fields, "along"),
        Angle(reading, fields, "round", "0 deg"), Angle(reading, fields, "angle", "90 deg"), Offset(reading, fields));

    private static Term Offset(Reading reading, Fields fields) =>
        fields.Optional("offset", out var offset) ? reading.Length(offset) : reading.Standing("0 mm", fields.Place);

    private static Term Angle(Reading reading, Fields fields, string key, string standing) =>
        fields.Optional(key, out var own) ? reading.Angle(own) : reading.Standing(standing, fields.Place);
}
