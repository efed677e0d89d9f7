using System.Collections.Immutable;
using TemplateForge.Fabrication;
using TemplateForge.Notation;

namespace TemplateForge.Profiles;

/// <summary>Reads a piece: how it comes to be, and everything that is drawn on it.</summary>
internal static class PieceReader
{
    private const int MostOfOnePiece = 1_000;

    private const int LongestName = 40;

    /// <summary>Whether a name can be part of a file name, so that none can leave the output folder: small letters, digits and
    /// hyphens, a letter first.</summary>
    public static bool IsSafeName(string name) =>
        name.Length is > 0 and <= LongestName
        && char.IsAsciiLetterLower(name[0])
        && name.All(c => char.IsAsciiLetterLower(c) || char.IsAsciiDigit(c) || c == '-');

    public static PieceRecipe Read(ScalarNode name, Node node, string faceUp, Reading reading)
    {
        if (!IsSafeName(name.Text)) reading.Complain(Wordings.UnsafeName(name.Place, name.Text));
        if (node is not MappingNode mapping)
        {
            reading.Complain(Wordings.NamesWanted(node.Place));
            mapping = new(node.Place, []);
        }
        var fields = reading.Fields(mapping, $"The piece {name.Text}");
        var (kind, shape, before) = ReadKind(name, fields, reading);
        var piece = new PieceRecipe
        {
            Place = name.Place,
            Name = name.Text,
            When = reading.When(fields),
            Title = reading.Words(fields, "title"),
            Kind = kind,
            Shape = shape,
            Before = before,
            Thickness = reading.Length(fields, "thickness"),
            Quantity = ReadQuantity(fields, reading),
            RoughCut = fields.Optional("rough_cut", out var rough) ? [reading.Length(rough)] : [],
            FaceUp = fields.Optional("face_up", out var face) ? reading.Words(face) : faceUp,
            Edges = reading.List(fields, "edges", f => (reading.Point(f, "from"), reading.Point(f, "to"))),
            Datums = ReadDatums(fields, reading),
            Centres = reading.List(fields, "centre_lines", f => ReadCentre(f, reading)),
            GuideLines = reading.List(fields, "guide_lines", f => (reading.Words(f, "label"), reading.Shape(f, "along"))),
            Tacks = fields.Optional("tacks", out var tacks) ? [new([], reading.Chosen(tacks, t => ReadTacks(t, reading)))] : [],
            Checks = reading.List(fields, "checks", f => ReadCheck(f, reading)),
            Notes = reading.Sentences(fields, "notes"),
        };
        fields.Done();
        return piece;
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
        if (cutAway is not MappingNode mapping)
        {
            reading.Complain(Wordings.NamesWanted(cutAway.Place));
            return nothing;
        }
        var own = reading.Fields(mapping, "What is cut away");
        var (from, leaves) = (reading.Shape(own, "from"), reading.Shape(own, "leaves"));
        own.Done();
        return (PieceKind.CutAway, leaves, [from]);
    }

    private static int ReadQuantity(Fields fields, Reading reading)
    {
        if (!fields.Optional("quantity", out var node)) return 1;
        if (node is ScalarNode scalar
            && QuantityReader.TryRead(scalar.Writing, Unit.None, reading.Complaints, out var quantity, "quantity")
            && quantity.Value is >= 1 and <= MostOfOnePiece
            && quantity.Value == Math.Floor(quantity.Value)) return (int)quantity.Value;
        reading.Complain(Wordings.WholeNumberWanted(node.Place, MostOfOnePiece));
        return 1;
    }

    private static ImmutableArray<Conditional<DatumRecipe>> ReadDatums(Fields fields, Reading reading)
    {
        if (!fields.Optional("datums", out var section)) return [];
        var found = ImmutableArray.CreateBuilder<Conditional<DatumRecipe>>();
        foreach (var (label, node) in reading.Named(section))
        {
            if (label.Text.Length is 0 or > 3) reading.Complain(Wordings.ShortLabelWanted(label.Place, label.Text));
            if (node is not MappingNode mapping)
            {
                reading.Complain(Wordings.NamesWanted(node.Place));
                continue;
            }
            var own = reading.Fields(mapping, $"Datum {label.Text}");
            var at = reading.Point(own, "at");
            ImmutableArray<Term> hole = own.Optional("hole", out var diameter) ? [reading.Length(diameter)] : [];
            found.Add(new(reading.When(own), new(label.Text, at, hole)));
            own.Done();
        }
        return found.ToImmutable();
    }

    private static CentreRecipe ReadCentre(Fields fields, Reading reading)
    {
        if (!fields.Optional("centre", out var node)) return new CentreLineRecipe(reading.Point(fields, "from"), reading.Point(fields, "to"));
        var centre = reading.Point(node);
        var turned = fields.Optional("turned", out var turn) ? reading.Angle(turn) : reading.Standing("0 deg", fields.Place);
        if (fields.Required("half_lengths", out var lengths) && lengths is SequenceNode { Items: [var x, var y] })
            return new CentreCrossRecipe(centre, turned, reading.Length(x), reading.Length(y));
        reading.Complain(Wordings.TwoLengthsWanted(lengths.Place));
        return new CentreLineRecipe(centre, centre);
    }

    private static TackRecipe ReadTacks(Node node, Reading reading)
    {
        if (node is not MappingNode mapping)
        {
            reading.Complain(Wordings.NamesWanted(node.Place));
            return new(new("", node.Place), reading.Standing("1 mm", node.Place), Quartered: true);
        }
        var fields = reading.Fields(mapping, "The tacks");
        var round = reading.Shape(fields, "round");
        var quartered = fields.Optional("most_apart", out var most);
        var tacks = new TackRecipe(round, quartered ? reading.Length(most) : reading.Length(fields, "pitch"), quartered);
        fields.Done();
        return tacks;
    }

    private static CheckRecipe ReadCheck(Fields fields, Reading reading)
    {
        var what = reading.Words(fields, "what");
        var (from, to) = (reading.Point(fields, "from"), reading.Point(fields, "to"));
        var measured = CheckDirection.Straight;
        if (fields.OptionalText("measured", out var text) && !TryDirection(text.Text, out measured))
            reading.Complain(Wordings.DirectionWanted(text.Place, text.Text));
        return new(what, from, to, measured);
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
