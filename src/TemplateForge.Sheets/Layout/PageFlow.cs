using TemplateForge.Drawing;
using TemplateForge.Fabrication;
using TemplateForge.Geometry;

namespace TemplateForge.Sheets;

/// <summary>Blocks one below the other, over as many pages as they take.</summary>
internal static class PageFlow
{
    /// <param name="modification">Whose pages they are: a demonstration says so across each.</param>
    /// <param name="paper">What is printed on.</param>
    /// <param name="frame">Where on the page the blocks stand.</param>
    /// <param name="gap">Room between two blocks in mm.</param>
    /// <param name="blocks">None higher than the frame; one that is, is made smaller.</param>
    public static IEnumerable<Page> Pages(Modification modification, Paper paper, Box frame, double gap, IEnumerable<Block> blocks)
    {
        var (board, y) = (new Board(), frame.Max.Y);
        foreach (var block in blocks.Where(b => b.Height > 0))
        {
            if (y < frame.Max.Y && y - block.Height < frame.Min.Y)
            {
                yield return Page(modification, paper, board);
                (board, y) = (new Board(), frame.Max.Y);
            }
            var scale = Math.Min(1, frame.Height / block.Height);
            board.Add(block.Board, Placement.Scaled(scale, Point.Origin).Then(Placement.Moved(new(frame.Min.X, y))));
            y -= block.Height * scale + gap;
        }
        if (board.Marks.Any()) yield return Page(modification, paper, board);
    }

    public static Page Page(Modification modification, Paper paper, Board board)
    {
        var sheet = new Box(Point.Origin, new(paper.Width, paper.Height));
        return new(paper.Width, paper.Height,
        [
            .. DemonstrationAcross.Views(modification, sheet, sheet.Grown(-paper.Margin)),
            new View(board.ToDrawing(), Placement.Unmoved, sheet),
        ]);
    }
}
