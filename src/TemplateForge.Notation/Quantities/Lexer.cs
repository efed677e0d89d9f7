using System.Collections.Immutable;
using System.Globalization;

namespace TemplateForge.Notation;

/// <summary>Cuts a text into numbers, words and signs.</summary>
/// <remarks>
/// Words are letters, digits and underscores. Behind <c>is</c>, <c>is not</c> and <c>ga</c> a word may also hold hyphens, for
/// there stands the name of a choice or of a gauge system and nothing to subtract from. The signs of units (" and °) are words.
/// </remarks>
internal static class Lexer
{
    private const string Signs = "+-*/^()<>=,";

    public static bool TryRead(Writing writing, ICollection<Complaint> complaints, out ImmutableArray<Token> tokens)
    {
        var text = writing.Text;
        var found = ImmutableArray.CreateBuilder<Token>();
        tokens = [];
        var at = 0;
        while (true)
        {
            while (at < text.Length && char.IsWhiteSpace(text[at]))
                at++;
            if (at == text.Length)
                break;
            if (!TryNext(text, at, MayHoldHyphens(found), out var token))
            {
                complaints.Add(Wordings.StrangeCharacter(writing.At(at), text[at]));
                return false;
            }
            found.Add(token);
            at = token.End;
        }
        found.Add(new(TokenKind.End, at, at, ""));
        tokens = found.ToImmutable();
        return true;
    }

    private static bool TryNext(string text, int at, bool hyphens, out Token token)
    {
        var c = text[at];
        if (char.IsAsciiDigit(c) || (c == '.' && at + 1 < text.Length && char.IsAsciiDigit(text[at + 1])))
            token = Number(text, at);
        else if (char.IsAsciiLetter(c) || c == '_')
            token = Word(text, at, hyphens);
        else if (c is '"' or '″' or '”' or '°' or 'º')
            token = new(TokenKind.Word, at, at + 1, c.ToString());
        else
            return TrySign(text, at, out token);
        return true;
    }

    private static Token Number(string text, int start)
    {
        var end = Digits(text, start);
        var isWhole = true;
        if (end < text.Length && text[end] == '.')
            (end, isWhole) = (Digits(text, end + 1), false);
        if (end < text.Length && text[end] is 'e' or 'E')
        {
            var exponent = end + 1;
            if (exponent < text.Length && text[exponent] is '+' or '-')
                exponent++;
            if (exponent < text.Length && char.IsAsciiDigit(text[exponent]))
                (end, isWhole) = (Digits(text, exponent), false);
        }
        var written = text[start..end];
        var value = double.Parse(
            written, NumberStyles.AllowDecimalPoint | NumberStyles.AllowExponent, CultureInfo.InvariantCulture);
        return new(TokenKind.Number, start, end, written, value, isWhole);
    }

    private static int Digits(string text, int at)
    {
        while (at < text.Length && char.IsAsciiDigit(text[at]))
            at++;
        return at;
    }

    private static Token Word(string text, int start, bool hyphens)
    {
        var end = start;
        while (end < text.Length && (IsOfWord(text[end]) || (hyphens && IsHyphen(text, end))))
            end++;
        if (end < text.Length && text[end] == '²')
            end++;
        return new(TokenKind.Word, start, end, text[start..end]);
    }

    private static bool IsHyphen(string text, int at) => text[at] == '-' && at + 1 < text.Length && IsOfWord(text[at + 1]);

    private static bool IsOfWord(char c) => char.IsAsciiLetterOrDigit(c) || c == '_';

    private static bool TrySign(string text, int at, out Token token)
    {
        var length = 1;
        var sign = text[at] switch
        {
            '≤' => "<=",
            '≥' => ">=",
            '≠' => "<>",
            '×' or '·' => "*",
            '÷' => "/",
            '−' or '–' => "-",
            var c when Signs.Contains(c, StringComparison.Ordinal) => c.ToString(),
            _ => "",
        };
        if (at + 1 < text.Length && text.Substring(at, 2) is "<=" or ">=" or "<>")
            (sign, length) = (text.Substring(at, 2), 2);
        token = new(TokenKind.Symbol, at, at + length, sign);
        return sign.Length > 0;
    }

    private static bool MayHoldHyphens(ImmutableArray<Token>.Builder found) =>
        found.Count > 0 && found[^1] is var last
        && (last.IsWord("is")
            || (last.IsWord("not") && found.Count > 1 && found[^2].IsWord("is"))
            || (Literal.IsGauge(last) && found.Count > 1 && found[^2].Kind == TokenKind.Number));
}
