namespace TemplateForge.Fabrication.Tests;

/// <summary>A place in space, in mm. Rolls patterns up and measures there; shares nothing with what unrolls them.</summary>
internal readonly record struct InSpace(double X, double Y, double Z)
{
    public double Length => Math.Sqrt(Dot(this));

    public InSpace Unit => this / Length;

    public double Dot(InSpace o) => X * o.X + Y * o.Y + Z * o.Z;

    public InSpace Cross(InSpace o) => new(Y * o.Z - Z * o.Y, Z * o.X - X * o.Z, X * o.Y - Y * o.X);

    /// <summary>Distance to a line through a place.</summary>
    public double ToLine(InSpace on, InSpace direction) => (this - on).Cross(direction.Unit).Length;

    public static InSpace operator +(InSpace a, InSpace b) => new(a.X + b.X, a.Y + b.Y, a.Z + b.Z);
    public static InSpace operator -(InSpace a, InSpace b) => new(a.X - b.X, a.Y - b.Y, a.Z - b.Z);
    public static InSpace operator *(InSpace a, double f) => new(a.X * f, a.Y * f, a.Z * f);
    public static InSpace operator /(InSpace a, double f) => new(a.X / f, a.Y / f, a.Z / f);

    /// <summary>On a cylinder about the z axis.</summary>
    public static InSpace Round(double radius, double degrees, double z) =>
        new(radius * Math.Cos(degrees * Math.PI / 180), radius * Math.Sin(degrees * Math.PI / 180), z);

    public override string ToString() => FormattableString.Invariant($"({X:0.####}, {Y:0.####}, {Z:0.####})");
}

/// <summary>Something that a tube ends on or that goes through it, as it stands in space.</summary>
internal abstract record Obstacle
{
    /// <summary>How far a place is outside of it; below 0 inside.</summary>
    public abstract double Clear(InSpace place);
}

/// <summary>A cutting plane; the normal points to where the tube must not be.</summary>
internal sealed record CutPlane(InSpace On, InSpace Normal) : Obstacle
{
    public override double Clear(InSpace place) => -(place - On).Dot(Normal.Unit);
}

internal sealed record Cylinder(InSpace On, InSpace Axis, double Radius) : Obstacle
{
    public override double Clear(InSpace place) => place.ToLine(On, Axis) - Radius;
}
