using System.Collections.Immutable;
using System.Globalization;
using TemplateForge.Fabrication;
using TemplateForge.Geometry;

namespace TemplateForge.Sheets;

/// <summary>The bends of some pieces in their order, each line by the same base line as the mark-out.</summary>
/// <param name="Pieces">The pieces; those without bends have no rows.</param>
/// <param name="Height">Height of capitals in mm.</param>
internal sealed record BendTable(ImmutableArray<Piece> Pieces, double Height)
{
    private ImmutableArray<Piece> Bent { get; } = [.. Pieces.Where(p => !p.Bends.IsEmpty)];

    /// <summary>From where the lines are measured, piece by piece.</summary>
    public Block Origins(double width) => Block.Stacked(Height * 0.5, Bent.Select(p => Block.Text(
        (Bent.Length > 1 ? $"{p.Title}. " : "") + Wording.BendsFrom(BaseLine.Of(p)), width, Height)));

    /// <summary>The bends row by row; no rows where nothing is bent.</summary>
    /// <param name="width">Width in mm.</param>
    public (ImmutableArray<(string Title, double Width)> Columns, ImmutableArray<ImmutableArray<Cell>> Rows) Of(double width)
    {
        if (Bent.IsEmpty) return ([], []);
        var rows = Bent.SelectMany(p => p.Bends.Select(b => (Bend: b[0], Lies: BendPlace.Of(BaseLine.Of(p), b)))).ToList();
        ImmutableArray<Column> bends =
        [
            Column.OfWords("No", rows.Select(r => r.Bend.Number.ToString(CultureInfo.InvariantCulture))),
            Column.OfWords("bend to", rows.Select(r => $"{Angles(r.Bend)} {Wording.WayOf(r.Bend)}")),
            Column.OfFigures("radius", rows.Select(r => r.Bend is BendLine { IsPressLine: true } ? "" : Wording.Short(r.Bend.InsideRadius))),
        ];
        ImmutableArray<Column> places =
        [
            .. Titles.Select((title, i) => Column.OfFigures(title, rows.Select(r => r.Lies.Figures.IsEmpty ? "" : r.Lies.Figures[i]))),
        ];
        // Columns of figures where they fit; a sentence goes over all of them.
        var areColumns = bends.Concat(places).Sum(c => c.WidthAt(Height)) <= width;
        var (columns, cells) = Column.Table([.. bends, .. areColumns ? places : [Column.OfRest("its line", rows.Select(r => r.Lies.Words))]], width, Height);
        // A sentence has the whole width.
        var left = width - columns.Sum(c => c.Width);
        return areColumns
            ? (columns.SetItem(columns.Length - 1, (columns[^1].Title, columns[^1].Width + Math.Max(0, left))), [.. rows.Zip(cells, (r, c) => r.Lies.Figures.IsEmpty ? [.. c[..bends.Length], Cell.Words(r.Lies.Words, Height)] : c)])
            : (columns, cells);

        static string Angles(IBendOnBlank bend) => bend.Overbend == bend.Bend
            ? Wording.Degrees(bend.Bend)
            : $"{Wording.Degrees(bend.Overbend)} for {Wording.Degrees(bend.Bend)}";
    }

    private static ImmutableArray<string> Titles { get; } = ["from\nalong", "offset", "to\nalong", "offset"];
}

/// <summary>Where a bend lies on its blank.</summary>
/// <param name="Figures">Along and offset of one end of its line, then of the other; none where it is no single line.</param>
/// <param name="Words">The same in words.</param>
internal sealed record BendPlace(ImmutableArray<string> Figures, string Words)
{
    /// <param name="line">From where it is measured.</param>
    /// <param name="together">The stretches that are bent together, the longest first.</param>
    public static BendPlace Of(BaseLine line, ImmutableArray<IBendOnBlank> together)
    {
        if (together is [BendLine bend]) return new([.. FiguresOf(bend.From), .. FiguresOf(bend.To)], $"from {Place(bend.From)} to {Place(bend.To)}");
        return new([], together.OfType<BendLine>().Where(b => b.IsPressLine).OrderBy(b => b.Place).ToList() is [var first, .., var last] alike
            ? string.Create(CultureInfo.InvariantCulture, $"{alike.Count} press lines, so far at each: the first from {Place(first.From)} to {Place(first.To)}, the last from {Place(last.From)} to {Place(last.To)}")
            : OverFormer());

        string OverFormer()
        {
            var arcs = together.SelectMany(b => b.Middle.Segments).ToList();
            var (centre, radius) = (arcs[0].IsLine ? default : arcs[0].Centre, arcs[0].Radius);
            if (arcs.All(a => !a.IsLine && a.Centre.DistanceTo(centre) < 0.01))
                return string.Create(CultureInfo.InvariantCulture, $"round {Place(centre)}, radius {radius:0.0}, over a former");
            var curved = together.Count(b => b is CurvedBend);
            return string.Create(CultureInfo.InvariantCulture, $"runs on without a corner: {together.Length - curved} straight and {curved} curved, over a former");
        }

        ImmutableArray<string> FiguresOf(Point at) => line.Of(at) is var place ? [Wording.Tenth(place.Along), Wording.Tenth(place.Offset)] : [];

        string Place(Point at) => line.Of(at) is var place ? $"{Wording.Tenth(place.Along)} along, offset {Wording.Tenth(place.Offset)}" : "";
    }
}
