using TemplateForge.Geometry;

namespace TemplateForge.Drawing;

/// <summary>How the strips beside a page's window are shared out, in page coordinates.</summary>
/// <remarks>
/// <code>
///     | side    | window
///     +---------+--------------------------------------+
///     |         | (trim here)                          |
///     | corner  | title               [ ] measured     |  map
///     |         | |------- scale check -------|        |
/// </code>
/// </remarks>
internal sealed class Strips
{
    /// <summary>Kept free next to the window for the words along the trim line.</summary>
    private const double TrimBeside = 4;
    private const double TrimBelow = 5;
    private const double WidestMap = 24;
    private const double LeastMap = 10;
    private const double ShortestCheck = 100;
    private const double Clear = 2;
    private const double LeastSide = 12;
    private const double LeastFoot = 18;
    private const double LeastOverlap = 5;

    /// <exception cref="ArgumentException">The strips are too narrow.</exception>
    public Strips(TilePlan plan, Tile tile)
    {
        var (page, window) = (plan.Printable, tile.PageWindow);
        var mapWidth = Math.Min(WidestMap, window.Width - ShortestCheck - 2 * Clear);
        var (side, foot) = (plan.Layout.SideStrip, plan.Layout.FootStrip);
        if (plan.Layout.Overlap < LeastOverlap)
        {
            throw new ArgumentException(
                $"Glue and registration marks need an overlap of {LeastOverlap} mm, but it is {plan.Layout.Overlap} mm.", nameof(plan));
        }
        if (side < LeastSide || foot < LeastFoot || mapWidth < LeastMap || window.Height < ShortestCheck + 2 * Clear)
        {
            throw new ArgumentException(
                $"Page furniture needs strips of {LeastSide} mm at the side and {LeastFoot} mm at the foot and a window of "
                + $"{ShortestCheck + LeastMap + 2 * Clear} × {ShortestCheck + 2 * Clear} mm, but they are {side} and {foot} mm and {window.Width} × {window.Height} mm.",
                nameof(plan));
        }
        var top = window.Min.Y - TrimBelow;
        Corner = new(page.Min + new Vector(0.5, 0.5), new(window.Min.X - Clear, top));
        Map = new(new(page.Max.X - mapWidth, page.Min.Y + 0.5), new(page.Max.X - 0.5, top));
        Foot = new(new(window.Min.X + Clear, page.Min.Y), new(Map.Min.X - Clear, top));
        Side = new(new(page.Min.X, window.Min.Y + Clear), new(window.Min.X - TrimBeside, window.Max.Y));
        Title = new(new(Foot.Min.X, Foot.Max.Y - 2.6), new(Foot.Max.X, Foot.Max.Y));
    }

    public Box Corner { get; }
    public Box Map { get; }
    public Box Foot { get; }
    public Box Side { get; }
    public Box Title { get; }
}
