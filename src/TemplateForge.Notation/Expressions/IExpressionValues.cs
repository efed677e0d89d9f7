using System.Collections.Immutable;
using System.Diagnostics.CodeAnalysis;

namespace TemplateForge.Notation;

/// <summary>The values behind the names of an expression that has been checked.</summary>
public interface IExpressionValues
{
    /// <summary>The value of a name, of the kind that was told when the expression was checked.</summary>
    /// <param name="name">The name.</param>
    /// <param name="place">Where the expression asks for it.</param>
    /// <param name="value">Its value.</param>
    /// <returns>False where there is none, after a complaint.</returns>
    bool TryValue(string name, Place place, [MaybeNullWhen(false)] out Value value);

    /// <summary>A measure of shapes, of the dimension that was told when the expression was checked; not a number where there is none.</summary>
    /// <returns>False where a shape cannot be made, after a complaint.</returns>
    bool TryMeasure(string function, ImmutableArray<string> shapes, Place place, out Quantity measure);
}
