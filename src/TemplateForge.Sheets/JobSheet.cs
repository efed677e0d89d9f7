using System.Collections.Immutable;
using TemplateForge.Drawing;
using TemplateForge.Fabrication;
using TemplateForge.Geometry;

namespace TemplateForge.Sheets;

/// <summary>One page to work from: what it is, what was measured, what to check, the work in order, what can hurt.</summary>
public static class JobSheet
{
    private const double Border = 3;
    private const double LeastPicture = 48;

    /// <summary>Heights of capitals in mm, the largest that fits is taken.</summary>
    private static ImmutableArray<double> Sizes { get; } = [2.5, 2.35, 2.2, 2.1, 2, 1.9, 1.8, 1.6, 1.4, 1.2, 1, 0.8, 0.6];

    public static Document Of(Modification modification, Paper paper)
    {
        var frame = new Box(Point.Origin, new(paper.Width, paper.Height)).Grown(-paper.Margin - Border);
        foreach (var size in Sizes)
        {
            if (TryLayOut(modification, frame, size, out var board)) return OnePage(modification, paper, board);
        }
        throw new ArgumentException($"Paper {paper.Name} is too small for a job sheet.", nameof(paper));
    }

    private static Document OnePage(Modification modification, Paper paper, Board board) => new(
        modification.Title,
        $"Job sheet: {Wording.ProfileOf(modification)}, {Wording.HandOf(modification)}",
        [PageFlow.Page(modification, paper, board)]);

    // All but the picture has its size; the picture gets what is left.
    private static bool TryLayOut(Modification modification, Box frame, double size, out Board board)
    {
        var (blocks, width, gap) = (new CoverBlocks(modification, size), frame.Width, size * 2);
        var above = Block.Stacked(gap * 0.7, [blocks.Heading("Job sheet", width), .. blocks.Banners(width), blocks.FaceUp(width)]);
        var half = (width - 3 * gap) / 2;
        var left = Block.Stacked(gap,
            blocks.Section("Values used", blocks.Values(half, toConfirm: true)));
        var right = Block.Stacked(gap,
            blocks.Section("Check by rule before cutting", blocks.Checks(half)),
            blocks.Section("The work in order", blocks.Steps(half)));
        var below = Block.Stacked(gap,
            Block.Beside(3 * gap, left.AsWideAs(half), right),
            blocks.Cautions(width, columns: 3),
            SignOff(width, size));
        var room = frame.Height - above.Height - below.Height - 2 * gap;
        board = new Board();
        if (room < LeastPicture) return false;

        var picture = Picture.Fitting(modification.Pieces, width, room - 2 * size, size, out var reduction);
        var shown = Block.Stacked(size, picture, Block.Text($"{Wording.ScaleOf(reduction)}. Dimensions in mm.", width, size * 0.95));
        var y = frame.Max.Y;
        foreach (var block in (Block[])[above, shown, below])
        {
            block.PutOn(board, new Point(frame.Min.X, y));
            y -= block.Height + gap;
        }
        return picture.Width <= width && picture.Height <= room;
    }

    private static Block SignOff(double width, double size)
    {
        var (board, y) = (new Board(), -3 * size);
        ImmutableArray<(string Label, double Share)> fields = [("Vehicle", 0.34), ("Checked by", 0.26), ("Cut by", 0.22), ("Date", 0.18)];
        var x = 0.0;
        foreach (var (label, share) in fields)
        {
            var end = x + width * share - 2 * size;
            board.Text(label, new(x, y), size);
            board.Line(LineKinds.Dimension, new(x + Alphabet.Width(label, size) + size, y), new(end, y));
            x = end + 2 * size;
        }
        return new(width, -y + 0.4 * size, board);
    }
}
