using System.Collections.Immutable;
using TemplateForge.Fabrication;
using TemplateForge.Notation;
using TemplateForge.Shop;

namespace TemplateForge.Profiles;

/// <summary>Reads a piece: how it comes to be, and everything that is drawn on it.</summary>
internal static class PieceReader
{
    private const int LongestName = 40;

    private static readonly Field From = Field.Must("from", Holds.Point, "one end");
    private static readonly Field To = Field.Must("to", Holds.Point, "the other end");
    private static readonly Field Measured = Field.May("measured", Holds.OneOf("straight", "across", "up"), "the way it is measured");

    private static readonly Word CutAway = new("cut_away", "a panel that has something cut away",
        Field.Must("from", Holds.Name, "the panel"), Field.Must("leaves", Holds.Name, "what is left of it"));

    private static readonly Word Edge = new("edge", "a real edge of the panel", From, To, Field.When);

    private static readonly Word DatumWord = new("datum", "a point from which everything is measured",
        Field.Must("at", Holds.Point, "where it is"), Field.May("hole", Holds.Expression, "diameter, if it is a hole"), Field.When);

    private static readonly Word CentreCross = new("centre", "two centre lines that cross",
        Field.Must("centre", Holds.Point, "where they cross"),
        Field.May("turned", Holds.Expression, "the angle that they are turned by"),
        Field.Must("half_lengths", Holds.TwoExpressions, "half the length of one and of the other"),
        Field.When);

    private static readonly Word CentreLineWord = new("from", "a centre line", From, To, Field.When);

    private static readonly Word Guide = new("guide_line", "an outline to see and not to cut",
        Field.Must("label", Holds.PlainWords, "what it is"), Field.Must("along", Holds.Name, "the shape"), Field.When);

    private static readonly Word Quartered = new("most_apart", "tacks that quarter an outline like a clock and halve what lies between",
        Field.Must("round", Holds.Name, "the shape"), Field.Must("most_apart", Holds.Expression, "the most between two neighbours"));

    private static readonly Word Pitched = new("pitch", "tacks at the places of circles_along with the same pitch",
        Field.Must("round", Holds.Name, "the shape"), Field.Must("pitch", Holds.Expression, "distance between neighbours, as near as fits"));

    private static readonly Word StripBetween = new("between", "tacks of a strip: its ends, its middle, then halving",
        Field.Must("between", Holds.TwoPoints, "the two ends of the seam"), Field.Must("most_apart", Holds.Expression, "the most between two neighbours"));

    private static readonly Word StripAlong = new("along", "tacks of a strip along a path",
        Field.Must("along", Holds.Name, "the path of the seam"), Field.Must("most_apart", Holds.Expression, "the most between two neighbours"));

    private static readonly ImmutableArray<Word> TackWords = [StripBetween, StripAlong, JoiningReader.TackWord, Quartered, Pitched];

    private static readonly ImmutableArray<Word> SeamTackWords = [.. TackWords.Select(w => w.With(Field.When))];

    private static readonly Word ScribeLine = new("from", "a straight line to scribe", From, To, Field.When);

    private static readonly Word ScribePath = new("along", "a path to scribe", Field.Must("along", Holds.Name, "the path"), Field.When);

    private static readonly Word ScribeCrosses = new("crosses_at", "a cross with an open middle at each station, to punch or drill by",
        Field.Must("crosses_at", Holds.Name, "the row of stations"), Field.May("size", Holds.Expression, "how wide, 4 mm at least; 10 mm if nothing is said"), Field.When);

    private static readonly Word ScribeTicks = new("ticks_at", "the marks of a scale: a short line at each station, to the left of the way the row runs",
        Field.Must("ticks_at", Holds.Name, "the row of stations"), Field.Must("length", Holds.Expression, "how long"), Field.When);

    private static readonly Word Check = new("check", "a distance to check by rule before cutting",
        Field.Must("what", Holds.PlainWords, "what it is"), From, To, Measured, Field.When);

    private static readonly Word DimensionWord = new("dimension", "a distance that is shown",
        From, To, Measured, Field.May("say", Holds.Sentence, "what stands on it; the distance if nothing is said"), Field.When);

    private static readonly Word LabelWord = new("label", "words beside the drawing with a leader to a point",
        Field.Must("say", Holds.Sentence, "the words"), Field.Must("at", Holds.Point, "the point"), Field.When);

    private static readonly Word Rivets = new("rivets", "a row of rivets, of which the distances are looked at",
        Field.Must("holes", Holds.Name, "the shape of their holes"),
        Field.May("diameter", Holds.Expression, "of the rivets; of their holes if nothing is said"),
        Field.May("thickest_sheet", Holds.Expression, "the thickest sheet that they join; this one if nothing is said"),
        Field.When);

