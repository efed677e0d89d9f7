using TemplateForge.Geometry;

namespace TemplateForge.Drawing;

/// <summary>A place or a way in space, as a DXF has them.</summary>
internal readonly record struct Spot(double X, double Y, double Z)
{
    public double Length => Math.Sqrt(X * X + Y * Y + Z * Z);
    public bool IsFinite => double.IsFinite(X + Y + Z);

    /// <summary>Seen from above.</summary>
    public Point Flat => new(X, Y);

    public Spot Unit => this * (1 / Length);

    public static Spot operator +(Spot a, Spot b) => new(a.X + b.X, a.Y + b.Y, a.Z + b.Z);
    public static Spot operator -(Spot a, Spot b) => new(a.X - b.X, a.Y - b.Y, a.Z - b.Z);
    public static Spot operator *(Spot a, double by) => new(a.X * by, a.Y * by, a.Z * by);

    // What the compiler would write holds Unit, which holds Unit, and so on.
    public override string ToString() => FormattableString.Invariant($"({X}, {Y}, {Z})");

    public Spot Cross(Spot other) => new(Y * other.Z - Z * other.Y, Z * other.X - X * other.Z, X * other.Y - Y * other.X);
}

/// <summary>How coordinates of an entity or a block become those of the drawing: any affine map of space.</summary>
internal readonly record struct Frame3(Spot AlongX, Spot AlongY, Spot AlongZ, Spot Origin)
{
    public static Frame3 World { get; } = new(new(1, 0, 0), new(0, 1, 0), new(0, 0, 1), new(0, 0, 0));

    public static Frame3 Scaled(double x, double y, double z) => new(new(x, 0, 0), new(0, y, 0), new(0, 0, z), new(0, 0, 0));

    public static Frame3 Moved(Spot by) => World with { Origin = by };

    public static Frame3 Turned(Angle by) => new(new(by.Cos, by.Sin, 0), new(-by.Sin, by.Cos, 0), new(0, 0, 1), new(0, 0, 0));

    /// <summary>The frame that goes with an extrusion direction: the format's rule, x along Y × N where N is nearly Z, else along Z × N.</summary>
    public static Frame3 Of(Spot extrusion)
    {
        var normal = extrusion.Length > 0 ? extrusion.Unit : new Spot(0, 0, 1);
        var x = Math.Abs(normal.X) < 1.0 / 64 && Math.Abs(normal.Y) < 1.0 / 64 ? new Spot(0, 1, 0).Cross(normal).Unit : new Spot(0, 0, 1).Cross(normal).Unit;
        return new(x, normal.Cross(x).Unit, normal, new(0, 0, 0));
    }

    public Spot Of(double x, double y, double z) => Origin + Way(new(x, y, z));

    public Spot Place(Spot at) => Origin + Way(at);

    public Spot Way(Spot way) => AlongX * way.X + AlongY * way.Y + AlongZ * way.Z;

    /// <summary>Whether arcs that lie level stay arcs: seen from above everything is turned, moved, mirrored and scaled alike, and no more.</summary>
    public bool KeepsArcs
    {
        get
        {
            var (x, y) = (new Vector(AlongX.X, AlongX.Y), new Vector(AlongY.X, AlongY.Y));
            return x.Length > 0 && Math.Abs(x.Length - y.Length) <= 1e-9 * x.Length && Math.Abs(x.Dot(y)) <= 1e-9 * x.LengthSquared;
        }
    }

    /// <summary>Whether it shows what lies level in mirror image.</summary>
    public bool Mirrors => AlongX.X * AlongY.Y - AlongX.Y * AlongY.X < 0;

    /// <summary>First this, then <paramref name="next"/>.</summary>
    public Frame3 Then(Frame3 next) => new(next.Way(AlongX), next.Way(AlongY), next.Way(AlongZ), next.Place(Origin));
}
