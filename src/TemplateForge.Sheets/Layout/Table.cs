using System.Collections.Immutable;
using TemplateForge.Geometry;

namespace TemplateForge.Sheets;

/// <summary>Rows of cells between thin rules.</summary>
internal static class Table
{
    /// <summary>Room in mm on either side of a column: two columns stand 3 mm apart at least.</summary>
    public const double Aside = 1.5;

    /// <summary>Headings are smaller than the rest, but no smaller than this, in mm.</summary>
    private const double LeastHeading = 1.8;

    /// <summary>A table with a line of headings.</summary>
    /// <param name="columns">Heading and width in mm of each column.</param>
    /// <param name="rows">The cells of each row: what stands in a cell of a given width.</param>
    /// <param name="height">Height of the headings' capitals in mm.</param>
    public static Block Of(ImmutableArray<(string Title, double Width)> columns, IEnumerable<ImmutableArray<Cell>> rows, double height) =>
        Block.Stacked(0, [Heading(columns, height), .. rows.Select(r => Row(columns, r, height))]);

    /// <summary>The line of headings alone, for a table that runs on from column to column.</summary>
    public static Block Heading(ImmutableArray<(string Title, double Width)> columns, double height) =>
        Ruled(columns, [.. columns.Select(c => Cell.Words(c.Title, Math.Max(height * 0.9, Math.Min(height, LeastHeading))))], height, LineKinds.Dimension);

    /// <summary>One row alone.</summary>
    public static Block Row(ImmutableArray<(string Title, double Width)> columns, ImmutableArray<Cell> cells, double height) =>
        Ruled(columns, cells, height, LineKinds.Shade);

    // Where there are fewer cells than columns the last one goes over the rest of them.
    private static Block Ruled(ImmutableArray<(string Title, double Width)> columns, ImmutableArray<Cell> cells, double height, LineKind rule)
    {
        var (board, width) = (new Board(), columns.Sum(c => c.Width));
        var blocks = cells.Select((c, i) => c.Within((i == cells.Length - 1 ? columns[i..].Sum(r => r.Width) : columns[i].Width) - 2 * Aside)).ToList();
        var (tallest, x) = (blocks.Max(b => b.Height), 0.0);
        foreach (var (block, column) in blocks.Zip(columns))
        {
            block.PutOn(board, new Point(x + Aside, -0.4 * height));
            x += column.Width;
        }
        var bottom = -tallest - 0.6 * height;
        board.Line(rule, new(0, bottom), new(width, bottom));
        return new(width, -bottom, board);
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
