using System.Collections.Immutable;

namespace TemplateForge.Notation;

/// <summary>A function of numbers. It works on base units (mm, degrees) and answers not-a-number where it has no answer.</summary>
internal sealed record Function(string Name, Signature Signature, int Least, int Most, Func<ImmutableArray<double>, double> Compute);

/// <summary>What a function takes and gives.</summary>
internal enum Signature
{
    /// <summary>An angle; gives a plain number.</summary>
    OfAngle,

    /// <summary>A plain number; gives an angle.</summary>
    ToAngle,

    /// <summary>Two of one dimension; gives an angle.</summary>
    DirectionOf,

    /// <summary>An even power of a dimension; gives half of it.</summary>
    Root,

    /// <summary>Quantities of one dimension; gives the same.</summary>
    Alike,
}
