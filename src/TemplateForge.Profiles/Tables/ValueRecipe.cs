using System.Diagnostics.CodeAnalysis;
using TemplateForge.Notation;

namespace TemplateForge.Profiles;

/// <summary>How a derived value is found.</summary>
internal abstract record ValueRecipe
{
    public abstract bool TryFind(Evaluation from, [MaybeNullWhen(false)] out Value value);
}

/// <summary>A value worked out from others.</summary>
internal sealed record TermValue(Term Term) : ValueRecipe
{
    public override bool TryFind(Evaluation from, [MaybeNullWhen(false)] out Value value) => from.TryValue(Term, out value);
}

/// <summary>A value from the row of a table that is chosen now.</summary>
internal sealed record ColumnValue(string Table, string Column) : ValueRecipe
{
    public override bool TryFind(Evaluation from, [MaybeNullWhen(false)] out Value value)
    {
        value = null;
        if (!from.TryCell(Table, Column, out var cell)) return false;
        value = Value.Of(cell);
        return true;
    }
}