    public static Word Word { get; } = new Word("piece", "one thing that is printed or cut",
        Field.When,
        Field.Must("title", Holds.PlainWords, "its title"),
        Field.May("cut_away", Holds.Group(CutAway), "it is a panel that has something cut away"),
        Field.May("blank", Holds.Name, "it is cut from new sheet to this shape"),
        Field.May("paper", Holds.Name, "it is only paper of this shape"),
        Field.Must("thickness", Holds.Expression, "sheet thickness"),
        Field.May("material", Holds.ByChoice(Holds.Name), "what it is made of, by its name in the shop's table or by a parameter; of a bent piece, its section's"),
        Field.May("wraps", Holds.ByChoice(Holds.Name), "the tube or cone that it goes round, or is rolled to: its shape is that, laid flat"),
        Field.May("bends", Holds.ByChoice(Holds.Name), "the section, flanged sheet or transition that it is bent to: its blank is cut from that, laid flat"),
        Field.May("on_panel", Holds.Group(CurvedPanelReader.OnPiece), "the curved panel that it lies on"),
        Field.May("against", Holds.ByChoice(Holds.Name), "the metal that it is fastened to, by its name in the shop's table or by a parameter"),
        Field.May("rivets", Holds.ListOf(Holds.Group(Rivets)), "its rivets, row by row"),
        Field.May("quantity", Holds.Expression, "how many; 1 if nothing is said"),
        Field.May("cutting", Holds.Group(CuttingReader.Word), "what it asks of whoever cuts it on a machine"),
        Field.May("rough_cut", Holds.Expression, "how far outside the finish line the rough cut runs"),
        Field.May("face_up", Holds.PlainWords, "the face one looks at, if not the profile's"),
        Field.May("edges", Holds.ListOf(Holds.Group(Edge)), "the panel's real edges"),
        Field.May("datums", Holds.NamesOf(Holds.Group(DatumWord)), "points from which everything is measured, by a letter"),
        Field.May("centre_lines", Holds.ListOf(Holds.AnyOf(Holds.Group(CentreCross), Holds.Group(CentreLineWord))), "centre lines"),
        Field.May("guide_lines", Holds.ListOf(Holds.Group(Guide)), "outlines to see and not to cut"),
        Field.May("tacks", Holds.ByChoice(Holds.AnyOf([.. TackWords.Select(Holds.Group), Holds.ListOf(Holds.AnyOf([.. SeamTackWords.Select(Holds.Group)]), 1)])), "numbered tacks"),
        Field.May("scribe_lines", Holds.ListOf(Holds.AnyOf(Holds.Group(ScribeLine), Holds.Group(ScribePath), Holds.Group(ScribeCrosses), Holds.Group(ScribeTicks))), "marks that stay, cut nothing and are no bend"),
        Field.May("checks", Holds.ListOf(Holds.Group(Check)), "distances to check by rule before cutting"),
        Field.May("dimensions", Holds.ListOf(Holds.Group(DimensionWord)), "distances that are only shown"),
        Field.May("labels", Holds.ListOf(Holds.Group(LabelWord)), "words with a leader to a point"),
        Field.May("notes", Holds.Defined("sentences"), "sentences"))
        .With(JoiningReader.PieceFields);

    /// <summary>Whether a name can be part of a file name, so that none can leave the output folder: small letters, digits and
    /// hyphens, a letter first.</summary>
    public static bool IsSafeName(string name) =>
        name.Length is > 0 and <= LongestName
        && char.IsAsciiLetterLower(name[0])
        && name.All(c => char.IsAsciiLetterLower(c) || char.IsAsciiDigit(c) || c == '-');

