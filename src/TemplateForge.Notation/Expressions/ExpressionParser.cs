using System.Collections.Immutable;

namespace TemplateForge.Notation;

/// <summary>Makes terms out of tokens, from what binds loosest to what binds tightest.</summary>
/// <remarks>
/// <code>
/// whole      = if whole then whole else whole | either
/// either     = both { or both }
/// both       = negated { and negated }
/// negated    = not negated | comparison
/// comparison = sum { &lt; &lt;= &gt; >= = &lt;> sum } | sum is [not] word
/// sum        = product { + - product }
/// product    = signed { * / signed }
/// signed     = - signed | power
/// power      = primary [ ^ signed ]
/// primary    = literal | name | function ( whole { , whole } ) | ( whole )
/// </code>
/// It stops at the first fault, because what follows one could only be guessed.
/// </remarks>
internal sealed class ExpressionParser(Writing writing, ImmutableArray<Token> tokens, ICollection<Complaint> complaints)
{
    private int at;
    private int depth;

    private Token Current => tokens[at];

    public bool TryParse(out Term term)
    {
        if (!TryWhole(out term))
            return false;
        return Current.Kind == TokenKind.End || Refuse(Wordings.MissingSign(writing, Current, tokens[at - 1]));
    }

    private bool TryWhole(out Term term)
    {
        if (!Current.IsWord("if"))
            return TryEither(out term);
        var start = Current.Start;
        term = Nothing;
        if (!TryDescend())
            return false;
        at++;
        if (!TryWhole(out var condition) || !TryKeyword("then") || !TryWhole(out var then)
            || !TryKeyword("else") || !TryWhole(out var otherwise))
            return false;
        depth--;
        term = new IfTerm(start, condition, then, otherwise);
        return true;
    }

    private bool TryEither(out Term term)
    {
        if (!TryBoth(out term))
            return false;
        while (TryTake("or"))
        {
            if (!TryBoth(out var right))
                return false;
            term = new LogicTerm(IsAnd: false, term, right);
        }
        return true;
    }

    private bool TryBoth(out Term term)
    {
        if (!TryNegated(out term))
            return false;
        while (TryTake("and"))
        {
            if (!TryNegated(out var right))
                return false;
            term = new LogicTerm(IsAnd: true, term, right);
        }
        return true;
    }

    private bool TryNegated(out Term term)
    {
        var start = Current.Start;
        if (!TryTake("not"))
            return TryComparison(out term);
        term = Nothing;
        if (!TryDescend() || !TryNegated(out var operand))
            return false;
        depth--;
        term = new NotTerm(start, operand);
        return true;
    }

    private bool TryComparison(out Term term)
    {
        if (!TrySum(out term))
            return false;
        if (TryTake("is"))
            return TryChoice(ref term);
        var operands = ImmutableArray.Create(term);
        var signs = ImmutableArray<string>.Empty;
        while (Current.Kind == TokenKind.Symbol && Current.Text is "<" or "<=" or ">" or ">=" or "=" or "<>")
        {
            signs = signs.Add(Current.Text);
            at++;
            if (!TrySum(out var operand))
                return false;
            operands = operands.Add(operand);
        }
        if (signs.Length > 0)
            term = new ComparisonTerm(operands, signs);
        return true;
    }

    private bool TryChoice(ref Term term)
    {
        var isNegated = TryTake("not");
        if (Current.Kind != TokenKind.Word)
            return Refuse(Wordings.MissingChoice(writing, Current));
        term = new ChoiceTerm(term, Current.Text, Current.Start, Current.End, isNegated);
        at++;
        return true;
    }

    private bool TrySum(out Term term)
    {
        if (!TryProduct(out term))
            return false;
        while (Current.IsSymbol("+") || Current.IsSymbol("-"))
        {
            var sign = tokens[at++].Text[0];
            if (!TryProduct(out var right))
                return false;
            term = new ArithmeticTerm(sign, term, right);
        }
        return true;
    }

    private bool TryProduct(out Term term)
    {
        if (!TrySigned(out term))
            return false;
        while (Current.IsSymbol("*") || Current.IsSymbol("/"))
        {
            var sign = tokens[at++].Text[0];
            var first = at;
            if (!TrySigned(out var right))
                return false;
            if (sign == '/' && IsBareFraction(first))
                return Refuse(Wordings.DivisionByFraction(writing.At(right.Start), writing.Text[right.Start..right.End]));
            term = new ArithmeticTerm(sign, term, right);
        }
        return true;
    }

