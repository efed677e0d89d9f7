using System.Collections.Immutable;

namespace TemplateForge.Notation;

/// <summary>A table as comma-separated values (RFC 4180): a line of headings, then rows of as many cells.</summary>
/// <param name="Headings">The first line.</param>
/// <param name="Rows">The others; each has a cell for every heading.</param>
public sealed record CsvTable(ImmutableArray<CsvCell> Headings, ImmutableArray<CsvRow> Rows)
{
    /// <summary>Reads a table; every complaint about it comes at once.</summary>
    /// <param name="source">Its text; lines end as any system ends them, and rows with nothing in them are passed over.</param>
    /// <param name="complaints">Where complaints go, with line and column.</param>
    /// <param name="table">The table.</param>
    public static bool TryRead(TextFile source, ICollection<Complaint> complaints, [System.Diagnostics.CodeAnalysis.MaybeNullWhen(false)] out CsvTable table)
    {
        var before = complaints.Count;
        table = null;
        var rows = new CsvReader(source, complaints).Rows();
        if (complaints.Count > before) return false;
        if (rows.IsEmpty)
        {
            complaints.Add(Wordings.TableIsEmpty(new(source.Name, 1, 1)));
            return false;
        }
        var headings = rows[0].Cells;
        // A spreadsheet leaves rows of commas where something was deleted.
        rows = [.. rows.Skip(1).Where(r => r.Cells.Any(c => c.Text.Trim().Length > 0))];
        foreach (var row in rows.Where(r => r.Cells.Length != headings.Length))
            complaints.Add(Wordings.OtherNumberOfCells(row.Place, row.Cells.Length, headings.Length));
        if (complaints.Count == before) table = new(headings, rows);
        return table is not null;
    }
}

/// <summary>A row of cells, and where it begins.</summary>
public sealed record CsvRow(Place Place, ImmutableArray<CsvCell> Cells);

/// <summary>A cell's text without quotes, and where that text begins.</summary>
public readonly record struct CsvCell(string Text, Place Place);
