using NetTopologySuite.Geometries;

namespace TemplateForge.Geometry.Tests;

/// <summary>Regions for tests, and the same shapes as the referee knows them.</summary>
internal static class Given
{
    /// <summary>How far the referee's chords may stray, in mm.</summary>
    public const double Chords = 1e-4;

    private static readonly GeometryFactory Referee = new();

    public static Region Region(params Contour[] outer) => new([.. outer]);

    public static Region WithHole(Contour outer, Contour hole) => new([outer, hole.IsCounterClockwise ? hole.Reversed() : hole]);

    /// <summary>A star of lines and arcs about a point, bending either way, with a round or square hole now and then.</summary>
    public static Region Star(Random random, Point centre, double size)
    {
        while (true)
        {
            var count = random.Next(3, 12);
            var corners = Enumerable.Range(0, count).Select(i => centre + Vector.Polar(
                size * (0.4 + 0.6 * random.NextDouble()), Angle.FullTurn * ((i + 0.7 * random.NextDouble()) / count))).ToArray();
            var outer = new Contour(corners.Select((p, i) => random.Next(3) == 0
                ? Segment.Line(p, corners[(i + 1) % count])
                : Segment.Arc(p, corners[(i + 1) % count], (random.NextDouble() - 0.5) * (random.Next(4) == 0 ? 1e-3 : 1.2))));
            var region = random.Next(3) switch
            {
                0 => WithHole(outer, Outline.Circle(centre, size / 12)),
                1 => WithHole(outer, Outline.Rectangle(new Box(centre, centre).Grown(size / 15))),
                _ => Region(outer),
            };
            if (Polygons(region).IsValid && outer.IsCounterClockwise && region.Contours.Sum(c => c.SignedArea) > 0) return region;
        }
    }

    public static NetTopologySuite.Geometries.Geometry Polygons(Region region)
    {
        var outer = region.Contours.Where(c => c.IsCounterClockwise).Select(Ring).ToArray();
        var holes = region.Contours.Where(c => !c.IsCounterClockwise).Select(Ring).ToArray();
        return outer.Length == 1
            ? Referee.CreatePolygon(outer[0], holes)
            : Referee.CreateMultiPolygon([.. outer.Select(o => Referee.CreatePolygon(o))]);
    }

    public static LineString Line(Path path) => Referee.CreateLineString([.. path.Flattened(Chords).Select(Coordinate)]);

    public static LineString Line(Contour contour) => Ring(contour);

    public static NetTopologySuite.Geometries.Point Point(Point p) => Referee.CreatePoint(Coordinate(p));

    private static LinearRing Ring(Contour contour)
    {
        var points = contour.Flattened(Chords);
        return Referee.CreateLinearRing([.. points.Append(points[0]).Select(Coordinate)]);
    }

    private static Coordinate Coordinate(Point p) => new(p.X, p.Y);
}
