using System.Collections.Immutable;

namespace TemplateForge.Geometry;

/// <summary>A curve given as a function, and its parts between corners.</summary>
internal sealed class Course
{
    private const int Samples = 2048;
    private const double Corner = 0.25; // what a smooth curve does not turn by between two samples, in radians

    private const double Step = 2e-5; // of the range, where directions come from differences

    private readonly Func<double, Point> _curve;
    private readonly Func<double, Vector>? _derivative;
    private readonly double _from, _to;

    public Course(Func<double, Point> curve, Func<double, Vector>? derivative, double from, double to)
    {
        if (!(to > from && double.IsFinite(to - from))) throw new ArgumentException($"A curve does not run from {from} to {to}.", nameof(to));
        (_curve, _derivative, _from, _to) = (curve, derivative, from, to);
    }

    /// <summary>The place at a parameter.</summary>
    /// <exception cref="ArgumentException">There is none.</exception>
    public Point At(double t)
    {
        var p = _curve(t);
        return double.IsFinite(p.X) && double.IsFinite(p.Y) ? p : throw new ArgumentException($"The curve has no place at {t}.", nameof(t));
    }

    /// <summary>The parts between corners; those shorter than <see cref="Tolerance.Merge"/> are left out.</summary>
    public ImmutableArray<SmoothPiece> Pieces()
    {
        List<double> ends = [_from];
        var t = _from;
        var direction = Direction(_from, _from, _to);
        for (var i = 1; i <= Samples; i++)
        {
            var next = i == Samples ? _to : _from + (_to - _from) * i / Samples;
            var nextDirection = Direction(next, _from, _to);
            if (Turn(direction, nextDirection) > Corner && TryCorner(t, next, out var corner) && corner > ends[^1] && corner < _to) ends.Add(corner);
            (t, direction) = (next, nextDirection);
        }
        ends.Add(_to);
        return [.. Enumerable.Range(1, ends.Count - 1).Select(i => new SmoothPiece(this, ends[i - 1], ends[i])).Where(p => p.Length >= Tolerance.Merge)];
    }

    /// <summary>The direction of travel, of length 1; where the derivative vanishes, its limit from within the range.</summary>
    public Vector Direction(double t, double from, double to)
    {
        var range = to - from;
        if (_derivative is null)
        {
            var step = Step * range;
            if (t - from < step) return (4 * (At(t + step) - At(t)) - (At(t + 2 * step) - At(t))).Unit;
            if (to - t < step) return (4 * (At(t) - At(t - step)) - (At(t) - At(t - 2 * step))).Unit;
            return (At(t + step) - At(t - step)).Unit;
        }
        var inwards = t < (from + to) / 2 ? 1e-7 * range : -1e-7 * range;
        if (t == from || t == to)
        {
            // Out of a turn that counts as one point.
            while (Math.Abs(inwards) < 1e-4 * range && Turn(_derivative(t + inwards), _derivative(t + 2 * inwards)) > 0.01
                && At(t).DistanceTo(At(t + inwards)) < Tolerance.Merge) inwards *= 2;
        }
        var (here, within) = (_derivative(t), _derivative(t + inwards));
        return t == from || t == to
            ? here.Length > 1e-5 * (_derivative(from + range / 3).Length + _derivative(to - range / 3).Length) ? here.Unit : within.Unit
            : here.Length > 0 ? here.Unit : within.Unit;
    }

    /// <summary>A corner turns by as much as before however short the part around it becomes.</summary>
    private bool TryCorner(double from, double to, out double corner)
    {
        var (first, last) = (Direction(from, _from, _to), Direction(to, _from, _to));
        while (true)
        {
            corner = (from + to) / 2;
            if (to - from <= 1e-9 * (_to - _from)) return true;
            if (_derivative is null && to - from <= 4 * Step * (_to - _from))
            {
                corner = Furthest(from, to); // nearer to it the differences reach across
                return true;
            }
            var middle = Direction(corner, _from, _to);
            var (before, after) = (Turn(first, middle), Turn(middle, last));
            if (Math.Max(before, after) <= Corner) // it turns smoothly, but within what counts as one point
                return At(from).DistanceTo(At(corner)) + At(corner).DistanceTo(At(to)) < Tolerance.Merge;
            if (before > after) (to, last) = (corner, middle); else (from, first) = (corner, middle);
        }
    }

    /// <summary>The parameter between two whose place is furthest from both of theirs, by thirds.</summary>
    private double Furthest(double from, double to)
    {
        var (start, end) = (At(from), At(to));
        double Far(double t) => At(t).DistanceTo(start) + At(t).DistanceTo(end);
        for (var i = 0; i < 60; i++)
        {
            var third = (to - from) / 3;
            if (Far(from + third) < Far(to - third)) from += third; else to -= third;
        }
        return (from + to) / 2;
    }

    private static double Turn(Vector a, Vector b) => Math.Abs(Math.Atan2(a.Cross(b), a.Dot(b)));
}
