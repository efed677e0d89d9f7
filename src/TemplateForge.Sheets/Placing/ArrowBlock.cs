using System.Collections.Immutable;
using TemplateForge.Drawing;
using TemplateForge.Fabrication;
using TemplateForge.Geometry;

namespace TemplateForge.Sheets;

/// <summary>The arrows to the front of the vehicle and upwards, from one point.</summary>
internal static class ArrowBlock
{
    private const double Shaft = 13;
    private const double Head = 3.5;
    private const double Letters = 3;

    /// <param name="arrows">Words and where they point; none makes an empty block.</param>
    /// <param name="unit">How many mm of the block are one mm on the paper.</param>
    public static Block Of(ImmutableArray<Arrow> arrows, double unit)
    {
        if (arrows.IsEmpty) return Block.Empty(0, 0);
        var board = new Board();
        foreach (var arrow in arrows)
        {
            var way = Vector.Polar(unit, arrow.Direction);
            var tip = Point.Origin + way * Shaft;
            var base1 = tip - way * Head + way.Left * (Head * 0.3);
            var base2 = tip - way * Head - way.Left * (Head * 0.3);
            board.Line(LineKinds.Arrow, Point.Origin, tip - way * Head);
            board.Add(LineKinds.Arrow, new ClosedStroke(new Contour(Segment.Line(base1, base2), Segment.Line(base2, tip), Segment.Line(tip, base1))));
            board.Text(arrow.Label, tip + way * Beyond(arrow, unit), Letters * unit, Anchor.Middle, strong: false);
        }
        var bounds = Box.Around(board.Marks.Select(m => m.Bounds)).Grown(0.5 * unit);
        var moved = new Board();
        moved.Add(board, Placement.Moved(new(-bounds.Min.X, -bounds.Max.Y)));
        return new(bounds.Width, bounds.Height, moved);
    }

    // How far past the tip the middle of the word lies: half its extent in that direction, and some air.
    private static double Beyond(Arrow arrow, double unit)
    {
        var (wide, high) = (Alphabet.Width(arrow.Label, Letters * unit) / unit, Letters);
        return wide / 2 * Math.Abs(arrow.Direction.Cos) + high / 2 * Math.Abs(arrow.Direction.Sin) + 1.5;
    }
}
