using System.Collections.Immutable;
using System.Text;

namespace TemplateForge.Notation;

/// <summary>Reads comma-separated values as RFC 4180 writes them, or the same with another sign in the comma's place.</summary>
/// <remarks>
/// <code>
/// file  = row *(line-end row) [line-end]
/// row   = cell *("," cell)
/// cell  = plain / DQUOTE *(any / "," / line-end / 2DQUOTE) DQUOTE
/// </code>
/// Spaces belong to a cell. A line may end with CR LF, LF or CR.
/// </remarks>
internal sealed class CsvReader(TextFile source, char separator, ICollection<Complaint> complaints)
{
    public const char Comma = ',';
    public const char Semicolon = ';';
    public const char Tab = '\t';

    private readonly string text = source.Text;
    private int at;
    private int line = 1;
    private int lineStart;

    private Place Here => new(source.Name, line, at - lineStart + 1);
    private bool IsAtEnd => at >= text.Length;
    private bool IsAtEndOfRow => IsAtEnd || text[at] is '\r' or '\n';

    /// <summary>What parts the cells of a text: what stands in its first line outside of quotes, a comma before all else.</summary>
    public static char SeparatorOf(string text)
    {
        var found = new HashSet<char>();
        var isQuoted = false;
        foreach (var c in text.TrimStart('\r', '\n'))
        {
            if (c is '\r' or '\n') break;
            if (c == '"') isQuoted = !isQuoted;
            else if (!isQuoted) found.Add(c);
        }
        return found.Contains(Comma) ? Comma : found.Contains(Semicolon) ? Semicolon : found.Contains(Tab) ? Tab : Comma;
    }

    public ImmutableArray<CsvRow> Rows()
    {
        var rows = ImmutableArray.CreateBuilder<CsvRow>();
        while (!IsAtEnd)
        {
            if (IsAtEndOfRow) EndLine();
            else rows.Add(Row());
        }
        return rows.ToImmutable();
    }

    private CsvRow Row()
    {
        var (start, before) = (Here, complaints.Count);
        var cells = ImmutableArray.CreateBuilder<CsvCell>();
        cells.Add(Cell());
        while (!IsAtEndOfRow)
        {
            at++; // the separator
            cells.Add(Cell());
        }
        EndLine();
        return new(start, cells.ToImmutable()) { IsSound = complaints.Count == before };
    }

    private CsvCell Cell() => !IsAtEnd && text[at] == '"' ? Quoted() : Plain();

    private CsvCell Plain()
    {
        var (start, from) = (Here, at);
        while (!IsAtEndOfRow && text[at] != separator)
        {
            if (text[at] == '"') complaints.Add(Wordings.QuoteInsideCell(Here));
            at++;
        }
        return new(text[from..at], start);
    }

    private CsvCell Quoted()
    {
        var opening = Here;
        at++;
        var (start, content) = (Here, new StringBuilder());
        while (!IsAtEnd)
        {
            if (text[at] == '"')
            {
                at++;
                if (IsAtEnd || text[at] != '"')
                {
                    PassToSeparator();
                    return new(content.ToString(), start);
                }
            }
            if (text[at] is '\r' or '\n')
            {
                content.Append('\n');
                EndLine();
                continue;
            }
            content.Append(text[at++]);
        }
        complaints.Add(Wordings.CellNotClosed(opening));
        return new(content.ToString(), start);
    }

    private void PassToSeparator()
    {
        if (IsAtEndOfRow || text[at] == separator) return;
        complaints.Add(Wordings.TextAfterQuote(Here));
        while (!IsAtEndOfRow && text[at] != separator) at++;
    }

    private void EndLine()
    {
        if (IsAtEnd) return;
        at += text[at] == '\r' && at + 1 < text.Length && text[at + 1] == '\n' ? 2 : 1;
        (line, lineStart) = (line + 1, at);
    }
}