    public static PieceRecipe Read(ScalarNode name, Node node, string faceUp, ShopTables shop, Reading reading)
    {
        if (!IsSafeName(name.Text)) reading.Complain(Wordings.UnsafeName(name.Place, name.Text));
        reading.TryOpen(node, $"The piece {name.Text}", Word, out var fields);
        var (kind, shape, before) = ReadKind(name, fields, reading);
        foreach (var word in kind == PieceKind.Paper ? (string[])["against", "rivets", "plug_welds"] : [])
        {
            if (fields.Optional(word, out var held)) reading.Complain(Wordings.PaperIsNotFastened(held.Place, word));
        }
        if (kind == PieceKind.Paper && fields.Optional("cutting", out var uncut)) reading.Complain(Wordings.PaperIsNotCutOnAMachine(uncut.Place));
        return new PieceRecipe
        {
            Place = name.Place,
            Name = name.Text,
            When = reading.When(fields),
            Title = reading.Words(fields, "title"),
            Kind = kind,
            Shape = shape,
            Before = before,
            Thickness = reading.Length(fields, "thickness"),
            Material = fields.Optional("material", out var material) ? [reading.Material(material, shop)] : [],
            Against = fields.Optional("against", out var against) ? [reading.Material(against, shop)] : [],
            Rivets = reading.List(fields, "rivets", Rivets, f => ReadRivets(f, reading)),
            Bends = fields.Optional("bends", out var bent) ? [reading.Chosen(bent, reading.Bent)] : [],
            Wraps = fields.Optional("wraps", out var wraps) ? [reading.Chosen(wraps, reading.Wrap)] : [],
            OnPanel = fields.Optional("on_panel", out var panel) ? [CurvedPanelReader.ReadOnPiece(reading, panel)] : [],
            Quantity = fields.Optional("quantity", out var quantity) ? reading.Number(quantity) : reading.Standing("1", fields.Place),
            RoughCut = fields.Optional("rough_cut", out var rough) ? [reading.Length(rough)] : [],
            FaceUp = fields.Optional("face_up", out var face) ? reading.Words(face) : faceUp,
            Edges = reading.List(fields, "edges", Edge, f => (reading.Point(f, "from"), reading.Point(f, "to"))),
            Datums = ReadDatums(fields, reading),
            Centres = reading.List(fields, "centre_lines", [CentreCross, CentreLineWord], (f, w) => ReadCentre(f, w, reading)),
            GuideLines = reading.List(fields, "guide_lines", Guide, f => (reading.Words(f, "label"), reading.Shape(f, "along"))),
            Tacks = fields.Optional("tacks", out var tacks) ? [new([], reading.Chosen(tacks, t => ReadTacks(t, reading)))] : [],
            PlugWelds = JoiningReader.PlugWelds(reading, fields),
            WeldRuns = JoiningReader.WeldRuns(reading, fields),
            ZincStrips = JoiningReader.ZincStrips(reading, fields),
            ScribeLines = reading.List(fields, "scribe_lines", [ScribeCrosses, ScribeTicks, ScribePath, ScribeLine], (f, word) => ReadScribe(f, word, reading)),
            Checks = reading.List(fields, "checks", Check, f => ReadCheck(f, reading)),
            Dimensions = reading.List(fields, "dimensions", DimensionWord, f => ReadDimension(f, reading)),
            Labels = reading.List(fields, "labels", LabelWord, f => (reading.ChosenSentence(f, "say"), reading.Point(f, "at"))),
            Notes = reading.Sentences(fields, "notes"),
            Cutting = fields.Optional("cutting", out var cutting) ? [CuttingReader.Read(cutting, reading)] : [],
        };
    }

    private static (PieceKind Kind, ShapeName Shape, ImmutableArray<ShapeName> Before) ReadKind(ScalarNode name, Fields fields, Reading reading)
    {
        var isCutAway = fields.Optional("cut_away", out var cutAway);
        var isBlank = fields.Optional("blank", out var blank);
        var isPaper = fields.Optional("paper", out var paper);
        if ((isCutAway ? 1 : 0) + (isBlank ? 1 : 0) + (isPaper ? 1 : 0) != 1) reading.Complain(Wordings.PieceKindWanted(name.Place, name.Text));
        if (isBlank) return (PieceKind.Blank, reading.Shape(blank), []);
        if (isPaper) return (PieceKind.Paper, reading.Shape(paper), []);
        var nothing = (PieceKind.CutAway, new ShapeName("", name.Place), ImmutableArray<ShapeName>.Empty);
        if (!isCutAway) return nothing;
        if (!reading.TryOpen(cutAway, "What is cut away", CutAway, out var own)) return nothing;
        var (from, leaves) = (reading.Shape(own, "from"), reading.Shape(own, "leaves"));
        return (PieceKind.CutAway, leaves, [from]);
    }

    private static ImmutableArray<Conditional<DatumRecipe>> ReadDatums(Fields fields, Reading reading)
    {
        if (!fields.Optional("datums", out var section)) return [];
        var found = ImmutableArray.CreateBuilder<Conditional<DatumRecipe>>();
        foreach (var (label, node) in reading.Named(section))
        {
            if (label.Text.Length is 0 or > 3) reading.Complain(Wordings.ShortLabelWanted(label.Place, label.Text));
            if (!reading.TryOpen(node, $"Datum {label.Text}", DatumWord, out var own)) continue;
            var at = reading.Point(own, "at");
            ImmutableArray<Term> hole = own.Optional("hole", out var diameter) ? [reading.Length(diameter)] : [];
            found.Add(new(reading.When(own), new(label.Text, at, hole)));
        }
        return found.ToImmutable();
    }

