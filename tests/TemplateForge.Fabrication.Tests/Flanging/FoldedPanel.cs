using System.Collections.Immutable;
using TemplateForge.Geometry;

namespace TemplateForge.Fabrication.Tests;

/// <summary>A panel of a folded blank: a flat piece as thick as the sheet, somewhere in space.</summary>
internal sealed class FoldedPanel
{
    private readonly double _thickness;

    /// <param name="flat">As it lies on the blank.</param>
    /// <param name="motion">From the blank to where it is when all is folded.</param>
    /// <param name="thickness">Of the sheet.</param>
    public FoldedPanel(FlatPiece flat, Motion motion, double thickness)
    {
        (Flat, Motion, _thickness) = (flat, motion, thickness);
        Edges = [.. new[] { 0, -thickness }.SelectMany(z => flat.Sides.Select(s => (At(s.Start, z), At(s.End, z)))), .. flat.Corners.Select(c => (At(c, 0), At(c, -thickness)))];
        Corners = [.. Edges.Take(2 * flat.Corners.Length).Select(e => e.Item1)];
        _middle = [.. flat.Sides.Select(s => (At(s.Start, -thickness / 2), At(s.End, -thickness / 2)))];
        (_low, _high) = (Furthest(Math.Min), Furthest(Math.Max));
    }

    public FlatPiece Flat { get; }
    public Motion Motion { get; }

    /// <summary>Away from the face that is drawn.</summary>
    public Vector3 Normal => Motion.Z;

    public ImmutableArray<Vector3> Corners { get; }
    public ImmutableArray<(Vector3 Start, Vector3 End)> Edges { get; }

    /// <summary>How far a place lies beyond one of the faces, below 0 on the side of the metal.</summary>
    public double Beyond(Vector3 place, bool up) => Motion.Back(place).Z is var z && up ? z : -_thickness - z;

    /// <summary>How near the edges of two panels come to each other.</summary>
    public double EdgesFrom(FoldedPanel other) => Edges.Min(a => other.Edges.Min(b => Between(a, b)));

    /// <summary>How deep an edge of one of two panels runs inside the other.</summary>
    public double DeepIn(FoldedPanel other) => Apart(other) ? 0 : Math.Max(other.DeepestOf(this), DeepestOf(other));

    private bool Apart(FoldedPanel other) =>
        _low.X > other._high.X || _low.Y > other._high.Y || _low.Z > other._high.Z || other._low.X > _high.X || other._low.Y > _high.Y || other._low.Z > _high.Z;

    // Also halfway down, for panels that lie in each other's plane.
    private double DeepestOf(FoldedPanel other) => other.Edges.Concat(other._middle).Max(Deepest);

    private double Deepest((Vector3 Start, Vector3 End) edge)
    {
        const double nothing = 1e-4;
        var (from, to) = (Motion.Back(edge.Start), Motion.Back(edge.End));
        var (start, end) = (0.0, 1.0);
        // The part of it between the faces.
        foreach (var (a, b) in new[] { (-nothing - from.Z, -nothing - to.Z), (from.Z + _thickness - nothing, to.Z + _thickness - nothing) })
        {
            if (a < 0 && b < 0) return 0;
            if (a < 0) start = Math.Max(start, a / (a - b));
            if (b < 0) end = Math.Min(end, a / (a - b));
        }
        if (start >= end) return 0;
        var deepest = 0.0;
        var stops = Crossings(from, to).Where(s => s > start && s < end).Append(start).Append(end).Order().ToList();
        for (var i = 1; i < stops.Count; i++)
        {
            if (Inside(0.5) <= 0) continue;
            for (var k = 0; k <= 16; k++) deepest = Math.Max(deepest, Inside(k / 16.0));

            double Inside(double share)
            {
                var place = from + (to - from) * (stops[i - 1] + share * (stops[i] - stops[i - 1]));
                return Math.Min(Math.Min(-place.Z, place.Z + _thickness), Flat.Depth(new(place.X, place.Y)));
            }
        }
        return deepest;
    }

    private IEnumerable<double> Crossings(Vector3 from, Vector3 to)
    {
        var (start, run) = (new Point(from.X, from.Y), new Vector(to.X - from.X, to.Y - from.Y));
        foreach (var (a, b) in Flat.Sides)
        {
            var (left, right) = (run.Cross(a - start), run.Cross(b - start));
            if (left > 0 != right > 0) yield return (run.Dot(a - start) + left / (left - right) * run.Dot(b - a)) / run.LengthSquared;
        }
    }

    // Of two lines in space: from an end of one to the other, or where both are nearest inside.
    private static double Between((Vector3 Start, Vector3 End) one, (Vector3 Start, Vector3 End) other)
    {
        var (u, v, w) = (one.End - one.Start, other.End - other.Start, one.Start - other.Start);
        var nearest = Math.Min(
            Math.Min(From(one.Start, other), From(one.End, other)),
            Math.Min(From(other.Start, one), From(other.End, one)));
        var (a, b, c, d, e) = (u.Dot(u), u.Dot(v), v.Dot(v), u.Dot(w), v.Dot(w));
        var square = a * c - b * b;
        if (square < 1e-9 * a * c) return nearest;
        var (s, t) = ((b * e - c * d) / square, (a * e - b * d) / square);
        return s is < 0 or > 1 || t is < 0 or > 1 ? nearest : Math.Min(nearest, (w + u * s - v * t).Length);
    }

    private static double From(Vector3 place, (Vector3 Start, Vector3 End) line)
    {
        var run = line.End - line.Start;
        return (place - line.Start - run * Math.Clamp((place - line.Start).Dot(run) / run.Dot(run), 0, 1)).Length;
    }

    private Vector3 At(Point flat, double z) => Motion.Of(new(flat.X, flat.Y, z));

    private Vector3 Furthest(Func<double, double, double> of) =>
        Corners.Aggregate((a, b) => new(of(a.X, b.X), of(a.Y, b.Y), of(a.Z, b.Z)));

    private readonly ImmutableArray<(Vector3, Vector3)> _middle;
    private readonly Vector3 _low;
    private readonly Vector3 _high;
}
