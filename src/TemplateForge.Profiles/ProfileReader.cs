using System.Collections.Immutable;
using System.Diagnostics.CodeAnalysis;
using TemplateForge.Fabrication;
using TemplateForge.Geometry;
using TemplateForge.Notation;
using TemplateForge.Shop;

namespace TemplateForge.Profiles;

/// <summary>Reads a whole profile.</summary>
internal static class ProfileReader
{
    // 1. The file becomes nodes with places.
    // 2. Names: what each parameter, value, shape and point is, so that every expression can be checked where it stands.
    // 3. Sections, each by its own reader, in the order in which a person writes them.
    private const int MostOfAKind = 200;

    private static readonly Word RuleWord = new("rule", "what must hold",
        Field.When,
        Field.Must("must", Holds.Expression, "what must hold"),
        Field.Must("say", Holds.Sentence, "what the fabricator reads when it does not"),
        Field.Must("remedy", Holds.Sentence, "what would be right"));

    /// <summary>Everything that a profile says, in the order in which a person writes it.</summary>
    public static Word Word { get; } = new("profile", "a repeatable modification",
        Field.Must("profile", Holds.PlainWords, "its name, which is that of its file"),
        Field.Must("version", Holds.Literal, "raise it whenever the shape changes"),
        Field.Must("title", Holds.PlainWords, "its title"),
        Field.Must("about", Holds.PlainWords, "what it is for"),
        Field.Must("hand", Holds.OneOf("left", "right", "either"), "the hand for which it is drawn"),
        Field.May("alike_when", Holds.Expression, "when it is its own mirror image, so that one fits either hand"),
        Field.Must("face_up", Holds.PlainWords, "the face that one looks at"),
        Field.May("arrows", Holds.NamesOf(Holds.Literal), "the way to somewhere in the drawing"),
        Field.May("parameters", Holds.NamesOf(Holds.Defined("parameter")), "what the fabricator sets per job"),
        Field.May("tables", Holds.NamesOf(Holds.Group(TableReader.Word)), "rows of values, of which a word or a size chooses one"),
        Field.May("values", Holds.NamesOf(Holds.AnyOf([Holds.Expression, Holds.Group(TableReader.ColumnWord), .. ShopValueReader.Words.Select(Holds.Group)])), "values worked out from others"),
        Field.May("sections", Holds.NamesOf(Holds.Group(SectionReader.Word)), "bent sheets seen on their edge"),
        Field.May("flanged", Holds.NamesOf(Holds.Group(FlangedReader.Word)), "flat bases whose edges are turned"),
        Field.May("wraps", Holds.NamesOf(Holds.AnyOf([.. WrapReader.Words.Select(Holds.Group)])), "tubes and cones that are laid flat"),
        Field.May("components", Holds.NamesOf(Holds.AnyOf([.. ComponentReader.Words.Select(Holds.Group)])), "what the panel must keep clear of"),
        Field.May("transitions", Holds.NamesOf(Holds.Group(TransitionReader.Word)), "sheets from one outline to another in another plane"),
        Field.May("curved_panels", Holds.NamesOf(Holds.Group(CurvedPanelReader.Word)), "panels that are curved one way only"),
        Field.May("shapes", Holds.NamesOf(Holds.Defined("shape")), "shapes by their names"),
        Field.May("paths", Holds.NamesOf(Holds.Defined("steps")), "open runs of lines and arcs, to go along or to cut along"),
        Field.May("points", Holds.NamesOf(Holds.Point), "points that are used more than once"),
        Field.May("stations", Holds.NamesOf(Holds.Defined("stations")), "rows of places along a line"),
        Field.May("rules", Holds.ListOf(Holds.Group(RuleWord)), "what must hold"),
        Field.Must("pieces", Holds.NamesOf(Holds.Group(PieceReader.Word)), "what is printed or cut"),
        Field.May("jigs", Holds.NamesOf(Holds.Group(JigReader.Word)), "plates that guide a tool or drills on a piece"),
        Field.May("cautions", StepReader.Cautions, "what can hurt, by its name in the shop's table"),
        Field.May("steps", Holds.Defined("work"), "the work in order"));

