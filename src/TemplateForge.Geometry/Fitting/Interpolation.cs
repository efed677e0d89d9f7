namespace TemplateForge.Geometry;

/// <summary>A cubic between every two of some points, over the length of their chords; its direction at each is unbroken.</summary>
internal sealed class Interpolation
{
    private readonly Point[] _points;
    private readonly double[] _lengths;
    private readonly Vector[] _speeds;

    private Interpolation(Point[] points)
    {
        _points = points;
        _lengths = new double[points.Length];
        for (var i = 1; i < points.Length; i++) _lengths[i] = _lengths[i - 1] + points[i].DistanceTo(points[i - 1]);
        _speeds = new Vector[points.Length];
        for (var i = 0; i < points.Length; i++)
        {
            // The parabola through three points, at the middle one, or at an end.
            if (points.Length == 2) _speeds[i] = (points[1] - points[0]) / _lengths[1];
            else
            {
                var middle = Math.Clamp(i, 1, points.Length - 2);
                var (h, k) = (_lengths[middle] - _lengths[middle - 1], _lengths[middle + 1] - _lengths[middle]);
                var (before, after) = ((points[middle] - points[middle - 1]) / h, (points[middle + 1] - points[middle]) / k);
                var bend = (after - before) / (h + k);
                _speeds[i] = i < middle ? before - bend * h : i > middle ? after + bend * k : before + bend * h;
            }
        }
    }

    public double Length => _lengths[^1];

    /// <exception cref="ArgumentException">There are fewer than two points.</exception>
    public static Interpolation Through(IEnumerable<Point> points)
    {
        List<Point> kept = [];
        foreach (var p in points)
        {
            if (kept.Count == 0 || kept[^1].DistanceTo(p) >= Tolerance.Merge) kept.Add(p);
        }
        return kept.Count < 2 ? throw new ArgumentException("A curve runs through two points at least.", nameof(points)) : new([.. kept]);
    }

    public Point At(double t)
    {
        var (i, u, h) = Place(t);
        var chord = _points[i + 1] - _points[i];
        return _points[i] + chord * (u * u * (3 - 2 * u)) + _speeds[i] * (h * u * (1 - u) * (1 - u)) - _speeds[i + 1] * (h * u * u * (1 - u));
    }

    public Vector Derivative(double t)
    {
        var (i, u, h) = Place(t);
        var chord = _points[i + 1] - _points[i];
        return chord * (6 * u * (1 - u) / h) + _speeds[i] * ((1 - u) * (1 - 3 * u)) + _speeds[i + 1] * (u * (3 * u - 2));
    }

    private (int Span, double Share, double Length) Place(double t)
    {
        var i = Array.BinarySearch(_lengths, t);
        i = Math.Clamp(i < 0 ? ~i - 1 : i, 0, _lengths.Length - 2);
        var h = _lengths[i + 1] - _lengths[i];
        return (i, (t - _lengths[i]) / h, h);
    }
}
