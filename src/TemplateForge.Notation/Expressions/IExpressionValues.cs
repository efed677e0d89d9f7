using System.Collections.Immutable;

namespace TemplateForge.Notation;

/// <summary>The values behind the names of an expression that has been checked.</summary>
public interface IExpressionValues
{
    /// <summary>The value of a name, of the kind that was told when the expression was checked.</summary>
    Value ValueOf(string name);

    /// <summary>A measure of shapes, of the dimension that was told when the expression was checked; not a number where there is none.</summary>
    Quantity Measure(string function, ImmutableArray<string> shapes);
}