    public static bool TryRead(TextFile source, ShopTables shop, ICollection<Complaint> complaints, [MaybeNullWhen(false)] out Profile profile)
    {
        profile = null;
        var before = complaints.Count;
        if (!YamlReader.TryRead(source.Name, source.Text, complaints, out var root)) return false;
        var names = new ProfileNames();
        var reading = new Reading(names, complaints);
        if (!reading.TryOpen(root, "The profile", Word, out var fields)) return false;

        var parameters = Section(fields, "parameters", reading);
        var tables = Section(fields, "tables", reading);
        var values = Section(fields, "values", reading);
        var sections = Section(fields, "sections", reading);
        var flanged = Section(fields, "flanged", reading);
        var wraps = Section(fields, "wraps", reading);
        var components = Section(fields, "components", reading);
        var transitions = Section(fields, "transitions", reading);
        var curvedPanels = Section(fields, "curved_panels", reading);
        var shapes = Section(fields, "shapes", reading);
        var paths = Section(fields, "paths", reading);
        var points = Section(fields, "points", reading);
        var stations = Section(fields, "stations", reading);
        ParameterReader.Declare(names, parameters, reading);
        foreach (var (name, node) in tables.Entries) names.AddTable(name, TableReader.ColumnsOf(node), complaints);
        foreach (var (name, node) in values.Entries) ValueReader.Declare(names, name, node, complaints);
        foreach (var (name, _) in sections.Entries) names.AddSection(name, complaints);
        foreach (var (name, _) in flanged.Entries) names.AddFlanged(name, complaints);
        foreach (var (name, _) in wraps.Entries) names.AddWrap(name, complaints);
        foreach (var (name, _) in components.Entries) names.AddComponent(name, complaints);
        foreach (var (name, _) in transitions.Entries) names.AddTransition(name, complaints);
        foreach (var (name, _) in curvedPanels.Entries) names.AddCurvedPanel(name, complaints);
        foreach (var (name, _) in shapes.Entries) names.AddShape(name, complaints);
        foreach (var (name, _) in paths.Entries) names.AddPath(name, complaints);
        foreach (var (name, _) in points.Entries) names.AddPoint(name, complaints);
        foreach (var (name, _) in stations.Entries) names.AddStations(name, complaints);

        var ownName = ReadName(fields, source, reading);
        var version = ReadVersion(fields, reading);
        var title = reading.Words(fields, "title");
        var about = reading.Words(fields, "about");
        var hand = ReadHand(fields, reading);
        var faceUp = reading.Words(fields, "face_up");
        var arrows = ReadArrows(fields, reading);
        var definitions = new Definitions
        {
            Parameters = [.. parameters.Entries.Select(e => ParameterReader.Read(e.Key, e.Value, reading))],
            Tables = Named(tables, e => TableReader.Read(e.Name, e.Node, reading)),
            Values = Named(values, e => ValueReader.Read(e.Node, shop, reading)),
            Sections = Named(sections, e => SectionReader.Read(reading, e.Node, shop)),
            Flanged = Named(flanged, e => FlangedReader.Read(reading, e.Node, shop)),
            Wraps = Named(wraps, e => WrapReader.Read(reading, e.Node)),
            Components = Named(components, e => ComponentReader.Read(reading, e.Node)),
            Transitions = Named(transitions, e => TransitionReader.Read(reading, e.Node, shop)),
            CurvedPanels = Named(curvedPanels, e => CurvedPanelReader.Read(reading, e.Node)),
            Shapes = Named(shapes, e => ShapeReader.Read(reading, e.Node)),
            Paths = Named(paths, e => OutlineReader.ReadPath(reading, e.Node)),
            Points = Named(points, e => reading.Point(e.Node)),
            Stations = Named(stations, e => StationsReader.Read(reading, e.Node)),
            AlikeWhen = fields.Optional("alike_when", out var alike) ? [reading.Truth(alike)] : [],
            Rules = ReadRules(fields, reading),
            Pieces = [.. Section(fields, "pieces", reading).Entries.Select(e => PieceReader.Read(e.Key, e.Value, faceUp, shop, reading))],
            Jigs = [.. Section(fields, "jigs", reading).Entries.Select(e =>
                JigReader.Read(e.Key, e.Value, Section(fields, "pieces", reading).Entries.Select(p => p.Key.Text), shop, reading))],
            Cautions = fields.Optional("cautions", out var cautions) ? StepReader.ReadCautions(cautions, shop, reading) : [],
            Steps = StepReader.ReadSteps(fields, shop, reading),
        };
        if (hand == Hand.Either && fields.Optional("alike_when", out var needless)) complaints.Add(Wordings.AlikeAlready(needless.Place));
        if (definitions.Pieces.IsEmpty) complaints.Add(Wordings.PiecesWanted(fields.Place));
        CheckGivenNames(definitions, names, complaints);
        if (complaints.Count > before) return false;

        profile = new Profile(definitions, arrows, shop)
        {
            Source = source,
            Name = ownName,
            Version = version,
            Title = title,
            About = about,
            Hand = hand,
        };
        return true;
    }

