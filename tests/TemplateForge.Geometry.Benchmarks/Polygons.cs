using NetTopologySuite.Geometries;

namespace TemplateForge.Geometry.Benchmarks;

/// <summary>A region as NetTopologySuite knows it: arcs flattened, so that its chords stray by no more than 0.01 mm.</summary>
internal static class Polygons
{
    private const double Chords = 0.01;

    private static readonly GeometryFactory Factory = new();

    public static NetTopologySuite.Geometries.Geometry Of(Region region)
    {
        var outer = region.Contours.Where(c => c.IsCounterClockwise).Select(Ring).ToArray();
        var holes = region.Contours.Where(c => !c.IsCounterClockwise).Select(Ring).ToArray();
        if (outer.Length == 1) return Factory.CreatePolygon(outer[0], holes);
        var parts = Factory.CreateMultiPolygon([.. outer.Select(Factory.CreatePolygon)]);
        return holes.Length == 0 ? parts : parts.Difference(Factory.CreateMultiPolygon([.. holes.Select(Factory.CreatePolygon)]));
    }

    public static NetTopologySuite.Geometries.Geometry Together(params NetTopologySuite.Geometries.Geometry[] polygons) =>
        Factory.CreateMultiPolygon([.. polygons.Cast<Polygon>()]);

    private static LinearRing Ring(Contour contour)
    {
        var points = contour.Flattened(Chords);
        return Factory.CreateLinearRing([.. points.Append(points[0]).Select(p => new Coordinate(p.X, p.Y))]);
    }
}
