using System.Collections.Immutable;
using TemplateForge.Fabrication;

namespace TemplateForge.Sheets;

/// <summary>The pictures of a job's pieces for a column, each under its title and over its scale.</summary>
/// <remarks>
/// The largest piece decides; a small one beside it is shown up to three times as large, as far as it stays a small picture. At each scale
/// a piece is drawn once, however often it is asked whether it fits.
/// </remarks>
/// <param name="modification">Whose pieces are shown.</param>
/// <param name="width">Width in mm of a column.</param>
internal sealed class ColumnPictures(Modification modification, double width)
{
    /// <summary>Height of capitals in mm in a picture, whatever stands round it.</summary>
    private const double Letters = 2.3;

    /// <summary>How many times larger than the largest piece a small one may be shown, and how high it may then be, in mm.</summary>
    private const double MostLarger = 3;
    private const double HighestLarger = 50;

    private readonly Dictionary<(Piece, double), Block> _drawn = [];

    /// <summary>The least reduction at which the widest piece is no wider than the column.</summary>
    public double AsWideAsTheColumn => Math.Max(1, modification.Pieces.Select(p => p.Shape.Bounds.Width).DefaultIfEmpty(0).Max() / width);

    /// <summary>The pieces as large as fit.</summary>
    /// <param name="highest">Height in mm of the highest.</param>
    /// <param name="together">Height in mm of all of them, with a gap of two capitals above each.</param>
    /// <param name="textHeight">Height of the titles' capitals in mm.</param>
    /// <param name="fit">The pictures.</param>
    public bool TryFit(double highest, double together, double textHeight, out Fit fit)
    {
        foreach (var candidate in Picture.Reductions.Where(r => MayFit(r, highest, together)))
        {
            var reductions = modification.Pieces.Select(p => OwnReduction(p, candidate, Math.Min(highest, HighestLarger))).ToList();
            var isOne = reductions.Distinct().Count() == 1;
            var shown = modification.Pieces.Zip(reductions, (p, r) => Shown(p, r, textHeight, withScale: !isOne)).ToImmutableArray();
            if (isOne && shown.Length > 0) shown = shown.SetItem(shown.Length - 1, Shown(modification.Pieces[^1], candidate, textHeight, withScale: true));
            fit = new(shown, candidate, isOne);
            if (shown.All(b => b.Width <= width && b.Height <= highest) && shown.Sum(b => b.Height + 2 * textHeight) <= together) return true;
        }
        fit = new([], 1, AtOneScale: true);
        return false;
    }

    // Where not even the bare shapes fit nothing needs to be drawn to see it.
    private bool MayFit(double reduction, double highest, double together) =>
        modification.Pieces.All(p => p.Shape.Bounds.Width / reduction <= width && p.Shape.Bounds.Height / reduction <= highest)
        && modification.Pieces.Sum(p => p.Shape.Bounds.Height / reduction) <= together;

    private double OwnReduction(Piece piece, double common, double highest) => Picture.Reductions
        .Where(r => r < common && r * MostLarger >= common && piece.Shape.Bounds.Width / r <= width && piece.Shape.Bounds.Height / r <= highest)
        .Where(r => Drawn(piece, r) is var block && block.Width <= width && block.Height <= highest)
        .DefaultIfEmpty(common).First();

    private Block Shown(Piece piece, double reduction, double textHeight, bool withScale)
    {
        var picture = Picture.UnderTitle(piece, Drawn(piece, reduction), textHeight);
        return withScale ? Block.Stacked(textHeight, picture, Block.Text(Wording.PictureScaleOf(reduction), width, textHeight)) : picture;
    }

    private Block Drawn(Piece piece, double reduction)
    {
        if (!_drawn.TryGetValue((piece, reduction), out var drawn))
            _drawn.Add((piece, reduction), drawn = Picture.Of(modification, piece, width, reduction, Letters));
        return drawn;
    }

    /// <summary>Pictures that fit.</summary>
    /// <param name="Shown">In the order of the pieces.</param>
    /// <param name="Reduction">How many times smaller than the piece the largest is.</param>
    /// <param name="AtOneScale">Whether all are.</param>
    internal sealed record Fit(ImmutableArray<Block> Shown, double Reduction, bool AtOneScale);
}
