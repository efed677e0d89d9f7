using System.Collections.Immutable;
using TemplateForge.Geometry;

namespace TemplateForge.Fabrication;

/// <summary>How a round tube ends.</summary>
/// <remarks>
/// The cut is made square to the wall: saw, torch or file held to the tube's middle. So each generator φ has one height from the outside of the
/// wall to its inside, and that is the height at which the wall first touches what it meets: nothing through the wall interferes, and one
/// point of each generator touches. Without a wall these are the ordinates of the textbooks.
/// <para>
/// φ runs round the tube as one looks down on its upper end, counter-clockwise. At <see cref="Turned"/> lies the throat: where a mitre is shortest, and the side
/// to which the angle of a fish-mouth is counted.
/// </para>
/// </remarks>
public abstract record TubeEnd(Angle Turned)
{
    /// <summary>How far a generator reaches past the point on the tube's axis from which its length is counted, in mm; mostly below 0.</summary>
    /// <param name="inside">Inside radius of the tube.</param>
    /// <param name="outside">Outside radius.</param>
    /// <param name="phi">Which generator, in radians.</param>
    internal double Reach(double inside, double outside, double phi) => ReachFromThroat(inside, outside, phi - Turned.Radians);

    private protected abstract double ReachFromThroat(double inside, double outside, double phi);

    /// <summary>Whether the end is square, and so the same all round.</summary>
    public virtual bool IsSquare => false;

    /// <summary>The quarter turns from the throat (0 to 3) at which the cut has a corner, or nearly one.</summary>
    internal abstract ImmutableArray<int> Corners(double inside, double outside);

    /// <summary>What a fitter calls the generator at a quarter turn from the throat (0 to 3); empty where it has no name.</summary>
    public abstract string NameOf(int quarter);

    /// <summary>What it is, in a few words.</summary>
    public abstract string Title { get; }
}

/// <summary>Cut straight across.</summary>
public sealed record SquareCut() : TubeEnd(Angle.Zero)
{
    public override bool IsSquare => true;

    public override string NameOf(int quarter) => "";

    public override string Title => "square";

    internal override ImmutableArray<int> Corners(double inside, double outside) => [];

    private protected override double ReachFromThroat(double inside, double outside, double phi) => 0;
}

/// <summary>Cut by a plane through the point on the axis up to which the length is counted.</summary>
/// <remarks>
/// Reach −ρ tan m cos φ, the least of it through the wall: on the long side the inside of the wall touches, on the short side the outside.
/// From the short side that is y = R tan m (1 − cos φ) without a wall (any book of sheet-metal drafting).
/// </remarks>
/// <param name="Angle">From a square cut, 0 to <see cref="Steepest"/>: half the angle of the joint.</param>
/// <param name="Turned">Where the tube is shortest.</param>
public sealed record Mitre(Angle Angle, Angle Turned) : TubeEnd(Turned)
{
    public static Angle Steepest { get; } = Angle.FromDegrees(80);

    public override bool IsSquare => Angle.Radians == 0;

    // Where another face of the wall begins to touch.
    internal override ImmutableArray<int> Corners(double inside, double outside) => inside < outside ? [1, 3] : [];

    public override string NameOf(int quarter) => IsSquare ? "" : quarter switch { 0 => "short side", 2 => "long side", _ => "" };

    public override string Title => IsSquare ? "square" : FormattableString.Invariant($"mitre {Math.Round(Angle.Degrees, 3)}°");

    private protected override double ReachFromThroat(double inside, double outside, double phi)
    {
        var cos = Math.Cos(phi);
        return -(cos > 0 ? outside : inside) * Angle.Tan * cos;
    }
}

