using System.Collections.Immutable;
using TemplateForge.Drawing;
using TemplateForge.Fabrication;
using TemplateForge.Geometry;

namespace TemplateForge.Sheets;

/// <summary>What is lettered on a piece to stay, in strokes that a scribe or an engraving point can follow, on a layer of its own.</summary>
/// <remarks>The words stand on the piece itself, clear of its edges and holes, as large as they fit; the paper and the cut file have them at one place.</remarks>
internal static class PlateLettering
{
    private const double Clear = 4;
    private const double Word = 4;
    private const double ArrowTip = 4;

    /// <summary>Area in mm² of the guides that cover what they surround, as clamps do; a larger one is a line to see.</summary>
    private const double LargestFoot = 5000;

    // Heights of capitals in mm, the largest that fits; below 2.5 mm nobody reads a scribed letter.
    private static readonly ImmutableArray<double> Heights = [5, 4.5, 4, 3.5, 3, 2.5];
    private static readonly ImmutableArray<double> Widths = [150, 120, 95, 75, 55, 42];

    /// <summary>Puts the lettering and the arrows on a board on which the piece's own lines are.</summary>
    /// <param name="board">The board.</param>
    /// <param name="piece">The piece.</param>
    /// <param name="withWords">Whether the words are put on as well; on a small picture nobody could read them.</param>
    public static void PutOn(Board board, Piece piece, bool withWords)
    {
        foreach (var arrow in piece.MarkedArrows) board.Add(LineKinds.PlateLettering, Strokes(arrow));
        if (!withWords || piece.Lettering.IsEmpty) return;
        var free = new FreePlace(piece.Shape.Bounds, 1);
        free.Take(piece.Shape.Contours.Select(c => new ClosedStroke(c)), Clear);
        free.Take(Region.Of(Outline.Rectangle(piece.Shape.Bounds)).Subtract(piece.Shape) is { IsEmpty: false } outside
            ? outside.HatchLines(1.5, Angle.Zero).Select(h => new OpenStroke(h))
            : [], 0.5);
        free.Take(board.Marks, 2);
        // A clamp's foot hides what lies under it.
        foreach (var guide in piece.GuideLines.Select(g => g.Along).Where(g => !g.IsEmpty))
            free.Take(guide.Contours.Select(c => new ClosedStroke(c)).Concat<Mark>(guide.Area <= LargestFoot ? guide.HatchLines(1.5, Angle.Zero).Select(h => new OpenStroke(h)) : []), 1);
        foreach (var arrow in piece.MarkedArrows)
        {
            var (middle, aside) = (arrow.Along.Segments[0].At(0.5), arrow.Along.Segments[0].StartDirection.Left);
            PutNear(Block.Line(arrow.Text, Word), arrow.IsFeed ? middle + aside * 5 : arrow.Along.Start);
        }
        if (!piece.Arrows.IsEmpty) PutNear(ArrowBlock.Of(piece.Arrows, unit: 1), new(piece.Shape.Bounds.Min.X, piece.Shape.Bounds.Max.Y));
        foreach (var height in Heights)
        {
            foreach (var width in Widths)
            {
                if (PutNear(Block.Stacked(height * 0.5, piece.Lettering.Select(l => Block.LineOrText(l, width, height))), piece.Shape.Bounds.Centre)) return;
            }
        }

        bool PutNear(Block block, Point near)
        {
            if (!free.TryFind(block.Width + 2, block.Height + 2, near, piece.Shape.Bounds, out var place)) return false;
            var own = new Board();
            block.PutOn(own, place.Grown(-1));
            board.Add(LineKinds.PlateLettering, own.Marks);
            free.TakeWords(place);
            return true;
        }
    }

    private static IEnumerable<Mark> Strokes(MarkedArrow arrow)
    {
        yield return new OpenStroke(arrow.Along);
        var (tip, back) = (arrow.Along.End, -arrow.Along.Segments[^1].EndDirection * ArrowTip);
        var half = Angle.FromDegrees(20);
        yield return new OpenStroke(new Path(Segment.Line(tip + back.Turned(half), tip), Segment.Line(tip, tip + back.Turned(-half))));
    }
}
