namespace TemplateForge.Fabrication.Tests;

/// <summary>A place or a direction in space, in mm; System.Numerics has them in single precision only.</summary>
internal readonly record struct Vector3(double X, double Y, double Z)
{
    public static Vector3 Up => new(0, 0, 1);

    public double Length => Math.Sqrt(Dot(this));

    public double Dot(Vector3 other) => X * other.X + Y * other.Y + Z * other.Z;

    public Vector3 Cross(Vector3 other) => new(Y * other.Z - Z * other.Y, Z * other.X - X * other.Z, X * other.Y - Y * other.X);

    /// <summary>Turned about an axis of length 1 through the origin; seen against it, counter-clockwise. Rodrigues' formula.</summary>
    public Vector3 Turned(Vector3 axis, double radians) =>
        this * Math.Cos(radians) + axis.Cross(this) * Math.Sin(radians) + axis * (axis.Dot(this) * (1 - Math.Cos(radians)));

    public static Vector3 operator +(Vector3 a, Vector3 b) => new(a.X + b.X, a.Y + b.Y, a.Z + b.Z);
    public static Vector3 operator -(Vector3 a, Vector3 b) => new(a.X - b.X, a.Y - b.Y, a.Z - b.Z);
    public static Vector3 operator -(Vector3 a) => new(-a.X, -a.Y, -a.Z);
    public static Vector3 operator *(Vector3 a, double factor) => new(a.X * factor, a.Y * factor, a.Z * factor);
}
