using System.Collections.Immutable;
using TemplateForge.Geometry;

namespace TemplateForge.Drawing;

/// <summary>The pages of a drawing.</summary>
/// <param name="PageWidth">Width in mm of the paper as it is printed, upright or across.</param>
/// <param name="PageHeight">Its height in mm.</param>
/// <param name="Margins">Strips of the page as it is printed that the printer cannot reach.</param>
/// <param name="Layout">What is kept free on every page.</param>
/// <param name="Columns">Pages side by side, those left out counted.</param>
/// <param name="Rows">Pages one above the other, those left out counted.</param>
/// <param name="Tiles">The pages that show something, row by row from the top, each from the left.</param>
public sealed record TilePlan(
    double PageWidth, double PageHeight, Margins Margins, PageLayout Layout, int Columns, int Rows, ImmutableArray<Tile> Tiles)
{
    /// <summary>Whether the paper lies on its side. Which side of a page is longer does not say so: of a roll a page may be shorter than wide.</summary>
    public bool IsAcross { get; init; }

    /// <summary>The same pages after those of other drawings in one document.</summary>
    /// <param name="rows">How many rows those take.</param>
    public TilePlan After(int rows) => this with { Tiles = [.. Tiles.Select(t => t with { RowsBefore = rows })] };

    /// <summary>The whole sheet, in page coordinates.</summary>
    public Box Paper => new(Point.Origin, new(PageWidth, PageHeight));

    /// <summary>What the printer reaches, in page coordinates.</summary>
    public Box Printable => new(new(Margins.Left, Margins.Bottom), new(PageWidth - Margins.Right, PageHeight - Margins.Top));

    /// <summary>The edges along which two printed pages are joined.</summary>
    public IEnumerable<Seam> Seams
    {
        get
        {
            var tiles = Tiles.ToDictionary(t => (t.Row, t.Column));
            foreach (var tile in Tiles)
            {
                // Seams of pages left out are counted as well: a seam keeps its marks.
                var number = tile.Row * Columns + tile.Column;
                if (tiles.TryGetValue((tile.Row, tile.Column + 1), out var right)) yield return new(number, tile, right);
                if (tiles.TryGetValue((tile.Row - 1, tile.Column), out var upper)) yield return new(number, tile, upper);
            }
        }
    }
}
