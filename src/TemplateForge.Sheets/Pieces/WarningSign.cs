using System.Globalization;
using TemplateForge.Drawing;
using TemplateForge.Geometry;

namespace TemplateForge.Sheets;

/// <summary>The triangle that warns.</summary>
internal static class WarningSign
{
    /// <summary>With an exclamation mark, as high as asked, in mm.</summary>
    public static Block Of(double height)
    {
        var (board, width) = Triangle(height);
        board.Line(LineKinds.Warning, new(width / 2, -height * 0.35), new(width / 2, -height * 0.68));
        board.Line(LineKinds.Warning, new(width / 2, -height * 0.8), new(width / 2, -height * 0.86));
        return new(width, height, board);
    }

    /// <summary>With the number of a warning in it.</summary>
    public static Block Numbered(int number, double height)
    {
        var (board, width) = Triangle(height);
        board.Text(number.ToString(CultureInfo.InvariantCulture), new(width / 2, -height * 0.86), height * 0.42, Anchor.BaseMiddle);
        return new(width, height, board);
    }

    private static (Board Board, double Width) Triangle(double height)
    {
        var (board, width) = (new Board(), height * 1.15);
        board.Add(LineKinds.Warning, new ClosedStroke(Outline.Polygon(new Point(0, -height), new(width, -height), new(width / 2, 0))));
        return (board, width);
    }
}
