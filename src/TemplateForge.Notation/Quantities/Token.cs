namespace TemplateForge.Notation;

/// <summary>A number, a word or a sign of a text.</summary>
/// <param name="Kind">What it is.</param>
/// <param name="Start">Offset of its first character.</param>
/// <param name="End">Offset behind its last character.</param>
/// <param name="Text">As written; signs that mean the same are spelled one way (× is *).</param>
/// <param name="Value">Of a number.</param>
/// <param name="IsWhole">A number of digits alone, which can stand in a fraction.</param>
internal readonly record struct Token(TokenKind Kind, int Start, int End, string Text, double Value = 0, bool IsWhole = false)
{
    public bool IsSymbol(string symbol) => Kind == TokenKind.Symbol && Text == symbol;

    public bool IsWord(string word) => Kind == TokenKind.Word && Text == word;
}

internal enum TokenKind
{
    Number,
    Word,
    Symbol,
    End,
}
