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

    public static bool TryRead(TextFile source, ShopTables shop, ICollection<Complaint> complaints, [MaybeNullWhen(false)] out Profile profile)
    {
        profile = null;
        var before = complaints.Count;
        if (!YamlReader.TryRead(source.Name, source.Text, complaints, out var root)) return false;
        if (!Fields.TryOpen(root, "The profile", complaints, out var fields)) return false;

        var names = new ProfileNames();
        var reading = new Reading(names, complaints);
        var parameters = Section(fields, "parameters", reading);
        var values = Section(fields, "values", reading);
        var shapes = Section(fields, "shapes", reading);
        var points = Section(fields, "points", reading);
        ParameterReader.Declare(names, parameters, reading);
        foreach (var (name, node) in values.Entries)
        {
            if (node is ScalarNode scalar && Expression.TryRead(scalar.Writing, complaints, out var expression)) names.AddValue(name, expression, complaints);
            else if (node is not ScalarNode) complaints.Add(Wordings.ExpressionWanted(node.Place, ValueKind.Number));
        }
        foreach (var (name, _) in shapes.Entries) names.AddShape(name, complaints);
        foreach (var (name, _) in points.Entries) names.AddPoint(name, complaints);

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
            Values = ReadValues(values, reading),
            Shapes = shapes.Entries.Select(e => (e.Key.Text, Recipe: ShapeReader.Read(reading, e.Value)))
                .DistinctBy(e => e.Text).ToImmutableDictionary(e => e.Text, e => e.Recipe, StringComparer.Ordinal),
            Points = points.Entries.Select(e => (e.Key.Text, Term: reading.Point(e.Value)))
                .DistinctBy(e => e.Text).ToImmutableDictionary(e => e.Text, e => e.Term, StringComparer.Ordinal),
            Rules = ReadRules(fields, reading),
            Pieces = [.. Section(fields, "pieces", reading).Entries.Select(e => PieceReader.Read(e.Key, e.Value, faceUp, reading))],
            Cautions = ReadCautions(fields, shop, reading),
            Steps = reading.Sentences(fields, "steps"),
        };
        if (definitions.Pieces.IsEmpty) complaints.Add(Wordings.PiecesWanted(fields.Place));
        CheckGivenNames(definitions, names, complaints);
        fields.Done();
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

    private static ImmutableDictionary<string, Term> ReadValues(MappingNode values, Reading reading)
    {
        var found = ImmutableDictionary.CreateBuilder<string, Term>(StringComparer.Ordinal);
        foreach (var (name, node) in values.Entries)
        {
            // What could not be read as an expression has been complained of where the names were made known.
            if (node is ScalarNode scalar && Expression.TryRead(scalar.Writing, new List<Complaint>(), out var expression)
                && expression.TryCheck(reading.Names, reading.Complaints, out _))
                found[name.Text] = new(expression, scalar.Place);
        }
        return found.ToImmutable();
    }

    private static ImmutableArray<Rule> ReadRules(Fields fields, Reading reading)
    {
        if (!fields.Optional("rules", out var section)) return [];
        var found = ImmutableArray.CreateBuilder<Rule>();
        foreach (var item in reading.Items(section))
        {
            if (!Fields.TryOpen(item, "The rule", reading.Complaints, out var rule)) continue;
            found.Add(new(
                item.Place,
                reading.When(rule),
                rule.Required("must", out var must) ? reading.Truth(must) : reading.Standing("1 = 1", item.Place),
                rule.Required("say", out var say) ? reading.Sentence(say) : FilledText.Empty,
                rule.Required("remedy", out var remedy) ? reading.Sentence(remedy) : FilledText.Empty));
            rule.Done();
        }
        return found.ToImmutable();
    }

    private static ImmutableArray<Conditional<string>> ReadCautions(Fields fields, ShopTables shop, Reading reading)
    {
        if (!fields.Optional("cautions", out var section)) return [];
        var found = ImmutableArray.CreateBuilder<Conditional<string>>();
        foreach (var item in reading.Items(section))
        {
            var (name, when) = (item, ImmutableArray<Term>.Empty);
            if (item is MappingNode mapping)
            {
                var own = reading.Fields(mapping, "The caution");
                own.Required("caution", out name);
                when = reading.When(own);
                own.Done();
            }
            var word = name is ScalarNode scalar ? scalar.Text : "";
            if (!shop.Cautions.ContainsKey(word)) reading.Complain(Wordings.UnknownCaution(name.Place, word, shop.Cautions.Keys.Order(StringComparer.Ordinal)));
            found.Add(new(when, word));
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
