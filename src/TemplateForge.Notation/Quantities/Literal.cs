using System.Collections.Immutable;

namespace TemplateForge.Notation;

/// <summary>A quantity as it stands in a text: a number, a fraction or a mixed number, with a unit or without; or a gauge.</summary>
/// <param name="Quantity">In base units; a plain number where no unit was written.</param>
/// <param name="HasUnit">Whether a unit (or a gauge) was written.</param>
/// <param name="Start">Offset of its first character.</param>
/// <param name="End">Offset behind its last character.</param>
/// <param name="Next">Index of the token behind it.</param>
internal readonly record struct Literal(Quantity Quantity, bool HasUnit, int Start, int End, int Next)
{
    /// <summary>Words that never are units, because an expression goes on with them.</summary>
    private static readonly ImmutableArray<string> Joining = ["and", "or", "not", "is", "if", "then", "else"];

    public static bool IsGauge(Token token) =>
        token.Kind == TokenKind.Word && token.Text.ToUpperInvariant() is "GA" or "GAUGE";

    /// <summary>Reads the literal that begins at this token, which is a number.</summary>
    /// <remarks>Without a unit, 1/2 is a fraction as well, but in an expression it is a division.</remarks>
    public static bool TryRead(
        Writing writing, ImmutableArray<Token> tokens, int at, bool inExpression, ICollection<Complaint> complaints, out Literal literal)
    {
        literal = default;
        var first = tokens[at];
        var value = first.Value;
        var last = at;
        if (first.IsWhole && IsFraction(tokens, at + 1))
        {
            if (tokens[at + 1].Value >= tokens[at + 3].Value)
                return Refused(complaints, Wordings.FractionOfMixedNumber(writing.At(tokens[at + 1].Start), Written(writing, tokens, at + 1, at + 3)));
            value += tokens[at + 1].Value / tokens[at + 3].Value;
            last = at + 3;
        }
        else if (IsFraction(tokens, at) && (!inExpression || IsUnit(tokens[at + 3])))
        {
            if (tokens[at + 2].Value == 0)
                return Refused(complaints, Wordings.FractionByZero(writing.At(tokens[at + 2].Start), Written(writing, tokens, at, at + 2)));
            value /= tokens[at + 2].Value;
            last = at + 2;
        }
        var written = Written(writing, tokens, at, last);
        var unitToken = tokens[last + 1];
        if (IsGauge(unitToken))
            return TryReadGauge(writing, tokens, at, last, value, complaints, out literal);
        var unit = Unit.None;
        var hasUnit = IsUnit(unitToken);
        if (hasUnit)
        {
            if (!Unit.TryFind(unitToken.Text, out unit))
                return Refused(complaints, UnitComplaint(writing, first, unitToken, written, inExpression));
            last++;
        }
        if (!(Math.Abs(value * unit.Factor) < QuantityReader.Limit))
            return Refused(complaints, Wordings.TooLarge(writing.At(first.Start), written));
        literal = new(new(value * unit.Factor, unit.Dimension), hasUnit, first.Start, tokens[last].End, last + 1);
        return true;
    }

    private static bool TryReadGauge(
        Writing writing, ImmutableArray<Token> tokens, int at, int last, double gauge, ICollection<Complaint> complaints, out Literal literal)
    {
        literal = default;
        var place = writing.At(tokens[at].Start);
        var written = Written(writing, tokens, at, last + 1);
        if (gauge != Math.Floor(gauge) || gauge is < GaugeSystem.Least or > GaugeSystem.Greatest)
            return Refused(complaints, Wordings.GaugeOutOfRange(place, written));
        var end = last + 1;
        var name = "";
        var system = GaugeSystem.Steel;
        while (tokens[end + 1].Kind == TokenKind.Word && !Joining.Contains(tokens[end + 1].Text))
        {
            end++;
            name = name.Length == 0 ? tokens[end].Text : name + " " + tokens[end].Text;
            if (GaugeSystem.TryFind(name, out system) && !IsLongerName(tokens, end, name))
                break;
        }
        if (name.Length == 0)
            return Refused(complaints, Wordings.GaugeWithoutSystem(place, written, (int)gauge));
        if (!GaugeSystem.TryFind(name, out system))
            return Refused(complaints, Wordings.UnknownGaugeSystem(writing.At(tokens[last + 2].Start), name, written, (int)gauge));
        literal = new(Quantity.Length(system.Thickness((int)gauge)), HasUnit: true, tokens[at].Start, tokens[end].End, end + 1);
        return true;
    }

    /// <summary>"galvanised steel" is one name, though "galvanised" alone is a name too.</summary>
    private static bool IsLongerName(ImmutableArray<Token> tokens, int end, string name) =>
        tokens[end + 1].Kind == TokenKind.Word && GaugeSystem.TryFind(name + " " + tokens[end + 1].Text, out _);

    private static bool IsFraction(ImmutableArray<Token> tokens, int at) =>
        at + 2 < tokens.Length && tokens[at].IsWhole && tokens[at + 1].IsSymbol("/") && tokens[at + 2].IsWhole;

    private static bool IsUnit(Token token) => token.Kind == TokenKind.Word && !Joining.Contains(token.Text);

    private static string Written(Writing writing, ImmutableArray<Token> tokens, int first, int last) =>
        writing.Text[tokens[first].Start..tokens[last].End];

    /// <summary>Digits in a word that clings to the number, as in 0x1F, were meant as a number and not as a unit.</summary>
    private static Complaint UnitComplaint(Writing writing, Token first, Token unit, string written, bool inExpression) =>
        writing.Text[unit.Start - 1] != ' ' && unit.Text.Any(char.IsAsciiDigit)
            ? Wordings.NotANumber(writing.At(first.Start), writing.Text[first.Start..unit.End], Unit.None)
            : Wordings.UnknownUnit(writing.At(unit.Start), unit.Text, written, inExpression);

    private static bool Refused(ICollection<Complaint> complaints, Complaint complaint)
    {
        complaints.Add(complaint);
        return false;
    }
}
