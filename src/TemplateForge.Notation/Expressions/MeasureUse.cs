using System.Collections.Immutable;

namespace TemplateForge.Notation;

/// <summary>A measure of shapes that an expression asks for, such as <c>distance(a, b)</c>.</summary>
public sealed record MeasureUse(string Function, ImmutableArray<string> Shapes, Place Place)
{
    public bool Equals(MeasureUse? other) =>
        other is not null && Function == other.Function && Place == other.Place && Shapes.SequenceEqual(other.Shapes);

    public override int GetHashCode() => HashCode.Combine(Function, Place, Shapes.Length);
}
