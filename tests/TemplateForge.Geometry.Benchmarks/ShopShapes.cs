namespace TemplateForge.Geometry.Benchmarks;

/// <summary>Shapes as shops cut them, and what is done with such shapes.</summary>
internal static class ShopShapes
{
    public const string Table = "shapes";

    public static IEnumerable<(string Name, Region Region)> All()
    {
        yield return ("corner notch", Plate(120, 80, 0).Subtract(Rectangle(80, 50, 130, 90)));
        yield return ("round-cornered patch", Plate(180, 110, 20));
        yield return ("angle bracket", Rounded(Plate(90, 70, 0).Subtract(Rectangle(25, 25, 100, 80)), 6)
            .Subtract(Holes([(12, 12), (75, 12), (12, 58)], 3.3)));
        yield return ("flange plate", Region.Of(Outline.Circle(new(0, 0), 110))
            .Subtract(Region.Of(Outline.Circle(new(0, 0), 55))).Subtract(Holes(Ring(12, 85), 5.5)));
        yield return ("gasket", Combination.Union([Plate(140, 90, 18), .. Ears(140, 90)])
            .Subtract(Region.Of(Outline.RoundedRectangle(new(new(22, 22), new(118, 68)), 12))).Subtract(Holes([(0, 0), (140, 0), (140, 90), (0, 90)], 4.5)));
        yield return ("louvre panel", Enumerable.Range(0, 20).Aggregate(Plate(260, 400, 12), (panel, i) =>
            panel.Subtract(Region.Of(Outline.Slot(new(40, 20 + i * 19), new(220, 20 + i * 19), 8)))));
        yield return ("vent grille", Plate(200, 150, 8).Subtract(
            Holes([.. from x in Enumerable.Range(0, 10) from y in Enumerable.Range(0, 7) select (19.0 + x * 18, 21.0 + y * 18)], 6)));
        yield return ("scalloped trim", Scalloped(48));
    }

    public static IEnumerable<Case> Cases() => All().SelectMany(shape => Cases(shape.Name, shape.Region));

    private static IEnumerable<Case> Cases(string name, Region region)
    {
        var size = region.Contours.Sum(c => c.Segments.Length);
        var box = region.Bounds;
        var laidOver = region.Placed(Placement.Turned(Angle.FromDegrees(7), box.Centre).Then(Placement.Moved(new(box.Width / 9, box.Height / 11))));
        var slit = Region.Of(Outline.Slot(box.Min, box.Max, box.Width / 12));
        var (theirs, theirsLaidOver, theirSlit) = (Polygons.Of(region), Polygons.Of(laidOver), Polygons.Of(slit));
        Contour[] loose = [.. region.Contours, .. laidOver.Contours];
        var theirLoose = Polygons.Together(theirs, theirsLaidOver);

        Case Of(string job, Func<Region> ours, Func<NetTopologySuite.Geometries.Geometry> other) => Case.Of(Table, name, job, size, ours, other);
        yield return Of("offset out 3 mm", () => region.Offset(3), () => theirs.Buffer(3));
        yield return Of("offset in 1.5 mm", () => region.Offset(-1.5), () => theirs.Buffer(-1.5));
        yield return Of("union", () => region.Union(laidOver), () => theirs.Union(theirsLaidOver));
        yield return Of("difference", () => region.Subtract(slit), () => theirs.Difference(theirSlit));
        yield return Of("repair", () => Region.FromContours(loose), () => theirLoose.Buffer(0));
    }

    private static Region Plate(double width, double height, double radius) =>
        Region.Of(Outline.RoundedRectangle(new(Point.Origin, new(width, height)), radius));

    private static Region Rectangle(double left, double low, double right, double high) =>
        Region.Of(Outline.Rectangle(new(new(left, low), new(right, high))));

    private static Region Rounded(Region region, double radius) => region.RoundedCorners(radius, _ => true).Region;

    private static Region Holes((double X, double Y)[] centres, double radius) =>
        Combination.Union(centres.Select(c => Region.Of(Outline.Circle(new(c.X, c.Y), radius))));

    private static (double X, double Y)[] Ring(int count, double radius) =>
        [.. Enumerable.Range(0, count).Select(i => (radius * Math.Cos(2 * Math.PI * i / count), radius * Math.Sin(2 * Math.PI * i / count)))];

    private static IEnumerable<Region> Ears(double width, double height) =>
        from x in (double[])[0, width] from y in (double[])[0, height] select Region.Of(Outline.Circle(new(x, y), 14));

    /// <summary>A disc whose edge is scallops with short straights between, one of each and an arc at the root for every scallop.</summary>
    private static Region Scalloped(int count)
    {
        var points = Enumerable.Range(0, 4 * count).Select(i => Point.Origin
            + Vector.Polar(i % 4 is 1 or 2 ? 154 : 148, Angle.FullTurn * (((i / 4) + ((double[])[0, 0.15, 0.75, 0.9])[i % 4]) / count))).ToArray();
        return Region.Of(new Contour(points.Select((p, i) =>
            Segment.Arc(p, points[(i + 1) % points.Length], (i % 4) switch { 1 => 0.6, 3 => -0.4, _ => 0 }))));
    }
}
