namespace TemplateForge.Fabrication;

/// <summary>A place or a direction in space, in mm: x along, y up in the drawing, z towards whoever looks at the face that is up.</summary>
internal readonly record struct InSpace(double X, double Y, double Z)
{
    public static InSpace Zero => default;

    public double Length => Math.Sqrt(Dot(this));

    public double Dot(InSpace other) => X * other.X + Y * other.Y + Z * other.Z;

    public InSpace Cross(InSpace other) => new(Y * other.Z - Z * other.Y, Z * other.X - X * other.Z, X * other.Y - Y * other.X);

    /// <summary>Turned about an axis through the origin, of length 1, the right-handed way (Rodrigues' formula).</summary>
    public InSpace Turned(InSpace axis, double sin, double cos) => this * cos + axis.Cross(this) * sin + axis * (axis.Dot(this) * (1 - cos));

    public static InSpace operator +(InSpace a, InSpace b) => new(a.X + b.X, a.Y + b.Y, a.Z + b.Z);
    public static InSpace operator -(InSpace a, InSpace b) => new(a.X - b.X, a.Y - b.Y, a.Z - b.Z);
    public static InSpace operator -(InSpace a) => new(-a.X, -a.Y, -a.Z);
    public static InSpace operator *(InSpace a, double factor) => new(a.X * factor, a.Y * factor, a.Z * factor);
}
