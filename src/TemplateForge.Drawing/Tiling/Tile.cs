using System.Globalization;
using TemplateForge.Geometry;

namespace TemplateForge.Drawing;

/// <summary>One printed page of a drawing.</summary>
/// <param name="Row">From the top, 0 first.</param>
/// <param name="Column">From the left, 0 first.</param>
/// <param name="Window">The part of the drawing that it shows, in the drawing's coordinates.</param>
/// <param name="PageWindow">The same part in the page's coordinates.</param>
public sealed record Tile(int Row, int Column, Box Window, Box PageWindow)
{
    /// <summary>How many rows the drawings before this one take, so that no two pages of a document have one address.</summary>
    public int RowsBefore { get; init; }

    /// <summary>A letter for the row from the top and a number for the column from the left: A1. After Z comes AA.</summary>
    public string Address => Letters(RowsBefore + Row) + (Column + 1).ToString(CultureInfo.InvariantCulture);

    /// <summary>From the drawing's coordinates to the page's, at true size.</summary>
    public Placement ToPage => Placement.Moved(PageWindow.Min - Window.Min);

    private static string Letters(int row) => (row >= 26 ? Letters(row / 26 - 1) : "") + (char)('A' + row % 26);
}
