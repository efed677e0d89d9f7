using System.Collections.Immutable;
using System.Diagnostics.CodeAnalysis;
using TemplateForge.Fabrication;
using TemplateForge.Notation;

namespace TemplateForge.Profiles;

/// <summary>A value that the fabricator sets per job.</summary>
internal abstract record Parameter(ParameterHeading Heading)
{
    public Place Place => Heading.Place;
    public string Name => Heading.Name;
    public string Label => Heading.Label;
    public ValueSource Source => Heading.Source;
    public string Explanation => Heading.Explanation;

    /// <summary>It is asked for only when these hold.</summary>
    public ImmutableArray<Term> When => Heading.When;

    public string WhenText => string.Join(" and ", When.Select(w => w.Text));

    public abstract ImmutableArray<ParameterInfo> Infos { get; }

    /// <summary>The names by which it can be given: its own, and those of other ways to measure it.</summary>
    public virtual ImmutableArray<string> GivenNames => [Name];

    public abstract bool TryDefault(Evaluation from, [MaybeNullWhen(false)] out Value value);

    /// <summary>Reads what the fabricator gave, and how it is printed.</summary>
    public abstract bool TryGiven(
        Evaluation from, Setting setting, ICollection<Complaint> complaints, [MaybeNullWhen(false)] out Value value, out string printed);
}

/// <summary>What every parameter says of itself.</summary>
internal sealed record ParameterHeading(
    Place Place, string Name, string Label, ValueSource Source, string Explanation, ImmutableArray<Term> When);

/// <summary>One word out of several.</summary>
internal sealed record ChoiceParameter(ParameterHeading Heading) : Parameter(Heading)
{
    public required ImmutableArray<Option> Options { get; init; }
    public required string Default { get; init; }

    public override ImmutableArray<ParameterInfo> Infos =>
        [new(Name, Label, "", Default, string.Join(", ", Options.Select(o => o.Word)), Source, Explanation, WhenText, "")];

    public override bool TryDefault(Evaluation from, [MaybeNullWhen(false)] out Value value)
    {
        value = Value.Of(Default);
        return true;
    }

    public override bool TryGiven(
        Evaluation from, Setting setting, ICollection<Complaint> complaints, [MaybeNullWhen(false)] out Value value, out string printed)
    {
        var word = setting.Text.Trim();
        // Capitals are understood, as on the command line; a choice's words differ by more than these.
        word = Options.Select(o => o.Word).FirstOrDefault(o => o.Equals(word, StringComparison.OrdinalIgnoreCase), word);
        (value, printed) = (Value.Of(word), LabelOf(word));
        if (Options.Any(o => o.Word == word)) return true;
        complaints.Add(Wordings.UnknownOption(setting.ValuePlace, word, Name, Options.Select(o => o.Word)));
        return false;
    }

    public string LabelOf(string word) => Options.Where(o => o.Word == word).Select(o => o.Label).FirstOrDefault(word);
}

/// <summary>A word that can be chosen, and what it means.</summary>
internal sealed record Option(string Word, string Label);

/// <summary>A length, an angle or a plain number within a range.</summary>
internal sealed record QuantityParameter(ParameterHeading Heading) : Parameter(Heading)
{
    public required Unit Unit { get; init; }
    public required Chosen<Quantity> Default { get; init; }
    public required Chosen<ValueRange> Range { get; init; }
    public required string DefaultText { get; init; }
    public required string RangeText { get; init; }

    /// <summary>Whether it is a number of things, which has no fractions.</summary>
    public required bool IsWhole { get; init; }
    public required ImmutableArray<AnotherMeasure> AlsoAs { get; init; }

    public override ImmutableArray<ParameterInfo> Infos =>
    [
        new(Name, Label, UnitText(Unit), DefaultText, IsWhole ? RangeText + ", whole" : RangeText, Source, Explanation, WhenText, ""),
        .. AlsoAs.Select(a => new ParameterInfo(a.Name, a.Label, UnitText(a.Unit), "", "", Source, a.Explanation, WhenText, Name)),
    ];

    public override ImmutableArray<string> GivenNames => [Name, .. AlsoAs.Select(a => a.Name)];

    public override bool TryDefault(Evaluation from, [MaybeNullWhen(false)] out Value value)
    {
        var found = from.TryPick(Default, out var quantity);
        value = Value.Of(quantity);
        return found;
    }

    public override bool TryGiven(
        Evaluation from, Setting setting, ICollection<Complaint> complaints, [MaybeNullWhen(false)] out Value value, out string printed)
    {
        value = null;
        printed = "";
        var another = AlsoAs.FirstOrDefault(a => a.Name == setting.Name);
        if (!QuantityReader.TryRead(setting.Text, another?.Unit ?? Unit, setting.ValuePlace, complaints, out var quantity, setting.Name)) return false;
        var given = quantity;
        if (another is not null && !another.TryGive(given, complaints, out quantity)) return false;
        if (!from.TryPick(Range, out var range)) return false;
        if (!range.Contains(quantity))
        {
            complaints.Add(Wordings.OutOfRange(setting, Name, Source, quantity, range));
            return false;
        }
        if (IsWhole && quantity.Value != Math.Round(quantity.Value))
        {
            complaints.Add(Wordings.NotWhole(setting, Name, quantity));
            return false;
        }
        (value, printed) = (Value.Of(quantity), another is null ? $"{quantity}" : $"{quantity} ({another.Name} {given})");
        return true;
    }

    private static string UnitText(Unit unit) => unit == Unit.None ? "" : unit.Name;
}

/// <summary>Least and most, both allowed.</summary>
internal sealed record ValueRange(Quantity Least, Quantity Most)
{
    // A value typed in inches comes to the end of a range in mm only to within rounding.
    public bool Contains(Quantity value) => value.Value >= Least.Value - 1e-9 && value.Value <= Most.Value + 1e-9;

    public override string ToString() => $"{Least} to {Most}";
}

/// <summary>Another way to measure a parameter: a girth that gives a diameter.</summary>
internal sealed record AnotherMeasure(string Name, string Label, Unit Unit, string Explanation, Expression Gives)
{
    public bool TryGive(Quantity measured, ICollection<Complaint> complaints, out Quantity quantity)
    {
        var found = Gives.TryEvaluate(new OneValue(measured), complaints, out var value);
        quantity = found ? value.AsQuantity() : default;
        return found;
    }

    private sealed class OneValue(Quantity measured) : IExpressionValues
    {
        public bool TryValue(string name, Place place, out Value value)
        {
            value = Value.Of(measured);
            return true;
        }

        public bool TryMeasure(string function, ImmutableArray<string> shapes, Place place, out Quantity measure)
        {
            measure = default;
            return false;
        }
    }
}
