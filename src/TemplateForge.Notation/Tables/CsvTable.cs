using System.Collections.Immutable;

namespace TemplateForge.Notation;

/// <summary>A table as comma-separated values (RFC 4180): a line of headings, then rows of as many cells.</summary>
/// <remarks>
/// Spreadsheets of countries that write 1,5 for 1.5 part cells with semicolons, and some programs with tabs; the line of headings says which.
/// </remarks>
/// <param name="Headings">The first line.</param>
/// <param name="Rows">The others; one that is sound has a cell for every heading.</param>
public sealed record CsvTable(ImmutableArray<CsvCell> Headings, ImmutableArray<CsvRow> Rows)
{
    /// <summary>Reads a table; every complaint about it comes at once.</summary>
    /// <param name="source">Its text; lines end as any system ends them, and rows with nothing in them are passed over.</param>
    /// <param name="complaints">Where complaints go, with line and column.</param>
    /// <param name="table">The table, with rows of which was complained among the others, so that these can be looked at as well.</param>
    /// <returns>Whether its headings can be read.</returns>
    public static bool TryRead(TextFile source, ICollection<Complaint> complaints, [System.Diagnostics.CodeAnalysis.MaybeNullWhen(false)] out CsvTable table)
    {
        table = null;
        var separator = CsvReader.SeparatorOf(source.Text);
        var rows = new CsvReader(source, separator, complaints).Rows();
        if (rows.IsEmpty)
        {
            complaints.Add(Wordings.TableIsEmpty(new(source.Name, 1, 1)));
            return false;
        }
        if (!rows[0].IsSound) return false;
        var headings = rows[0].Cells;
        // A spreadsheet leaves rows of commas where something was deleted.
        table = new(headings, [.. rows.Skip(1).Where(r => r.Cells.Any(c => c.Text.Trim().Length > 0)).Select(Checked)]);
        return true;

        CsvRow Checked(CsvRow row)
        {
            if (!row.IsSound || row.Cells.Length == headings.Length) return row;
            complaints.Add(Wordings.OtherNumberOfCells(row.Place, row.Cells.Length, headings.Length, separator));
            return row with { IsSound = false };
        }
    }
}

/// <summary>A row of cells, and where it begins.</summary>
public sealed record CsvRow(Place Place, ImmutableArray<CsvCell> Cells)
{
    /// <summary>Whether nothing about its cells was complained of: there are as many as headings, and each ends where it should.</summary>
    public bool IsSound { get; init; } = true;
}

/// <summary>A cell's text without quotes, and where that text begins.</summary>
public readonly record struct CsvCell(string Text, Place Place);
