using System.Globalization;
using TemplateForge.Fabrication;
using TemplateForge.Geometry;

namespace TemplateForge.Sheets;

/// <summary>What a hole is called on every picture and in every table: one name for one hole.</summary>
/// <remarks>A hole that is plug-welded has the number of its weld, w1, w2, …; a tack on an edge has its bare number; any other hole is h1, h2, ….</remarks>
internal static class HoleNames
{
    /// <summary>What stands beside a tack.</summary>
    public static string Of(Piece piece, Tack tack) => RadiusOfHoleAt(piece, tack.At) > 0 ? Welded(tack.Number) : Number(tack.Number);

    /// <summary>What a hole of the mark-out is called.</summary>
    /// <param name="hole">The hole.</param>
    /// <param name="tacks">The piece's tacks.</param>
    public static string Of(MarkedHole hole, IEnumerable<Tack> tacks) =>
        hole.IsOutline ? "outline" : WeldOf(hole, tacks) is > 0 and var weld ? Welded(weld) : $"h{Number(hole.Number)}";

    /// <summary>The number of the plug weld in a hole; 0 where there is none.</summary>
    public static int WeldOf(MarkedHole hole, IEnumerable<Tack> tacks) =>
        hole.IsOutline ? 0 : tacks.Where(t => hole.IsAt(t.At)).Select(t => t.Number).DefaultIfEmpty(0).Min();

    /// <summary>The radius in mm of the round hole whose centre a point is; 0 where there is none.</summary>
    public static double RadiusOfHoleAt(Piece piece, Point at) =>
        RoundHoles(piece).Where(h => h.Centre.DistanceTo(at) < 0.02).Select(h => h.Radius).FirstOrDefault();

    /// <summary>The round holes of a piece.</summary>
    public static IEnumerable<(Point Centre, double Radius)> RoundHoles(Piece piece)
    {
        foreach (var contour in piece.Shape.Contours.Where(c => !c.IsCounterClockwise))
            if (contour.TryAsCircle(out var centre, out var radius)) yield return (centre, radius);
    }

    private static string Welded(int number) => $"w{Number(number)}";

    private static string Number(int number) => number.ToString(CultureInfo.InvariantCulture);
}
