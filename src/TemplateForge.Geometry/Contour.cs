using System.Collections.Immutable;
using System.Runtime.InteropServices;

namespace TemplateForge.Geometry;

/// <summary>A closed run of lines and arcs: each begins where the one before it ends, the first where the last ends.</summary>
/// <remarks>Counter-clockwise it bounds what is inside it, clockwise a hole.</remarks>
public sealed class Contour
{
    /// <exception cref="ArgumentException">There are fewer than two segments, or two neighbours do not meet.</exception>
    public Contour(params IEnumerable<Segment> segments)
    {
        Segments = [.. segments];
        if (Segments.Length < 2) throw new ArgumentException("A contour has at least two segments.", nameof(segments));
        for (var i = 0; i < Segments.Length; i++)
        {
            var before = Segments[(i + Segments.Length - 1) % Segments.Length];
            if (before.End.DistanceTo(Segments[i].Start) > Tolerance.Merge)
                throw new ArgumentException($"Segment {i} starts at {Segments[i].Start}, not at {before.End}.", nameof(segments));
        }
    }

    private Contour(ImmutableArray<Segment> segments) => Segments = segments;

    public ImmutableArray<Segment> Segments { get; }
    public double Length => Segments.Sum(s => s.Length);
    public Box Bounds => Box.Around(Segments);

    /// <summary>Area in mm², positive counter-clockwise.</summary>
    public double SignedArea
    {
        get
        {
            // From a local origin, so that 100 m away nothing is lost. A chord and its circle segment for each arc.
            var origin = Segments[0].Start;
            var twice = 0.0;
            foreach (var s in Segments)
            {
                twice += (s.Start - origin).Cross(s.End - origin);
                if (!s.IsLine) twice += CircleSegmentTwice(s);
            }
            return twice / 2;
        }
    }

    public double Area => Math.Abs(SignedArea);
    public bool IsCounterClockwise => SignedArea > 0;

    /// <summary>Takes two or more segments that are known to meet, and keeps the array.</summary>
    internal static Contour Trusted(Segment[] segments) => new(ImmutableCollectionsMarshal.AsImmutableArray(segments));

    public Contour Reversed() => new(Segments.Reverse().Select(s => s.Reversed()));

    public Contour Placed(Placement by) => new(Segments.Select(s => s.Placed(by)));

    private static double CircleSegmentTwice(Segment arc)
    {
        var sweep = arc.Sweep.Radians;
        // θ − sin θ loses its digits where θ is small; its series does not.
        var excess = Math.Abs(sweep) < 0.05
            ? sweep * sweep * sweep / 6 * (1 - sweep * sweep / 20 * (1 - sweep * sweep / 42))
            : sweep - Math.Sin(sweep);
        return arc.Radius * arc.Radius * excess;
    }
}
