using System.Collections.Immutable;
using System.Text;

namespace TemplateForge.Notation;

/// <summary>A sentence with values in it: <c>Only {panel_depth - top(opening)} of the panel is left.</c></summary>
/// <remarks>What stands in braces is an <see cref="Expression"/>; <c>{{</c> and <c>}}</c> are braces themselves.</remarks>
public sealed class FilledText
{
    /// <summary>In characters.</summary>
    public const int LongestText = 4000;

    private readonly ImmutableArray<(string Before, Expression Expression)> parts;
    private readonly string end;

    private FilledText(string text, ImmutableArray<(string Before, Expression Expression)> parts, string end) =>
        (Text, this.parts, this.end) = (text, parts, end);

    public static FilledText Empty { get; } = new("", [], "");

    /// <summary>A text without values: a brace in it is a brace.</summary>
    public static FilledText Plain(string text) => new(text, [], text);

    /// <summary>As written, with its braces.</summary>
    public string Text { get; }

    /// <summary>The expressions in braces, in their order.</summary>
    public ImmutableArray<Expression> Expressions => [.. parts.Select(part => part.Expression)];

    /// <summary>Reads a text whose first character stands at <paramref name="place"/>; the names in its braces are not looked at.</summary>
    /// <returns>False after one complaint for each faulty expression.</returns>
    public static bool TryRead(string text, Place place, ICollection<Complaint> complaints, out FilledText filled) =>
        TryRead(new Writing(text, place), complaints, out filled);

    /// <inheritdoc cref="TryRead(string, Place, ICollection{Complaint}, out FilledText)"/>
    public static bool TryRead(Writing writing, ICollection<Complaint> complaints, out FilledText filled)
    {
        ArgumentNullException.ThrowIfNull(writing);
        ArgumentNullException.ThrowIfNull(complaints);
        var text = writing.Text;
        filled = new(text, [], text);
        if (text.Length > LongestText)
        {
            complaints.Add(Wordings.TextTooLong(writing.At(0), text.Length, LongestText));
            return false;
        }
        var found = ImmutableArray.CreateBuilder<(string, Expression)>();
        var before = new StringBuilder();
        var isRight = true;
        for (var i = 0; i < text.Length; i++)
        {
            if (text[i] is not ('{' or '}'))
            {
                before.Append(text[i]);
            }
            else if (i + 1 < text.Length && text[i + 1] == text[i])
            {
                before.Append(text[i++]);
            }
            else
            {
                var close = text[i] == '{' ? text.IndexOf('}', i) : -1;
                if (close < 0)
                {
                    complaints.Add(Wordings.LoneBrace(writing.At(i), text[i]));
                    return false;
                }
                isRight &= Expression.TryRead(writing.Part(i + 1, close), complaints, out var expression);
                found.Add((before.ToString(), expression));
                before.Clear();
                i = close;
            }
        }
        filled = new(text, found.ToImmutable(), before.ToString());
        return isRight;
    }

    /// <summary>Checks every expression in braces; each may come to a value of any kind.</summary>
    public bool TryCheck(IExpressionNames names, ICollection<Complaint> complaints)
    {
        var isRight = true;
        foreach (var (_, expression) in parts)
            isRight &= expression.TryCheck(names, complaints, out _);
        return isRight;
    }

    /// <summary>Puts the values in, printed as <see cref="Quantity.ToString"/> does.</summary>
    public bool TryFill(IExpressionValues values, ICollection<Complaint> complaints, out string text)
    {
        var written = new StringBuilder();
        var isRight = true;
        foreach (var (before, expression) in parts)
        {
            isRight &= expression.TryEvaluate(values, complaints, out var value);
            written.Append(before).Append(value);
        }
        text = isRight ? written.Append(end).ToString() : "";
        return isRight;
    }

    public override string ToString() => Text;
}
