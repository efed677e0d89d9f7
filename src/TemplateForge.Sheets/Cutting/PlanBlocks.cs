using System.Collections.Immutable;
using System.Globalization;
using TemplateForge.Drawing;
using TemplateForge.Fabrication;

namespace TemplateForge.Sheets;

/// <summary>What the job sheet says of the cutting: a table, and for each piece its plan.</summary>
internal sealed record PlanBlocks(Modification Modification, double Height)
{
    private IEnumerable<Piece> Planned => Modification.Pieces.Where(p => !p.Planned.IsNone);

    /// <summary>The kerf, and length, pierces, time and weight of each piece; nothing where no cutter was chosen.</summary>
    public Block Summary(double width)
    {
        if (!Planned.Any()) return Block.Empty(width, 0);
        var kerfs = Planned.Select(p => Wording.KerfOf(p.Planned)).Distinct();
        return Block.Stacked(Height * 0.8,
            [.. kerfs.Select(k => Block.Text(k, width, Height)), Table([.. Planned], width), Block.Text("The plan of each piece is on a sheet behind this one.", width, Height)]);
    }

    private Block Table(ImmutableArray<Piece> pieces, double width)
    {
        var (pierces, length, moves, minutes, weight) = (Width("pierces"), Width("cut m 0.0"), Math.Min(width * 0.28, Width("0.00, 100 % over the bound")), Width("no feed 0"), Width("kg each"));
        var name = Math.Max(width * 0.2, width - pierces - length - moves - minutes - weight);
        if (name + pierces + length + moves + minutes + weight > width) moves = Math.Max(Width("moves, m"), width - name - pierces - length - minutes - weight);
        name = Math.Min(name, width - pierces - length - moves - minutes - weight);
        return Sheets.Table.Of(
            [("Piece", name), ("cut, m", length), ("pierces", pierces), ("moves, m", moves), ("minutes", minutes), ("kg each", weight)],
            pieces.Select(p => (ImmutableArray<Cell>)
            [
                Cell.Words(p.Title, Height),
                Cell.Words(Wording.Metres(p.Planned.CutLength), Height),
                Cell.Words(p.Planned.Pierces.ToString(CultureInfo.InvariantCulture), Height),
                Cell.Words(Wording.MovesOf(p.Planned), Height),
                Cell.Words(Wording.TimeOf(p.Planned), Height),
                Cell.Words(p.Weight > 0 ? Wording.Weight(p.Weight) : "not stated", Height),
            ]),
            Height);
    }

    /// <summary>The plan of each piece: its picture, what the machine does, and how long it takes.</summary>
    /// <param name="width">Width in mm.</param>
    /// <param name="most">Height in mm of a page: no plan is higher.</param>
    public IEnumerable<Block> Plans(double width, double most)
    {
        const double shareOfPicture = 0.55;
        var blocks = new CoverBlocks(Modification, Height);
        foreach (var piece in Planned)
        {
            var above = Block.Stacked(Height * 0.9,
            [
                Block.Text($"{piece.Title}. {Wording.MakingOf(piece)}. {Wording.HandOf(Modification, piece)}. {Wording.FaceUpOf(piece)}", width, Height),
                Block.Text(Wording.KerfOf(piece.Planned), width, Height, strong: true),
                .. Wording.WaysOf(piece.Planned).Select(w => Block.Text(w, width, Height)),
                Block.Text(
                    "On the picture: a number where each cut begins, a small circle where it pierces, arrow heads the way it runs, dashed the moves, grey the finished edge.",
                    width, Height),
            ]);
            var below = Block.Stacked(Height * 0.9, Table([piece], width), Block.Text(Wording.TimeBasis, width, Height));
            var room = Math.Min(most * shareOfPicture, most - above.Height - below.Height - 12 * Height);
            var picture = PlanPicture.Fitting(piece, width, room, Height, out var reduction);
            var scale = reduction < 1
                ? string.Create(CultureInfo.InvariantCulture, $"Scale {1 / reduction:0.##}:1, {Wording.NotToScale}")
                : Wording.ScaleOf(reduction);
            yield return blocks.Section("Plan of cutting", Block.Stacked(Height * 2, above, Block.Stacked(Height, picture, Block.Text(scale + ".", width, Height)), below));
        }
    }

    private double Width(string text) => Alphabet.Width(text, Height) + 2 * Sheets.Table.Aside + 0.1;
}