    private static CentreRecipe ReadCentre(Fields fields, Word word, Reading reading)
    {
        if (word == CentreLineWord) return new CentreLineRecipe(reading.Point(fields, "from"), reading.Point(fields, "to"));
        var centre = reading.Point(fields, "centre");
        var turned = fields.Optional("turned", out var turn) ? reading.Angle(turn) : reading.Standing("0 deg", fields.Place);
        if (fields.Required("half_lengths", out var lengths) && lengths is SequenceNode { Items: [var x, var y] })
            return new CentreCrossRecipe(centre, turned, reading.Length(x), reading.Length(y));
        reading.Complain(Wordings.TwoLengthsWanted(lengths.Place));
        return new CentreLineRecipe(centre, centre);
    }

    private static TackRecipe ReadTacks(Node node, Reading reading)
    {
        var nothing = reading.Standing("1 mm", node.Place);
        if (node is SequenceNode) return new TacksOfSeams(ReadSeams(node, reading), nothing);
        if (!reading.TryOpen(node, "The tacks", TackWords, out var fields, out var word)) return new TacksRound(new("", node.Place), nothing, Quartered: true);
        return ReadSeam(fields, word, reading);
    }

    private static ImmutableArray<Conditional<TackRecipe>> ReadSeams(Node node, Reading reading)
    {
        var seams = ImmutableArray.CreateBuilder<Conditional<TackRecipe>>();
        foreach (var item in reading.Items(node))
        {
            if (reading.TryOpen(item, "The tacks", SeamTackWords, out var fields, out var word)) seams.Add(new(reading.When(fields), ReadSeam(fields, word, reading)));
        }
        return seams.ToImmutable();
    }

    private static TackRecipe ReadSeam(Fields fields, Word word, Reading reading)
    {
        if (word.Name == "holes") return new TacksAtHoles(reading.Shape(fields, "holes"), reading.Standing("1 mm", fields.Place));
        if (word.Name == StripBetween.Name) return new TacksAlong(reading.LineBetween(fields), reading.Length(fields, "most_apart"));
        if (word.Name == StripAlong.Name) return new TacksAlong(reading.LineOfPath(fields), reading.Length(fields, "most_apart"));
        return new TacksRound(reading.Shape(fields, "round"), reading.Length(fields, word.Name), word.Name == Quartered.Name);
    }

    private static ScribeRecipe ReadScribe(Fields fields, Word word, Reading reading)
    {
        if (word == ScribeLine) return new ScribedLine(new LineBetween(fields.Place, reading.Point(fields, "from"), reading.Point(fields, "to")));
        if (word == ScribePath) return new ScribedLine(reading.LineOfPath(fields));
        if (word == ScribeTicks) return new ScribedTicks(fields.Required("ticks_at", out var ticks) ? reading.Stations(ticks) : new("", fields.Place), reading.Length(fields, "length"));
        return new ScribedCrosses(
            fields.Required("crosses_at", out var row) ? reading.Stations(row) : new("", fields.Place),
            fields.Optional("size", out var size) ? reading.Length(size) : reading.Standing("10 mm", fields.Place));
    }

    private static RivetRecipe ReadRivets(Fields fields, Reading reading) => new(
        reading.Shape(fields, "holes"),
        fields.Optional("diameter", out var diameter) ? [reading.Length(diameter)] : [],
        fields.Optional("thickest_sheet", out var sheet) ? [reading.Length(sheet)] : []);

    private static CheckRecipe ReadCheck(Fields fields, Reading reading)
    {
        var what = reading.Words(fields, "what");
        var (from, to) = (reading.Point(fields, "from"), reading.Point(fields, "to"));
        return new(what, from, to, ReadDirection(fields, reading));
    }

    private static DimensionRecipe ReadDimension(Fields fields, Reading reading)
    {
        var (from, to) = (reading.Point(fields, "from"), reading.Point(fields, "to"));
        var says = fields.Optional("say", out var say) ? reading.Chosen(say, reading.Sentence) : Chosen<FilledText>.Always(FilledText.Empty, fields.Place);
        return new(fields.Place, from, to, ReadDirection(fields, reading), says);
    }

    private static CheckDirection ReadDirection(Fields fields, Reading reading)
    {
        var measured = CheckDirection.Straight;
        if (fields.OptionalText("measured", out var text) && !TryDirection(text.Text, out measured))
            reading.Complain(Wordings.DirectionWanted(text.Place, text.Text));
        return measured;
    }

    private static bool TryDirection(string word, out CheckDirection direction)
    {
        (direction, var known) = word switch
        {
            "straight" => (CheckDirection.Straight, true),
            "across" => (CheckDirection.Across, true),
            "up" => (CheckDirection.Up, true),
            _ => (CheckDirection.Straight, false),
        };
        return known;
    }
}
