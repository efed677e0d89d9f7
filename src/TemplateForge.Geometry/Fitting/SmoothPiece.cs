namespace TemplateForge.Geometry;

/// <summary>A smooth part of a course: its length and direction at many samples.</summary>
internal sealed class SmoothPiece
{
    private const int Samples = 2048;
    private readonly Course _course;
    private readonly double _from, _to;
    private readonly double[] _length = new double[Samples + 1];
    private readonly double[] _direction = new double[Samples + 1];

    public SmoothPiece(Course course, double from, double to)
    {
        (_course, _from, _to) = (course, from, to);
        var (at, direction) = (course.At(from), DirectionVector(0));
        _direction[0] = Math.Atan2(direction.Y, direction.X);
        for (var i = 1; i <= Samples; i++)
        {
            var (next, nextDirection) = (At(i), DirectionVector(i));
            _length[i] = _length[i - 1] + at.DistanceTo(next);
            _direction[i] = _direction[i - 1] + Math.Atan2(direction.Cross(nextDirection), direction.Dot(nextDirection));
            (at, direction) = (next, nextDirection);
        }
    }

    public double Length => _length[Samples];
    public static double End => Samples;

    public bool ClosesSmoothly => At(0).DistanceTo(At(End)) <= Tolerance.Merge
        && DirectionVector(0) is var a && DirectionVector(End) is var b && Math.Abs(a.Cross(b)) < 1e-6 && a.Dot(b) > 0;

    /// <summary>The place at a sample or between two.</summary>
    public Point At(double sample) => _course.At(Parameter(sample));

    public Vector DirectionVector(double sample) => _course.Direction(Parameter(sample), _from, _to);

    public double LengthTo(double sample) => Between(_length, sample);

    /// <summary>How far the direction turns from one sample to another, in radians.</summary>
    public double Turn(double from, double to) => Between(_direction, to) - Between(_direction, from);

    /// <summary>For every step between samples, how many arcs it asks for at a tolerance: ∛(|κ'| / (124.7 ε)) Δs, κ being the curvature.</summary>
    public double[] Demand(double tolerance)
    {
        const int reach = 8; // the third differences of single steps would be all rounding
        var demand = new double[Samples];
        for (var i = 0; i < Samples; i++)
        {
            // A run of steps before this one and a run after it; at the ends the nearest such.
            var first = Math.Clamp(i - reach, 0, Samples - 2 * reach - 1);
            var (until, from, last) = (first + reach, first + reach + 1, first + 2 * reach + 1);
            var (before, step, after) = (_length[until] - _length[first], _length[from] - _length[until], _length[last] - _length[from]);
            if (!(before > 0 && after > 0)) continue;
            var slope = (Turn(from, last) / after - Turn(first, until) / before) / ((before + after) / 2 + step);
            demand[i] = Math.Max(
                Math.Cbrt(Math.Abs(slope) / (124.7 * tolerance)) * (_length[i + 1] - _length[i]),
                Math.Abs(_direction[i + 1] - _direction[i]) / (Math.PI / 4)); // an arc that turns by more is no arc of a pair
        }
        return demand;
    }

    private double Parameter(double sample) => sample >= Samples ? _to : _from + (_to - _from) * (sample / Samples);

    private static double Between(double[] values, double sample)
    {
        var i = Math.Min((int)sample, Samples - 1);
        return values[i] + (values[i + 1] - values[i]) * (sample - i);
    }
}
