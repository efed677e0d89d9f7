using NetTopologySuite.Geometries;
using NetTopologySuite.Operation.Buffer;
using NetTopologySuite.Operation.OverlayNG;
using TemplateForge.Geometry;
using Point = TemplateForge.Geometry.Point;

namespace TemplateForge.Testing;

/// <summary>An independent polygon engine, on input whose arcs are flattened to half a micrometre.</summary>
/// <remarks>
/// Every arc loses at most <see cref="Flattening"/> of height, also when it is moved out, so areas agree within that times the
/// boundary.
/// </remarks>
public static class Referee
{
    public const double Flattening = 0.0005;

    public static NetTopologySuite.Geometries.Geometry Flattened(Region region, double growth = 0)
    {
        var factory = new GeometryFactory();
        var rings = region.Contours.Select(c => factory.CreateLinearRing(Corners(c, growth))).ToList();
        // Each hole belongs to the smallest outer contour round it.
        var outers = rings.Where(r => r.IsCCW).OrderBy(r => r.Envelope.Area).Select(r => (Ring: r, Holes: new List<LinearRing>())).ToList();
        foreach (var hole in rings.Where(r => !r.IsCCW))
        {
            // Chords may take a hole of hardly any width out of what it is in.
            var index = outers.FindIndex(o => factory.CreatePolygon(o.Ring).Contains(hole.InteriorPoint));
            if (index >= 0) outers[index].Holes.Add(hole);
        }
        return factory.CreateMultiPolygon([.. outers.Select(o => factory.CreatePolygon(o.Ring, [.. o.Holes]))]);
    }

    /// <summary>Whether the region is still one when it is flattened: where arcs touch, chords may cross.</summary>
    public static bool Takes(Region region, double growth = 0)
    {
        var rings = region.Contours.Select(c => new GeometryFactory().CreateLinearRing(Corners(c, growth))).ToList();
        // Of what is thinner than the flattening the chords may run the other way round.
        if (region.Contours.Zip(rings).Any(pair => pair.First.IsCounterClockwise != pair.Second.IsCCW)) return false;
        var outers = rings.Where(r => r.IsCCW).Select(r => r.Factory.CreatePolygon(r)).ToList();
        return outers.Count > 0 && rings.Where(r => !r.IsCCW).All(hole => outers.Exists(o => o.Contains(hole.InteriorPoint)))
            && Flattened(region, growth).IsValid;
    }

    public static double OffsetArea(Region region, double distance)
    {
        // By default it simplifies its input by 1 % of the distance.
        var parameters = new BufferParameters(QuadrantSegments(Math.Abs(distance))) { SimplifyFactor = 0 };
        return BufferOp.Buffer(Flattened(region, Math.Abs(distance)), distance, parameters).Area;
    }

    public static double CombinedArea(Region a, Region b, NetTopologySuite.Operation.Overlay.SpatialFunction how) =>
        OverlayNGRobust.Overlay(Flattened(a), Flattened(b), how).Area;

    private static Coordinate[] Corners(Contour contour, double growth)
    {
        var corners = new List<Coordinate>();
        foreach (var s in contour.Segments)
        {
            var parts = s.IsLine ? 1 : (int)Math.Ceiling(Math.Abs(s.Sweep.Radians) / (Math.PI / 2) * QuadrantSegments(s.Radius + growth));
            for (var i = 0; i < parts; i++) corners.Add(CoordinateOf(s.At((double)i / parts)));
        }
        corners.Add(corners[0].Copy());
        return [.. corners];
    }

    private static Coordinate CoordinateOf(Point p) => new(p.X, p.Y);

    /// <summary>Chords of a quarter circle that stay within the flattening: r (1 − cos(step / 2)).</summary>
    private static int QuadrantSegments(double radius) =>
        (int)Math.Ceiling(Math.PI / 2 / (2 * Math.Acos(1 - Math.Min(1, Flattening / radius))));
}
