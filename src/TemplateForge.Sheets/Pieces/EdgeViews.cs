using System.Collections.Immutable;
using System.Globalization;
using TemplateForge.Drawing;
using TemplateForge.Fabrication;
using TemplateForge.Geometry;

namespace TemplateForge.Sheets;

/// <summary>Bent pieces seen on their edge, each bend with its number.</summary>
internal static class EdgeViews
{
    private const double Highest = 40;

    /// <summary>The views of some pieces side by side, at full size or at the first round scale at which they all fit.</summary>
    /// <param name="pieces">Whose views are shown.</param>
    /// <param name="width">Width in mm.</param>
    /// <param name="textHeight">Height of capitals in mm.</param>
    public static Block Of(ImmutableArray<Piece> pieces, double width, double textHeight)
    {
        var views = pieces.SelectMany(p => p.EdgeViews.Select(v => (Piece: p, View: v))).ToList();
        if (views.Count == 0) return Block.Empty(width, 0);
        var several = pieces.Count(p => !p.EdgeViews.IsEmpty) > 1;
        var between = 3 * textHeight;
        foreach (var reduction in Picture.Reductions.Prepend(1))
        {
            var blocks = views.Select(v => Titled(several ? v.Piece.Title : "", v.View, reduction, textHeight)).ToList();
            if (blocks.Any(b => b.Width > width || b.Height > Highest)) continue;
            return Block.Stacked(textHeight, [.. Rows(blocks, width, between), Block.Text(reduction == 1 ? "Seen on the edge, at full size." : $"Seen on the edge. {Wording.ScaleOf(reduction)}.", width, textHeight)]);
        }
        return Block.Empty(width, 0);
    }

    /// <summary>One view alone, as large as fits.</summary>
    public static Block Of(EdgeView view, double width, double height, double textHeight) =>
        Picture.Reductions.Prepend(1).Select(r => Drawn(view, r, textHeight)).First(b => b.Width <= width && b.Height <= height);

    private static IEnumerable<Block> Rows(List<Block> blocks, double width, double between)
    {
        var row = new List<Block>();
        foreach (var block in blocks)
        {
            if (row.Count > 0 && row.Sum(b => b.Width + between) + block.Width > width)
            {
                yield return Block.Beside(between, row);
                row = [];
            }
            row.Add(block);
        }
        yield return Block.Beside(between, row);
    }

    private static Block Titled(string piece, EdgeView view, double reduction, double textHeight)
    {
        var drawn = Drawn(view, reduction, textHeight);
        var title = string.Join(": ", ((string[])[piece, view.Title]).Where(t => t.Length > 0));
        if (title.Length == 0) return drawn;
        var words = Block.Line(title, textHeight);
        return Block.Stacked(textHeight * 0.6, words, drawn).AsWideAs(Math.Max(words.Width, drawn.Width));
    }

    private static Block Drawn(EdgeView view, double reduction, double textHeight)
    {
        var (board, toPaper) = (new Board(), Placement.Scaled(1 / reduction, Point.Origin));
        var sheet = view.Sheet.Placed(toPaper);
        board.Add(LineKinds.Dimension, sheet.Contours.Select(c => new ClosedStroke(c)));
        foreach (var bend in view.Bends)
        {
            var number = Block.Line(bend.Number.ToString(CultureInfo.InvariantCulture), textHeight);
            var middle = toPaper.Of(bend.At) + bend.Outwards * (1.3 * textHeight);
            number.PutOn(board, new Point(middle.X - number.Width / 2, middle.Y + number.Height / 2));
        }
        var bounds = Box.Around(board.Marks.Select(m => m.Bounds));
        var moved = new Board();
        moved.Add(board, Placement.Moved(new(-bounds.Min.X, -bounds.Max.Y)));
        return new(bounds.Width, bounds.Height, moved);
    }
}
