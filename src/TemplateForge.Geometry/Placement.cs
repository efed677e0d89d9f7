namespace TemplateForge.Geometry;

/// <summary>How a thing is put somewhere else: mirrored, turned, scaled alike both ways and moved. Arcs stay arcs.</summary>
/// <remarks>x' = A x − s B y + dx, y' = B x + s A y + dy, where s is −1 for a mirror image and 1 otherwise.</remarks>
public readonly record struct Placement
{
    private Placement(double a, double b, bool mirrors, Vector shift) => (A, B, Mirrors, Shift) = (a, b, mirrors, shift);

    private double A { get; }
    private double B { get; }
    private Vector Shift { get; }
    private double Side => Mirrors ? -1 : 1;

    public bool Mirrors { get; }
    public double Scale => Math.Sqrt(A * A + B * B);

    /// <summary>Whether it neither mirrors nor turns nor scales.</summary>
    public bool OnlyMoves => A == 1 && B == 0 && !Mirrors;

    public static Placement Unmoved => new(1, 0, mirrors: false, Vector.Zero);

    public static Placement Moved(Vector by) => new(1, 0, mirrors: false, by);

    public static Placement Turned(Angle by, Point about)
    {
        var turn = new Placement(by.Cos, by.Sin, mirrors: false, Vector.Zero);
        return new(turn.A, turn.B, mirrors: false, about - turn.Of(about));
    }

    /// <exception cref="ArgumentOutOfRangeException">The factor is not more than 0.</exception>
    public static Placement Scaled(double factor, Point about)
    {
        if (!(factor > 0)) throw new ArgumentOutOfRangeException(nameof(factor), factor, "A scale is more than 0.");
        return new(factor, 0, mirrors: false, (about - Point.Origin) * (1 - factor));
    }

    /// <summary>The mirror image across a line through a point.</summary>
    public static Placement Mirrored(Point on, Angle direction)
    {
        var twice = direction * 2;
        var mirror = new Placement(twice.Cos, twice.Sin, mirrors: true, Vector.Zero);
        return new(mirror.A, mirror.B, mirrors: true, on - mirror.Of(on));
    }

    /// <summary>First this, then <paramref name="next"/>.</summary>
    public Placement Then(Placement next)
    {
        var side = next.Side;
        return new(
            next.A * A - side * next.B * B,
            next.B * A + side * next.A * B,
            Mirrors != next.Mirrors,
            next.Of(Point.Origin + Shift) - Point.Origin);
    }

    public Point Of(Point p) => Point.Origin + Of(p - Point.Origin) + Shift;

    /// <summary>Bounds of a box where it is put; larger than what it held only where the turn is not by whole quarters.</summary>
    public Box Around(Box box)
    {
        var (middle, across, up) = (Of(box.Centre), Of(new Vector(box.Width / 2, 0)), Of(new Vector(0, box.Height / 2)));
        var reach = new Vector(Math.Abs(across.X) + Math.Abs(up.X), Math.Abs(across.Y) + Math.Abs(up.Y));
        return new(middle - reach, middle + reach);
    }

    public Vector Of(Vector v) => new(A * v.X - Side * B * v.Y, B * v.X + Side * A * v.Y);
}
