using System.Collections.Immutable;
using TemplateForge.Geometry;

namespace TemplateForge.Sheets;

/// <summary>Rows of cells between thin rules.</summary>
internal static class Table
{
    public const double Aside = 1.2;

    /// <summary>A table with a line of headings.</summary>
    /// <param name="columns">Heading and width in mm of each column.</param>
    /// <param name="rows">The cells of each row: what stands in a cell of a given width.</param>
    /// <param name="height">Height of the headings' capitals in mm.</param>
    public static Block Of(ImmutableArray<(string Title, double Width)> columns, IEnumerable<ImmutableArray<Cell>> rows, double height)
    {
        var (board, width) = (new Board(), columns.Sum(c => c.Width));
        var y = Row([.. columns.Select(c => Cell.Words(c.Title, height * 0.9))], 0);
        board.Line(LineKinds.Dimension, new(0, y), new(width, y));
        foreach (var row in rows)
        {
            y = Row(row, y);
            board.Line(LineKinds.Shade, new(0, y), new(width, y));
        }
        return new(width, -y, board);

        double Row(ImmutableArray<Cell> cells, double top)
        {
            var blocks = cells.Select((c, i) => c.Within(columns[i].Width - 2 * Aside)).ToList();
            var (tallest, x) = (blocks.Max(b => b.Height), 0.0);
            foreach (var (block, column) in blocks.Zip(columns))
            {
                block.PutOn(board, new Point(x + Aside, top - 0.4 * height));
                x += column.Width;
            }
            return top - tallest - 0.6 * height;
        }
    }
}

/// <summary>What stands in a cell of a table.</summary>
/// <param name="Within">The block for the width that the column leaves it.</param>
internal sealed record Cell(Func<double, Block> Within)
{
    public static Cell Blank { get; } = new(width => Block.Empty(Math.Max(width, 0), 0));

    public static Cell Words(string text, double height, bool strong = false) =>
        text.Length == 0 ? Blank : new(width => Block.Text(text, width, height, strong));

    /// <summary>A small square to tick.</summary>
    public static Cell TickBox(double height) => new(_ =>
    {
        var board = new Board();
        board.Frame(LineKinds.Datum, new(new(0, -1.3 * height), new(1.3 * height, 0)));
        return new(1.3 * height, 1.3 * height, board);
    });

    /// <summary>A line to write on.</summary>
    public static Cell Field(double height) => new(width =>
    {
        var board = new Board();
        board.Line(LineKinds.Dimension, new(0, -1.35 * height), new(width, -1.35 * height));
        return new(width, 1.35 * height, board);
    });
}
