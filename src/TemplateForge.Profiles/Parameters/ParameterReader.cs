using System.Collections.Immutable;
using TemplateForge.Fabrication;
using TemplateForge.Notation;

namespace TemplateForge.Profiles;

/// <summary>Reads the parameters: first their names and kinds, then, when every name is known, what belongs to them.</summary>
internal static class ParameterReader
{
    private static readonly ImmutableArray<Unit> AllowedUnits =
        [Unit.Millimetre, Unit.Centimetre, Unit.Metre, Unit.Inch, Unit.Degree, Unit.None];

    private static readonly ImmutableArray<Field> Heading =
    [
        Field.Must("label", Holds.PlainWords, "what it is"),
        Field.When,
        Field.May("measured", Holds.PlainWords, "how it is measured on this vehicle or component"),
        Field.May("shop", Holds.PlainWords, "why the shop chooses so"),
    ];

    private static readonly Field UnitField =
        Field.May("unit", Holds.OneOf([.. AllowedUnits.Select(u => u.Name)]), "what a bare number means");

    private static readonly Word Measure = new("measure", "another way to measure a parameter",
        Field.Must("label", Holds.PlainWords, "what it is"),
        Field.Must("measured", Holds.PlainWords, "how it is measured"),
        UnitField,
        Field.Must("gives", Holds.Literal, "the parameter worked out from it"));

    private static readonly Word Choice = new("choices", "a parameter that is one of several words",
    [
        .. Heading,
        Field.Must("choices", Holds.NamesOf(Holds.PlainWords), "the words, and what each means"),
        Field.Must("default", Holds.Name, "the word that stands unless another is given"),
    ]);

    private static readonly Word Size = new("unit", "a parameter that is a length, an angle or a number",
    [
        .. Heading,
        UnitField with { IsRequired = true },
        Field.Must("default", Holds.ByChoice(Holds.Literal), "the value that stands unless another is given"),
        Field.Must("range", Holds.ByChoice(Holds.Literal), "least and most, as in 10 to 150"),
        Field.May("whole", Holds.YesOrNo, "yes: a number of things, which has no fractions; no if nothing is said"),
        Field.May("also_as", Holds.NamesOf(Holds.Group(Measure)), "other ways to measure it"),
    ]);

    public static ImmutableArray<Word> Words { get; } = [Choice, Size];

    /// <summary>Makes the names of parameters known, with what each of them is.</summary>
    public static void Declare(ProfileNames names, Node section, Reading reading)
    {
        foreach (var (name, node) in reading.Named(section))
        {
            var entries = node is MappingNode mapping ? mapping.Entries : [];
            var choices = entries.Where(e => e.Key.Text == "choices").Select(e => e.Value).OfType<MappingNode>().FirstOrDefault();
            if (choices is not null)
            {
                names.AddParameter(name, ValueKind.Choice(choices.Entries.Select(e => e.Key.Text)), reading.Complaints);
                continue;
            }
            var unit = entries.Where(e => e.Key.Text == "unit").Select(e => e.Value).OfType<ScalarNode>().Select(s => UnitOf(s.Text)).FirstOrDefault(Unit.None);
            names.AddParameter(name, ValueKind.Of(unit.Dimension), reading.Complaints);
        }
    }

    public static Parameter Read(ScalarNode name, Node node, Reading reading)
    {
        var isChoice = node is MappingNode mapping && mapping.Entries.Any(e => e.Key.Text == "choices");
        reading.TryOpen(node, $"The parameter {name.Text}", isChoice ? Choice : Size, out var fields);
        var label = reading.Words(fields, "label");
        var when = reading.When(fields);
        var (source, explanation) = ReadSource(name, fields, reading);
        var heading = new ParameterHeading(name.Place, name.Text, label, source, explanation, when);
        return fields.Optional("choices", out var choices)
            ? ReadChoice(heading, fields, choices, reading)
            : ReadQuantity(heading, fields, reading);
    }

    private static (ValueSource Source, string Explanation) ReadSource(ScalarNode name, Fields fields, Reading reading)
    {
        var isMeasured = fields.Optional("measured", out var how);
        var isShop = fields.Optional("shop", out var why);
        if (isMeasured == isShop) reading.Complain(Wordings.MeasuredOrShopWanted(name.Place, name.Text, both: isMeasured));
        return isMeasured ? (ValueSource.Measured, reading.Words(how)) : (ValueSource.Shop, isShop ? reading.Words(why) : "");
    }

    private static ChoiceParameter ReadChoice(ParameterHeading heading, Fields fields, Node choices, Reading reading)
    {
        var options = reading.Named(choices).Select(c => new Option(c.Name.Text, reading.Words(c.Thing))).ToImmutableArray();
        if (options.Length < 2) reading.Complain(Wordings.TooFew(choices.Place, 2, "choices"));
        foreach (var (word, _) in reading.Named(choices).Where(c => !Expression.IsName(c.Name.Text)))
            reading.Complain(Wordings.NotAName(word.Place, word.Text));
        var standing = "";
        if (fields.RequiredText("default", out var text))
        {
            standing = text.Text;
            if (!options.Any(o => o.Word == standing))
                reading.Complain(Wordings.UnknownOption(text.Place, standing, heading.Name, options.Select(o => o.Word)));
        }
        return new ChoiceParameter(heading)
        {
            Options = options,
            Default = standing,
        };
    }

