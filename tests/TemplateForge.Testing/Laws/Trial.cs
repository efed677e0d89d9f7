using System.Collections.Immutable;
using TemplateForge.Geometry;
using Corner = (double X, double Y, double Bulge);

namespace TemplateForge.Testing;

/// <summary>What laws are tried on: shapes of loose contours, and two distances. Written out, it is the C# that makes it again.</summary>
public sealed class Trial
{
    private readonly Lazy<ImmutableArray<Region>> _regions;

    /// <param name="first">A distance in mm, above or below 0.</param>
    /// <param name="second">A further distance in mm, 0 or more; it goes the way of the first.</param>
    /// <param name="shapes">Each of contours, each of corners with the bulge of the side that begins there.</param>
    /// <exception cref="ArgumentException">A contour is none.</exception>
    public Trial(double first, double second, params Corner[][][] shapes)
    {
        (First, Second, Corners) = (first, Math.CopySign(second, first), shapes);
        Shapes = [.. shapes.Select(s => s.Select(ContourOf).ToImmutableArray())];
        _regions = new(() => [.. Shapes.Select(s => Region.FromContours(s))]);
    }

    public double First { get; }
    public double Second { get; }
    public Corner[][][] Corners { get; }
    public ImmutableArray<ImmutableArray<Contour>> Shapes { get; }

    /// <summary>What the shapes enclose.</summary>
    public ImmutableArray<Region> Regions => _regions.Value;

    public static Trial Of(double first, double second, params IEnumerable<IEnumerable<Contour>> shapes) =>
        new(first, second, [.. shapes.Select(s => s.Select(CornersOf).ToArray())]);

    public override string ToString()
    {
        var shapes = Corners.Select(shape => "    [\n" + string.Concat(shape.Select(c => "        [" + string.Join(", ", c.Select(Written)) + "],\n")) + "    ]");
        return FormattableString.Invariant($"new Trial(\n    {First}, {Math.Abs(Second)},\n") + string.Join(",\n", shapes) + ")";
    }

    private static string Written(Corner c) => FormattableString.Invariant($"({c.X}, {c.Y}, {c.Bulge})");

    private static Contour ContourOf(Corner[] corners) =>
        Testing.Shapes.ThroughPoints([.. corners.Select(c => new Point(c.X, c.Y))], [.. corners.Select(c => c.Bulge)]);

    private static Corner[] CornersOf(Contour contour) => [.. contour.Segments.Select(s => (s.Start.X, s.Start.Y, s.Bulge))];
}
