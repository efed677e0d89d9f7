namespace TemplateForge.Fabrication;

/// <summary>A place in space, in mm; z is upwards.</summary>
public readonly record struct SpacePoint(double X, double Y, double Z)
{
    public double DistanceTo(SpacePoint other) => (other - this).Length;

    public static SpaceVector operator -(SpacePoint a, SpacePoint b) => new(a.X - b.X, a.Y - b.Y, a.Z - b.Z);
    public static SpacePoint operator +(SpacePoint a, SpaceVector by) => new(a.X + by.X, a.Y + by.Y, a.Z + by.Z);
}

/// <summary>A direction in space with a length, in mm.</summary>
public readonly record struct SpaceVector(double X, double Y, double Z)
{
    public double Length => Math.Sqrt(Dot(this));

    /// <summary>The vector of length 1 in the same direction; the zero vector has none and stays zero.</summary>
    public SpaceVector Unit => Length is var length && length > 0 ? this * (1 / length) : this;

    public double Dot(SpaceVector other) => X * other.X + Y * other.Y + Z * other.Z;

    public SpaceVector Cross(SpaceVector other) => new(Y * other.Z - Z * other.Y, Z * other.X - X * other.Z, X * other.Y - Y * other.X);

    public static SpaceVector operator -(SpaceVector a, SpaceVector b) => new(a.X - b.X, a.Y - b.Y, a.Z - b.Z);
    public static SpaceVector operator *(SpaceVector a, double factor) => new(a.X * factor, a.Y * factor, a.Z * factor);

    // What a record would print, its unit vector among it, would never end.
    public override string ToString() => FormattableString.Invariant($"({X}, {Y}, {Z})");

    /// <summary>The part of this vector that is square to a unit vector.</summary>
    public SpaceVector SquareTo(SpaceVector unit) => this - unit * Dot(unit);
}
