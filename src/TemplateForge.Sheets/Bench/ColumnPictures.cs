using System.Collections.Immutable;
using TemplateForge.Fabrication;

namespace TemplateForge.Sheets;

/// <summary>The pictures of a job's pieces for a column, each under its title, all at one round scale.</summary>
/// <remarks>At each scale a piece is drawn once, however often it is asked whether it fits.</remarks>
/// <param name="modification">Whose pieces are shown.</param>
/// <param name="width">Width in mm of a column.</param>
internal sealed class ColumnPictures(Modification modification, double width)
{
    /// <summary>Height of capitals in mm in a picture, whatever stands round it.</summary>
    private const double Letters = 2.3;

    private readonly Dictionary<double, ImmutableArray<Block>> _drawn = [];

    public double Width => width;

    /// <summary>The pictures as large as fit.</summary>
    /// <param name="highest">Height in mm of the highest.</param>
    /// <param name="together">Height in mm of all of them, with a gap of two capitals above each.</param>
    /// <param name="textHeight">Height of the titles' capitals in mm.</param>
    /// <param name="shown">The pictures in their order.</param>
    /// <param name="reduction">How many times smaller than the pieces they are.</param>
    public bool TryFit(double highest, double together, double textHeight, out ImmutableArray<Block> shown, out double reduction)
    {
        foreach (var candidate in Picture.Reductions.Where(r => MayFit(r, highest, together)))
        {
            reduction = candidate;
            shown = [.. modification.Pieces.Zip(Drawn(candidate), (piece, picture) => Picture.UnderTitle(piece, picture, textHeight))];
            if (shown.All(b => b.Width <= width && b.Height <= highest) && shown.Sum(b => b.Height + 2 * textHeight) <= together) return true;
        }
        (shown, reduction) = ([], 1);
        return false;
    }

    // Where not even the bare shapes fit nothing needs to be drawn to see it.
    private bool MayFit(double reduction, double highest, double together) =>
        modification.Pieces.All(p => p.Shape.Bounds.Width / reduction <= width && p.Shape.Bounds.Height / reduction <= highest)
        && modification.Pieces.Sum(p => p.Shape.Bounds.Height / reduction) <= together;

    private ImmutableArray<Block> Drawn(double reduction)
    {
        if (!_drawn.TryGetValue(reduction, out var drawn))
            _drawn.Add(reduction, drawn = [.. modification.Pieces.Select(p => Picture.Of(modification, p, width, reduction, Letters))]);
        return drawn;
    }
}
