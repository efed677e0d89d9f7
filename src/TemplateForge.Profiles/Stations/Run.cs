using TemplateForge.Fabrication;
using TemplateForge.Geometry;

namespace TemplateForge.Profiles;

/// <summary>A line, a path or an outline on which places are told by their distance from its start, in mm.</summary>
/// <param name="Length">Its whole length.</param>
/// <param name="IsClosed">Whether it ends where it begins.</param>
/// <param name="At">The point at a distance.</param>
/// <param name="WayAt">The way it runs there, as a vector of length 1.</param>
internal sealed record Run(double Length, bool IsClosed, Func<double, Point> At, Func<double, Vector> WayAt)
{
    /// <summary>The line itself, from its start to its end.</summary>
    public required Path Path { get; init; }

    public static Run Of(Path path) => new(path.Length, IsClosed: false, path.PointAlong, path.DirectionAlong) { Path = path };

    /// <summary>Once round an outline.</summary>
    /// <param name="outline">The outline, turned either way.</param>
    /// <param name="clockwise">The way round, as one looks at the drawing.</param>
    /// <param name="start">The point next to which it begins; none for straight above the outline's middle.</param>
    public static Run Round(Contour outline, bool clockwise, Point? start)
    {
        var turned = outline.IsCounterClockwise == clockwise ? outline.Reversed() : outline;
        var first = start is { } point
            ? EvenSpacing.DistanceAlong(turned, Region.Of(turned).NearestBoundaryPoint(point))
            : EvenSpacing.DistanceToTop(turned);
        return new(turned.Length, IsClosed: true, d => turned.PointAlong(first + d), d => turned.DirectionAlong(first + d))
        {
            Path = new(turned.Segments),
        };
    }

    public bool Reaches(double distance) => distance >= -Tolerance.Length && distance <= Length + Tolerance.Length;
}
