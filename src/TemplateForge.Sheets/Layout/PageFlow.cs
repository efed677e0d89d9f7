using System.Collections.Immutable;
using TemplateForge.Drawing;
using TemplateForge.Fabrication;
using TemplateForge.Geometry;

namespace TemplateForge.Sheets;

/// <summary>Blocks one below the other, over as many pages as they take.</summary>
internal static class PageFlow
{
    /// <param name="modification">Whose pages they are: a demonstration says so across each.</param>
    /// <param name="paper">What is printed on.</param>
    /// <param name="columns">Where the blocks stand: one column after the other, then the next page.</param>
    /// <param name="gap">Room between two blocks in mm.</param>
    /// <param name="running">What stands at the head of every page after the first.</param>
    /// <param name="blocks">As wide as a column. One that is higher than a column is made smaller.</param>
    public static IEnumerable<Page> Pages(
        Modification modification, Paper paper, ImmutableArray<Box> columns, double gap, Block running, IEnumerable<Block> blocks)
    {
        var (board, column, y, isFirst) = (new Board(), 0, columns[0].Max.Y, true);
        foreach (var block in blocks.Where(b => b.Height > 0))
        {
            if (y < columns[column].Max.Y && y - block.Height < columns[column].Min.Y)
            {
                column++;
                if (column == columns.Length)
                {
                    yield return Page(modification, paper, board);
                    if (isFirst) columns = [.. columns.Select(c => new Box(c.Min, c.Max - new Vector(0, running.Height + gap)))];
                    (board, column, isFirst) = (new Board(), 0, false);
                    running.PutOn(board, new Point(columns[0].Min.X, columns[0].Max.Y + running.Height + gap));
                }
                y = columns[column].Max.Y;
            }
            var scale = Math.Min(1, columns[column].Height / block.Height);
            board.Add(block.Board, Placement.Scaled(scale, Point.Origin).Then(Placement.Moved(new(columns[column].Min.X, y))));
            y -= block.Height * scale + gap;
        }
        if (board.Marks.Any()) yield return Page(modification, paper, board);
    }

    /// <summary>The shortest page, a whole number of mm, on which blocks stand as they are; the page itself where they take more than one.</summary>
    /// <param name="page">As long as it may be.</param>
    /// <param name="columns">The columns on a page of its width.</param>
    /// <param name="gap">Room between two blocks in mm.</param>
    /// <param name="blocks">As wide as a column.</param>
    public static Paper Shortest(Paper page, Func<Paper, ImmutableArray<Box>> columns, double gap, ImmutableArray<Block> blocks)
    {
        // What stands on a page stands on every longer one.
        var (tooShort, enough) = (0, (int)page.Height);
        while (enough - tooShort > 1)
        {
            var middle = (tooShort + enough) / 2;
            if (Stand(middle)) enough = middle;
            else tooShort = middle;
        }
        return page with { Height = enough };

        bool Stand(int height) => columns(page with { Height = height }) is var beside && beside[0].Height > 0 && StandOnOne(beside, gap, blocks);
    }

    // By the rule of Pages: a block that a column has no room for begins the next.
    private static bool StandOnOne(ImmutableArray<Box> columns, double gap, ImmutableArray<Block> blocks)
    {
        var (column, y) = (0, columns[0].Max.Y);
        foreach (var height in blocks.Select(b => b.Height).Where(h => h > 0))
        {
            if (height > columns[column].Height) return false;
            if (y - height < columns[column].Min.Y)
            {
                if (++column == columns.Length) return false;
                y = columns[column].Max.Y;
            }
            y -= height + gap;
        }
        return true;
    }

    /// <summary>Columns beside each other in a frame.</summary>
    /// <param name="frame">What they share.</param>
    /// <param name="least">The least width of one in mm, if the frame is that wide.</param>
    /// <param name="between">Room between them in mm.</param>
    public static ImmutableArray<Box> Columns(Box frame, double least, double between)
    {
        var count = Math.Max(1, (int)((frame.Width + between) / (least + between)));
        var width = (frame.Width - between * (count - 1)) / count;
        return [.. Enumerable.Range(0, count).Select(i => frame.Min + new Vector(i * (width + between), 0))
            .Select(corner => new Box(corner, corner + new Vector(width, frame.Height)))];
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
