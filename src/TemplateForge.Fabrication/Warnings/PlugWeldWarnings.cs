using System.Collections.Immutable;
using TemplateForge.Geometry;

namespace TemplateForge.Fabrication;

/// <summary>Plug welds too small or too large to fill, too near the edge or too near each other: one warning of a kind for a piece, at its
/// worst place.</summary>
/// <remarks>
/// <code>
///      edge  ------------------------     D  the hole's diameter, or the width of a slot; all from middle to middle
///              |  1.5 D
///              o         o         o
///                   4 D
/// </code>
/// Holes in sheet under 3 mm: 5 mm at least, collision-repair textbooks (from memory). From 3 mm up the structural rule (read): the depth and
/// 5/16 in at least. At most that least and 1/8 in, or 2.25 times the depth, whichever is greater (read, for plate; kept for sheet as well, of
/// which no source says anything). Not closer than 4 widths across: read for slots, from memory for round holes. 1.5 D to the edge: common
/// practice, no source. The vehicle's own repair method comes before all of these.
/// </remarks>
public static class PlugWeldWarnings
{
    private const double Inch = 25.4;
    private const double Plate = 3;
    private const double LeastInSheet = 5;
    private const string Structural = "structural rule for plug welds; the vehicle's own repair method comes first";
    private const string Collision = "collision-repair textbooks, from memory; the vehicle's own repair method comes first";

    /// <summary>The least hole through which a weld reaches the sheet below, in mm.</summary>
    /// <param name="depth">Thickness of the sheet that has the holes, in mm.</param>
    public static double LeastWidth(double depth) => depth < Plate - Tolerance.Length ? LeastInSheet : depth + 5.0 / 16 * Inch;

    /// <summary>The largest hole that is filled without drawing the sheet, in mm.</summary>
    /// <param name="depth">Thickness of the sheet that has the holes, in mm.</param>
    public static double GreatestWidth(double depth) => Math.Max(depth + 7.0 / 16 * Inch, 2.25 * depth);

    public static ImmutableArray<Warning> Of(Piece piece, ImmutableArray<PlugWeld> plugs) => plugs.IsEmpty ? [] : [.. Size(piece, plugs), .. Edge(piece, plugs), .. Apart(plugs)];

    private static IEnumerable<Warning> Size(Piece piece, ImmutableArray<PlugWeld> plugs)
    {
        var (least, most) = (LeastWidth(piece.Thickness), GreatestWidth(piece.Thickness));
        var (smallest, largest) = (plugs.MinBy(p => p.Width), plugs.MaxBy(p => p.Width));
        if (smallest.Width < least - Tolerance.Length)
        {
            yield return new(
                "plug hole too small",
                FormattableString.Invariant($"Through a hole of {smallest.Width:0.##} mm the weld hardly reaches the sheet below; through {piece.Thickness:0.##} mm it wants {least:0.##} mm."),
                smallest.Middle,
                piece.Thickness < Plate - Tolerance.Length ? Collision : Structural);
        }
        if (largest.Width > most + Tolerance.Length)
        {
            yield return new(
                "plug hole too large",
                FormattableString.Invariant($"Filling a hole of {largest.Width:0.##} mm draws the sheet; in {piece.Thickness:0.##} mm {most:0.##} mm is the most."),
                largest.Middle,
                Structural);
        }
    }

    private static IEnumerable<Warning> Edge(Piece piece, ImmutableArray<PlugWeld> plugs)
    {
        var edges = MetalEdge.Of(piece).Where(e => !e.Hole.Any(h => PlugWeld.TryOf(h, out var hole) && plugs.Any(p => IsOne(p, hole)))).ToList();
        var near = plugs.Select(p => (Plug: p, There: edges.Select(e => FromEdge(e, p)).DefaultIfEmpty(double.PositiveInfinity).Min(), Least: 1.5 * p.Width))
            .Where(p => p.There < p.Least - 10 * Tolerance.Length).OrderBy(p => p.There - p.Least).ToList();
        if (near.Count == 0) yield break;
        var (plug, there, least) = near[0];
        yield return new(
            "plug weld too near the edge",
            FormattableString.Invariant($"A plug weld of {plug.Width:0.##} mm is {there:0.##} mm from the edge to its middle; it wants {least:0.##} mm, one and a half of its width.{Others(near.Count)}"),
            plug.Middle,
            "common practice, no source");

        static double FromEdge(MetalEdge edge, PlugWeld plug)
        {
            if (plug.IsRound) return edge.DistanceTo(plug.From);
            edge.NearestTo(Path.Line(plug.From, plug.To), out var distance);
            return distance;
        }
    }

    private static IEnumerable<Warning> Apart(ImmutableArray<PlugWeld> plugs)
    {
        var near = plugs.SelectMany((a, i) => plugs.Skip(i + 1).Select(b =>
            {
                var (on, onOther) = a.NearestPoints(b);
                return (On: on, OnOther: onOther, There: on.DistanceTo(onOther), Least: 4 * Math.Max(a.Width, b.Width));
            }))
            .Where(p => p.There < p.Least - 10 * Tolerance.Length).OrderBy(p => p.There - p.Least).ToList();
        if (near.Count == 0) yield break;
        yield return new(
            "plug welds too near each other",
            FormattableString.Invariant($"Two plug welds are {near[0].There:0.##} mm apart from middle to middle; they want {near[0].Least:0.##} mm, four times their width.{Others(near.Count)}"),
            near[0].On.MidpointTo(near[0].OnOther),
            Structural);
    }

    private static bool IsOne(PlugWeld a, PlugWeld b) => a.Middle.DistanceTo(b.Middle) <= 10 * Tolerance.Length;

    private static string Others(int count) => count == 1 ? "" : FormattableString.Invariant($" {count} places are too near.");
}
