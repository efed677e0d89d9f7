using TemplateForge.Geometry;
using Path = TemplateForge.Geometry.Path;

namespace TemplateForge.Drawing.Tests;

/// <summary>Small drawings that the tests share.</summary>
internal static class Sketch
{
    public static Pen Pen { get; } = Pen.Solid(0.5, Colour.Black);

    /// <summary>A keyhole-like opening in from an edge: lines, two quarter circles, half a circle.</summary>
    public static Path Notch { get; } = new(
        Segment.Line(new(-150, 0), new(-110, 0)),
        Segment.Arc(new(-110, 0), new(-100, 10), Math.Tan(Math.PI / 8)),
        Segment.Line(new(-100, 10), new(-100, 60)),
        Segment.Arc(new(-100, 60), new(100, 60), -1),
        Segment.Line(new(100, 60), new(100, 10)),
        Segment.Arc(new(100, 10), new(110, 0), Math.Tan(Math.PI / 8)),
        Segment.Line(new(110, 0), new(150, 0)));

    public static Contour Circle(Point centre, double radius)
    {
        var aside = new Vector(radius, 0);
        return new(Segment.Arc(centre + aside, centre - aside, 1), Segment.Arc(centre - aside, centre + aside, 1));
    }

    public static Contour Rectangle(double x0, double y0, double x1, double y1) => Polygon(new(x0, y0), new(x1, y0), new(x1, y1), new(x0, y1));

    public static Contour Polygon(params Point[] corners) =>
        new(corners.Select((c, i) => Segment.Line(c, corners[(i + 1) % corners.Length])));

    /// <summary>A square of 60 mm with a round hole of 20 mm in its middle.</summary>
    public static Region Plate { get; } = Region.FromContours([Rectangle(0, 0, 60, 60), Circle(new(30, 30), 10).Reversed()]);

    public static LineDrawing Of(params Mark[] marks) => With(Pen, marks);

    public static LineDrawing With(Pen pen, params Mark[] marks) => new([new("FINISH", pen, [.. marks])]);

    /// <summary>One of everything.</summary>
    public static LineDrawing Everything { get; } = new(
    [
        new("FINISH", Pen, [new OpenStroke(Notch), new ClosedStroke(Circle(new(0, 250), 50)), new ClosedStroke(Rectangle(-80, -60, 80, -20))]),
        new("CENTRE-LINE", new(0.25, [12, 2, 1, 2], new(0, 0, 160)), [new OpenStroke(Path.Line(new(0, -80), new(0, 320)))]),
        new("LETTERING", Pen.Solid(0.35, new(200, 0, 0)), [new Lettering("NOTCH <left & right>", new(0, 30), 5, Angle.FromDegrees(30), Anchor.BaseMiddle)]),
    ]);
}
