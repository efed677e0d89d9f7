using TemplateForge.Geometry;

namespace TemplateForge.Testing;

/// <summary>Inside and distance straight from their definitions, sharing nothing with what they judge.</summary>
public sealed class ByDefinition(IEnumerable<Contour> contours)
{
    private readonly Side[] _sides = [.. contours.SelectMany(c => c.Segments).Select(s => new Side(s))];

    public ByDefinition(Region region)
        : this(region.Contours)
    {
    }

    /// <summary>Distance to the boundary, negative inside.</summary>
    public double SignedDistance(Point p) => Encloses(p) ? -DistanceToBoundary(p) : DistanceToBoundary(p);

    public double DistanceToBoundary(Point p)
    {
        var nearest = double.PositiveInfinity;
        foreach (var side in _sides) nearest = Math.Min(nearest, side.DistanceFrom(p));
        return nearest;
    }

    public bool Encloses(Point p) => WindingAround(p) >= 1;

    /// <summary>Adds up the angles under which the boundary is seen.</summary>
    public int WindingAround(Point p)
    {
        var turns = 0.0;
        foreach (var side in _sides) turns += side.TurnsRound(p);
        return (int)Math.Round(turns);
    }

    private readonly struct Side(Segment segment)
    {
        private readonly Point _start = segment.Start;
        private readonly Point _end = segment.End;
        private readonly int _turning = Math.Sign(segment.Bulge);
        private readonly double _radius = segment.Radius;
        private readonly Vector _startDirection = segment.StartDirection;
        private readonly Vector _endDirection = segment.EndDirection;

        public double TurnsRound(Point p)
        {
            var (a, b) = (_start - p, _end - p);
            var cross = a.Cross(b);
            // From a point on its chord an arc is seen under half a turn, the way that it turns.
            if (cross == 0 && _turning != 0 && a.Dot(b) < 0) return _turning / 2.0;
            var turns = Math.Atan2(cross, a.Dot(b)) / (2 * Math.PI);
            // Between chord and arc it is seen the other way round.
            return cross * _turning < 0 && OutsideCircle(p) < 0 ? turns + _turning : turns;
        }

        public double DistanceFrom(Point p)
        {
            // The foot is on the segment when the point lies between the normals at its ends.
            if ((p - _start).Dot(_startDirection) < 0) return EndsFrom(p);
            if ((p - _end).Dot(_endDirection) > 0) return EndsFrom(p);
            return Math.Abs(_turning == 0 ? _startDirection.Cross(p - _start) : OutsideCircle(p));
        }

        private double EndsFrom(Point p) => Math.Min(p.DistanceTo(_start), p.DistanceTo(_end));

        /// <summary>Distance outside the circle of an arc, negative inside; without its centre, which a flat arc has far away.</summary>
        private double OutsideCircle(Point p)
        {
            var q = p - _start;
            var power = q.LengthSquared / _radius - 2 * q.Dot(_startDirection.Left) * _turning;
            return power / (1 + Math.Sqrt(Math.Max(0, 1 + power / _radius)));
        }
    }
}