/// <summary>Cut to sit on another round tube.</summary>
/// <remarks>
/// <code>
///     z(ρ, φ) = (√(R² − (ρ sin φ + e)²) + ρ cos φ cos ψ) / sin ψ       from the middle of the other tube along this one's axis
/// </code>
/// Textbooks have it with ρ the tube's radius. z is concave in ρ, so the ρ of the wall that first touches is either face of it, or where z is
/// greatest between them: ρ sin φ + e = R k / √(sin² φ + k²), k = cos φ cos ψ, with the sign of sin φ.
/// </remarks>
/// <param name="OtherRadius">Outside radius R of the tube that it sits on.</param>
/// <param name="Angle">ψ, between the two axes.</param>
/// <param name="Offset">e, how far the axes pass each other by, towards the generator a quarter turn past the throat.</param>
/// <param name="Turned">The side of the tube to which ψ is counted: below a right angle the acute side, above it the obtuse one.</param>
public sealed record FishMouth(double OtherRadius, Angle Angle, double Offset, Angle Turned) : TubeEnd(Turned)
{
    /// <summary>The least and the greatest angle between the axes: a longer mouth is no joint.</summary>
    public static (Angle Least, Angle Most) Angles { get; } = (Angle.FromDegrees(15), Angle.FromDegrees(165));

    /// <summary>Whether a tube lies wholly on the other: an offset tube must not stand out past it.</summary>
    public bool Takes(double outside) => outside + Math.Abs(Offset) <= OtherRadius + Tolerance.Length;

    // Where the wall comes near the side of the other tube; and where an offset square mouth goes over to another face of the wall.
    internal override ImmutableArray<int> Corners(double inside, double outside)
    {
        // Past this share of the radius the side of the other tube falls away so fast that samples would miss it.
        const double side = 0.98;
        var near = side * OtherRadius;
        return
        [
            .. inside + Offset > near ? [1] : (ImmutableArray<int>)[],
            .. inside - Offset > near ? [3] : (ImmutableArray<int>)[],
            .. inside < outside && Offset != 0 && Math.Abs(Angle.Cos) < 1e-9 ? [0, 2] : (ImmutableArray<int>)[],
        ];
    }

    public override string NameOf(int quarter) => (quarter, Math.Sign(Math.Round(90 - Angle.Degrees, 6))) switch
    {
        (1, _) or (3, _) => "point",
        (_, 0) => "saddle",
        (0, 1) or (2, -1) => "acute side",
        _ => "obtuse side",
    };

    public override string Title
    {
        get
        {
            var text = FormattableString.Invariant($"sits on {Math.Round(2 * OtherRadius, 3)} mm at {Math.Round(Angle.Degrees, 3)}°");
            return Offset == 0 ? text : text + FormattableString.Invariant($", {Math.Round(Math.Abs(Offset), 3)} mm off its middle");
        }
    }

    private protected override double ReachFromThroat(double inside, double outside, double phi) =>
        -WallSection.Furthest(OtherRadius, inside, outside, Offset, phi, Angle);
}

/// <summary>Where a line through the wall, square to a tube's axis, first meets a cylinder that crosses it.</summary>
internal static class WallSection
{
    /// <summary>The greatest z(ρ, φ) for ρ from the inside to the outside of the wall; see <see cref="FishMouth"/>.</summary>
    /// <param name="radius">Of the other cylinder.</param>
    /// <param name="inside">Inside radius of the wall.</param>
    /// <param name="outside">Its outside radius.</param>
    /// <param name="offset">How far the axes pass each other by.</param>
    /// <param name="phi">Which generator.</param>
    /// <param name="between">The angle between the axes.</param>
    public static double Furthest(double radius, double inside, double outside, double offset, double phi, Angle between)
    {
        var (sin, k) = (Math.Sin(phi), Math.Cos(phi) * between.Cos);
        // A wall that stands wholly or in part beside the other cylinder has no height there: only the part over it counts.
        if (sin != 0)
        {
            var (one, two) = ((-radius - offset) / sin, (radius - offset) / sin);
            (inside, outside) = (Math.Clamp(inside, Math.Min(one, two), Math.Max(one, two)), Math.Clamp(outside, Math.Min(one, two), Math.Max(one, two)));
        }
        var root = Math.Sqrt(sin * sin + k * k);
        double at;
        if (Math.Abs(sin) < 1e-12) at = k > 0 ? outside : inside;
        else at = Math.Clamp((radius * k * Math.Sign(sin) / root - offset) / sin, inside, outside);
        var u = at * sin + offset;
        return (Math.Sqrt(Math.Max(0, (radius - u) * (radius + u))) + at * k) / between.Sin;
    }
}
