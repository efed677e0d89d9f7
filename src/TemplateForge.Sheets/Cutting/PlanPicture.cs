using System.Collections.Immutable;
using System.Globalization;
using TemplateForge.Fabrication;
using TemplateForge.Geometry;

namespace TemplateForge.Sheets;

/// <summary>A plan of cutting for the eye: every cut with its number, the way that it is made, its pierce and its leads, and the moves between.</summary>
internal static class PlanPicture
{
    private const double Border = 1;
    private const double Aside = 8;

    /// <summary>Enlargements, for a piece that is small on its page, then the scales of all pictures.</summary>
    private static ImmutableArray<double> Reductions { get; } = [0.2, 0.25, 0.4, 0.5, 1, .. Picture.Reductions];

    /// <summary>As large as fits at a round scale.</summary>
    public static Block Fitting(Piece piece, double width, double height, double textHeight, out double reduction)
    {
        foreach (var candidate in Reductions)
        {
            reduction = candidate;
            var shown = piece.Shape.Bounds;
            if (shown.Width / candidate > width || shown.Height / candidate > height) continue;
            var block = Of(piece, candidate, textHeight);
            if (block.Width <= width && block.Height <= height) return block;
        }
        reduction = 1;
        return Block.Empty(width, 0);
    }

    private static Block Of(Piece piece, double reduction, double textHeight)
    {
        var lines = new Board();
        PlanLines.PutOn(lines, piece, reduction);
        PlanLines.PutWaysOn(lines, piece.Planned, reduction);
        lines.Add(LineKinds.PanelEdge, piece.Edges.Select(PieceLines.Stroke));
        var drawn = Box.Around(lines.Marks.Select(m => m.Bounds));
        var drawing = new PieceDrawing(piece, lines, reduction, drawn.Grown(Aside * reduction));
        for (var i = 0; i < piece.Planned.Cuts.Length; i++)
        {
            var cut = piece.Planned.Cuts[i];
            var number = Block.Line((i + 1).ToString(CultureInfo.InvariantCulture), 0.95 * textHeight * reduction);
            drawing.Place(number, cut.Pierce - cut.Path.Segments[0].StartDirection * (2 * reduction));
        }
        var bounds = Box.Around(drawing.Board.Marks.Select(m => m.Bounds));
        var onPaper = new Board();
        onPaper.Add(drawing.Board, Placement.Moved(new(-bounds.Min.X, -bounds.Max.Y))
            .Then(Placement.Scaled(1 / reduction, Point.Origin))
            .Then(Placement.Moved(new(Border, -Border))));
        return new(bounds.Width / reduction + 2 * Border, bounds.Height / reduction + 2 * Border, onPaper);
    }
}
