using System.Collections.Immutable;
using System.Diagnostics.CodeAnalysis;
using TemplateForge.Notation;
using TemplateForge.Shop;

namespace TemplateForge.Profiles;

/// <summary>Reads a value of the shop: <c>{from_shop: weld_gap, of: process, thickness: sheet}</c>.</summary>
internal static class ShopValueReader
{
    private const string Name = "from_shop";

    /// <summary>One for each set of lengths by which values go.</summary>
    public static ImmutableArray<Word> Words { get; } =
    [
        WordOf("a value from the shop's tables"),
        WordOf("a value from the shop's tables that goes by the thickness of the sheet", ShopWord.Thickness),
        WordOf("a value from the shop's tables that goes by a bend and its sheet", ShopWord.InsideRadius, ShopWord.Thickness),
    ];

    /// <summary>What may stand in a value of the shop: as its name says, or, where that is no name, whatever may stand in any.</summary>
    public static Word WordFor(Node node) => TryWord(node, out var word)
        ? Words.First(w => w.Fields.Length == Words[0].Fields.Length + word.Sizes.Length)
        : Words[0].With(Field.May(ShopWord.Thickness, Holds.Expression, ""), Field.May(ShopWord.InsideRadius, Holds.Expression, ""));

    /// <summary>What the value is, before it is read; false where it is none of the shop's.</summary>
    public static bool TryDimension(Node node, out Dimension dimension)
    {
        dimension = TryWord(node, out var word) ? word.Dimension : Dimension.Number;
        return Written(node).Any();
    }

    public static ValueRecipe Read(Fields fields, ShopTables shop, Reading reading)
    {
        var nothing = new TermValue(reading.Standing("0", fields.Place));
        if (!(fields.RequiredText(Name, out var text) & fields.Required("of", out var of))) return nothing;
        if (ShopWord.All.FirstOrDefault(w => w.Name == text.Text) is not { } word)
        {
            reading.Complain(Wordings.UnknownShopWord(text.Place, text.Text, ShopWord.All.Select(w => w.Name)));
            return nothing;
        }
        return new ShopValue(word, reading.ShopEntry(of, word.Table, shop), [.. word.Sizes.Select(size => reading.Length(fields, size))], shop);
    }

    private static bool TryWord(Node node, [MaybeNullWhen(false)] out ShopWord word)
    {
        word = ShopWord.All.FirstOrDefault(w => Written(node).OfType<ScalarNode>().Any(s => s.Text == w.Name));
        return word is not null;
    }

    private static IEnumerable<Node> Written(Node node) =>
        node is MappingNode mapping && !Reading.IsChosen(mapping) ? mapping.Entries.Where(e => e.Key.Text == Name).Select(e => e.Value) : [];

    private static Word WordOf(string meaning, params ImmutableArray<string> sizes)
    {
        var names = ShopWord.All.Where(w => w.Sizes.SequenceEqual(sizes)).Select(w => w.Name);
        var word = new Word(Name, meaning,
            Field.Must(Name, Holds.OneOf([.. names]), "which value"),
            Field.Must("of", Holds.ByChoice(Holds.Name), "the entry: its name in the table, or a parameter whose words are such names"));
        foreach (var size in sizes)
            word = word.With(Field.Must(size, Holds.Expression, size == ShopWord.Thickness ? "of the sheet" : "of the bend"));
        return word;
    }
}

/// <summary>A value from the shop's tables.</summary>
/// <param name="Word">Which.</param>
/// <param name="Of">The entry of the table.</param>
/// <param name="Sizes">The lengths by which it goes, as the word names them.</param>
/// <param name="Shop">The tables.</param>
internal sealed record ShopValue(ShopWord Word, Chosen<string> Of, ImmutableArray<Term> Sizes, ShopTables Shop) : ValueRecipe
{
    public override bool TryFind(Evaluation from, [MaybeNullWhen(false)] out Value value)
    {
        value = null;
        var sound = from.TryPick(Of, out var entry);
        var sizes = ImmutableArray.CreateBuilder<double>();
        foreach (var (name, term) in Word.Sizes.Zip(Sizes))
        {
            // A bend may be sharp, but no sheet is nothing thick.
            sound &= name == ShopWord.InsideRadius ? from.TryAtLeastZero(term, out var size) : from.TrySize(term, out size);
            sizes.Add(size);
        }
        if (!sound) return false;
        if (!Word.Find(Shop, entry!, sizes.ToImmutable(), out var found))
            return from.Refuse(Wordings.ShopDoesNotSay(Of.Place, Word, entry!, sizes.ToImmutable()));
        value = Value.Of(new Quantity(found, Word.Dimension));
        return true;
    }
}