    private static MappingNode Section(Fields fields, string key, Reading reading)
    {
        var nothing = new MappingNode(fields.Place, []);
        if (!fields.Optional(key, out var node)) return nothing;
        if (node is not MappingNode mapping)
        {
            reading.Complain(Wordings.NamesWanted(node.Place));
            return nothing;
        }
        if (mapping.Entries.Length <= MostOfAKind) return mapping;
        reading.Complain(Wordings.TooMany(node.Place, key, MostOfAKind));
        return nothing;
    }

    private static string ReadName(Fields fields, TextFile source, Reading reading)
    {
        if (!fields.RequiredText("profile", out var name)) return "";
        if (!PieceReader.IsSafeName(name.Text)) reading.Complain(Wordings.UnsafeName(name.Place, name.Text));
        var file = source.Name.Split('/', '\\')[^1];
        if (file != name.Text + ".yaml") reading.Complain(Wordings.NameIsNotTheFiles(name.Place, name.Text, file));
        return name.Text;
    }

    private static int ReadVersion(Fields fields, Reading reading)
    {
        if (!fields.RequiredText("version", out var text)) return 0;
        if (int.TryParse(text.Text, System.Globalization.NumberStyles.None, System.Globalization.CultureInfo.InvariantCulture, out var version)
            && version is >= 1 and <= 9999) return version;
        reading.Complain(Wordings.WholeNumberWanted(text.Place, 9999));
        return 0;
    }

    private static Hand ReadHand(Fields fields, Reading reading)
    {
        if (!fields.RequiredText("hand", out var text)) return Hand.Either;
        switch (text.Text)
        {
            case "left": return Hand.Left;
            case "right": return Hand.Right;
            case "either": return Hand.Either;
            default:
                reading.Complain(Wordings.HandWanted(text.Place, text.Text));
                return Hand.Either;
        }
    }

    // An arrow's direction is part of the drawing, not of a job: a plain angle.
    private static ImmutableArray<Arrow> ReadArrows(Fields fields, Reading reading)
    {
        var found = ImmutableArray.CreateBuilder<Arrow>();
        foreach (var (label, node) in Section(fields, "arrows", reading).Entries)
        {
            if (label.Text.Length > 12) reading.Complain(Wordings.ShortLabelWanted(label.Place, label.Text));
            if (node is not ScalarNode scalar) reading.Complain(Wordings.ValueWanted(node.Place));
            else if (QuantityReader.TryRead(scalar.Writing, Unit.Degree, reading.Complaints, out var direction, label.Text))
                found.Add(new(label.Text, Angle.FromDegrees(direction.Value)));
        }
        return found.ToImmutable();
    }

    // A name that stands for two things has been complained of; the first is kept.
    private static ImmutableDictionary<string, T> Named<T>(MappingNode section, Func<(ScalarNode Name, Node Node), T> read) =>
        section.Entries.Select(e => (e.Key.Text, Thing: read((e.Key, e.Value))))
            .DistinctBy(e => e.Text).ToImmutableDictionary(e => e.Text, e => e.Thing, StringComparer.Ordinal);

    private static ImmutableArray<Rule> ReadRules(Fields fields, Reading reading)
    {
        if (!fields.Optional("rules", out var section)) return [];
        var found = ImmutableArray.CreateBuilder<Rule>();
        foreach (var item in reading.Items(section))
        {
            if (!reading.TryOpen(item, "The rule", RuleWord, out var rule)) continue;
            found.Add(new(
                item.Place,
                reading.When(rule),
                rule.Required("must", out var must) ? reading.Truth(must) : reading.Standing("1 = 1", item.Place),
                reading.ChosenSentence(rule, "say"),
                reading.ChosenSentence(rule, "remedy")));
        }
        return found.ToImmutable();
    }

    // A girth that is given by name must not have the name of anything else.
    private static void CheckGivenNames(Definitions definitions, ProfileNames names, ICollection<Complaint> complaints)
    {
        foreach (var parameter in definitions.Parameters)
        {
            foreach (var name in parameter.GivenNames.Skip(1).Where(n => names.TryKind(n, out _) || names.KnowsShape(n)))
                complaints.Add(Wordings.NameTaken(parameter.Place, name, parameter.Place));
        }
    }
}
