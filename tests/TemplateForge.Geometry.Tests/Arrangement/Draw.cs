namespace TemplateForge.Geometry.Tests;

/// <summary>Shapes for named cases, by their corners.</summary>
internal static class Draw
{
    public static Contour Polygon(params (double X, double Y)[] corners) => Outline([.. corners.Select(c => (c.X, c.Y, 0.0))]);

    /// <summary>Through corners, each with the bulge of the side that begins there.</summary>
    public static Contour Outline(params (double X, double Y, double Bulge)[] corners) =>
        Testing.Shapes.ThroughPoints([.. corners.Select(c => new Point(c.X, c.Y))], [.. corners.Select(c => c.Bulge)]);

    public static Region Rectangle(double left, double bottom, double right, double top) =>
        Region.Of(Polygon((left, bottom), (right, bottom), (right, top), (left, top)));

    public static Region Disc(Point centre, double radius) => Region.Of(Circle(centre, radius));

    public static Contour Circle(Point centre, double radius) =>
        Outline((centre.X - radius, centre.Y, 1), (centre.X + radius, centre.Y, 1));
}
