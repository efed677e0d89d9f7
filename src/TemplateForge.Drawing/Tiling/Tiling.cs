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
    private const double SmallestWindow = 114;

    /// <summary>Whether the paper has room for a drawing beside its margins and what is kept free.</summary>
    public static bool HasRoom(Paper paper, PageLayout layout) => Lays(paper).Any(page => Fits(page, layout));

    /// <param name="content">What must be on the pages, in the drawing's coordinates; grow it by half a pen's width, for a window
    /// cuts off what lies outside it.</param>
    /// <param name="paper">What is printed on, upright or across, whichever takes fewer pages; upright when it is the same. A roll is
    /// cut to the length that the content needs, a whole number of mm; of two ways that take as many pages it is the shorter one.</param>
    /// <param name="layout">What is kept free on it.</param>
    /// <param name="hasInk">Whether anything is drawn in a part of the drawing; a page without is left out.</param>
    /// <exception cref="ArgumentException">The paper is too small.</exception>
    public static TilePlan Plan(Box content, Paper paper, PageLayout layout, Func<Box, bool> hasInk)
    {
        var plans = Lays(paper)
            .Where(page => Fits(page, layout))
            .Select(page => Plan(content, paper.IsRoll ? page.CutFor(content, layout) : page, layout, hasInk))
            .ToList();
        if (plans.Count == 0)
        {
            throw new ArgumentException(
                $"Paper {paper.Name}, {paper.Width} × {paper.Height} mm, leaves no room for a drawing beside margins of {paper.Margin}, "
                + $"strips of {layout.SideStrip} and {layout.FootStrip} and an overlap of {layout.Overlap} mm.",
                nameof(paper));
        }
        return plans.OrderBy(p => p.Tiles.Length).ThenBy(p => p.Tiles.Length * p.PageWidth * p.PageHeight).First();
    }

    /// <summary>A page as it is printed.</summary>
    private readonly record struct PageSize(double Width, double Height, Margins Margins, bool IsAcross)
    {
        /// <summary>A page of a roll, as long as the content needs and no longer than it may be.</summary>
        public PageSize CutFor(Box content, PageLayout layout)
        {
            var (along, beside) = IsAcross
                ? (content.Width, Margins.Left + Margins.Right + layout.SideStrip)
                : (content.Height, Margins.Bottom + Margins.Top + layout.FootStrip);
            var length = Math.Ceiling(Math.Max(along, Least(layout)) + beside - Tolerance.Length);
            return IsAcross ? this with { Width = Math.Min(Width, length) } : this with { Height = Math.Min(Height, length) };
        }
    }

    private static IEnumerable<PageSize> Lays(Paper paper)
    {
        if (paper.Lay != PaperLay.Across) yield return new(paper.Width, paper.Height, paper.Margins, IsAcross: false);
        if (paper.Lay != PaperLay.Upright) yield return new(paper.Height, paper.Width, paper.Margins.Across, IsAcross: true);
    }

    private static double Least(PageLayout layout) => Math.Max(SmallestWindow, 2 * layout.Overlap + SmallestStep);

    private static bool Fits(PageSize page, PageLayout layout) => Window(page, layout, out _) is var (width, height) && Math.Min(width, height) >= Least(layout);

    private static (double Width, double Height) Window(PageSize page, PageLayout layout, out Point corner)
    {
        corner = new(page.Margins.Left + layout.SideStrip, page.Margins.Bottom + layout.FootStrip);
        return (page.Width - page.Margins.Right - corner.X, page.Height - page.Margins.Top - corner.Y);
    }

    private static TilePlan Plan(Box content, PageSize page, PageLayout layout, Func<Box, bool> hasInk)
    {
        var (wide, high) = Window(page, layout, out var lowerLeft);
        var onPage = new Box(lowerLeft, lowerLeft + new Vector(wide, high));
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
        return new(page.Width, page.Height, page.Margins, layout, columns, rows, tiles.ToImmutable()) { IsAcross = page.IsAcross };
    }

    /// <summary>How many windows, each a step after the one before it, cover a length.</summary>
    private static int Count(double length, double window, double step) =>
        1 + (int)Math.Max(0, Math.Ceiling((length - window - Tolerance.Length) / step));
}
