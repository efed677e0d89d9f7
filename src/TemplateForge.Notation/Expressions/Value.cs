namespace TemplateForge.Notation;

/// <summary>What a parameter has, or an expression comes to: a quantity, a yes or no, or the word of a choice.</summary>
public abstract record Value
{
    private protected Value()
    {
    }

    /// <summary>What sort of value it is, in a sentence.</summary>
    public abstract string KindName { get; }

    public static Value Of(Quantity quantity) => new QuantityValue(quantity);

    public static Value Of(bool truth) => new TruthValue(truth);

    public static Value Of(string word) => new WordValue(word);

    /// <exception cref="InvalidOperationException">The value is not a quantity; <see cref="Expression.TryCheck"/> tells beforehand.</exception>
    public Quantity AsQuantity() => this is QuantityValue value ? value.Quantity : throw Other("a quantity");

    /// <exception cref="InvalidOperationException">The value is not a yes or no.</exception>
    public bool AsTruth() => this is TruthValue value ? value.Truth : throw Other("a yes or no");

    /// <exception cref="InvalidOperationException">The value is not the word of a choice.</exception>
    public string AsWord() => this is WordValue value ? value.Word : throw Other("a word");

    private InvalidOperationException Other(string wanted) => new($"{this} is {KindName}, not {wanted}; the expression was not checked.");
}

/// <summary>A number with its dimension; printed as <see cref="Quantity.ToString"/> does.</summary>
public sealed record QuantityValue(Quantity Quantity) : Value
{
    public override string KindName => Quantity.Dimension.Name;

    public override string ToString() => Quantity.ToString();
}

/// <summary>A yes or no, and printed so.</summary>
public sealed record TruthValue(bool Truth) : Value
{
    public override string KindName => "a yes or no";

    public override string ToString() => Truth ? "yes" : "no";
}

/// <summary>The word that was chosen.</summary>
public sealed record WordValue(string Word) : Value
{
    public override string KindName => "a word";

    public override string ToString() => Word;
}
