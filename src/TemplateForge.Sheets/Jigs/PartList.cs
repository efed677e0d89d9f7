using System.Collections.Immutable;
using System.Globalization;
using TemplateForge.Drawing;
using TemplateForge.Fabrication;

namespace TemplateForge.Sheets;

/// <summary>What is made or bought beside the pieces: pins, bushes, clamps, with their sizes and fits.</summary>
internal static class PartList
{
    /// <summary>A table of them; nothing where no piece has any.</summary>
    /// <param name="modification">Whose parts they are.</param>
    /// <param name="width">Width in mm.</param>
    /// <param name="height">Height of capitals in mm.</param>
    public static Block Of(Modification modification, double width, double height)
    {
        var parts = modification.Pieces.SelectMany(p => p.Parts).ToList();
        if (parts.Count == 0) return Block.Empty(width, 0);
        var quantity = Alphabet.Width("off", height) + 2 * Table.Aside + 1;
        var what = (width - quantity) * 0.34;
        return Table.Of(
            [("off", quantity), ("part", what), ("size and fit, mm", width - quantity - what)],
            parts.Select(p => (ImmutableArray<Cell>)
            [
                Cell.Words(p.Quantity.ToString(CultureInfo.InvariantCulture), height),
                Cell.Words(p.What, height),
                Cell.Words(p.Size, height),
            ]),
            height);
    }
}
