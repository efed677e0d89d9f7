using System.Collections.Immutable;
using TemplateForge.Geometry;

namespace TemplateForge.Fabrication;

/// <summary>Metal so narrow between two holes, or between a hole and the outline, that it tears or burns away.</summary>
/// <remarks>Twice the thickness at least: common practice, no source.</remarks>
public static class WebWarnings
{
    /// <summary>The narrowest place between each two edges that are too near to each other; where metal lies between them, in its middle.</summary>
    public static ImmutableArray<Warning> Of(Piece piece)
    {
        var (edges, least) = (MetalEdge.Of(piece), 2 * piece.Thickness);
        var warnings = ImmutableArray.CreateBuilder<Warning>();
        for (var i = 0; i < edges.Length; i++)
        {
            for (var j = i + 1; j < edges.Length; j++)
            {
                if (edges[i].Hole.IsEmpty && edges[j].Hole.IsEmpty) continue;
                if (!edges[i].Bounds.Grown(least).Touches(edges[j].Bounds)) continue;
                var (on, onOther) = edges[i].NearestPoints(edges[j]);
                var width = on.DistanceTo(onOther);
                if (width >= least - Tolerance.Length || !IsMetal(piece.Shape, on, onOther)) continue;
                warnings.Add(new(
                    "web too narrow",
                    FormattableString.Invariant($"Only {width:0.##} mm of metal is left; {least:0.##} mm is the least, twice the thickness."),
                    on.MidpointTo(onOther),
                    "common practice, no source"));
            }
        }
        return warnings.ToImmutable();
    }
    // Not over the gap to another part, nor over a hole that lies between.
    private static bool IsMetal(Region shape, Point from, Point to)
    {
        var width = from.DistanceTo(to);
        return width < 10 * Tolerance.Length || Path.Line(from, to).PartsInside(shape).Sum(p => p.Length) >= width - 10 * Tolerance.Length;
    }
}
