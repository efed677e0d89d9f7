using System.Collections.Immutable;

namespace TemplateForge.Geometry;

/// <summary>An upright rectangle, in mm; bounds of things.</summary>
public readonly record struct Box
{
    /// <exception cref="ArgumentException">The corners are the wrong way round or not numbers.</exception>
    public Box(Point min, Point max)
    {
        if (!(min.X <= max.X && min.Y <= max.Y))
            throw new ArgumentException($"A box runs from its lower left to its upper right, but got {min} to {max}.", nameof(max));
        (Min, Max) = (min, max);
    }

    public Point Min { get; }
    public Point Max { get; }
    public double Width => Max.X - Min.X;
    public double Height => Max.Y - Min.Y;
    public Point Centre => Min.MidpointTo(Max);

    /// <exception cref="InvalidOperationException">There are no points.</exception>
    public static Box Around(IEnumerable<Point> points) => points.Select(p => new Box(p, p)).Aggregate((a, b) => a.Joined(b));

    /// <exception cref="InvalidOperationException">There are no boxes.</exception>
    public static Box Around(IEnumerable<Box> boxes) => boxes.Aggregate((a, b) => a.Joined(b));

    /// <param name="segments">At least one.</param>
    internal static Box Around(ImmutableArray<Segment> segments)
    {
        var all = segments[0].Bounds;
        for (var i = 1; i < segments.Length; i++) all = all.Joined(segments[i].Bounds);
        return all;
    }

    public Box Joined(Box other) => new(
        new(Math.Min(Min.X, other.Min.X), Math.Min(Min.Y, other.Min.Y)),
        new(Math.Max(Max.X, other.Max.X), Math.Max(Max.Y, other.Max.Y)));

    /// <summary>This box grown by a margin on all four sides.</summary>
    public Box Grown(double margin) => new(Min - new Vector(margin, margin), Max + new Vector(margin, margin));

    public bool Contains(Point p) => p.X >= Min.X && p.X <= Max.X && p.Y >= Min.Y && p.Y <= Max.Y;

    public bool Touches(Box other) =>
        Min.X <= other.Max.X && other.Min.X <= Max.X && Min.Y <= other.Max.Y && other.Min.Y <= Max.Y;
}
