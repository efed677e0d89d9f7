using TemplateForge.Geometry;

namespace TemplateForge.Testing;

/// <summary>Distances from a path, and the sides of it, straight from their definitions.</summary>
public sealed class PathByDefinition(Path path)
{
    private readonly bool _closes = path.Start.DistanceTo(path.End) <= Tolerance.Merge;

    public double DistanceTo(Point p) => path.Segments.Min(s => Foot(s, p).Distance);

    /// <summary>Whether the point lies square to a side of a segment or between the normals of two neighbours that part, and near enough.</summary>
    public bool IsInFlatSlot(Point p, double distance)
    {
        foreach (var s in path.Segments)
        {
            if (Foot(s, p) is { IsSquare: true } foot && foot.Distance <= distance) return true;
        }
        return Corners().Any(c => p.DistanceTo(c.At) <= distance && (p - c.At).Dot(c.Into) >= 0 && (p - c.At).Dot(c.OutOf) <= 0);
    }

    /// <summary>Whether a nearest point of the path, within a tolerance, has the point to its right.</summary>
    public bool IsToTheRight(Point p, double within)
    {
        var nearest = DistanceTo(p) + within;
        foreach (var s in path.Segments)
        {
            if (Foot(s, p) is { IsSquare: true } foot && foot.Distance <= nearest && foot.Right > 0) return true;
        }
        return Corners().Any(c => p.DistanceTo(c.At) <= nearest && c.Into.Cross(c.OutOf) > -1e-8
            && (p - c.At).Dot(c.Into) >= -within && (p - c.At).Dot(c.OutOf) <= within);
    }

    private IEnumerable<(Point At, Vector Into, Vector OutOf)> Corners()
    {
        var segments = path.Segments;
        for (var i = _closes ? 0 : 1; i < segments.Length; i++)
            yield return (segments[i].Start, segments[i == 0 ? ^1 : i - 1].EndDirection, segments[i].StartDirection);
    }

    /// <summary>The distance, how far to the right, and whether the nearest point is square below and no end only.</summary>
    private static (double Distance, double Right, bool IsSquare) Foot(Segment s, Point p)
    {
        // An arc of at most half a turn has its foot on it for the points between the normals at its ends.
        if ((p - s.Start).Dot(s.StartDirection) < 0 || (p - s.End).Dot(s.EndDirection) > 0)
            return (Math.Min(p.DistanceTo(s.Start), p.DistanceTo(s.End)), 0, false);
        var q = p - s.Start;
        if (s.IsLine) return (Math.Abs(s.StartDirection.Cross(q)), -s.StartDirection.Cross(q), true);
        // How far outside the circle: from the power of the point, as the centre of a flat arc is far away.
        var power = q.LengthSquared / s.Radius - 2 * q.Dot(s.StartDirection.Left) * Math.Sign(s.Bulge);
        var outside = power / (1 + Math.Sqrt(Math.Max(0, 1 + power / s.Radius)));
        return (Math.Abs(outside), outside * Math.Sign(s.Bulge), true);
    }
}
