using System.Collections.Immutable;
using TemplateForge.Notation;

namespace TemplateForge.Profiles;

/// <summary>Reads the small parts of which a profile is written: expressions, points, names, sentences, lists.</summary>
/// <remarks>
/// What cannot be read is complained of and replaced by a stand-in, so that reading goes on and all complaints come at once; a
/// profile that was complained of is never made.
/// </remarks>
internal sealed class Reading(ProfileNames names, ICollection<Complaint> complaints)
{
    public ProfileNames Names => names;

    public ICollection<Complaint> Complaints => complaints;

    public void Complain(Complaint complaint) => complaints.Add(complaint);

    public Term Length(Node node) => OfKind(node, ValueKind.Length);

    public Term Angle(Node node) => OfKind(node, ValueKind.Angle);

    public Term Truth(Node node) => OfKind(node, ValueKind.Truth);

    /// <summary>The conditions under <c>when</c>, if there are any.</summary>
    public ImmutableArray<Term> When(Fields fields) => fields.Optional("when", out var node) ? [Truth(node)] : [];

    public string Words(Node node)
    {
        if (node is ScalarNode { Text.Length: > 0 } scalar) return scalar.Text.Trim();
        Complain(Wordings.WordsWanted(node.Place));
        return "";
    }

    public FilledText Sentence(Node node)
    {
        if (node is not ScalarNode scalar)
        {
            Complain(Wordings.WordsWanted(node.Place));
            return FilledText.Empty;
        }
        if (!FilledText.TryRead(scalar.Writing, complaints, out var text)) return FilledText.Empty;
        text.TryCheck(names, complaints);
        return text;
    }

    public PointTerm Point(Node node)
    {
        switch (node)
        {
            case ScalarNode scalar when names.IsPoint(scalar.Text):
                return new NamedPoint(scalar.Place, scalar.Text);
            case ScalarNode scalar:
                Complain(Wordings.UnknownPoint(scalar.Place, scalar.Text, names.Points));
                break;
            case SequenceNode { Items: [var x, var y] } pair:
                return new CoordinatePoint(pair.Place, Length(x), Length(y));
            case MappingNode mapping:
                var fields = Fields(mapping, "The point");
                var furthest = new FurthestPoint(mapping.Place, Shape(fields, "furthest"), Angle(fields, "towards"));
                fields.Done();
                return furthest;
            default:
                Complain(Wordings.PointWanted(node.Place));
                break;
        }
        return new NamedPoint(node.Place, "");
    }

    public ShapeName Shape(Node node)
    {
        var name = node is ScalarNode scalar ? scalar.Text : "";
        if (!names.IsShape(name)) Complain(Wordings.UnknownShape(node.Place, name, names.Shapes));
        return new(name, node.Place);
    }

    public ImmutableArray<ShapeName> Shapes(Node node, int atLeast)
    {
        var found = Items(node).Select(Shape).ToImmutableArray();
        if (found.Length < atLeast) Complain(Wordings.TooFew(node.Place, atLeast, "shapes"));
        return found;
    }

    public Term Length(Fields fields, string key) => fields.Required(key, out var node) ? Length(node) : Zero(fields.Place);

    public Term Angle(Fields fields, string key) => fields.Required(key, out var node) ? Angle(node) : Zero(fields.Place);

    public PointTerm Point(Fields fields, string key) =>
        fields.Required(key, out var node) ? Point(node) : new NamedPoint(fields.Place, "");

    public ShapeName Shape(Fields fields, string key) => fields.Required(key, out var node) ? Shape(node) : new("", fields.Place);

    public string Words(Fields fields, string key) => fields.Required(key, out var node) ? Words(node) : "";

    /// <summary>An expression that the profile leaves out, in the words that it might have used.</summary>
    public Term Standing(string text, Place place) => Expression.TryRead(text, place, complaints, out var expression) ? new(expression, place) : Zero(place);

