using System.Collections.Immutable;
using TemplateForge.Geometry;

namespace TemplateForge.Fabrication.Tests;

/// <summary>A flat piece without holes, counter-clockwise, that is cut in two along lines from one place of its edge to another.</summary>
internal sealed class FlatPiece(IEnumerable<Point> corners)
{
    private const double Near = 1e-7;

    public ImmutableArray<Point> Corners { get; } = Distinct([.. corners]);

    /// <summary>Whether a point lies inside: its ray to the right crosses the edge an odd number of times.</summary>
    public bool Holds(Point p)
    {
        var inside = false;
        foreach (var (a, b) in Sides)
        {
            if (a.Y > p.Y != b.Y > p.Y && p.X < a.X + (p.Y - a.Y) / (b.Y - a.Y) * (b.X - a.X)) inside = !inside;
        }
        return inside;
    }

    /// <summary>How far one can go from a point inside, in a direction of length 1, before the edge is met or touched.</summary>
    public double Reach(Point from, Vector direction)
    {
        var reach = double.PositiveInfinity;
        foreach (var (a, b) in Sides)
        {
            var (left, right) = (direction.Cross(a - from), direction.Cross(b - from));
            if (Math.Abs(left) <= Near) Meet(direction.Dot(a - from));
            if (Math.Abs(right) <= Near) Meet(direction.Dot(b - from));
            if (left > Near != right > Near && left < -Near != right < -Near)
                Meet(direction.Dot(a - from) + left / (left - right) * direction.Dot(b - a));
        }
        return reach;

        void Meet(double at)
        {
            if (at > Near) reach = Math.Min(reach, at);
        }
    }

    /// <summary>Both sides of a cut whose ends lie on the edge.</summary>
    public (FlatPiece Left, FlatPiece Right) Cut(params Point[] path)
    {
        var (start, end) = (Place(path[0]), Place(path[^1]));
        return (new([.. path, .. Between(end, start)]), new([.. path.Reverse(), .. Between(start, end)]));
    }

    /// <summary>How far inside a point lies; below 0 outside.</summary>
    public double Depth(Point p)
    {
        var nearest = Sides.Min(s => Distance(p, s.Start, s.End));
        return Holds(p) ? nearest : -nearest;
    }

    public ImmutableArray<(Point Start, Point End)> Sides =>
        _sides.IsDefault ? _sides = [.. Corners.Select((c, i) => (c, Corners[(i + 1) % Corners.Length]))] : _sides;

    private ImmutableArray<(Point, Point)> _sides;

    // The corners that one passes from one place to another, the metal on the left.
    private IEnumerable<Point> Between((int Side, double Along) from, (int Side, double Along) to)
    {
        var count = to.Side - from.Side;
        if (count < 0 || (count == 0 && to.Along <= from.Along)) count += Corners.Length;
        return Enumerable.Range(1, count).Select(i => Corners[(from.Side + i) % Corners.Length]);
    }

    private (int Side, double Along) Place(Point p)
    {
        var side = Enumerable.Range(0, Sides.Length).MinBy(i => Distance(p, Sides[i].Start, Sides[i].End));
        return (side, p.DistanceTo(Sides[side].Start));
    }

    private static double Distance(Point p, Point a, Point b)
    {
        var run = b - a;
        return p.DistanceTo(a + run * Math.Clamp((p - a).Dot(run) / run.LengthSquared, 0, 1));
    }

    private static ImmutableArray<Point> Distinct(IReadOnlyList<Point> corners) =>
        [.. corners.Where((c, i) => c.DistanceTo(corners[(i + 1) % corners.Count]) > Near)];
}
