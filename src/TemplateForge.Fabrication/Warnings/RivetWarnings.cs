using System.Collections.Immutable;
using TemplateForge.Geometry;

namespace TemplateForge.Fabrication;

/// <summary>Rivets too near the edge, each other or another row, and rivets too thin or too thick for the sheet: one warning of a kind for a
/// row, at its worst place.</summary>
/// <remarks>
/// <code>
///      edge  ------------------------     D  the rivet's diameter
///              |  2 D
///              o       o       o   |      3 D from rivet to rivet in a row
///                                  |  2.5 D from row to row
///                  o       o       o
/// </code>
/// For solid rivets: AC 43.13-1B; Army TM 10-5410-229-13&amp;P, p. 5-4. Diameter 1 to 3 times the thickest sheet: US Navy training course 14018.
/// </remarks>
public static class RivetWarnings
{
    private const string Distances = "AC 43.13-1B; Army TM 10-5410-229-13&P, p. 5-4";
    private const string Rows = "Army TM 10-5410-229-13&P, p. 5-4";
    private const string Diameters = "US Navy training course 14018";

    // Two rows that run within this of the same way lie beside each other.
    private static readonly double SameWay = Math.Sqrt(0.5);

    public static ImmutableArray<Warning> Of(Piece piece, ImmutableArray<RivetRow> rows) =>
    [
        .. rows.SelectMany(row => Diameter(piece, row)),
        .. Edge(piece, rows),
        .. rows.SelectMany(Pitch),
        .. rows.SelectMany((row, i) => rows.Skip(i + 1).SelectMany(other => Apart(row, other))),
    ];

    private static IEnumerable<Warning> Diameter(Piece piece, RivetRow row)
    {
        var sheet = Math.Max(piece.Thickness, row.ThickestSheet);
        if (row.Diameter >= sheet - Tolerance.Length && row.Diameter <= 3 * sheet + Tolerance.Length) yield break;
        yield return new(
            "rivet of the wrong diameter",
            FormattableString.Invariant($"Rivets of {row.Diameter:0.##} mm are {(row.Diameter < sheet ? "thin" : "thick")} for a thickest sheet of {sheet:0.##} mm: {sheet:0.##} to {3 * sheet:0.##} mm, once to three times the sheet."),
            row.Centres[0],
            Diameters);
    }

    private static IEnumerable<Warning> Edge(Piece piece, ImmutableArray<RivetRow> rows)
    {
        var rivets = rows.SelectMany(r => r.Centres).ToList();
        var edges = MetalEdge.Of(piece).Where(e => !e.Hole.Any(IsOfARivet)).ToList();
        foreach (var row in rows)
        {
            var least = 2 * row.Diameter;
            var near = row.Centres.Select(c => (At: c, There: edges.Select(e => e.DistanceTo(c)).DefaultIfEmpty(double.PositiveInfinity).Min()))
                .Where(r => r.There < least - Tolerance.Length).OrderBy(r => r.There).ToList();
            if (near.Count == 0) continue;
            yield return new(
                "rivet too near the edge",
                FormattableString.Invariant($"A rivet of {row.Diameter:0.##} mm is {near[0].There:0.##} mm from the edge to its middle; it wants {least:0.##} mm, twice its diameter.{Others(near.Count)}"),
                near[0].At,
                Distances);
        }

        bool IsOfARivet(Contour hole) =>
            hole.TryAsCircle(out var centre, out _) && rivets.Exists(r => r.DistanceTo(centre) <= 10 * Tolerance.Length);
    }

    private static IEnumerable<Warning> Pitch(RivetRow row)
    {
        var least = 3 * row.Diameter;
        var near = row.Gaps().Select(g => (At: g.From.MidpointTo(g.To), There: g.From.DistanceTo(g.To)))
            .Where(g => g.There < least - Tolerance.Length).OrderBy(g => g.There).ToList();
        if (near.Count == 0) yield break;
        yield return new(
            "rivets too near each other",
            FormattableString.Invariant($"Rivets of {row.Diameter:0.##} mm stand {near[0].There:0.##} mm apart; they want {least:0.##} mm, three diameters.{Others(near.Count)}"),
            near[0].At,
            Distances);
    }

    private static string Others(int count) => count == 1 ? "" : FormattableString.Invariant($" {count} places of the row are too near.");

    // The nearest place of two rows: between two rivets, or square to both rows where they run beside each other. A rivet that both have
    // is one rivet, at which they meet.
    private static IEnumerable<Warning> Apart(RivetRow row, RivetRow other)
    {
        var least = 2.5 * Math.Max(row.Diameter, other.Diameter);
        var betweenRivets = row.Centres.SelectMany(a => other.Centres.Select(b => (On: a, OnOther: b))).Where(p => !IsOne(p.On, p.OnOther));
        var betweenGaps = row.Gaps().SelectMany(a => other.Gaps().Where(b => RunBeside(a, b)).Select(b => Segment.Line(a.From, a.To).NearestPoints(Segment.Line(b.From, b.To))));
        var near = betweenRivets.Concat(betweenGaps).Select(p => (p.On, p.OnOther, Distance: p.On.DistanceTo(p.OnOther))).OrderBy(p => p.Distance).Take(1);
        return near.Where(n => n.Distance < least - Tolerance.Length).Select(n => new Warning(
            "rows of rivets too near each other",
            FormattableString.Invariant($"Two rows of rivets are {n.Distance:0.##} mm apart; they want {least:0.##} mm, two and a half diameters."),
            n.On.MidpointTo(n.OnOther),
            Rows));
    }

    private static bool IsOne(Point a, Point b) => a.DistanceTo(b) <= 10 * Tolerance.Length;

    private static bool RunBeside((Point From, Point To) a, (Point From, Point To) b) =>
        Math.Abs((a.To - a.From).Unit.Dot((b.To - b.From).Unit)) >= SameWay
        && !IsOne(a.From, b.From) && !IsOne(a.From, b.To) && !IsOne(a.To, b.From) && !IsOne(a.To, b.To);
}
