using System.Collections.Immutable;
using System.Runtime.InteropServices;

namespace TemplateForge.Geometry;

/// <summary>An open run of lines and arcs, each beginning where the one before it ends.</summary>
public sealed class Path
{
    /// <exception cref="ArgumentException">There is no segment, or two neighbours do not meet.</exception>
    public Path(params IEnumerable<Segment> segments)
    {
        Segments = [.. segments];
        if (Segments.IsEmpty) throw new ArgumentException("A path has at least one segment.", nameof(segments));
        for (var i = 1; i < Segments.Length; i++)
        {
            if (Segments[i - 1].End.DistanceTo(Segments[i].Start) > Tolerance.Merge)
                throw new ArgumentException($"Segment {i} starts at {Segments[i].Start}, not at {Segments[i - 1].End}.", nameof(segments));
        }
    }

    private Path(ImmutableArray<Segment> segments) => Segments = segments;

    public ImmutableArray<Segment> Segments { get; }
    public Point Start => Segments[0].Start;
    public Point End => Segments[^1].End;
    public double Length => Segments.Sum(s => s.Length);
    public Box Bounds => Box.Around(Segments);

    public static Path Line(Point from, Point to) => new(Segment.Line(from, to));

    public Path Reversed() => new(Segments.Reverse().Select(s => s.Reversed()));

    public Path Placed(Placement by)
    {
        // They meet as they did before, so nothing is looked at again: lettering is placed thousands of times.
        var placed = new Segment[Segments.Length];
        for (var i = 0; i < placed.Length; i++) placed[i] = Segments[i].Placed(by);
        return new(ImmutableCollectionsMarshal.AsImmutableArray(placed));
    }
}
