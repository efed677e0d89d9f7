using System.Collections.Immutable;

namespace TemplateForge.Notation;

/// <summary>A part of an expression, with the offsets of its first character and behind its last.</summary>
internal abstract record Term(int Start, int End);

/// <summary>A quantity that is written out.</summary>
internal sealed record LiteralTerm(int Start, int End, Quantity Quantity) : Term(Start, End)
{
    /// <summary>Nothing is nothing in every unit: 0 may stand beside a length or an angle.</summary>
    public bool IsNothing => Quantity == Quantity.Number(0);
}

internal sealed record NameTerm(int Start, int End, string Name) : Term(Start, End);

internal sealed record NegativeTerm(int Start, int End, Term Operand) : Term(Start, End);

/// <summary>+ - * / ^</summary>
internal sealed record ArithmeticTerm(char Sign, Term Left, Term Right) : Term(Left.Start, Right.End);

/// <summary>a &lt; b &lt;= c: every neighbouring pair holds.</summary>
internal sealed record ComparisonTerm(ImmutableArray<Term> Operands, ImmutableArray<string> Signs) : Term(Operands[0].Start, Operands[^1].End);

/// <summary>x is word, x is not word.</summary>
internal sealed record ChoiceTerm(Term Operand, string Word, int WordStart, int End, bool IsNegated) : Term(Operand.Start, End);

internal sealed record NotTerm(int Start, Term Operand) : Term(Start, Operand.End);

internal sealed record LogicTerm(bool IsAnd, Term Left, Term Right) : Term(Left.Start, Right.End);

internal sealed record IfTerm(int Start, Term Condition, Term Then, Term Else) : Term(Start, Else.End);

/// <summary>A function of numbers, or a measure of shapes.</summary>
internal sealed record CallTerm(int Start, int End, string Function, ImmutableArray<Term> Arguments) : Term(Start, End);
