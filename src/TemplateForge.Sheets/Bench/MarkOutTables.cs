using System.Collections.Immutable;
using System.Globalization;
using TemplateForge.Fabrication;

namespace TemplateForge.Sheets;

/// <summary>The tables by which one piece is marked out.</summary>
/// <param name="MarkOut">The piece.</param>
/// <param name="Tacks">Its tacks: a hole in which one lies has its number beside it.</param>
/// <param name="Height">Height in mm of the capitals.</param>
/// <param name="Width">Width in mm.</param>
/// <param name="InInches">Whether inches stand beside the millimetres.</param>
internal sealed record MarkOutTables(MarkOut MarkOut, ImmutableArray<Tack> Tacks, double Height, double Width, bool InInches)
{
    /// <summary>More lines than this on a piece are set out by along and offset alone.</summary>
    private const int MostStruck = 12;

    public IEnumerable<FlowItem> Items() => [.. Outlines(), .. Lines(), .. Arcs(), .. LongArcs(), .. Holes()];

    // Round each outline from vertex to vertex, and what leads on to the next.
    private IEnumerable<FlowItem> Outlines()
    {
        foreach (var line in MarkOut.Lines.Where(l => !IsLine(l)))
        {
            var rows = line.Stretches.Select(s => (Number: s.From, Next: (s.Arc > 0 ? $"arc {Number(s.Arc)}" : "line"), s.To)).ToList();
            var isClosed = line.Stretches[^1].To == line.Stretches[0].From;
            if (isClosed) rows[^1] = rows[^1] with { Next = $"{rows[^1].Next} to {Number(rows[^1].To)}" };
            else rows.Add((line.Stretches[^1].To, "end", 0));
            var first = MarkOut.Lines.First(l => !IsLine(l)) == line;
            foreach (var item in Titled(
                Wording.NameOf(line), [Numbers(rows.Select(r => r.Number)), .. PlacesOf(rows.Select(r => MarkOut[r.Number].Place)), Column.OfRest("then", rows.Select(r => r.Next))],
                first ? 1.4 : 1.8)) yield return item;
        }
    }

    // Straight lines that are pencilled or scribed, from end to end.
    private IEnumerable<FlowItem> Lines()
    {
        var lines = MarkOut.Lines.Where(IsLine).ToList();
        if (lines.Count == 0) return [];
        if (lines.Count > MostStruck) return ManyLines(lines);
        var ends = lines.SelectMany(l => new[] { (Name: Wording.NameOf(l), Number: l.Stretches[0].From), (Name: "", Number: l.Stretches[^1].To) }).ToList();
        return Titled("Lines on the piece, from and to",
            [Numbers(ends.Select(e => e.Number)), .. PlacesOf(ends.Select(e => MarkOut[e.Number].Place)), Column.OfRest("line", ends.Select(e => e.Name))], 1.8);
    }

    // A row for each where they are many: nobody strikes them all with a trammel.
    private IEnumerable<FlowItem> ManyLines(List<MarkedLine> lines)
    {
        var (from, to) = (lines.Select(l => MarkOut[l.Stretches[0].From].Place).ToList(), lines.Select(l => MarkOut[l.Stretches[^1].To].Place).ToList());
        return Titled("Lines on the piece, by along and offset alone",
        [
            Column.OfWords("of", lines.Select(l => $"{l.Stretches[0].From}-{l.Stretches[^1].To}")), Column.OfRest("line", lines.Select(Wording.NameOf)),
            Column.OfFigures("along", from.Select(p => Figure(p.Along))), Column.OfFigures("offset", from.Select(p => Figure(p.Offset))),
            Column.OfFigures("to along", to.Select(p => Figure(p.Along))), Column.OfFigures("offset", to.Select(p => Figure(p.Offset))),
        ], 1.8);
    }

