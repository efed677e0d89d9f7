using System.Collections.Immutable;
using TemplateForge.Fabrication;
using TemplateForge.Notation;
using TemplateForge.Shop;

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

    public Term Number(Node node) => OfKind(node, ValueKind.Number);

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
            case MappingNode mapping when IsChosen(mapping):
                return new ChosenPoint(mapping.Place, Chosen(mapping, Point));
            case MappingNode mapping:
                return PointReader.Read(this, mapping);
            default:
                Complain(Wordings.PointWanted(node.Place));
                break;
        }
        return new NamedPoint(node.Place, "");
    }

    public (PointTerm From, PointTerm To) TwoPoints(Node node)
    {
        if (node is SequenceNode { Items: [var from, var to] }) return (Point(from), Point(to));
        Complain(Wordings.TwoPointsWanted(node.Place));
        return (new NamedPoint(node.Place, ""), new NamedPoint(node.Place, ""));
    }

    /// <summary>One of some words.</summary>
    public string OneOf(Node node, params ReadOnlySpan<string> words)
    {
        var word = node is ScalarNode scalar ? scalar.Text : "";
        if (!words.Contains(word)) Complain(Wordings.OtherWordWanted(node.Place, word, [.. words]));
        return word;
    }

    /// <summary>A shape, where a path would do as well: complains in words for both.</summary>
    public ShapeName ShapeOrPath(Node node)
    {
        var name = node is ScalarNode scalar ? scalar.Text : "";
        if (!names.IsShape(name)) Complain(Wordings.UnknownShapeOrPath(node.Place, name, names.ShapesAndPaths));
        return new(name, node.Place);
    }

    /// <summary>Straight between the two points under <c>between</c>.</summary>
    public LineTerm LineBetween(Fields fields)
    {
        if (!fields.Required("between", out var between)) return Nowhere(fields.Place);
        var (from, to) = TwoPoints(between);
        return new LineBetween(between.Place, from, to);
    }

    /// <summary>The path under <c>along</c>.</summary>
    public LineTerm LineOfPath(Fields fields)
    {
        if (!fields.Required("along", out var along)) return Nowhere(fields.Place);
        var name = along is ScalarNode scalar ? scalar.Text : "";
        if (!names.IsPath(name)) Complain(Wordings.UnknownPath(along.Place, name, names.Paths));
        return new LineOfPath(along.Place, name);
    }

    private static LineOfPath Nowhere(Place place) => new(place, "");

    public StationsName Stations(Node node)
    {
        var name = node is ScalarNode scalar ? scalar.Text : "";
        if (!names.IsStations(name)) Complain(Wordings.UnknownStations(node.Place, name, names.Stations));
        return new(name, node.Place);
    }

    public SectionName Section(Node node)
    {
        var name = node is ScalarNode scalar ? scalar.Text : "";
        if (!names.IsSection(name)) Complain(Wordings.UnknownSection(node.Place, name, names.Sections));
        return new(name, node.Place);
    }

    public WrapName Wrap(Node node)
    {
        var name = node is ScalarNode scalar ? scalar.Text : "";
        if (!names.IsWrap(name)) Complain(Wordings.UnknownWrap(node.Place, name, names.Wraps));
        return new(name, node.Place);
    }

    public ComponentName Component(Node node)
    {
        var name = node is ScalarNode scalar ? scalar.Text : "";
        if (!names.IsComponent(name)) Complain(Wordings.UnknownComponent(node.Place, name, names.Components));
        return new(name, node.Place);
    }

    public ImmutableArray<ComponentName> Components(Node node)
    {
        var found = Items(node).Select(Component).ToImmutableArray();
        if (found.IsEmpty) Complain(Wordings.TooFew(node.Place, 1, "components"));
        return found;
    }

    /// <summary>A section, a flanged sheet or a transition.</summary>
    public BentName Bent(Node node)
    {
        var name = node is ScalarNode scalar ? scalar.Text : "";
        if (!names.IsSection(name) && !names.IsFlanged(name) && !names.IsTransition(name)) Complain(Wordings.UnknownBent(node.Place, name, names.Sections.Concat(names.Flanged).Concat(names.Transitions)));
        return new(name, node.Place);
    }

    /// <summary>A sheet metal of the shop's table.</summary>
    public Chosen<Material> Material(Node node, ShopTables shop)
    {
        var entry = ShopEntry(node, ShopTable.Materials, shop);
        return new(entry.By, entry.Place, entry.Options.ToImmutableDictionary(
            o => o.Key, o => shop.Materials.GetValueOrDefault(o.Value, Fabrication.Material.Unstated), StringComparer.Ordinal));
    }

    /// <summary>An entry of one of the shop's tables: by its name, by a parameter whose words are names of entries, or one for each word
    /// of a choice.</summary>
    public Chosen<string> ShopEntry(Node node, ShopTable table, ShopTables shop)
    {
        var options = node is ScalarNode scalar ? names.OptionsOf(scalar.Text) : [];
        return options.IsEmpty
            ? Chosen(node, n => EntryOf(n.Place, n is ScalarNode name ? name.Text : ""))
            : new(((ScalarNode)node).Text, node.Place, options.Distinct().ToImmutableDictionary(o => o, o => EntryOf(node.Place, o), StringComparer.Ordinal));

        string EntryOf(Place place, string word)
        {
            if (!table.TryEntry(shop, word, out var entry)) Complain(Wordings.UnknownShopEntry(place, word, table, table.Names(shop)));
            return entry;
        }
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

    public Term Number(Fields fields, string key) => fields.Required(key, out var node) ? Number(node) : Zero(fields.Place);

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
        if (node is not MappingNode mapping || !IsChosen(mapping))
            return Profiles.Chosen<T>.Always(read(node), node.Place);
        var fields = new Fields(mapping, "What is chosen", complaints);
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

    public static bool IsChosen(Node node) => node is MappingNode mapping && mapping.Entries.Any(e => e.Key.Text == "by");

    /// <summary>A list, each of whose items may be there only when something holds.</summary>
    public ImmutableArray<Conditional<T>> List<T>(Fields fields, string key, Word word, Func<Fields, T> read) =>
        List(fields, key, [word], (f, _) => read(f));

    /// <summary>A list whose items are told apart by the field that each of the words is named for.</summary>
    public ImmutableArray<Conditional<T>> List<T>(Fields fields, string key, ImmutableArray<Word> words, Func<Fields, Word, T> read)
    {
        if (!fields.Optional(key, out var node)) return [];
        var found = ImmutableArray.CreateBuilder<Conditional<T>>();
        foreach (var item in Items(node))
        {
            if (TryOpen(item, $"An item of {key}", words, out var own, out var word)) found.Add(new(When(own), read(own, word)));
        }
        return found.ToImmutable();
    }

    public static Word SentenceWord { get; } = new("say", "a sentence that may be there only when something holds",
        Field.Must("say", Holds.Sentence, "the sentence"), Field.When);

    /// <summary>A list of sentences: plain, chosen by a word, or <c>{say: …, when: …}</c>.</summary>
    public ImmutableArray<Conditional<Chosen<FilledText>>> Sentences(Fields fields, string key)
    {
        if (!fields.Optional(key, out var node)) return [];
        return [.. Items(node).Select(item =>
        {
            if (item is not MappingNode mapping || IsChosen(mapping)) return new Conditional<Chosen<FilledText>>([], Chosen(item, Sentence));
            var own = Open(mapping, "The sentence", SentenceWord);
            return new Conditional<Chosen<FilledText>>(When(own), ChosenSentence(own, "say"));
        })];
    }

    public Chosen<FilledText> ChosenSentence(Fields fields, string key) => fields.Required(key, out var node)
        ? Chosen(node, Sentence)
        : Profiles.Chosen<FilledText>.Always(FilledText.Empty, fields.Place);

    /// <summary>The fields of a group. What the word does not know is complained of at once.</summary>
    /// <param name="mapping">The group.</param>
    /// <param name="what">What it describes, as the beginning of a sentence.</param>
    /// <param name="word">What may stand in it.</param>
    public Fields Open(MappingNode mapping, string what, Word word)
    {
        var fields = new Fields(mapping, what, complaints);
        foreach (var field in word.Fields) fields.Optional(field.Name, out _);
        fields.Done();
        return fields;
    }

    /// <summary>The fields of what must be a group; complains where it is not.</summary>
    public bool TryOpen(Node node, string what, Word word, out Fields fields) => TryOpen(node, what, [word], out fields, out _);

    /// <summary>The fields of one of several groups, told apart by the field for which each word is named; complains where it is none.</summary>
    public bool TryOpen(Node node, string what, ImmutableArray<Word> words, out Fields fields, out Word word)
    {
        word = words[0];
        fields = new(node as MappingNode ?? new(node.Place, []), what, complaints);
        if (node is not MappingNode mapping)
        {
            Complain(Wordings.NamesWanted(node.Place));
            return false;
        }
        var meant = words.Length == 1 ? words[0] : words.FirstOrDefault(w => mapping.Entries.Any(e => e.Key.Text == w.Name));
        if (meant is null)
        {
            Complain(Wordings.OneOfWordsWanted(node.Place, what, words.Select(w => w.Name)));
            return false;
        }
        (word, fields) = (meant, Open(mapping, what, meant));
        return true;
    }

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

    /// <summary>An expression whose answer must be of this kind; one for each word of a choice, where it differs.</summary>
    public Term OfKind(Node node, ValueKind wanted)
    {
        var choice = Chosen(node, n => OneOfKind(n, wanted));
        return new(choice, node.Place);
    }

    /// <summary>An expression whose answer may be of any kind, and of which it is; the same for each word of a choice.</summary>
    public (Term Term, ValueKind Kind) OfAnyKind(Node node)
    {
        var first = ValueKind.Number;
        var isFirst = true;
        var choice = Chosen(node, n =>
        {
            if (!isFirst) return OneOfKind(n, first);
            if (!TryExpression(n, first, out var expression, out var kind)) return Nothing(n.Place);
            // A plain 0 may be 0 of anything: what the others are, it is.
            if (IsNothing(expression) && IsChosen(node)) return expression;
            (first, isFirst) = (kind, false);
            return expression;
        });
        return (new(choice, node.Place), first);
    }

    /// <summary>An expression that is the same for all.</summary>
    public Expression OneOfKind(Node node, ValueKind wanted)
    {
        if (!TryExpression(node, wanted, out var expression, out var kind)) return Nothing(node.Place);
        if (kind != wanted && !IsNothing(expression)) Complain(Wordings.OtherKindWanted(node.Place, expression.Text, kind, wanted));
        return expression;
    }

    private bool TryExpression(Node node, ValueKind wanted, out Expression expression, out ValueKind kind)
    {
        (expression, kind) = (Nothing(node.Place), wanted);
        if (node is ScalarNode scalar)
            return Expression.TryRead(scalar.Writing, complaints, out expression) && expression.TryCheck(names, complaints, out kind);
        Complain(Wordings.ExpressionWanted(node.Place, wanted));
        return false;
    }

    // A plain 0 is 0 of anything.
    private static bool IsNothing(Expression expression) => expression.Text.Trim() == "0";

    private Term Zero(Place place) => new(Nothing(place), place);

    private Expression Nothing(Place place) =>
        Expression.TryRead("0", place, complaints, out var expression) ? expression : throw new InvalidOperationException("0 is an expression.");
}
