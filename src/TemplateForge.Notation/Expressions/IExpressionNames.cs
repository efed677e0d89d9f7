namespace TemplateForge.Notation;

/// <summary>The names that an expression may use, and what sort of value each has.</summary>
public interface IExpressionNames
{
    bool TryKind(string name, out ValueKind kind);

    /// <summary>What a measure of this many shapes has: <c>top(opening)</c> has a length.</summary>
    bool TryMeasure(string function, int arity, out Dimension dimension);

    bool KnowsShape(string name);

    /// <summary>Every name that <see cref="TryKind"/> knows; for suggestions.</summary>
    IEnumerable<string> AllNames { get; }

    IEnumerable<string> AllMeasures { get; }

    IEnumerable<string> AllShapes { get; }
}
