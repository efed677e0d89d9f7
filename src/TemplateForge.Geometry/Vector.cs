namespace TemplateForge.Geometry;

/// <summary>A direction with a length, in mm.</summary>
public readonly record struct Vector(double X, double Y)
{
    public static Vector Zero => default;

    public double Length => Math.Sqrt(X * X + Y * Y);
    public double LengthSquared => X * X + Y * Y;

    /// <summary>Direction of this vector, counter-clockwise from +x, in (−½, ½] turn.</summary>
    public Angle Direction => Angle.FromRadians(Math.Atan2(Y, X));

    /// <summary>This vector turned a quarter counter-clockwise.</summary>
    public Vector Left => new(-Y, X);

    /// <summary>The vector of length 1 in the same direction; the zero vector has none and stays zero.</summary>
    public Vector Unit => Length is var length && length > 0 ? this / length : Zero;

    public static Vector Polar(double length, Angle direction) => new(length * direction.Cos, length * direction.Sin);

    public double Dot(Vector other) => X * other.X + Y * other.Y;

    /// <summary>Positive when <paramref name="other"/> lies to the left of this vector.</summary>
    public double Cross(Vector other) => X * other.Y - Y * other.X;

    public Vector Turned(Angle by)
    {
        var (sin, cos) = (by.Sin, by.Cos);
        return new(X * cos - Y * sin, X * sin + Y * cos);
    }

    // What a record would print, its vectors among it, would never end.
    public override string ToString() => FormattableString.Invariant($"({X}, {Y})");

    public static Vector operator +(Vector a, Vector b) => new(a.X + b.X, a.Y + b.Y);
    public static Vector operator -(Vector a, Vector b) => new(a.X - b.X, a.Y - b.Y);
    public static Vector operator -(Vector a) => new(-a.X, -a.Y);
    public static Vector operator *(Vector a, double factor) => new(a.X * factor, a.Y * factor);
    public static Vector operator *(double factor, Vector a) => a * factor;
    public static Vector operator /(Vector a, double divisor) => new(a.X / divisor, a.Y / divisor);
}
