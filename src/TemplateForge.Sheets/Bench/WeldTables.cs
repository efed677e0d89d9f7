using System.Collections.Immutable;
using System.Globalization;
using TemplateForge.Drawing;
using TemplateForge.Fabrication;
using TemplateForge.Geometry;

namespace TemplateForge.Sheets;

/// <summary>Where a piece is tacked and welded, and in which order, measured from its base line.</summary>
/// <param name="Piece">The piece.</param>
/// <param name="MarkOut">How it is marked out.</param>
/// <param name="Height">Height in mm of the capitals.</param>
/// <param name="Width">Width in mm.</param>
internal sealed record WeldTables(Piece Piece, MarkOut MarkOut, double Height, double Width)
{
    private BaseLine Base => MarkOut.Base;

    public IEnumerable<FlowItem> Items() => [.. Tacks(), .. Runs()];

    private IEnumerable<FlowItem> Tacks()
    {
        // A plug weld stands beside its hole already.
        var tacks = Piece.Tacks.Where(t => !MarkOut.Holes.Any(h => h.IsAt(t.At))).ToList();
        if (tacks.Count == 0) return [];
        var each = Width / 5;
        return Titled("Tacks, in this order",
            [("tack", each), ("along", each), ("offset", each), ($"from {Base.FirstName}", each), ($"from {Base.SecondName}", each)],
            tacks.OrderBy(t => t.Number).Select(t => (t, Place: Base.Of(t.At))).Select(t => (ImmutableArray<Cell>)
            [
                Words(t.t.Number.ToString(CultureInfo.InvariantCulture)),
                Figure(t.Place.Along), Figure(t.Place.Offset), Figure(t.Place.FromFirst), Figure(t.Place.FromSecond),
            ]));
    }

    private IEnumerable<FlowItem> Runs()
    {
        var runs = Piece.WeldSeams.SelectMany(s => s.Runs).OrderBy(r => r.Number).ToList();
        if (runs.Count == 0) return [];
        var number = Alphabet.Width("run 8", Height) + 2 * Table.Aside;
        var each = (Width - number) / 5;
        return Titled("Runs of weld, in this order: from where the arc is struck to where it is broken off",
            [("run", number), ("along", each), ("offset", each), ("to along", each), ("offset", each), ("long", each)],
            runs.Select(r => (ImmutableArray<Cell>)
            [
                Words(r.Number.ToString(CultureInfo.InvariantCulture)), .. Ends(r.Along.Start), .. Ends(r.Along.End), Figure(r.Along.Length),
            ]));
    }

    private IEnumerable<Cell> Ends(Point at) => Base.Of(at) is var place ? [Figure(place.Along), Figure(place.Offset)] : [];

    private IEnumerable<FlowItem> Titled(string title, ImmutableArray<(string, double)> columns, IEnumerable<ImmutableArray<Cell>> rows) =>
    [
        new(Block.Text(title, Width, Height, strong: true), Height * 1.8) { StaysWithNext = true },
        .. FlowItem.Table(columns, rows, Height, Height * 0.5),
    ];

    private Cell Figure(double length) => Words(Wording.Tenth(length));

    private Cell Words(string text) => Cell.Words(text, Height);
}
