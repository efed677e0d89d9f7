using System.Collections.Immutable;
using TemplateForge.Geometry;

namespace TemplateForge.Drawing;

/// <summary>How a drawing is laid at true size over pages of paper.</summary>
/// <remarks>
/// <code>
///     +-----------------------------+   paper
///     |   +---------------------+   |   less the printer's margin
///     |   | |                   |   |
///     |   |s|                   |   |
///     |   |i|      window       |   |   its upper and right neighbours overlap it
///     |   |d|                   |   |
///     |   |e+-------------------|   |
///     |   |foot                 |   |
///     |   +---------------------+   |
///     +-----------------------------+
/// </code>
/// </remarks>
public static class Tiling
{
    /// <summary>A page that shows less than this of the drawing, in mm, is not worth its paper.</summary>
    private const double SmallestStep = 30;

    /// <summary>What <see cref="Furniture"/> prints needs a window at least this long either way, in mm.</summary>
    private const double SmallestWindow = 110;

    /// <summary>Whether the paper, upright or across, has room for a drawing beside its margins and what is kept free.</summary>
    public static bool HasRoom(Paper paper, PageLayout layout) =>
        Fits(paper.Width, paper.Height, paper.Margin, layout) || Fits(paper.Height, paper.Width, paper.Margin, layout);

    /// <param name="content">What must be on the pages, in the drawing's coordinates; grow it by half a pen's width, for a window
    /// cuts off what lies outside it.</param>
    /// <param name="paper">What is printed on, upright or across, whichever takes fewer pages; upright when it is the same.</param>
    /// <param name="layout">What is kept free on it.</param>
    /// <param name="hasInk">Whether anything is drawn in a part of the drawing; a page without is left out.</param>
    /// <exception cref="ArgumentException">The paper is too small.</exception>
    public static TilePlan Plan(Box content, Paper paper, PageLayout layout, Func<Box, bool> hasInk)
    {
        var plans = new[] { (Width: paper.Width, Height: paper.Height), (Width: paper.Height, Height: paper.Width) }
            .Where(page => Fits(page.Width, page.Height, paper.Margin, layout))
            .Select(page => Plan(content, page.Width, page.Height, paper.Margin, layout, hasInk))
            .ToList();
        if (plans.Count == 0)
        {
            throw new ArgumentException(
                $"Paper {paper.Name}, {paper.Width} × {paper.Height} mm, leaves no room for a drawing beside margins of {paper.Margin}, "
                + $"strips of {layout.SideStrip} and {layout.FootStrip} and an overlap of {layout.Overlap} mm.",
                nameof(paper));
        }
        return plans.MinBy(p => p.Tiles.Length)!;
    }

    private static bool Fits(double width, double height, double margin, PageLayout layout)
    {
        var least = Math.Max(SmallestWindow, 2 * layout.Overlap + SmallestStep);
        return width - 2 * margin - layout.SideStrip >= least && height - 2 * margin - layout.FootStrip >= least;
    }

    private static TilePlan Plan(Box content, double pageWidth, double pageHeight, double margin, PageLayout layout, Func<Box, bool> hasInk)
    {
        var onPage = new Box(
            new(margin + layout.SideStrip, margin + layout.FootStrip),
            new(pageWidth - margin, pageHeight - margin));
        var step = new Vector(onPage.Width - layout.Overlap, onPage.Height - layout.Overlap);
        var columns = Count(content.Width, onPage.Width, step.X);
        var rows = Count(content.Height, onPage.Height, step.Y);
        // The grid is centred on the content; its first page lies at the upper left.
        var left = content.Centre.X - (onPage.Width + step.X * (columns - 1)) / 2;
        var bottom = content.Centre.Y - (onPage.Height + step.Y * (rows - 1)) / 2;

        var tiles = ImmutableArray.CreateBuilder<Tile>();
        for (var row = 0; row < rows; row++)
        {
            for (var column = 0; column < columns; column++)
            {
                var corner = new Point(left + step.X * column, bottom + step.Y * (rows - 1 - row));
                var window = new Box(corner, corner + new Vector(onPage.Width, onPage.Height));
                if (hasInk(window)) tiles.Add(new(row, column, window, onPage));
            }
        }
        return new(pageWidth, pageHeight, margin, layout, columns, rows, tiles.ToImmutable());
    }

    /// <summary>How many windows, each a step after the one before it, cover a length.</summary>
    private static int Count(double length, double window, double step) =>
        1 + (int)Math.Max(0, Math.Ceiling((length - window - Tolerance.Length) / step));
}
