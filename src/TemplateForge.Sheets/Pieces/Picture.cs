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

    /// <summary>Width of a piece's title at the least, in heights of its capitals.</summary>
    private const double WordsWide = 17;

    /// <summary>How many times smaller a picture may be drawn, so that its scale is a round one.</summary>
    public static ImmutableArray<double> Reductions { get; } =
        [1.25, 1.5, 2, 2.5, 3, 3.5, 4, 4.5, 5, 5.5, 6, 7, 8, 9, 10, 12.5, 15, 20, 25, 30, 40, 50, 60, 80, 100, 200, 500, 1000];

    /// <summary>The pieces, each under its title, as large as fits in this width and height at one round scale.</summary>
    /// <param name="modification">Whose pieces are shown, in rows one below the other.</param>
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
        foreach (var candidate in Reductions)
        {
            if (!Fits(InRows([.. pieces.Select(p => Bare(p, candidate, textHeight))], width, textHeight))) continue;
            reduction = candidate;
            var rows = InRows([.. pieces.Select(p => Titled(modification, p, width, candidate, textHeight, withGuideNames))], width, textHeight);
            if (Fits(rows)) return rows;
        }
        return Block.Empty(double.PositiveInfinity, double.PositiveInfinity);

        bool Fits(Block rows) => rows.Width <= width && rows.Height <= height;
    }

    // As many side by side as the width holds.
    private static Block InRows(ImmutableArray<Block> blocks, double width, double textHeight)
    {
        var rows = new List<List<Block>>();
        foreach (var block in blocks)
        {
            var between = 3 * textHeight;
            if (rows.Count == 0 || rows[^1].Sum(b => b.Width + between) + block.Width > width) rows.Add([]);
            rows[^1].Add(block);
        }
        return Block.Stacked(2 * textHeight, rows.Select(row => Block.Beside(3 * textHeight, row)));
    }

    // Room that a piece takes at the least: where not even that fits, nothing needs to be drawn to see it.
    private static Block Bare(Piece piece, double reduction, double textHeight) => Block.Empty(
        Math.Max(piece.Shape.Bounds.Width / reduction + 2 * Border, WordsWide * textHeight), piece.Shape.Bounds.Height / reduction + 2 * Border);

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
        foreach (var reduction in Reductions.Prepend(1).Where(r => piece.Shape.Bounds.Width / r <= width && piece.Shape.Bounds.Height / r <= height))
        {
            block = Of(piece, firstCheck: 1, firstWarning: 1, width, reduction, textHeight, withGuideNames: true);
            if (block.Width <= width && block.Height <= height) return true;
        }
        block = Block.Empty(0, 0);
        return false;
    }

    private static Block Titled(Modification modification, Piece piece, double width, double reduction, double textHeight, bool withGuideNames) =>
        UnderTitle(piece, Of(
            piece, CheckNumbers.FirstOf(modification, piece), CheckNumbers.FirstWarningOf(modification, piece), width, reduction, textHeight, withGuideNames), textHeight);

    /// <summary>One piece of a modification without its title, so many times smaller.</summary>
    public static Block Of(Modification modification, Piece piece, double width, double reduction, double textHeight) => Of(
        piece, CheckNumbers.FirstOf(modification, piece), CheckNumbers.FirstWarningOf(modification, piece), width, reduction, textHeight, withGuideNames: false);

    /// <summary>A picture with the piece's title and what it is made of above it.</summary>
    public static Block UnderTitle(Piece piece, Block picture, double textHeight)
    {
        var words = Math.Max(picture.Width, WordsWide * textHeight);
        return Block.Stacked(textHeight,
            Block.Text(piece.Title, words, textHeight * 1.1, strong: true),
            Block.Text(Wording.MakingOf(piece), words, textHeight),
            picture).AsWideAs(words);
    }

    private static Block Of(Piece piece, int firstCheck, int firstWarning, double width, double reduction, double textHeight, bool withGuideNames)
    {
        var lines = new Board();
        var rings = BendRings.Of(piece, reduction);
        PieceLines.PutOn(lines, piece, reduction, hatched: piece.Kind == PieceKind.CutAway, rings.Values);
        var baseLine = DrawnBaseLine.Of(piece, Angle.Zero);
        lines.Add(LineKinds.Dimension, baseLine.Crosses(reduction));
        var drawn = Box.Around(lines.Marks.Select(m => m.Bounds));
        // Words stand above and below rather than make the picture smaller than its width asks for.
        var beside = Math.Clamp((width - 2 * Border - drawn.Width / reduction) / 2, LeastAside, Aside) * reduction;
        var area = new Box(drawn.Min - new Vector(beside, Aside * reduction), drawn.Max + new Vector(beside, Aside * reduction));
        var drawing = new PieceDrawing(piece, lines, reduction, area);
        drawing.AddRings(rings);
        drawing.AddRunNumbers();
        // Names find their places round the dimensions, for they may have leaders.
        drawing.AddDimensions(firstCheck);
        drawing.AddDatumLetters(height: 1.5 * textHeight, withHoles: false);
        drawing.AddTackNumbers();
        drawing.AddNamesOf(baseLine);
        drawing.AddWarnings(firstWarning);
        drawing.AddNamesOfBends(Wording.ShortBendOf, rings);
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
