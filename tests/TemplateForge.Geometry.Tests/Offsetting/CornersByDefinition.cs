using TemplateForge.Testing;

namespace TemplateForge.Geometry.Tests;

/// <summary>Whether a point is in an offset with mitred or flat corners, from its pieces one by one.</summary>
/// <remarks>Strips by polar coordinates about centres, corner pieces by the sides of their corners; nothing of what it judges.</remarks>
internal sealed class CornersByDefinition
{
    private readonly ByDefinition _region;
    private readonly bool _grows;
    private readonly List<Func<Point, bool>> _pieces = [];
    private readonly double _size;

    /// <param name="region">The source.</param>
    /// <param name="distance">Below 0 it shrinks.</param>
    /// <param name="limit">Of the mitres, in distances; 1 for flat corners.</param>
    public CornersByDefinition(Region region, double distance, double limit)
    {
        (_region, _grows, _size) = (new(region), distance > 0, Math.Abs(distance));
        foreach (var contour in region.Contours)
        {
            var segments = contour.Segments;
            for (var i = 0; i < segments.Length; i++)
            {
                AddStrip(segments[i]);
                AddCorner(segments[i].EndDirection, segments[(i + 1) % segments.Length].StartDirection, segments[i].End, limit);
            }
        }
    }

    public bool Holds(Point p) => _region.Encloses(p)
        ? _grows || !_pieces.Exists(piece => piece(p))
        : _grows && _pieces.Exists(piece => piece(p));

    /// <summary>Whether all points about this one, a little more than the tolerance away, agree with it.</summary>
    public bool IsSure(Point p, out bool holds)
    {
        var at = holds = Holds(p);
        return Enumerable.Range(0, 8).All(i => Holds(p + Vector.Polar(2 * Tolerance.Length, Angle.FullTurn * (i / 8.0))) == at);
    }

    /// <summary>To the side on which the pieces lie.</summary>
    private Vector Aside(Vector along) => along.Left * (_grows ? -1 : 1);

    private void AddStrip(Segment s)
    {
        if (s.IsLine)
        {
            var (along, length) = ((s.End - s.Start).Unit, s.Start.DistanceTo(s.End));
            var aside = Aside(along);
            _pieces.Add(p => (p - s.Start).Dot(along) is var x && x >= 0 && x <= length && (p - s.Start).Dot(aside) is var y && y >= 0 && y <= _size);
            return;
        }
        var (centre, radius) = (s.Centre, s.Radius);
        var outward = s.Bulge > 0 == _grows;
        var (inner, outer) = outward ? (radius, radius + _size) : (Math.Max(0, radius - _size), radius);
        _pieces.Add(p =>
        {
            var (from, to) = (s.Start - centre, p - centre);
            if (!(to.Length >= inner && to.Length <= outer)) return false;
            var turn = Math.Atan2(from.Cross(to), from.Dot(to)) * Math.Sign(s.Bulge);
            return (turn < 0 ? turn + 2 * Math.PI : turn) <= Math.Abs(s.Sweep.Radians);
        });
    }

    private void AddCorner(Vector into, Vector outOf, Point v, double limit)
    {
        var sine = into.Cross(outOf) * (_grows ? 1 : -1);
        if (sine <= 1e-12) return;
        var (e, s) = (v + Aside(into) * _size, v + Aside(outOf) * _size);
        // e + a into = s − b outOf
        var m = e + into * ((s - e).Cross(outOf) / into.Cross(outOf));
        Point[] corners = m.DistanceTo(v) <= limit * _size + Tolerance.Merge && limit > 1 ? [v, e, m, s] : [v, e, s];
        var turned = _grows ? 1 : -1;
        _pieces.Add(p =>
        {
            for (var i = 0; i < corners.Length; i++)
            {
                var (a, b) = (corners[i], corners[(i + 1) % corners.Length]);
                if ((b - a).Cross(p - a) * turned < 0) return false;
            }
            return true;
        });
    }
}
