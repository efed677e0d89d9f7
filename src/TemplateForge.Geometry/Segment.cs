namespace TemplateForge.Geometry;

/// <summary>A straight line or a circular arc that runs from <see cref="Start"/> to <see cref="End"/>.</summary>
/// <remarks>
/// <code>
///          . - ' ' - .
///       '       h       '         Bulge = 2h / c = tan(sweep / 4)
///    End ------ c ------ Start    above zero the arc turns left, below zero right; zero is a line
/// </code>
/// Lengths in mm, angles in radians. The default value has no length and belongs in no contour.
/// </remarks>
public readonly record struct Segment
{
    /// <summary>A rise, in mm, that no double tells from none 100 m away from the origin: such an arc is a line.</summary>
    private const double Straight = 1e-12;

    private Segment(Point start, Point end, double bulge) => (Start, End, Bulge) = (start, end, bulge);

    public Point Start { get; }
    public Point End { get; }
    public double Bulge { get; }
    public bool IsLine => Bulge == 0;

    /// <summary>How far the segment turns: positive counter-clockwise, at most half a turn either way.</summary>
    public Angle Sweep => Angle.FromRadians(4 * Math.Atan(Bulge));

    public double Length => IsLine ? Start.DistanceTo(End) : Radius * Math.Abs(Sweep.Radians);

    /// <summary>Radius of the arc; infinite for a line.</summary>
    public double Radius => IsLine ? double.PositiveInfinity : Start.DistanceTo(End) * (1 + Bulge * Bulge) / (4 * Math.Abs(Bulge));

    /// <summary>Centre of the arc. For a nearly straight one it lies far off and is as inexact as it is far.</summary>
    /// <exception cref="InvalidOperationException">The segment is a line.</exception>
    public Point Centre => IsLine
        ? throw new InvalidOperationException("A line has no centre.")
        : Start.MidpointTo(End) + (End - Start).Left * ((1 - Bulge * Bulge) / (4 * Bulge));

    public Vector StartDirection => IsLine ? (End - Start).Unit : FromChord(-1);
    public Vector EndDirection => IsLine ? (End - Start).Unit : FromChord(1);

    public Box Bounds
    {
        get
        {
            var bounds = new Box(Start, Start).Joined(new Box(End, End));
            if (IsLine) return bounds;
            var (leaving, arriving) = (StartDirection, EndDirection);
            foreach (var quarter in (ReadOnlySpan<Vector>)[new(1, 0), new(0, 1), new(-1, 0), new(0, -1)])
            {
                // It turns through half a circle at most, so it goes beyond its ends only where it sets out that way and comes back.
                if (leaving.Dot(quarter) <= 0 || arriving.Dot(quarter) >= 0) continue;
                var extreme = Extreme(quarter);
                bounds = bounds.Joined(new Box(extreme, extreme));
            }
            return bounds;
        }
    }

    /// <exception cref="ArgumentException">The ends are one point.</exception>
    public static Segment Line(Point start, Point end) => Arc(start, end, bulge: 0);

    /// <exception cref="ArgumentException">The ends are one point, or the arc is more than half a circle.</exception>
    public static Segment Arc(Point start, Point end, double bulge)
    {
        if (!(start.DistanceTo(end) >= Tolerance.Merge))
            throw new ArgumentException($"A segment needs two ends, but {start} and {end} are one point.", nameof(end));
        if (!(Math.Abs(bulge) <= 1))
            throw new ArgumentException($"A segment turns through half a circle at most; bulge {bulge} asks for more.", nameof(bulge));
        var rise = Math.Abs(bulge) * start.DistanceTo(end) / 2;
        return new(start, end, rise < Straight ? 0 : bulge);
    }

    /// <summary>Takes ends that are known to be two points, and a bulge of at most 1.</summary>
    internal static Segment Trusted(Point start, Point end, double bulge) =>
        new(start, end, bulge * bulge * (end - start).LengthSquared < 4 * Straight * Straight ? 0 : bulge);

    public Segment Reversed() => new(End, Start, -Bulge);

    /// <summary>The point that lies this share (0 to 1) of the length along the segment.</summary>
    public Point At(double share)
    {
        if (share is 0) return Start;
        if (share is 1) return End; // exactly: what goes on from there starts there
        if (IsLine) return Start + (End - Start) * share;
        // The chord from Start to the wanted point: half its arc's sweep off the starting tangent.
        var half = share * Sweep.Radians / 2;
        return Start + StartDirection.Turned(Angle.FromRadians(half)) * (2 * Radius * Math.Sin(Math.Abs(half)));
    }

    /// <summary>The unit vector along the segment at this share (0 to 1) of its length.</summary>
    public Vector DirectionAt(double share) =>
        IsLine ? (End - Start).Unit : (End - Start).Unit.Turned(Sweep * (share - 0.5));

    /// <summary>The point that lies furthest in a direction.</summary>
    public Point Extreme(Vector direction)
    {
        var end = (End - Start).Dot(direction) > 0 ? End : Start;
        if (IsLine) return end;
        // There the arc runs square to the direction. Its place comes from the angle turned to get there, not from the
        // centre, which lies so far off a nearly straight arc that nothing of its coordinates can be relied on.
        var square = Bulge > 0 ? direction.Left : -direction.Left;
        var turn = Math.Atan2(StartDirection.Cross(square), StartDirection.Dot(square));
        var share = turn / Sweep.Radians;
        return share is > 0 and < 1 ? At(share) : end;
    }

    /// <summary>The part between two shares of the length.</summary>
    /// <exception cref="ArgumentException">The part is shorter than <see cref="Tolerance.Merge"/>.</exception>
    public Segment Part(double from, double to) => from == 0 && to == 1
        ? this
        : Arc(At(from), At(to), IsLine ? 0 : Math.Tan(Sweep.Radians * (to - from) / 4));

    public Segment Placed(Placement by) => Arc(by.Of(Start), by.Of(End), by.Mirrors ? -Bulge : Bulge);

    // The chord's direction turned by half the sweep: tan(sweep / 4) is the bulge, so no angle is needed.
    private Vector FromChord(int way)
    {
        var chord = (End - Start).Unit;
        var squared = Bulge * Bulge;
        var (cos, sin) = ((1 - squared) / (1 + squared), way * 2 * Bulge / (1 + squared));
        return new(chord.X * cos - chord.Y * sin, chord.X * sin + chord.Y * cos);
    }

    public override string ToString() => IsLine ? $"line {Start} to {End}" : FormattableString.Invariant($"arc {Start} to {End}, bulge {Bulge}");
}
