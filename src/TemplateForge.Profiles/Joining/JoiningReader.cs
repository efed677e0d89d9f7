using System.Collections.Immutable;
using TemplateForge.Fabrication;
using TemplateForge.Notation;

namespace TemplateForge.Profiles;

/// <summary>Reads how things are joined: seams welded in short runs, zinc stripped beside them, plug welds and patterns of holes.</summary>
internal static class JoiningReader
{
    private static readonly ImmutableArray<Field> Seams =
    [
        Field.Must("round", Holds.Name, "all round the shape"),
        Field.Must("along", Holds.Name, "along the path, from its start to its end"),
        Field.Must("between", Holds.TwoPoints, "straight between two points"),
    ];

    private static readonly ImmutableArray<Word> RunWords = SeamWords("welded in short runs",
        Field.Must("run_length", Holds.Expression, "the longest run that is laid without a stop"),
        Field.May("order", Holds.OneOf("back_step", "skip"), "one after the other, or far from each other first; back_step if nothing is said"),
        Field.May("most_apart", Holds.Expression, "the most between the tacks along the same seam, so that runs go from tack to tack"),
        Field.When);

    private static readonly ImmutableArray<Field> StripFields =
    [
        Field.Must("width", Holds.Expression, "on either side of the weld"),
        Field.May("within", Holds.Name, "the sheet that is stripped; the piece if nothing is said"),
        Field.When,
    ];

    private static readonly ImmutableArray<Word> ZincWords =
    [
        .. SeamWords("where zinc and paint come off on both faces, if the piece is coated", StripFields),
        new Word("over", "the same where things are welded all over each other", Field.Must("over", Holds.Name, "all over the shape, and round it")).With(StripFields),
    ];

    private static readonly Word Plugs = new("plug_welds", "plug welds, of which the distances are looked at",
        Field.Must("holes", Holds.Name, "the shape of their holes, round or slots with round ends"), Field.When);

    public static ImmutableArray<Field> PieceFields { get; } =
    [
        Field.May("plug_welds", Holds.ListOf(Holds.Group(Plugs)), "its plug welds"),
        Field.May("weld_runs", Holds.ListOf(Holds.AnyOf([.. RunWords.Select(Holds.Group)])), "seams that are welded in short numbered runs"),
        Field.May("strip_zinc", Holds.ListOf(Holds.AnyOf([.. ZincWords.Select(Holds.Group)])), "seams beside which zinc and paint come off, if the piece is zinc-coated"),
    ];

    public static Word TackWord { get; } = new("holes", "a number at every hole of a shape: from their middle, then each far from those before it",
        Field.Must("holes", Holds.Name, "the shape of the holes"));

    /// <summary>Words for shapes: what may stand in each and how it is read.</summary>
    public static ImmutableArray<(Word Word, Func<Reading, Fields, ShapeRecipe> Read)> Shapes { get; } =
    [
        (new("holes_over", "equal round holes over a shape, spread evenly",
            Field.Must("shape", Holds.Name, "the shape"),
            Field.Must("diameter", Holds.Expression, "diameter of the holes"),
            Field.Must("pitch", Holds.Expression, "the least from the middle of one to the middle of any other"),
            Field.Must("edge_distance", Holds.Expression, "the least from the middle of one to the edge of the shape"),
            Field.May("pattern", Holds.OneOf("square", "staggered"), "how rows stand to each other; square if nothing is said")),
            (r, f) => new HolesOverRecipe(
                f.Place, r.Shape(f, "shape"), r.Length(f, "diameter"), r.Length(f, "pitch"), r.Length(f, "edge_distance"), OneOf(r, f, "pattern", "square", "staggered") == "staggered")),
        (new("holes_along", "equal round holes in a row beside an edge, spread evenly",
            Field.May("along", Holds.Name, "the path of the edge"),
            Field.May("between", Holds.TwoPoints, "the two ends of the edge"),
            Field.Must("diameter", Holds.Expression, "diameter of the holes"),
            Field.Must("pitch", Holds.Expression, "the least from one to the next"),
            Field.May("inset", Holds.Expression, "from the edge to the middles of the holes; on it if nothing is said"),
            Field.May("side", Holds.OneOf("left", "right"), "the side of the edge, as one goes along it; left if nothing is said"),
            Field.May("margin", Holds.Expression, "from both ends of the row to the first and the last")),
            ReadHolesAlong),
        (new("beside_seam", "all that lies beside a seam, on a sheet",
            Field.May("round", Holds.Name, "all round the shape"),
            Field.May("along", Holds.Name, "along the path"),
            Field.May("between", Holds.TwoPoints, "straight between two points"),
            Field.May("over", Holds.Name, "all over the shape, and round it"),
            Field.Must("width", Holds.Expression, "on either side of the seam"),
            Field.Must("within", Holds.Name, "the sheet")),
            (r, f) => new BesideSeamRecipe(f.Place, ReadStrip(r, f, [r.Shape(f, "within")]))),
    ];

