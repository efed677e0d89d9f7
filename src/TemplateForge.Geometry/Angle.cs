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

    /// <summary>Exact at whole quarter turns, as is <see cref="Cos"/>: a rectangle that is turned by 90° stays one.</summary>
    public double Sin => IsWholeQuarters(out var quarters) ? Whole[quarters] : Math.Sin(Radians);
    public double Cos => IsWholeQuarters(out var quarters) ? Whole[(quarters + 1) & 3] : Math.Cos(Radians);

    /// <summary>Infinite at odd quarter turns.</summary>
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

    private static ReadOnlySpan<double> Whole => [0, 1, 0, -1];

    private bool IsWholeQuarters(out int quarters)
    {
        var turned = Radians / (Math.PI / 2);
        var nearest = Math.Round(turned);
        quarters = (int)(nearest - 4 * Math.Floor(nearest / 4));
        // Degrees become radians, and angles are added, with an error of a few units in the last place.
        return nearest != 0
            ? Math.Abs(turned - nearest) <= 4e-16 * Math.Abs(nearest)
            : Radians == 0;
    }
}
