using System.Collections.Immutable;
using TemplateForge.Fabrication;
using TemplateForge.Geometry;

namespace TemplateForge.Sheets;

/// <summary>Pieces drawn smaller, with their main dimensions, for the eye.</summary>
internal static class Picture
{
    private const double Aside = 34;

    /// <summary>An upright dimension line must have room beside the piece.</summary>
    private const double LeastAside = 11;
    private const double Border = 1;

    /// <summary>How many times smaller a picture may be drawn, so that its scale is a round one.</summary>
    public static ImmutableArray<double> Reductions { get; } =
        [1.25, 1.5, 2, 2.5, 3, 3.5, 4, 4.5, 5, 5.5, 6, 7, 8, 9, 10, 12.5, 15, 20, 25, 30, 40, 50, 60, 80, 100, 200, 500, 1000];

    /// <summary>The pieces, each under its title, as large as fits in this width and height at one round scale.</summary>
    /// <param name="modification">Whose pieces are shown, side by side or one below the other, whichever comes out larger.</param>
    /// <param name="width">Width in mm.</param>
    /// <param name="height">Height in mm.</param>
    /// <param name="textHeight">Height of the titles' capitals in mm.</param>
    /// <param name="withGuideNames">Whether the guide lines are named.</param>
    /// <param name="reduction">How many times smaller than the pieces the picture is.</param>
    public static Block Fitting(
        Modification modification, double width, double height, double textHeight, bool withGuideNames, out double reduction)
    {
        var pieces = modification.Pieces;
        reduction = 1;
        if (pieces.IsEmpty) return Block.Empty(width, 0);
        foreach (var candidate in Reductions.Where(r => MayFit(pieces, width, height, r)))
        {
            reduction = candidate;
            var shown = pieces.Select(p => Titled(modification, p, width, candidate, textHeight, withGuideNames)).ToList();
            foreach (var block in (Block[])[Block.Beside(3 * textHeight, shown), Block.Stacked(2 * textHeight, shown)])
            {
                if (block.Width <= width && block.Height <= height) return block;
            }
        }
        return Block.Empty(double.PositiveInfinity, double.PositiveInfinity);
    }

    /// <summary>The same piece by piece, for columns: each as wide as the column or less, all at one round scale.</summary>
    /// <param name="modification">Whose pieces are shown.</param>
    /// <param name="width">Width in mm of a column.</param>
    /// <param name="highest">Height in mm of the highest.</param>
    /// <param name="together">Height in mm of all of them, with a line of text between.</param>
    /// <param name="textHeight">Height of the titles' capitals in mm.</param>
    /// <param name="shown">The pictures in their order.</param>
    /// <param name="reduction">How many times smaller than the pieces they are.</param>
    public static bool TryFitEach(
        Modification modification, double width, double highest, double together, double textHeight, out ImmutableArray<Block> shown, out double reduction)
    {
        var pieces = modification.Pieces;
        var high = pieces.Sum(p => p.Shape.Bounds.Height);
        foreach (var candidate in Reductions.Where(r => MayFit(pieces, width, highest, r) && high / r <= together))
        {
            (reduction, shown) = (candidate, [.. pieces.Select(p => Titled(modification, p, width, candidate, textHeight, withGuideNames: false))]);
            if (shown.All(b => b.Width <= width && b.Height <= highest) && shown.Sum(b => b.Height + 2 * textHeight) <= together) return true;
        }
        (shown, reduction) = ([], 1);
        return false;
    }

    /// <summary>Whether a picture is so much smaller than its width asks for that nothing can be told on it.</summary>
    public static bool IsTooSmall(Modification modification, double width, double reduction)
    {
        const double byMuch = 3;
        var widest = modification.Pieces.Select(p => p.Shape.Bounds.Width).DefaultIfEmpty(0).Max();
        return reduction > byMuch * Math.Max(1, widest / width);
    }

    /// <summary>One piece with all that is drawn on it and no title, as large as fits.</summary>
    public static bool TryFit(Piece piece, double width, double height, double textHeight, out Block block)
    {
        foreach (var reduction in Reductions.Prepend(1).Where(r => MayFit([piece], width, height, r)))
        {
            block = Of(piece, firstCheck: 1, firstWarning: 1, width, reduction, textHeight, withGuideNames: true);
            if (block.Width <= width && block.Height <= height) return true;
        }
        block = Block.Empty(0, 0);
        return false;
    }

    // Each bare shape must fit, or nothing needs to be drawn to see that they do not.
    private static bool MayFit(ImmutableArray<Piece> pieces, double width, double height, double reduction) =>
        pieces.All(p => p.Shape.Bounds.Width / reduction <= width && p.Shape.Bounds.Height / reduction <= height);

    private static Block Titled(Modification modification, Piece piece, double width, double reduction, double textHeight, bool withGuideNames)
    {
        var picture = Of(
            piece, CheckNumbers.FirstOf(modification, piece), CheckNumbers.FirstWarningOf(modification, piece), width, reduction, textHeight, withGuideNames);
        var words = Math.Max(picture.Width, 17 * textHeight);
        return Block.Stacked(textHeight,
            Block.Text(piece.Title, words, textHeight * 1.1, strong: true),
            Block.Text(Wording.MakingOf(piece), words, textHeight),
            picture).AsWideAs(words);
    }

    private static Block Of(Piece piece, int firstCheck, int firstWarning, double width, double reduction, double textHeight, bool withGuideNames)
    {
        var lines = new Board();
        PieceLines.PutOn(lines, piece, reduction, hatched: piece.Kind == PieceKind.CutAway);
        var drawn = Box.Around(lines.Marks.Select(m => m.Bounds));
        // Words stand above and below rather than make the picture smaller than its width asks for.
        var beside = Math.Clamp((width - 2 * Border - drawn.Width / reduction) / 2, LeastAside, Aside) * reduction;
        var area = new Box(drawn.Min - new Vector(beside, Aside * reduction), drawn.Max + new Vector(beside, Aside * reduction));
        var drawing = new PieceDrawing(piece, lines, reduction, area);
        drawing.AddTackNumbers();
        drawing.AddRunNumbers();
        drawing.AddDatumLetters(height: 1.5 * textHeight, withHoles: false);
        drawing.AddDimensions(firstCheck);
        drawing.AddWarnings(firstWarning);
        drawing.AddNamesOfBends(Wording.ShortBendOf);
        drawing.AddNamesOfWraps();
        drawing.AddLabels();
        drawing.AddArrows();
        if (withGuideNames) drawing.AddNamesOfGuides();
        var bounds = Box.Around(drawing.Board.Marks.Select(m => m.Bounds));
        var onPaper = new Board();
        onPaper.Add(drawing.Board, Placement.Moved(new(-bounds.Min.X, -bounds.Max.Y))
            .Then(Placement.Scaled(1 / reduction, Point.Origin))
            .Then(Placement.Moved(new(Border, -Border))));
        return new(bounds.Width / reduction + 2 * Border, bounds.Height / reduction + 2 * Border, onPaper);
    }
}
