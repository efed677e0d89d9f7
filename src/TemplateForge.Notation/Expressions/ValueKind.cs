using System.Collections.Immutable;

namespace TemplateForge.Notation;

/// <summary>What sort of value a name or an expression has, known before any value is.</summary>
public abstract record ValueKind
{
    private protected ValueKind()
    {
    }

    /// <summary>As it is said in a sentence: "a length", "a yes or no", "a choice of butt or lap".</summary>
    public abstract string Name { get; }

    public static ValueKind Number { get; } = new QuantityKind(Dimension.Number);
    public static ValueKind Length { get; } = new QuantityKind(Dimension.Length);
    public static ValueKind Angle { get; } = new QuantityKind(Dimension.Angle);
    public static ValueKind Area { get; } = new QuantityKind(Dimension.Area);

    /// <summary>A yes or no.</summary>
    public static ValueKind Truth { get; } = new TruthKind();

    public static ValueKind Of(Dimension dimension) => new QuantityKind(dimension);

    /// <summary>One word out of these.</summary>
    public static ValueKind Choice(params IEnumerable<string> options) => new ChoiceKind([.. options]);

    public sealed override string ToString() => Name;
}

/// <summary>A number, with its dimension.</summary>
public sealed record QuantityKind(Dimension Dimension) : ValueKind
{
    public override string Name => Dimension.Name;
}

/// <summary>A yes or no.</summary>
public sealed record TruthKind : ValueKind
{
    public override string Name => "a yes or no";
}

/// <summary>One word out of <paramref name="Options"/>.</summary>
public sealed record ChoiceKind(ImmutableArray<string> Options) : ValueKind
{
    public override string Name => "a choice of " + Wordings.EitherOf(Options);

    public bool Equals(ChoiceKind? other) => other is not null && Options.SequenceEqual(other.Options);

    public override int GetHashCode() => Options.Aggregate(0, HashCode.Combine);
}