    /// <summary>A thing that is the same for all, or, as a mapping with <c>by</c>, differs with the word of a choice.</summary>
    public Chosen<T> Chosen<T>(Node node, Func<Node, T> read)
    {
        if (node is not MappingNode mapping || !mapping.Entries.Any(e => e.Key.Text == "by"))
            return Profiles.Chosen<T>.Always(read(node), node.Place);
        var fields = Fields(mapping, "What is chosen");
        fields.Required("by", out var by);
        var choice = by is ScalarNode scalar ? scalar.Text : "";
        var options = names.OptionsOf(choice);
        if (options.IsEmpty) Complain(Wordings.UnknownChoice(by.Place, choice, names.Choices));
        var things = ImmutableDictionary.CreateBuilder<string, T>(StringComparer.Ordinal);
        foreach (var option in options)
        {
            if (fields.Required(option, out var thing)) things[option] = read(thing);
        }
        if (!options.IsEmpty) fields.Done();
        return new(choice, by.Place, things.ToImmutable());
    }

    /// <summary>A list, each of whose items may be there only when something holds.</summary>
    public ImmutableArray<Conditional<T>> List<T>(Fields fields, string key, Func<Fields, T> read)
    {
        if (!fields.Optional(key, out var node)) return [];
        return [.. Mappings(node).Select(item =>
        {
            var itemFields = Fields(item, $"An item of {key}");
            var conditional = new Conditional<T>(When(itemFields), read(itemFields));
            itemFields.Done();
            return conditional;
        })];
    }

    /// <summary>A list of sentences: plain, chosen by a word, or <c>{say: …, when: …}</c>.</summary>
    public ImmutableArray<Conditional<Chosen<FilledText>>> Sentences(Fields fields, string key)
    {
        if (!fields.Optional(key, out var node)) return [];
        return [.. Items(node).Select(item =>
        {
            if (item is not MappingNode mapping || !mapping.Entries.Any(e => e.Key.Text == "say"))
                return new Conditional<Chosen<FilledText>>([], Chosen(item, Sentence));
            var itemFields = Fields(mapping, "The sentence");
            itemFields.Required("say", out var say);
            var sentence = new Conditional<Chosen<FilledText>>(When(itemFields), Chosen(say, Sentence));
            itemFields.Done();
            return sentence;
        })];
    }

    /// <summary>The fields of a group; <paramref name="what"/> says what it describes, as the beginning of a sentence.</summary>
    public Fields Fields(MappingNode mapping, string what) => new(mapping, what, complaints);

    public IEnumerable<Node> Items(Node node)
    {
        if (node is SequenceNode sequence) return sequence.Items;
        Complain(Wordings.ListWanted(node.Place));
        return [];
    }

    public IEnumerable<(ScalarNode Name, Node Thing)> Named(Node node)
    {
        if (node is MappingNode mapping) return mapping.Entries;
        Complain(Wordings.NamesWanted(node.Place));
        return [];
    }

    private List<MappingNode> Mappings(Node node)
    {
        var found = new List<MappingNode>();
        foreach (var item in Items(node))
        {
            if (item is MappingNode mapping) found.Add(mapping);
            else Complain(Wordings.NamesWanted(item.Place));
        }
        return found;
    }

    /// <summary>An expression whose answer must be of this kind.</summary>
    public Term OfKind(Node node, ValueKind wanted)
    {
        if (node is not ScalarNode scalar)
        {
            Complain(Wordings.ExpressionWanted(node.Place, wanted));
            return Zero(node.Place);
        }
        if (!Expression.TryRead(scalar.Writing, complaints, out var expression) || !expression.TryCheck(names, complaints, out var kind))
            return Zero(node.Place);
        // A plain 0 is 0 of anything.
        if (kind != wanted && expression.Text.Trim() != "0") Complain(Wordings.OtherKindWanted(scalar.Place, scalar.Text, kind, wanted));
        return new(expression, scalar.Place);
    }

    private Term Zero(Place place) =>
        Expression.TryRead("0", place, complaints, out var expression) ? new(expression, place) : throw new InvalidOperationException("0 is an expression.");
}