    private static QuantityParameter ReadQuantity(ParameterHeading heading, Fields fields, Reading reading)
    {
        var unit = ReadUnit(fields, reading);
        fields.Required("default", out var defaults);
        fields.Required("range", out var ranges);
        var standing = reading.Chosen(defaults, node => ReadValue(node, unit, heading.Name, reading));
        var range = reading.Chosen(ranges, node => ReadRange(node, unit, heading.Name, reading));
        foreach (var (option, value) in standing.Options)
        {
            var limits = range.By.Length == 0 || range.By == standing.By ? range.Options.GetValueOrDefault(range.By.Length == 0 ? "" : option) : null;
            if (limits is not null && !limits.Contains(value))
                reading.Complain(Wordings.DefaultOutOfRange(defaults.Place, heading.Name, value, limits));
        }
        return new QuantityParameter(heading)
        {
            Unit = unit,
            Default = standing,
            Range = range,
            DefaultText = Written(defaults),
            RangeText = Written(ranges),
            IsWhole = fields.Optional("whole", out var whole) && reading.OneOf(whole, "yes", "no") == "yes",
            AlsoAs = ReadAlsoAs(fields, unit, reading),
        };
    }

    private static ImmutableArray<AnotherMeasure> ReadAlsoAs(Fields fields, Unit unit, Reading reading)
    {
        if (!fields.Optional("also_as", out var section)) return [];
        var found = ImmutableArray.CreateBuilder<AnotherMeasure>();
        foreach (var (name, node) in reading.Named(section))
        {
            if (!reading.TryOpen(node, $"The measure {name.Text}", Measure, out var own)) continue;
            var label = reading.Words(own, "label");
            var explanation = reading.Words(own, "measured");
            var ownUnit = own.Optional("unit", out _) ? ReadUnit(own, reading) : unit;
            var names = new ProfileNames();
            names.AddParameter(name, ValueKind.Of(ownUnit.Dimension), reading.Complaints);
            if (own.Required("gives", out var gives))
            {
                var expression = new Reading(names, reading.Complaints).OneOfKind(gives, ValueKind.Of(unit.Dimension));
                found.Add(new(name.Text, label, ownUnit, explanation, expression));
            }
        }
        return found.ToImmutable();
    }

    private static Unit ReadUnit(Fields fields, Reading reading)
    {
        if (!fields.RequiredText("unit", out var text)) return Unit.Millimetre;
        if (AllowedUnits.Any(u => u.Name == text.Text)) return UnitOf(text.Text);
        reading.Complain(Wordings.UnknownUnit(text.Place, text.Text, AllowedUnits.Select(u => u.Name)));
        return Unit.Millimetre;
    }

    private static Unit UnitOf(string name) => AllowedUnits.FirstOrDefault(u => u.Name == name, Unit.Millimetre);

    private static Quantity ReadValue(Node node, Unit unit, string subject, Reading reading)
    {
        if (node is ScalarNode scalar && QuantityReader.TryRead(scalar.Writing, unit, reading.Complaints, out var quantity, subject)) return quantity;
        if (node is not ScalarNode) reading.Complain(Wordings.ValueWanted(node.Place));
        return new(0, unit.Dimension);
    }

    private static ValueRange ReadRange(Node node, Unit unit, string subject, Reading reading)
    {
        var anything = new ValueRange(new(double.MinValue, unit.Dimension), new(double.MaxValue, unit.Dimension));
        if (node is not ScalarNode scalar || scalar.Text.Split(" to ") is not [var from, _])
        {
            reading.Complain(Wordings.RangeWanted(node.Place));
            return anything;
        }
        // Parts of what is written, which may go on in the next line.
        var (lower, upper) = (scalar.Writing.Part(0, from.Length), scalar.Writing.Part(from.Length + " to ".Length, scalar.Text.Length));
        if (!QuantityReader.TryRead(lower, unit, reading.Complaints, out var least, subject)
            | !QuantityReader.TryRead(upper, unit, reading.Complaints, out var most, subject)) return anything;
        if (least.Value < most.Value) return new(least, most);
        reading.Complain(Wordings.RangeWanted(node.Place));
        return anything;
    }

    private static string Written(Node node) => node switch
    {
        ScalarNode scalar => scalar.Text,
        MappingNode mapping => string.Join(", ", mapping.Entries.Where(e => e.Key.Text != "by").Select(e => $"{e.Key.Text} {Written(e.Value)}")),
        _ => "",
    };
}
