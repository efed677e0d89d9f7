namespace TemplateForge.Notation;

/// <summary>Reads a value as people write it down: <c>12</c>, <c>1.4 mm</c>, <c>1/2 in</c>, <c>1 3/8"</c>, <c>30 deg</c>, <c>18 ga steel</c>.</summary>
public static class QuantityReader
{
    /// <summary>A value stays below this many base units (mm, degrees), 1000 km of sheet.</summary>
    public const double Limit = 1e9;

    internal const int LongestText = 500;

    /// <summary>Reads one value; nothing may stand behind it.</summary>
    /// <param name="text">As written by the fabricator.</param>
    /// <param name="declared">The unit of a bare number; <see cref="Unit.None"/> for a plain number. Any unit of its dimension is understood.</param>
    /// <param name="place">Where the first character of the text stands.</param>
    /// <param name="complaints">Receives one complaint where the answer is false.</param>
    /// <param name="quantity">In base units; zero where the answer is false.</param>
    /// <param name="subject">What the value is for, as a complaint should call it; empty where it has no name.</param>
    public static bool TryRead(
        string text, Unit declared, Place place, ICollection<Complaint> complaints, out Quantity quantity, string subject = "") =>
        TryRead(new Writing(text, place), declared, complaints, out quantity, subject);

    /// <inheritdoc cref="TryRead(string, Unit, Place, ICollection{Complaint}, out Quantity, string)"/>
    public static bool TryRead(
        Writing writing, Unit declared, ICollection<Complaint> complaints, out Quantity quantity, string subject = "")
    {
        ArgumentNullException.ThrowIfNull(writing);
        ArgumentNullException.ThrowIfNull(declared);
        ArgumentNullException.ThrowIfNull(complaints);
        quantity = new(0, declared.Dimension);
        var text = writing.Text;
        if (text.Length > LongestText)
            return Refused(complaints, Wordings.TextTooLong(writing.At(0), text.Length, LongestText));
        if (string.IsNullOrWhiteSpace(text))
            return Refused(complaints, Wordings.EmptyValue(writing.At(0), declared));
        if (!Lexer.TryRead(writing, complaints, out var tokens))
            return false;
        var isNegative = tokens[0].IsSymbol("-");
        var first = isNegative || tokens[0].IsSymbol("+") ? 1 : 0;
        if (tokens[first].Kind != TokenKind.Number)
            return Refused(complaints, Wordings.NotANumber(writing.At(tokens[0].Start), text, declared));
        if (!Literal.TryRead(writing, tokens, first, inExpression: false, complaints, out var literal))
            return false;
        if (tokens[literal.Next].Kind != TokenKind.End)
            return Refused(complaints, Wordings.SomethingBehind(writing, tokens, literal));
        var found = literal.HasUnit ? literal.Quantity : new(literal.Quantity.Value * declared.Factor, declared.Dimension);
        if (found.Dimension != declared.Dimension)
            return Refused(complaints, Wordings.WrongDimension(writing.At(literal.Start), text.Trim(), found.Dimension, subject, declared));
        if (!(Math.Abs(found.Value) < Limit))
            return Refused(complaints, Wordings.TooLarge(writing.At(literal.Start), text.Trim()));
        quantity = isNegative ? -found : found;
        return true;
    }

    private static bool Refused(ICollection<Complaint> complaints, Complaint complaint)
    {
        complaints.Add(complaint);
        return false;
    }
}
