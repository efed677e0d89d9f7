using System.Collections.Immutable;
using TemplateForge.Drawing;
using TemplateForge.Fabrication;
using TemplateForge.Geometry;

namespace TemplateForge.Sheets;

/// <summary>One page to work from: what it is, what was measured, what to check, the work in order, what can hurt.</summary>
/// <remarks>
/// Where a profile says more than a page can hold in letters that a person can read, or beside a picture that shows something, it runs
/// on over further pages.
/// </remarks>
public static class JobSheet
{
    private const double Border = 3;
    private const double LeastPicture = 88;

    /// <summary>Height of capitals in mm on a sheet of several pages.</summary>
    private const double RunningOn = 2.5;

    /// <summary>How much of the width the column with the picture and the values has.</summary>
    private const double LeftShare = 0.55;

    /// <summary>Heights of capitals in mm, the largest that fits is taken.</summary>
    private static ImmutableArray<double> Sizes { get; } = [2.5, 2.35, 2.2, 2.1, 2, 1.9, 1.8, 1.7, 1.6];

    public static Document Of(Modification modification, Paper paper)
    {
        var frame = new Box(Point.Origin, new(paper.Width, paper.Height)).Grown(-paper.Margin - Border);
        foreach (var size in Sizes)
        {
            if (TryLayOut(modification, frame, size, out var board)) return OnePage(modification, paper, board);
        }
        return Titled(modification, [.. PageFlow.Pages(modification, paper, [frame], RunningOn * 2.2, RunOn(modification, frame)), .. Plans(modification, paper)]);
    }

    private static Document OnePage(Modification modification, Paper paper, Board board) =>
        Titled(modification, [PageFlow.Page(modification, paper, board), .. Plans(modification, paper)]);

    private static IEnumerable<Page> Plans(Modification modification, Paper paper) =>
        new PlanBlocks(modification, RunningOn).Pages(paper, new Box(Point.Origin, new(paper.Width, paper.Height)).Grown(-paper.Margin - Border));

    private static Document Titled(Modification modification, ImmutableArray<Page> pages) => new(
        modification.Title,
        $"Job sheet: {Wording.ProfileOf(modification)}, {Wording.HandOf(modification)}",
        pages);

    // One below the other, as wide as the page.
    private static IEnumerable<Block> RunOn(Modification modification, Box frame)
    {
        var blocks = new CoverBlocks(modification, RunningOn);
        var picture = Picture.Fitting(modification, frame.Width, frame.Height / 2, RunningOn, withGuideNames: false, out var reduction);
        // Rather the rest of the page than a picture that shows nothing.
        if (Picture.IsTooSmall(modification, frame.Width, reduction))
        {
            var above = Block.Stacked(RunningOn * 2.2, [blocks.Heading("Job sheet", frame.Width), .. blocks.Banners(frame.Width), blocks.FaceUp(frame.Width)]);
            picture = Picture.Fitting(modification, frame.Width, frame.Height - above.Height - 10 * RunningOn, RunningOn, withGuideNames: false, out reduction);
        }
        return
        [
            blocks.Heading("Job sheet", frame.Width),
            .. blocks.Banners(frame.Width),
            blocks.FaceUp(frame.Width),
            .. double.IsFinite(picture.Height) ? [Block.Stacked(RunningOn, picture, Scale(reduction, frame.Width, RunningOn))] : Array.Empty<Block>(),
            blocks.Section("Warnings", blocks.Warnings(frame.Width)),
            blocks.Section("Check by rule before cutting", blocks.Checks(frame.Width)),
            blocks.Section("Material", blocks.CutList(frame.Width)),
            blocks.Section("Cutting", new PlanBlocks(modification, RunningOn).Summary(frame.Width)),
            blocks.Section("Parts of the jig", PartList.Of(modification, frame.Width, RunningOn)),
            blocks.Section("Bends, in this order", blocks.Bends(frame.Width)),
            blocks.Section("The curved panel", blocks.Panels(frame.Width)),
            blocks.Section("Values used: confirm, then tick", blocks.Values(frame.Width, toConfirm: true)),
            blocks.Section("Welding", blocks.Joining(frame.Width)),
            blocks.Section("The work in order", blocks.Steps(frame.Width)),
            blocks.Section("Cautions", blocks.Cautions(frame.Width, columns: 2)),
            SignOff(frame.Width, RunningOn),
        ];
    }

    private static Block Scale(double reduction, double width, double size) =>
        Block.Text($"{Wording.ScaleOf(reduction)}. Dimensions in mm.", width, size);

    // Two columns. All but the picture has its size; the picture gets what the left column has to spare.
    private static bool TryLayOut(Modification modification, Box frame, double size, out Board board)
    {
        var (blocks, gap) = (new CoverBlocks(modification, size), size * 2.2);
        var above = Block.Stacked(gap * 0.7,
            [blocks.Heading("Job sheet", frame.Width), .. blocks.Banners(frame.Width), blocks.FaceUp(frame.Width)]);
        var signOff = SignOff(frame.Width, size);
        var room = frame.Height - above.Height - signOff.Height - 2 * gap;
        var (left, right) = ((frame.Width - 2 * gap) * LeftShare, (frame.Width - 2 * gap) * (1 - LeftShare));

        var values = blocks.Section("Values used: confirm, then tick", blocks.Values(left, toConfirm: true));
        var work = Block.Stacked(gap,
            blocks.Section("Warnings", blocks.Warnings(right)),
            blocks.Section("Check by rule before cutting", blocks.Checks(right)),
            blocks.Section("Material", blocks.CutList(right)),
            blocks.Section("Cutting", new PlanBlocks(modification, size).Summary(right)),
            blocks.Section("Parts of the jig", PartList.Of(modification, right, size)),
            blocks.Section("Bends, in this order", blocks.Bends(right)),
            blocks.Section("Welding", blocks.Joining(right)),
            blocks.Section("The curved panel", blocks.Panels(right)),
            blocks.Section("The work in order", blocks.Steps(right)),
            blocks.Section("Cautions", blocks.Cautions(right, columns: 1)));
        var forPicture = room - values.Height - gap - 3 * size;
        board = new Board();
        if (work.Height > room || forPicture < LeastPicture) return false;

        var picture = Picture.Fitting(modification, left, forPicture, size, withGuideNames: false, out var reduction);
        if (picture.Width > left || picture.Height > forPicture || Picture.IsTooSmall(modification, left, reduction)) return false;
        var shown = Block.Stacked(size, picture, Scale(reduction, left, size));
        above.PutOn(board, new Point(frame.Min.X, frame.Max.Y));
        var top = frame.Max.Y - above.Height - gap;
        Block.Beside(2 * gap, Block.Stacked(gap, shown, values).AsWideAs(left), work).PutOn(board, new Point(frame.Min.X, top));
        signOff.PutOn(board, new Point(frame.Min.X, frame.Min.Y + signOff.Height));
        return true;
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
