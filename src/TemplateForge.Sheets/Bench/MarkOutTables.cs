using System.Collections.Immutable;
using System.Globalization;
using TemplateForge.Drawing;
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

    private ImmutableArray<string> Places { get; } = ["along", "offset", $"from {MarkOut.Base.FirstName}", $"from {MarkOut.Base.SecondName}"];

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
            foreach (var item in Titled(Wording.NameOf(line),
                Columns([("No", ["188"])], rows.Select(r => MarkOut[r.Number].Place), "then"),
                rows.Select(r => Row([Number(r.Number)], MarkOut[r.Number].Place, r.Next)), first ? 1.4 : 1.8)) yield return item;
        }
    }

    // Straight lines that are pencilled or scribed, from end to end.
    private IEnumerable<FlowItem> Lines()
    {
        var lines = MarkOut.Lines.Where(IsLine).ToList();
        if (lines.Count == 0) return [];
        if (lines.Count > MostStruck) return ManyLines(lines);
        var ends = lines.SelectMany(l => new[] { (Name: Wording.NameOf(l), Number: l.Stretches[0].From), (Name: "", Number: l.Stretches[^1].To) }).ToList();
        var columns = Columns([("No", ["188"])], ends.Select(e => MarkOut[e.Number].Place), "line");
        return Titled("Lines on the piece, from and to", columns, ends.Select(e => Row([Number(e.Number)], MarkOut[e.Number].Place, e.Name)), 1.8);
    }

    // A row for each where they are many: nobody strikes them all with a trammel.
    private IEnumerable<FlowItem> ManyLines(List<MarkedLine> lines)
    {
        var places = lines.Select(l => (
            Name: Wording.NameOf(l), Ends: $"{l.Stretches[0].From}-{l.Stretches[^1].To}", From: MarkOut[l.Stretches[0].From].Place, To: MarkOut[l.Stretches[^1].To].Place)).ToList();
        var of = WidthOf(["of", .. places.Select(p => p.Ends)]);
        var figure = WidthOf(["to along", .. places.SelectMany(p => Figures(p.From).Concat(Figures(p.To))).SelectMany(f => f.Split('\n'))]);
        return Titled("Lines on the piece, by along and offset alone",
            [("of", of), ("line", Width - of - 4 * figure), ("along", figure), ("offset", figure), ("to along", figure), ("offset", figure)],
            places.Select(p => (ImmutableArray<Cell>)
                [Words(p.Ends), Words(p.Name), Words(Figure(p.From.Along)), Words(Figure(p.From.Offset)), Words(Figure(p.To.Along)), Words(Figure(p.To.Offset))]), 1.8);
    }

    private IEnumerable<FlowItem> Arcs()
    {
        var arcs = MarkOut.Arcs.Where(a => a.IsStruck).ToList();
        if (arcs.Count == 0) return [];
        var columns = Columns([("arc", ["88"]), ("of", ["188-188"]), ("radius", arcs.Select(a => Figure(a.Radius)))], arcs.Select(a => a.CentrePlace), "");
        return Titled("Arcs, struck from their centres", columns,
            arcs.Select(a => Row([Number(a.Number), $"{a.From}-{a.To}", Figure(a.Radius)], a.CentrePlace, "")), 1.8);
    }

    private IEnumerable<FlowItem> LongArcs()
    {
        var arcs = MarkOut.Arcs.Where(a => !a.IsStruck).ToList();
        if (arcs.Count == 0) return [];
        double Of(string widest) => WidthOf([widest]);
        var (number, ends, figure) = (Of("arc 8"), Of("188-188"), Math.Max(Of("at quarters"), Of("[88.888]")));
        ImmutableArray<(string, double)> columns =
            [("arc", number), ("of", ends), ("chord", figure), ("rise", figure), ("at quarters", figure), ("to the", Math.Max(Of("to the"), Width - number - ends - 3 * figure))];
        return Titled("Long arcs, by chord and rise", columns, arcs.Select(a => (ImmutableArray<Cell>)
        [
            Words(Number(a.Number)), Words($"{a.From}-{a.To}"), Words(Figure(a.Chord)), Words(Figure(a.Rise)), Words(Figure(a.RiseAtQuarters)),
            Words(a.Sweep.Radians > 0 ? "right" : "left"),
        ]), 1.8);
    }

    // A round outline first, then holes in the order in which they are welded, if they are.
    private IEnumerable<FlowItem> Holes()
    {
        if (MarkOut.Holes.IsEmpty) return [];
        var circles = MarkOut.Holes.Select(h => (Circle: h, Tack: h.IsOutline ? 0 : Tacks.Where(t => h.IsAt(t.At)).Select(t => t.Number).DefaultIfEmpty(0).Min()))
            .OrderBy(c => !c.Circle.IsOutline).ThenBy(c => c.Tack == 0 ? int.MaxValue : c.Tack).ToList();
        var areWelded = circles.Any(c => c.Tack > 0);
        var columns = Columns(
            [("circle", circles.Select(c => NameOf(c.Circle))), ("dia.", circles.Select(c => Figure(c.Circle.Diameter)))],
            circles.Select(c => c.Circle.Place), areWelded ? "plug weld" : "");
        return Titled(circles[^1].Circle.IsOutline ? "Round outline, by its centre" : "Holes, by their centres", columns, circles.Select(c => Row(
            [NameOf(c.Circle), Figure(c.Circle.Diameter)], c.Circle.Place, areWelded ? (c.Tack > 0 ? Number(c.Tack) : "-") : "")), 1.8);

        static string NameOf(MarkedHole hole) => hole.IsOutline ? "outline" : $"h{Number(hole.Number)}";
    }

    private static bool IsLine(MarkedLine line) =>
        line.Kind is MarkedLineKind.Bend or MarkedLineKind.Scribed or MarkedLineKind.Generator && line.Stretches is [{ Arc: 0 }];

    private IEnumerable<FlowItem> Titled(string title, ImmutableArray<(string, double)> columns, IEnumerable<ImmutableArray<Cell>> rows, double gap) =>
    [
        new(Block.Line(title, Height, strong: true), Height * gap) { StaysWithNext = true },
        .. FlowItem.Table(columns, rows, Height, Height * 0.5),
    ];

    // Each as wide as its widest figure, and the last as wide as is left.
    private ImmutableArray<(string, double)> Columns(
        ImmutableArray<(string Title, IEnumerable<string> Widest)> first, IEnumerable<MarkedPlace> places, string last)
    {
        var figures = places.Select(Figures).ToList();
        var columns = first.Select(c => (c.Title, WidthOf([c.Title, .. c.Widest.SelectMany(w => w.Split('\n'))])))
            .Concat(Places.Select((title, i) => (title, WidthOf([title, .. figures.SelectMany(f => f[i].Split('\n'))])))).ToList();
        var left = Width - columns.Sum(c => c.Item2);
        return [.. columns, .. last.Length > 0 ? [(last, Math.Max(left, WidthOf(["arc 88"])))] : Array.Empty<(string, double)>()];
    }

    private ImmutableArray<Cell> Row(ImmutableArray<string> first, MarkedPlace place, string last) =>
        [.. first.Select(Words), .. Figures(place).Select(Words), .. last.Length > 0 ? [Words(last)] : Array.Empty<Cell>()];

    private string[] Figures(MarkedPlace place) =>
        [Figure(place.Along), Figure(place.Offset), Trammel(place, place.FromFirst), Trammel(place, place.FromSecond)];

    private string Trammel(MarkedPlace place, double distance) =>
        place.IsFoundByTrammel ? Figure(distance) : $"({Wording.Tenth(distance)})" + (InInches ? "\n" + Wording.Inches(distance) : "");

    private string Figure(double length) => Wording.Tenth(length) + (InInches ? "\n" + Wording.Inches(length) : "");

    private Cell Words(string text) => Cell.Words(text, Height);

    private double WidthOf(IEnumerable<string> texts) => texts.Max(t => Alphabet.Width(t, Height)) + 2 * Table.Aside + 0.1;

    private static string Number(int number) => number.ToString(CultureInfo.InvariantCulture);
}
