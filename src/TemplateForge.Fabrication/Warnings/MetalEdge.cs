using System.Collections.Immutable;
using TemplateForge.Geometry;

namespace TemplateForge.Fabrication;

/// <summary>One run of a piece's edge: a hole, or what bounds it outside.</summary>
internal sealed class MetalEdge
{
    // A side of a drawing runs along a real edge that lies as near as this to its middle, in mm.
    private const double Beside = 1e-5;

    private readonly ImmutableArray<Box> _boxes;

    private MetalEdge(ImmutableArray<Segment> segments, ImmutableArray<Contour> hole)
    {
        (Segments, Hole) = (segments, hole);
        _boxes = [.. segments.Select(s => s.Bounds)];
        Bounds = Box.Around(_boxes);
    }

    public ImmutableArray<Segment> Segments { get; }

    /// <summary>The hole that it runs round; none where it bounds the piece outside.</summary>
    public ImmutableArray<Contour> Hole { get; }

    public Box Bounds { get; }

    /// <summary>All edges of a piece. Where the drawing of a panel only ends and the panel goes on, there is none.</summary>
    public static ImmutableArray<MetalEdge> Of(Piece piece) =>
    [
        .. piece.Shape.Contours.Select(c => c.IsCounterClockwise
            ? (Segments: [.. c.Segments.Where(s => IsReal(piece, s))], Hole: [])
            : (c.Segments, Hole: ImmutableArray.Create(c)))
            .Where(e => !e.Segments.IsEmpty)
            .Select(e => new MetalEdge(e.Segments, e.Hole)),
    ];

    /// <summary>A point of each, as near to each other as any.</summary>
    public (Point On, Point OnOther) NearestPoints(MetalEdge other)
    {
        var (nearest, least) = ((Segments[0].Start, other.Segments[0].Start), double.PositiveInfinity);
        for (var i = 0; i < Segments.Length; i++)
        {
            for (var j = 0; j < other.Segments.Length; j++)
            {
                if (double.IsFinite(least) && !_boxes[i].Grown(least).Touches(other._boxes[j])) continue;
                var found = Segments[i].NearestPoints(other.Segments[j]);
                if (found.On.DistanceTo(found.OnOther) >= least) continue;
                (nearest, least) = (found, found.On.DistanceTo(found.OnOther));
            }
        }
        return nearest;
    }

    /// <summary>The point of the edge that lies nearest to a path.</summary>
    /// <param name="path">The path.</param>
    /// <param name="distance">How far it is from it, in mm.</param>
    public Point NearestTo(Path path, out double distance)
    {
        var (on, onPath) = Segments.SelectMany(s => path.Segments.Select(p => s.NearestPoints(p))).MinBy(n => n.On.DistanceTo(n.OnOther));
        distance = on.DistanceTo(onPath);
        return on;
    }

    public double DistanceTo(Point point) => Segments.Min(s => s.DistanceTo(point));

    private static bool IsReal(Piece piece, Segment side)
    {
        if (piece.Kind != PieceKind.CutAway || piece.Edges.IsEmpty) return true;
        var middle = side.At(0.5);
        return piece.Before.BoundaryDistanceTo(middle) > Beside || piece.Edges.Any(e => e.Segments.Any(s => s.DistanceTo(middle) <= Beside));
    }
}
