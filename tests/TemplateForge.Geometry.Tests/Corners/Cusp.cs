using TemplateForge.Testing;

namespace TemplateForge.Geometry.Tests.Corners;

/// <summary>A horn between an arc of 50 about the origin and one of 40 about (10, 0), which touch in its tip at (50, 0).</summary>
internal static class Cusp
{
    public static Point Tip => new(50, 0);

    private static Contour Horn => new(
        Segment.Arc(Tip, new(0, 50), Math.Tan(Math.PI / 8)), Segment.Line(new(0, 50), new(10, 40)),
        Segment.Arc(new(10, 40), Tip, -Math.Tan(Math.PI / 8)));

    /// <summary>The horn itself and, pointing in, as a hole in a plate.</summary>
    public static IEnumerable<(string Name, Placement By, Region Region)> Images()
    {
        var plate = Given.WithHole(Outline.Rectangle(new(new(-100, -100), new(100, 100))), Horn);
        foreach (var image in Symmetries.Of(Given.Region(Horn)).Concat(Symmetries.Of(plate))) yield return (image.Name, image.By, image.Shape);
    }
}
