namespace TemplateForge.Geometry.Benchmarks;

/// <summary>Gears of 100 to 100 000 segments: how time and memory grow with the size of a shape.</summary>
/// <remarks>
/// A tooth takes four segments, two flanks and the arcs at tip and root, and 8 mm of the pitch circle. Shrunk by 0.5 mm a gear with
/// stout teeth stays whole, and one whose teeth are 0.8 mm thick loses all of them.
/// </remarks>
internal static class Growth
{
    public const string Table = "growth";
    public const string Whole = "gear that stays whole";
    public const string Toothless = "gear that loses every tooth";

    public static int[] Sizes { get; } = [100, 1_000, 10_000, 100_000];

    public static IEnumerable<Case> Cases(int upTo = 100_000) => Sizes.Where(n => n <= upTo).SelectMany(Of);

    private static IEnumerable<Case> Of(int size)
    {
        foreach (var (name, root, tip) in ((string, double, double)[])[(Whole, 4.8, 3), (Toothless, 0.8, 0.8)])
        {
            var contour = Gear(size, root, tip);
            var region = new Lazy<Region>(() => Region.Of(contour));
            var polygon = new Lazy<NetTopologySuite.Geometries.Geometry>(() => Polygons.Of(region.Value));
            yield return Case.Of(Table, name, "offset", size, () => region.Value.Offset(-0.5), () => polygon.Value.Buffer(-0.5));
            yield return Case.Of(Table, name, "repair", size, () => Region.FromContours([contour]), () => polygon.Value.Buffer(0));
            if (name != Whole) continue;
            var other = new Lazy<Region>(() => region.Value.Placed(Placement.Turned(Angle.FullTurn * (2.0 / size), Point.Origin)));
            var otherPolygon = new Lazy<NetTopologySuite.Geometries.Geometry>(() => Polygons.Of(other.Value));
            yield return Case.Of(Table, name, "union", size, () => region.Value.Union(other.Value), () => polygon.Value.Union(otherPolygon.Value));
        }
    }

    /// <summary>A gear with teeth this wide at root and tip, in mm, and 4 mm high.</summary>
    internal static Contour Gear(int size, double root, double tip)
    {
        const double pitch = 8, height = 4;
        var teeth = size / 4;
        var radius = pitch * teeth / (2 * Math.PI);
        Point At(int tooth, double along, double from) =>
            Point.Origin + Vector.Polar(from, Angle.FullTurn * ((tooth + along / pitch) / teeth));
        var segments = new Segment[4 * teeth];
        for (var i = 0; i < teeth; i++)
        {
            var (a, b) = (At(i, -root / 2, radius), At(i, -tip / 2, radius + height));
            var (c, d) = (At(i, tip / 2, radius + height), At(i, root / 2, radius));
            segments[4 * i] = Segment.Line(a, b);
            segments[4 * i + 1] = Segment.Arc(b, c, 0.3);
            segments[4 * i + 2] = Segment.Line(c, d);
            segments[4 * i + 3] = Segment.Arc(d, At((i + 1) % teeth, -root / 2, radius), -0.2);
        }
        return new(segments);
    }

    /// <summary>The slope of the straight line through the logarithms: time grows as size to this power.</summary>
    public static double Exponent(IReadOnlyCollection<(double Size, double Time)> points)
    {
        var logs = points.Select(p => (X: Math.Log(p.Size), Y: Math.Log(p.Time))).ToArray();
        var (x, y) = (logs.Average(p => p.X), logs.Average(p => p.Y));
        return logs.Sum(p => (p.X - x) * (p.Y - y)) / logs.Sum(p => (p.X - x) * (p.X - x));
    }
}
