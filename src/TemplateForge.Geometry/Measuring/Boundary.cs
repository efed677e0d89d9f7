using System.Collections.Immutable;
using System.Runtime.Intrinsics;

namespace TemplateForge.Geometry;

/// <summary>The segments of a region in a tree of boxes, so that what is near a place is found without asking every one of them.</summary>
internal sealed class Boundary
{
    private readonly BoxTree _tree = new();

    public Boundary(Region region)
    {
        Segments = [.. region.Contours.SelectMany(c => c.Segments)];
        var leaves = _tree.Leaves(Segments.Length);
        for (var i = 0; i < leaves.Length; i++) leaves[i] = Around(Segments[i]);
        _tree.Build();
    }

    public ImmutableArray<Segment> Segments { get; }

    /// <summary>How often the boundary runs counter-clockwise round a point that does not lie on it.</summary>
    public int WindingAround(Point point)
    {
        var ray = new Bounds(Vector256.Create(point.X, point.Y, double.NegativeInfinity, -point.Y));
        var winding = 0;
        foreach (var i in Touching(ray).Items) winding += Segments[i].WindingAround(point);
        return winding;
    }

    public Buffer<int> Touching(Bounds box)
    {
        var found = new Buffer<int>();
        _tree.Touching(box, found);
        return found;
    }

    public Buffer<(int, int)> TouchingPairs()
    {
        var pairs = new Buffer<(int, int)>();
        _tree.Pairs(pairs);
        return pairs;
    }

    public Point Nearest(Point point)
    {
        var (nearest, least) = (Point.Origin, double.PositiveInfinity);
        Approach(Bounds.Around(point, margin: 0), least, segment =>
        {
            var near = segment.Nearest(point);
            var distance = near.DistanceTo(point);
            if (distance < least) (nearest, least) = (near, distance);
            return least;
        });
        return nearest;
    }

    /// <summary>Looks for a pair of points, one on each boundary, as near to each other as any.</summary>
    public (Point On, Point OnOther) Nearest(Boundary other)
    {
        var (nearest, least) = ((Point.Origin, Point.Origin), double.PositiveInfinity);
        foreach (var segment in Segments)
        {
            other.Approach(Around(segment), least, opposite =>
            {
                var (on, onOther) = segment.NearestPoints(opposite);
                var distance = on.DistanceTo(onOther);
                if (distance < least) (nearest, least) = ((on, onOther), distance);
                return least;
            });
            if (least == 0) break;
        }
        return nearest;
    }

    /// <summary>Asks those segments whose boxes lie nearer to a box than the least distance so far, which each answer may lessen.</summary>
    private void Approach(Bounds from, double least, Func<Segment, double> leastWith) => Approach(_tree.Top, 0, from, least, leastWith);

    private double Approach(int level, int node, Bounds from, double least, Func<Segment, double> leastWith)
    {
        if (level == 0) return leastWith(Segments[node]);
        var (first, last) = _tree.Children(level, node);
        Span<(double Gap, int Node)> nearer = stackalloc (double, int)[last - first];
        for (var i = 0; i < nearer.Length; i++)
        {
            var gap = Gap(from, _tree[level - 1, first + i]);
            var at = i;
            for (; at > 0 && nearer[at - 1].Gap > gap; at--) nearer[at] = nearer[at - 1];
            nearer[at] = (gap, first + i);
        }
        foreach (var (gap, child) in nearer)
        {
            if (gap < least) least = Approach(level - 1, child, from, least, leastWith);
        }
        return least;
    }

    // Segments that come within the tolerance meet, and then they are 0 apart.
    private static Bounds Around(Segment s) => Bounds.Around(s.Start, s.End, s.Bulge, Tolerance.Merge);

    /// <summary>How far apart two boxes are; 0 where they touch.</summary>
    private static double Gap(Bounds a, Bounds b)
    {
        var across = Math.Max(0, Math.Max(a.MinX - b.MaxX, b.MinX - a.MaxX));
        var up = Math.Max(0, Math.Max(a.MinY - b.MaxY, b.MinY - a.MaxY));
        return new Vector(across, up).Length;
    }
}