    public static ImmutableArray<Conditional<WeldRunsRecipe>> WeldRuns(Reading reading, Fields piece) =>
        reading.List(piece, "weld_runs", RunWords, (f, _) => new WeldRunsRecipe(
            ReadSeam(reading, f),
            reading.Length(f, "run_length"),
            OneOf(reading, f, "order", "back_step", "skip") == "skip" ? WeldOrder.Skip : WeldOrder.BackStep,
            f.Optional("most_apart", out var apart) ? [reading.Length(apart)] : []));

    public static ImmutableArray<Conditional<ZincStripRecipe>> ZincStrips(Reading reading, Fields piece) =>
        reading.List(piece, "strip_zinc", ZincWords, (f, _) => ReadStrip(reading, f, f.Optional("within", out var sheet) ? [reading.Shape(sheet)] : []));

    public static ImmutableArray<Conditional<PlugWeldRecipe>> PlugWelds(Reading reading, Fields piece) =>
        reading.List(piece, "plug_welds", Plugs, f => new PlugWeldRecipe(reading.Shape(f, "holes")));

    private static HolesAlongRecipe ReadHolesAlong(Reading reading, Fields fields) => new(
        fields.Place,
        ReadLine(reading, fields, "The edge", "along", "between"),
        fields.Optional("inset", out var inset) ? reading.Length(inset) : reading.Standing("0 mm", fields.Place),
        OneOf(reading, fields, "side", "left", "right") == "left",
        reading.Length(fields, "diameter"),
        reading.Length(fields, "pitch"),
        fields.Optional("margin", out var margin) ? reading.Length(margin) : reading.Standing("0 mm", fields.Place));

    private static ZincStripRecipe ReadStrip(Reading reading, Fields fields, ImmutableArray<ShapeName> within)
    {
        var isOver = fields.Optional("over", out var over) && OnlyOne(reading, fields, "The seam", "round", "along", "between", "over");
        return new(
            isOver ? [] : [ReadSeam(reading, fields)],
            isOver ? [reading.Shape(over)] : [],
            reading.Length(fields, "width"),
            within);
    }

    private static SeamRecipe ReadSeam(Reading reading, Fields fields) => fields.Optional("round", out var shape)
        ? new SeamRecipe.Round(OnlyOne(reading, fields, "The seam", "round", "along", "between") ? reading.Shape(shape) : new("", fields.Place))
        : new SeamRecipe.Along(ReadLine(reading, fields, "The seam", "round", "along", "between"));

    private static LineTerm ReadLine(Reading reading, Fields fields, string what, params ImmutableArray<string> words)
    {
        if (!OnlyOne(reading, fields, what, words)) return new LineOfPath(fields.Place, "");
        return fields.Optional("between", out _) ? reading.LineBetween(fields) : reading.LineOfPath(fields);
    }

    private static bool OnlyOne(Reading reading, Fields fields, string what, params ImmutableArray<string> words)
    {
        if (words.Count(word => fields.Optional(word, out _)) == 1) return true;
        reading.Complain(Wordings.OneOfWordsWanted(fields.Place, what, words));
        return false;
    }

    private static string OneOf(Reading reading, Fields fields, string key, string usual, string other) =>
        fields.Optional(key, out var node) ? reading.OneOf(node, usual, other) : usual;

    private static ImmutableArray<Word> SeamWords(string meaning, params ImmutableArray<Field> more) =>
        [.. Seams.Select(seam => new Word(seam.Name, meaning, seam).With(more))];
}
