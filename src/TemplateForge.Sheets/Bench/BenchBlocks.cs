using System.Collections.Immutable;
using System.Globalization;
using TemplateForge.Drawing;
using TemplateForge.Fabrication;

namespace TemplateForge.Sheets;

/// <summary>Tables of the job sheet alone: what is measured before cutting, what is cut from what.</summary>
/// <param name="Modification">What they are about.</param>
/// <param name="Height">Height in mm of the capitals of their text.</param>
/// <param name="InInches">Whether inches stand beside the millimetres.</param>
internal sealed record BenchBlocks(Modification Modification, double Height, bool InInches)
{
    /// <summary>The distances to check, with room for what was measured on the paper and on the work, and a line to sign.</summary>
    public Block Checks(double width)
    {
        var checks = Modification.Pieces.SelectMany(p => p.Checks).ToList();
        if (checks.Count == 0) return Block.Empty(width, 0);
        var number = WidthOf(["(10)"]);
        var distance = WidthOf(checks.Select(c => Wording.Distance(c)).Concat(InInches ? checks.Select(c => Wording.Inches(c.Distance)).Append("mm [in]") : []));
        var field = WidthOf(["on the work"]);
        var table = Table.Of(
            [("", number), ("Distance", width - number - distance - 2 * field), (InInches ? "mm [in]" : "mm", distance), ("on paper", field), ("on the work", field)],
            checks.Select((check, i) => (ImmutableArray<Cell>)
            [
                Cell.Words(string.Create(CultureInfo.InvariantCulture, $"({i + 1})"), Height),
                Cell.Words(check.Label, Height),
                Cell.Words(Wording.Distance(check) + (InInches ? "\n" + Wording.Inches(check.Distance) : ""), Height),
                Cell.Field(Height),
                Cell.Field(Height),
            ]),
            Height);
        return Block.Stacked(Height * 0.6, table, WorkBlocks.Signature("All measured by", width, Height));
    }

    /// <summary>What is cut from what, how large the flat piece is, and its weight; nothing where only paper is made.</summary>
    public Block CutList(double width)
    {
        var pieces = Modification.Pieces.Where(p => p.Kind == PieceKind.Blank).ToList();
        if (pieces.Count == 0) return Block.Empty(width, 0);
        var (off, weight, size) = (WidthOf(["off"]), WidthOf(["kg each"]), WidthOf(pieces.Select(Size)));
        var sheet = Math.Min(WidthOf(pieces.Select(Sheet)), (width - off - weight - size) * 0.55);
        var table = Table.Of(
            [("Piece", width - off - weight - size - sheet), ("from", sheet), ("size, mm", size), ("off", off), ("kg each", weight)],
            pieces.Select(p => (ImmutableArray<Cell>)
            [
                Cell.Words(p.Title, Height),
                Cell.Words(Sheet(p), Height),
                Cell.Words(Size(p), Height),
                Cell.Words(p.Quantity.ToString(CultureInfo.InvariantCulture), Height),
                Cell.Words(p.Weight > 0 ? Wording.Weight(p.Weight) : "not stated", Height),
            ]),
            Height);
        var isSum = pieces.Sum(p => p.Quantity) > 1 && pieces.All(p => p.Weight > 0);
        var total = $"{Wording.Weight(pieces.Sum(p => p.Quantity * p.Weight))} kg all together.";
        return Block.Stacked(Height * 0.6, [table, .. isSum ? [Block.Text(total, width, Height)] : Array.Empty<Block>()]);

        static string Sheet(Piece piece) => $"{Wording.SheetOf(piece)}, {Wording.Short(piece.Thickness)} mm";
        static string Size(Piece piece) =>
            string.Create(CultureInfo.InvariantCulture, $"{piece.Shape.Bounds.Width:0.0} × {piece.Shape.Bounds.Height:0.0}");
    }

    private double WidthOf(IEnumerable<string> texts) => texts.Max(t => Alphabet.Width(t, Height)) + 2 * Table.Aside + 0.1;
}
