using System.Collections.Immutable;
using TemplateForge.Drawing;
using TemplateForge.Fabrication;
using TemplateForge.Geometry;

namespace TemplateForge.Sheets;

/// <summary>A strip of paper beyond a straight panel edge: folded back along the edge, it hooks the template over the panel.</summary>
/// <remarks>
/// <code>
///     |        panel         |
///     +----- - - -- - - -----+      fold: the panel edge itself
///      \   fold back ...    /
///       +------------------+
/// </code>
/// </remarks>
/// <param name="Fold">The stretch of panel edge along which it is folded.</param>
/// <param name="Outwards">Unit vector from the edge away from the panel.</param>
/// <param name="Depth">How far it reaches, in mm.</param>
internal sealed record Flap(Segment Fold, Vector Outwards, double Depth)
{
    public const string Words = "FOLD BACK along the panel edge, hook over the panel";
    public const string FewWords = "FOLD BACK";

    private const double Shortest = 40;
    private const double Taper = 5;

    private static ImmutableArray<double> Depths { get; } = [15, 12, 10, 8];

    public Path Outline
    {
        get
        {
            var (along, down) = (Fold.StartDirection * Taper, Outwards * Depth);
            return new(
                Segment.Line(Fold.Start, Fold.Start + along + down),
                Segment.Line(Fold.Start + along + down, Fold.End - along + down),
                Segment.Line(Fold.End - along + down, Fold.End));
        }
    }

    /// <summary>The flaps of a piece as deep as they are wished for: along the edges nearest to its datums, and never along two that
    /// face away from each other, for paper that hooks over both would bulge.</summary>
    public static ImmutableArray<Flap> Of(Piece piece)
    {
        var from = piece.Datums.IsEmpty ? piece.Shape.Bounds.Centre : Box.Around(piece.Datums.Select(d => d.At)).Centre;
        var taken = ImmutableArray.CreateBuilder<Flap>();
        foreach (var flap in piece.Edges.SelectMany(e => e.Segments).Where(s => s.IsLine && s.Length >= Shortest).SelectMany(s => At(piece, s)).OrderBy(f => f.Fold.DistanceTo(from)))
            if (taken.All(t => t.Outwards.Dot(flap.Outwards) > -0.1)) taken.Add(flap);
        return taken.ToImmutable();
    }

    /// <summary>This flap as deep as its pages allow; none where they do not.</summary>
    public ImmutableArray<Flap> Within(IReadOnlyCollection<Box> windows) =>
        [.. Depths.Where(d => d <= Depth).Select(d => this with { Depth = d }).Where(f => f.LiesIn(windows)).Take(1)];

    /// <summary>Puts it on a drawing, with words where there is room for them.</summary>
    public void PutOn(PieceDrawing drawing)
    {
        var stroke = new OpenStroke(Outline);
        drawing.Board.Add(LineKinds.Flap, stroke);
        drawing.Free.Take([stroke], 1);
        foreach (var text in (string[])[Words, FewWords])
            if (((double[])[0.5, 0.3, 0.7, 0.2, 0.8]).Any(share => drawing.TryWrite(text, Fold.At(share) + Outwards * (Depth * 0.55), Fold.StartDirection))) return;
    }

    private bool LiesIn(IReadOnlyCollection<Box> windows) =>
        Outline.PointsEvery(5).Concat([Outline.Segments[1].Start, Outline.Segments[1].End]).All(p => windows.Any(w => w.Grown(-0.5).Contains(p)));

    // Towards the side on which there is no panel; where there is some on both, or on neither, nothing is hooked over anything.
    private static IEnumerable<Flap> At(Piece piece, Segment edge)
    {
        var panel = piece.Before.IsEmpty ? piece.Shape : piece.Before;
        var (middle, left) = (edge.At(0.5), edge.StartDirection.Left);
        var (onLeft, onRight) = (panel.Contains(middle + left), panel.Contains(middle - left));
        if (onLeft != onRight) yield return new(edge, onLeft ? -left : left, Depths[0]);
    }
}