    /// <summary>Whether what has just been read began with a fraction: only one with a unit takes the / into itself.</summary>
    private bool IsBareFraction(int first)
    {
        while (tokens[first].IsSymbol("-"))
            first++;
        return first + 2 < at && tokens[first].Kind == TokenKind.Number && tokens[first + 1].IsSymbol("/");
    }

    private bool TrySigned(out Term term)
    {
        if (!Current.IsSymbol("-"))
            return TryPower(out term);
        var start = tokens[at++].Start;
        term = Nothing;
        if (!TryDescend() || !TrySigned(out var operand))
            return false;
        depth--;
        term = new NegativeTerm(start, operand.End, operand);
        return true;
    }

    private bool TryPower(out Term term)
    {
        if (!TryPrimary(out term))
            return false;
        if (!Current.IsSymbol("^"))
            return true;
        if (term is LiteralTerm literal && literal.Quantity.Dimension != Dimension.Number && tokens[at - 1].Kind == TokenKind.Word)
            return Refuse(Wordings.PowerOfUnit(writing.At(Current.Start), writing.Text[term.Start..term.End]));
        at++;
        if (!TryDescend() || !TrySigned(out var exponent))
            return false;
        depth--;
        term = new ArithmeticTerm('^', term, exponent);
        return true;
    }

    private bool TryPrimary(out Term term)
    {
        term = Nothing;
        var token = Current;
        if (token.Kind == TokenKind.Number)
        {
            if (!Literal.TryRead(writing, tokens, at, inExpression: true, complaints, out var literal))
                return false;
            at = literal.Next;
            term = new LiteralTerm(literal.Start, literal.End, literal.Quantity);
            return true;
        }
        if (token.IsSymbol("("))
        {
            at++;
            if (!TryDescend() || !TryWhole(out var inner) || !TryClose(token))
                return false;
            depth--;
            term = inner with { Start = token.Start, End = tokens[at - 1].End };
            return true;
        }
        if (token.Kind != TokenKind.Word || !Expression.IsName(token.Text) || Expression.Keywords.Contains(token.Text))
            return Refuse(Wordings.MissingValue(writing, token));
        at++;
        if (Current.IsSymbol("("))
            return TryCall(token, out term);
        term = token.Text == "pi"
            ? new LiteralTerm(token.Start, token.End, Quantity.Number(Math.PI))
            : new NameTerm(token.Start, token.End, token.Text);
        return true;
    }

    private bool TryCall(Token function, out Term term)
    {
        term = Nothing;
        var open = tokens[at++];
        var arguments = ImmutableArray<Term>.Empty;
        if (!TryDescend())
            return false;
        if (!Current.IsSymbol(")"))
        {
            do
            {
                if (!TryWhole(out var argument))
                    return false;
                arguments = arguments.Add(argument);
            }
            while (TryTakeSymbol(","));
        }
        if (!TryClose(open))
            return false;
        depth--;
        term = new CallTerm(function.Start, tokens[at - 1].End, function.Text, arguments);
        return true;
    }

    private bool TryClose(Token open) => TryTakeSymbol(")")
        || Refuse(Current.Kind == TokenKind.End
            ? Wordings.OpenParenthesis(writing.At(open.Start))
            : Wordings.MissingSign(writing, Current, tokens[at - 1]));

    private bool TryKeyword(string word) => TryTake(word) || Refuse(Wordings.MissingKeyword(writing, Current, word));

    private bool TryTake(string word)
    {
        if (!Current.IsWord(word))
            return false;
        at++;
        return true;
    }

    private bool TryTakeSymbol(string symbol)
    {
        if (!Current.IsSymbol(symbol))
            return false;
        at++;
        return true;
    }

    private bool TryDescend() =>
        ++depth <= Expression.DeepestNesting || Refuse(Wordings.NestedTooDeep(writing.At(Current.Start), Expression.DeepestNesting));

    private bool Refuse(Complaint complaint)
    {
        complaints.Add(complaint);
        return false;
    }

    private static Term Nothing { get; } = new LiteralTerm(0, 0, default);
}
