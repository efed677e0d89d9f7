using TemplateForge.Geometry;

namespace TemplateForge.Fabrication;

/// <summary>Cuts from the free edge of a flange along an arc: slits where it stretches and opens, notches where it shrinks and closes.</summary>
/// <remarks>
/// They end clear of the bend in a round hole, so that they do not run on. The notches together are as wide as the edge is too long, so that
/// they close. Common practice, no source.
/// </remarks>
internal static class ReliefCuts
{
    private const double SlitWidth = 1;

    /// <summary>How many cuts the flange of an arc has room for, with a thickness of metal between them and to the edge.</summary>
    public static int Most(FlangeStrip strip)
    {
        var ((hole, bottom), thickness) = (Holes(strip), strip.Flange.Panels[0].Thickness);
        if (bottom + hole + thickness > strip.Flange.FreeEdge) return 0;
        return (int)(strip.Edge.Length * strip.Edge.RadiusAt(bottom) / strip.Edge.Side.Radius / (2 * hole + thickness));
    }

    public static bool HaveRoom(FlangeStrip strip) => !Any(strip) || strip.Wanted.ReliefCuts <= Most(strip);

    public static IEnumerable<Contour> Of(FlangeStrip strip)
    {
        if (!Any(strip)) yield break;
        var (edge, flange, count) = (strip.Edge, strip.Flange, strip.Wanted.ReliefCuts);
        var (hole, bottom) = Holes(strip);
        var last = flange.Panels[^1];
        var folded = edge.RadiusAt(last.Middle(last.Length).X);
        // Measured along the edge of the base: every ray carries as much of it.
        var excess = edge.Length * Math.Max(0, edge.RadiusAt(flange.FreeEdge) - folded) / edge.RadiusAt(flange.FreeEdge);
        var past = flange.FreeEdge + 1;
        for (var i = 0; i < count; i++)
        {
            var along = edge.Length * (i + 0.5) / count;
            var half = Math.Max(SlitWidth / 2 * edge.Side.Radius / edge.RadiusAt(flange.FreeEdge), excess / count / 2);
            yield return Outline.Circle(edge.At(along, bottom), hole);
            // A slit is as wide all along; a notch comes to a point.
            var narrow = excess > 0 ? half / 8 : half * edge.RadiusAt(flange.FreeEdge) / edge.RadiusAt(bottom);
            yield return Outline.Polygon(
                edge.At(along - narrow, bottom), edge.At(along - half, flange.FreeEdge), edge.At(along - half, past),
                edge.At(along + half, past), edge.At(along + half, flange.FreeEdge), edge.At(along + narrow, bottom));
        }
    }

    private static bool Any(FlangeStrip strip) => strip.Wanted.ReliefCuts > 0 && !strip.Edge.Side.IsLine;

    // Their radius, and how far outwards their middles lie: as far again from the bend.
    private static (double Radius, double Outwards) Holes(FlangeStrip strip)
    {
        var radius = FlangedSheet.LeastRelief(strip.Flange.Panels[0].Thickness) / 2;
        return (radius, strip.Flange.EndOf(0) + 2 * radius);
    }
}
