using System.Collections.Immutable;
using System.Globalization;
using TemplateForge.Fabrication;

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
        var tacks = Piece.Tacks.Where(t => !MarkOut.Holes.Any(h => h.IsAt(t.At))).OrderBy(t => t.Number).ToList();
        var places = tacks.Select(t => Base.Of(t.At)).ToList();
        return Titled("Tacks, in this order",
        [
            Column.OfWords("tack", tacks.Select(t => Number(t.Number))), .. AlongAndOffset("along", places),
            Column.OfFigures($"from {Base.FirstName}", places.Select(p => Wording.Tenth(p.FromFirst))),
            Column.OfFigures($"from {Base.SecondName}", places.Select(p => Wording.Tenth(p.FromSecond))),
        ]);
    }

    private IEnumerable<FlowItem> Runs()
    {
        var runs = Piece.WeldSeams.SelectMany(s => s.Runs).OrderBy(r => r.Number).ToList();
        return Titled("Runs of weld, in this order: from where the arc is struck to where it is broken off",
        [
            Column.OfWords("run", runs.Select(r => Number(r.Number))),
            .. AlongAndOffset("along", [.. runs.Select(r => Base.Of(r.Along.Start))]), .. AlongAndOffset("to along", [.. runs.Select(r => Base.Of(r.Along.End))]),
            Column.OfFigures("long", runs.Select(r => Wording.Tenth(r.Along.Length))),
        ]);
    }

    private static ImmutableArray<Column> AlongAndOffset(string along, List<MarkedPlace> places) =>
        [Column.OfFigures(along, places.Select(p => Wording.Tenth(p.Along))), Column.OfFigures("offset", places.Select(p => Wording.Tenth(p.Offset)))];

    // Nothing where there are no rows.
    private IEnumerable<FlowItem> Titled(string title, ImmutableArray<Column> columns)
    {
        if (columns[0].Texts.IsEmpty) return [];
        var (widths, rows) = Column.Table(columns, Width, Height);
        return [new(Block.Text(title, Width, Height, strong: true), Height * 1.8) { StaysWithNext = true }, .. FlowItem.Table(widths, rows, Height, Height * 0.5)];
    }

    private static string Number(int number) => number.ToString(CultureInfo.InvariantCulture);
}
