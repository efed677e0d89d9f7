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

    public static IEnumerable<Contour> Of(FlangeStrip strip)
    {
        var count = strip.Wanted.ReliefCuts;
        if (count == 0 || strip.Edge.Side.IsLine) yield break;
        var (edge, flange) = (strip.Edge, strip.Flange);
        var hole = FlangedSheet.LeastRelief(flange.Panels[0].Thickness) / 2;
        var bottom = flange.EndOf(0) + hole;
        if (bottom + hole >= flange.FreeEdge) yield break;
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
            yield return Outline.Polygon(
                edge.At(along - half / 8, bottom), edge.At(along - half, flange.FreeEdge), edge.At(along - half, past),
                edge.At(along + half, past), edge.At(along + half, flange.FreeEdge), edge.At(along + half / 8, bottom));
        }
    }
}
