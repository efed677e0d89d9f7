namespace TemplateForge.Geometry;

/// <summary>An angle, positive counter-clockwise. Made from degrees or from radians by name.</summary>
public readonly record struct Angle : IComparable<Angle>
{
    private Angle(double radians) => Radians = radians;

    public static Angle Zero => default;
    public static Angle QuarterTurn => new(Math.PI / 2);
    public static Angle HalfTurn => new(Math.PI);
    public static Angle FullTurn => new(2 * Math.PI);

    public double Radians { get; }
    public double Degrees => Radians * (180 / Math.PI);

    /// <summary>Sine and cosine are exact at whole quarter turns that were given in degrees.</summary>
    public double Sin => Math.Abs(Radians % Math.PI) < 1e-15 ? 0 : Math.Sin(Radians);
    public double Cos => Math.Abs(Math.Abs(Radians % Math.PI) - Math.PI / 2) < 1e-15 ? 0 : Math.Cos(Radians);
    public double Tan => Sin / Cos;

    public static Angle FromDegrees(double degrees) => new(degrees * (Math.PI / 180));
    public static Angle FromRadians(double radians) => new(radians);

    public int CompareTo(Angle other) => Radians.CompareTo(other.Radians);

    public static Angle operator +(Angle a, Angle b) => new(a.Radians + b.Radians);
    public static Angle operator -(Angle a, Angle b) => new(a.Radians - b.Radians);
    public static Angle operator -(Angle a) => new(-a.Radians);
    public static Angle operator *(Angle a, double factor) => new(a.Radians * factor);
    public static Angle operator *(double factor, Angle a) => a * factor;
    public static Angle operator /(Angle a, double divisor) => new(a.Radians / divisor);
    public static bool operator <(Angle a, Angle b) => a.Radians < b.Radians;
    public static bool operator >(Angle a, Angle b) => a.Radians > b.Radians;
    public static bool operator <=(Angle a, Angle b) => a.Radians <= b.Radians;
    public static bool operator >=(Angle a, Angle b) => a.Radians >= b.Radians;
}
