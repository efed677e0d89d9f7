using System.Collections.Immutable;
using TemplateForge.Notation;
using TemplateForge.Shop;

namespace TemplateForge.Profiles;

/// <summary>Reads the work in order, and what can hurt in it.</summary>
internal static class StepReader
{
    private static readonly Field CautionField =
        Field.May("caution", Holds.AnyOf(Holds.Name, Holds.ListOf(Holds.Name, 1)), "what can hurt here, by its name in the shop's table");

    private static readonly Word Say = new("say", "a step of the work",
        Field.Must("say", Holds.Sentence, "what is done"), Field.When, CautionField);

    private static readonly Word Hold = new("hold", "a point where the work stops until somebody has signed",
        Field.Must("hold", Holds.Sentence, "what must be so before the work goes on"), Field.When, CautionField);

    private static readonly Word Caution = new("caution", "a caution that is there only when something holds",
        Field.Must("caution", Holds.Name, "its name in the shop's table"), Field.When);

    private static readonly Word ShopStep = new("shop_step", "a step that the shop does the same way whatever it makes",
        Field.Must("shop_step", Holds.Name, "its name in the shop's table"), Field.When);

    public static ImmutableArray<Word> Words { get; } = [Say, Hold, ShopStep];

    public static Holds Cautions { get; } = Holds.ListOf(Holds.AnyOf(Holds.Name, Holds.Group(Caution)));

    public static ImmutableArray<Conditional<StepRecipe>> ReadSteps(Fields fields, ShopTables shop, Reading reading)
    {
        if (!fields.Optional("steps", out var section)) return [];
        var found = ImmutableArray.CreateBuilder<Conditional<StepRecipe>>();
        foreach (var item in reading.Items(section))
        {
            if (item is not MappingNode || Reading.IsChosen(item)) found.Add(new([], new(reading.Chosen(item, reading.Sentence), false, [])));
            else if (!reading.TryOpen(item, "A step of the work", Words, out var own, out var word)) continue;
            else if (word == ShopStep) found.Add(new(reading.When(own), ReadShopStep(own, shop, reading)));
            else
                found.Add(new(reading.When(own), new(reading.ChosenSentence(own, word.Name), word == Hold, ReadCautions(own, shop, reading))));
        }
        return found.ToImmutable();
    }

    private static StepRecipe ReadShopStep(Fields fields, ShopTables shop, Reading reading)
    {
        var (text, cautions) = ("", ImmutableArray<string>.Empty);
        if (fields.RequiredText("shop_step", out var name))
        {
            if (shop.Steps.TryGetValue(name.Text, out var step)) (text, cautions) = (step.Text, step.Cautions);
            else reading.Complain(Wordings.UnknownShopStep(name.Place, name.Text, shop.Steps.Keys));
        }
        return new(Chosen<FilledText>.Always(FilledText.Plain(text), fields.Place), false, cautions);
    }

    public static ImmutableArray<Conditional<string>> ReadCautions(Node section, ShopTables shop, Reading reading)
    {
        var found = ImmutableArray.CreateBuilder<Conditional<string>>();
        foreach (var item in reading.Items(section))
        {
            var (name, when) = (item, ImmutableArray<Term>.Empty);
            if (item is MappingNode mapping)
            {
                var own = reading.Open(mapping, "The caution", Caution);
                own.Required("caution", out name);
                when = reading.When(own);
            }
            found.Add(new(when, ReadCaution(name, shop, reading)));
        }
        return found.ToImmutable();
    }

    private static ImmutableArray<string> ReadCautions(Fields step, ShopTables shop, Reading reading)
    {
        if (!step.Optional("caution", out var node)) return [];
        if (node is not SequenceNode list) return [ReadCaution(node, shop, reading)];
        if (list.Items.IsEmpty) reading.Complain(Wordings.TooFew(node.Place, 1, "cautions"));
        return [.. list.Items.Select(item => ReadCaution(item, shop, reading))];
    }

    private static string ReadCaution(Node name, ShopTables shop, Reading reading)
    {
        var word = name is ScalarNode scalar ? scalar.Text : "";
        if (!shop.Cautions.ContainsKey(word)) reading.Complain(Wordings.UnknownCaution(name.Place, word, shop.Cautions.Keys.Order(StringComparer.Ordinal)));
        return word;
    }
}
