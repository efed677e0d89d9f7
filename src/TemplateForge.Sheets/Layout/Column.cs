using System.Collections.Immutable;
using TemplateForge.Drawing;

namespace TemplateForge.Sheets;

/// <summary>A column of a table with all that stands in it.</summary>
/// <param name="Title">Its heading.</param>
/// <param name="Texts">Row by row; a second figure of a row stands on a line of its own.</param>
internal sealed record Column(string Title, ImmutableArray<string> Texts)
{
    /// <summary>Whether it holds figures: they stand with their points below each other, and brackets hang.</summary>
    public bool AreFigures { get; init; }

    /// <summary>Whether it is as wide as the other columns leave it.</summary>
    public bool TakesTheRest { get; init; }

    /// <summary>A column of figures.</summary>
    public static Column OfFigures(string title, IEnumerable<string> texts) => new(title, [.. texts]) { AreFigures = true };

    /// <summary>A column of words, as wide as the widest.</summary>
    public static Column OfWords(string title, IEnumerable<string> texts) => new(title, [.. texts]);

    /// <summary>A column of words that takes the width that the others leave.</summary>
    public static Column OfRest(string title, IEnumerable<string> texts) => new(title, [.. texts]) { TakesTheRest = true };

    /// <summary>Columns beside each other as a table of some width.</summary>
    /// <param name="columns">All with as many rows.</param>
    /// <param name="width">Width of the table in mm.</param>
    /// <param name="height">Height of capitals in mm.</param>
    public static (ImmutableArray<(string Title, double Width)> Columns, ImmutableArray<ImmutableArray<Cell>> Rows) Table(
        ImmutableArray<Column> columns, double width, double height)
    {
        var left = width - columns.Where(c => !c.TakesTheRest).Sum(c => c.WidthAt(height));
        var rest = columns.Count(c => c.TakesTheRest);
        var cells = columns.Select(c => c.Cells(height).ToList()).ToList();
        return (
            [.. columns.Select(c => (c.Title, c.TakesTheRest ? Math.Max(left / rest, c.WidthOfTitle(height)) : c.WidthAt(height)))],
            [.. Enumerable.Range(0, columns.Select(c => c.Texts.Length).Max()).Select(row => cells.Select(c => c[row]).ToImmutableArray())]);
    }

    /// <summary>Width in mm with the room on both sides.</summary>
    public double WidthAt(double height) => Math.Max(WidthOfTitle(height), (AreFigures ? WidthOfFigures(height) : Lines.Select(t => Alphabet.Width(t, height)).DefaultIfEmpty(0).Max()) + Sides);

    private const double Sides = 2 * Sheets.Table.Aside + 0.1;

    private double WidthOfTitle(double height) => Title.Split('\n').Max(t => Alphabet.Width(t, height)) + Sides;

    private IEnumerable<string> Lines => Texts.SelectMany(t => t.Split('\n'));

    // Inches are a column of figures of their own, between the millimetres.
    private double WidthOfFigures(double height) => Math.Max(WidthOfFigures(inches: false, height), WidthOfFigures(inches: true, height));

    private double WidthOfFigures(bool inches, double height) => Point(inches, height) + Lines.Where(t => IsInInches(t) == inches)
        .Select(t => Alphabet.Width(t, height) - WidthBefore(t, height)).DefaultIfEmpty(0).Max();

    private double Point(bool inches, double height) => Lines.Where(t => IsInInches(t) == inches).Select(t => WidthBefore(t, height)).DefaultIfEmpty(0).Max();

    private static bool IsInInches(string figure) => figure.StartsWith('[');

    private static double WidthBefore(string figure, double height) =>
        Alphabet.Width(figure, height) - (figure.IndexOf('.', StringComparison.Ordinal) is >= 0 and var point ? Alphabet.Width(figure[point..], height) : 0);

    private IEnumerable<Cell> Cells(double height)
    {
        if (!AreFigures) return Texts.Select(t => Cell.Words(t, height));
        var (millimetres, inches) = (Point(inches: false, height), Point(inches: true, height));
        return Texts.Select(text => text.Length == 0 ? Cell.Blank : new Cell(width =>
        {
            var (board, y) = (new Board(), -height);
            foreach (var line in text.Split('\n'))
            {
                board.Text(line, new((IsInInches(line) ? inches : millimetres) - WidthBefore(line, height), y), height);
                y -= height * Block.Pitch;
            }
            return new(width, -y - height * (Block.Pitch - Block.Descent), board);
        }));
    }
}