    private IEnumerable<FlowItem> Arcs()
    {
        var arcs = MarkOut.Arcs.Where(a => a.IsStruck).ToList();
        return Titled("Arcs, struck from their centres",
        [
            Column.OfWords("arc", arcs.Select(a => Number(a.Number))), Column.OfWords("of", arcs.Select(Ends)),
            Column.OfFigures("radius", arcs.Select(a => Figure(a.Radius))), .. PlacesOf(arcs.Select(a => a.CentrePlace)),
        ], 1.8);
    }

    private IEnumerable<FlowItem> LongArcs()
    {
        var arcs = MarkOut.Arcs.Where(a => !a.IsStruck).ToList();
        return Titled("Long arcs, by chord and rise",
        [
            Column.OfWords("arc", arcs.Select(a => Number(a.Number))), Column.OfWords("of", arcs.Select(Ends)),
            Column.OfFigures("chord", arcs.Select(a => Figure(a.Chord))), Column.OfFigures("rise", arcs.Select(a => Figure(a.Rise))),
            Column.OfFigures("at quarters", arcs.Select(a => Figure(a.RiseAtQuarters))), Column.OfRest("to the", arcs.Select(a => a.Sweep.Radians > 0 ? "right" : "left")),
        ], 1.8);
    }

    // A round outline first, then holes in the order in which they are welded, if they are.
    private IEnumerable<FlowItem> Holes()
    {
        var circles = MarkOut.Holes.Select(h => (Circle: h, Weld: HoleNames.WeldOf(h, Tacks)))
            .OrderBy(c => !c.Circle.IsOutline).ThenBy(c => c.Weld == 0 ? int.MaxValue : c.Weld).Select(c => c.Circle).ToList();
        var title = circles is [.., { IsOutline: true }] ? "Round outline, by its centre"
            : circles.Any(c => HoleNames.WeldOf(c, Tacks) > 0) ? "Holes, by their centres; plug welds w1, w2, … in the order of welding" : "Holes, by their centres";
        return Titled(title,
        [
            Column.OfWords("circle", circles.Select(c => HoleNames.Of(c, Tacks))), Column.OfFigures("dia.", circles.Select(c => Figure(c.Diameter))),
            .. PlacesOf(circles.Select(c => c.Place)),
        ], 1.8);
    }

    private static bool IsLine(MarkedLine line) =>
        line.Kind is MarkedLineKind.Bend or MarkedLineKind.Scribed or MarkedLineKind.Generator && line.Stretches is [{ Arc: 0 }];

    // Nothing where there are no rows.
    private IEnumerable<FlowItem> Titled(string title, ImmutableArray<Column> columns, double gap)
    {
        if (columns[0].Texts.IsEmpty) return [];
        var (widths, rows) = Column.Table(columns, Width, Height);
        return [new(Block.Text(title, Width, Height, strong: true), Height * gap) { StaysWithNext = true }, .. FlowItem.Table(widths, rows, Height, Height * 0.5)];
    }

    private static Column Numbers(IEnumerable<int> numbers) => Column.OfWords("No", numbers.Select(Number));

    private ImmutableArray<Column> PlacesOf(IEnumerable<MarkedPlace> places)
    {
        var all = places.ToList();
        return
        [
            Column.OfFigures("along", all.Select(p => Figure(p.Along))), Column.OfFigures("offset", all.Select(p => Figure(p.Offset))),
            Column.OfFigures($"from {MarkOut.Base.FirstName}", all.Select(p => Trammel(p, p.FromFirst))),
            Column.OfFigures($"from {MarkOut.Base.SecondName}", all.Select(p => Trammel(p, p.FromSecond))),
        ];
    }

    private string Trammel(MarkedPlace place, double distance) =>
        place.IsFoundByTrammel ? Figure(distance) : $"({Wording.Tenth(distance)})" + (InInches ? "\n" + Wording.Inches(distance) : "");

    private string Figure(double length) => Wording.Tenth(length) + (InInches ? "\n" + Wording.Inches(length) : "");

    private static string Ends(MarkedArc arc) => $"{Number(arc.From)}-{Number(arc.To)}";

    private static string Number(int number) => number.ToString(CultureInfo.InvariantCulture);
}
