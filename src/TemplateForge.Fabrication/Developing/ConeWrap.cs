using System.Collections.Immutable;
using TemplateForge.Geometry;

namespace TemplateForge.Fabrication;

/// <summary>A pattern for a cone or frustum between two parallel circles, right or oblique.</summary>
/// <remarks>
/// <code>
///      .-' ' '-.      the top, the smaller circle
///     /    |    \
///    '-. .-'-. .-'    the base; the generator across from the seam stands upright, its foot at (0, 0)
/// </code>
/// A right cone is arcs, exactly: of radius r / sin α over 2π sin α, α being half the angle at its point. An oblique one is
/// developed by integration (<see cref="ConeDevelopment"/>) to 1e-8 mm, then fitted by arcs within <see cref="Tolerance.Curve"/>.
/// Edges are square to the sheet. Diameters and height are those of the face that is measured; the other face stands off by up to the thickness
/// times sin α.
/// </remarks>
public sealed record ConeWrap
{
    /// <summary>The least share by which the top is smaller than the base: less is a tube, and its apex is too far off.</summary>
    public const double LeastTaper = 0.005;

    /// <param name="baseDiameter">The larger circle, in mm.</param>
    /// <param name="topDiameter">The smaller one; 0 for a cone with a point.</param>
    /// <param name="height">From plane to plane, in mm.</param>
    /// <param name="aside">How far the middle of the top lies aside of that of the base, towards 0°; 0 for a right cone.</param>
    /// <param name="material">What the pattern is cut from.</param>
    /// <param name="measured">The face of rolled sheet of which the sizes are; paper goes round the outside.</param>
    /// <exception cref="ArgumentOutOfRangeException">There is no such cone.</exception>
    public ConeWrap(double baseDiameter, double topDiameter, double height, double aside, WrapMaterial material, MeasuredFace measured = MeasuredFace.Outside)
    {
        if (!(height > 0)) throw new ArgumentOutOfRangeException(nameof(height), height, "A cone has a height.");
        if (!(topDiameter >= 0 && topDiameter <= baseDiameter * (1 - LeastTaper)))
            throw new ArgumentOutOfRangeException(nameof(topDiameter), topDiameter, "The top of a cone is smaller than its base.");
        (BaseDiameter, TopDiameter, Height, Aside, Material, Measured) = (baseDiameter, topDiameter, height, aside, material, measured);
    }

    public double BaseDiameter { get; }
    public double TopDiameter { get; }
    public double Height { get; }
    public double Aside { get; }
    public WrapMaterial Material { get; }
    public MeasuredFace Measured { get; }

    /// <summary>Where the pattern begins and ends.</summary>
    public Angle Seam { get; init; } = Angle.HalfTurn;

    /// <summary>Width of a tab past the seam at the base, in mm.</summary>
    public double Lap { get; init; }

    /// <summary>How many generators are drawn round it, a multiple of 4.</summary>
    public int Divisions { get; init; } = 12;

    public bool IsRight => Aside == 0;

    /// <summary>How far outside of the measured face what keeps its length lies.</summary>
    internal double NeutralAside => !Material.IsRolled ? Material.Aside : Measured switch
    {
        MeasuredFace.Outside => -Material.Thickness / 2,
        MeasuredFace.Inside => Material.Thickness / 2,
        _ => 0,
    };

    /// <summary>Lays the cone flat.</summary>
    /// <param name="pattern">The pattern.</param>
    /// <param name="fault">Why there is none.</param>
    public bool TryLayFlat(out WrapPattern pattern, out WrapFault fault)
    {
        (pattern, fault) = (null!, WrapFault.None);
        IConeDevelopment flat = IsRight ? new RightCone(this) : new ConeDevelopment(this);
        if (!flat.HasTop) fault = WrapFault.SheetTooThick;
        var end = Seam.Radians + 2 * Math.PI;
        var past = end + Lap / flat.GrowthAt(Seam.Radians);
        if (past - end > Math.PI) fault = WrapFault.FallsApart;
        if (fault != WrapFault.None) return false;

        var (below, above) = (flat.BaseArcs(Seam.Radians, end), flat.TopArcs(Seam.Radians, end));
        ImmutableArray<Segment> belowLap = Lap > 0 ? flat.BaseArcs(end, past) : [], aboveLap = Lap > 0 && !above.IsEmpty ? flat.TopArcs(end, past) : [];
        var outline = Outlined([.. below, .. belowLap], [.. above, .. aboveLap], flat.Top(Seam.Radians));
        var shape = Region.Of(outline);
        // What lies over itself, as a lap on a flat cone may, has less area than its outline goes round.
        if (shape.Parts().Length != 1 || outline.Area - shape.Area > Tolerance.Curve * outline.Length) fault = WrapFault.FallsApart;
        if (fault != WrapFault.None) return false;
        pattern = new()
        {
            Shape = shape,
            Generators = ConeWords.Generators(this, flat),
            EdgeNames =
            [
                new(ConeWords.Base(this), new(below)),
                .. above.IsEmpty ? (ImmutableArray<EdgeName>)[] : [new(ConeWords.Top(this), new Path(above).Reversed())],
                new(WrapWords.Seam(Seam), Path.Line(flat.Top(Seam.Radians), flat.Base(Seam.Radians))),
            ],
            Checks = ConeWords.Checks(this, flat),
            Notes = ConeWords.Notes(this, below, above),
            NeutralDiameter = new Path(below).Length / Math.PI,
        };
        return true;
    }

    private static Contour Outlined(ImmutableArray<Segment> below, ImmutableArray<Segment> above, Point point)
    {
        var (left, right) = above.IsEmpty ? (point, point) : (above[0].Start, above[^1].End);
        return new([
            .. below, Segment.Line(below[^1].End, right),
            .. above.IsEmpty ? [] : new Path(above).Reversed().Segments,
            Segment.Line(left, below[0].Start),
        ]);
    }
}

/// <summary>The face of a sheet to which sizes are measured.</summary>
public enum MeasuredFace
{
    Outside,
    Inside,
    Middle,
}

/// <summary>A cone's surface in the plane; angles in radians, the generator across from the seam upright, its foot at the origin.</summary>
internal interface IConeDevelopment
{
    /// <summary>Whether the middle of the sheet still reaches all round at the top.</summary>
    bool HasTop { get; }

    Point Base(double phi);

    Point Top(double phi);

    /// <summary>How fast the base goes on, in mm for each radian.</summary>
    double GrowthAt(double phi);

    ImmutableArray<Segment> BaseArcs(double from, double to);

    /// <summary>None for a cone with a point.</summary>
    ImmutableArray<Segment> TopArcs(double from, double to);
}
