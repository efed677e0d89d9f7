namespace TemplateForge.Geometry;

/// <summary>A place in the plane, in mm.</summary>
public readonly record struct Point(double X, double Y)
{
    public static Point Origin => default;

    public double DistanceTo(Point other) => (other - this).Length;

    public Point MidpointTo(Point other) => new((X + other.X) / 2, (Y + other.Y) / 2);

    public override string ToString() => FormattableString.Invariant($"({X}, {Y})");

    public static Vector operator -(Point a, Point b) => new(a.X - b.X, a.Y - b.Y);
    public static Point operator +(Point a, Vector by) => new(a.X + by.X, a.Y + by.Y);
    public static Point operator -(Point a, Vector by) => new(a.X - by.X, a.Y - by.Y);
}
