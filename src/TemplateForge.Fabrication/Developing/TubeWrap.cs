using System.Collections.Immutable;
using TemplateForge.Geometry;

namespace TemplateForge.Fabrication;

/// <summary>A pattern for a round tube: its two ends and the holes in its wall.</summary>
/// <remarks>
/// <code>
///     y  upper end                     x = (φ − seam) (D / 2 + half the paper)
///     ^ .--.      .--.      .--        y along the tube's axis, 0 at the lower end's point on it
///     | |   '.__.'    '.__.'  |lap
///     |_|_____________________|__> x   0 at the seam
/// </code>
/// Curves are arcs within <see cref="Tolerance.Curve"/> of the true ones.
/// </remarks>
public sealed record TubeWrap
{
    /// <param name="outsideDiameter">In mm.</param>
    /// <param name="wall">In mm; 0 for the ordinates of the textbooks.</param>
    /// <param name="length">Along the axis, from the lower end's point on it to the upper one's.</param>
    /// <param name="lower">The lower end.</param>
    /// <param name="upper">The upper end.</param>
    /// <param name="material">What the pattern is cut from.</param>
    /// <exception cref="ArgumentOutOfRangeException">There is no such tube, or an end does not fit it.</exception>
    public TubeWrap(double outsideDiameter, double wall, double length, TubeEnd lower, TubeEnd upper, WrapMaterial material)
    {
        if (!(outsideDiameter > 0)) throw new ArgumentOutOfRangeException(nameof(outsideDiameter), outsideDiameter, "A tube has a diameter.");
        if (!(wall >= 0 && 2 * wall < outsideDiameter)) throw new ArgumentOutOfRangeException(nameof(wall), wall, "A tube is hollow.");
        foreach (var (end, name) in ((TubeEnd, string)[])[(lower, nameof(lower)), (upper, nameof(upper))])
        {
            if (end is FishMouth mouth && !mouth.Takes(outsideDiameter / 2)) throw new ArgumentOutOfRangeException(name, end, "A tube sits on no smaller one.");
            if (end is FishMouth joint && !(joint.Angle >= FishMouth.Angles.Least && joint.Angle <= FishMouth.Angles.Most))
                throw new ArgumentOutOfRangeException(name, end, "A mouth at that angle is no joint.");
            if (end is Mitre mitre && !(mitre.Angle >= Angle.Zero && mitre.Angle <= Mitre.Steepest)) throw new ArgumentOutOfRangeException(name, end, "A mitre is no steeper.");
        }
        (OutsideDiameter, Wall, Length, Lower, Upper, Material) = (outsideDiameter, wall, length, lower, upper, material);
    }

    public double OutsideDiameter { get; }
    public double Wall { get; }
    public double Length { get; }
    public TubeEnd Lower { get; }
    public TubeEnd Upper { get; }
    public WrapMaterial Material { get; }

    public ImmutableArray<TubeHole> Holes { get; init; } = [];

    /// <summary>Where something stands on the outside, and what it is called.</summary>
    public ImmutableArray<(string Label, TubeHole Outline)> Footprints { get; init; } = [];

    /// <summary>Where the pattern begins and ends.</summary>
    public Angle Seam { get; init; } = Angle.HalfTurn;

    /// <summary>Width of a tab past the seam, in mm: to tape the paper, to lap the sheet.</summary>
    /// <exception cref="ArgumentOutOfRangeException">It is less than none.</exception>
    public double Lap
    {
        get;
        init => field = value >= 0 && double.IsFinite(value) ? value : throw new ArgumentOutOfRangeException(nameof(value), value, "A tab is 0 mm wide or more.");
    }

    /// <summary>How many generators are drawn round it, a multiple of 4.</summary>
    /// <exception cref="ArgumentOutOfRangeException">It is none.</exception>
    public int Divisions
    {
        get;
        init => field = value > 0 && value % 4 == 0 ? value : throw new ArgumentOutOfRangeException(nameof(value), value, "A tube is divided quarter by quarter.");
    } = 12;

    /// <summary>Radius at which the pattern keeps its length.</summary>
    public double Neutral => OutsideDiameter / 2 + Material.Aside;

    public double Girth => 2 * Math.PI * Neutral;

    private double Inside => OutsideDiameter / 2 - Wall;

    /// <summary>Height of the upper end at a generator, in mm from the lower end's point on the axis.</summary>
    public double UpperAt(Angle phi) => Length + Upper.Reach(Inside, OutsideDiameter / 2, phi.Radians);

    /// <summary>Height of the lower end at a generator.</summary>
    public double LowerAt(Angle phi) => -Lower.Reach(Inside, OutsideDiameter / 2, phi.Radians);

    /// <summary>The shortest generator, which must be more than 0 or the ends run into each other; found at samples of half a degree.</summary>
    public double Shortest => Enumerable.Range(0, 720).Select(i => Angle.FromDegrees(i / 2.0)).Min(phi => UpperAt(phi) - LowerAt(phi));

    /// <summary>Lays the tube flat.</summary>
    /// <param name="pattern">The pattern.</param>
    /// <param name="fault">Why there is none.</param>
    public bool TryLayFlat(out WrapPattern pattern, out WrapFault fault)
    {
        (pattern, fault) = (null!, WrapFault.None);
        if (Shortest <= Tolerance.Length) fault = WrapFault.EndsMeet;
        else if (Holes.Any(h => !h.FitsInside(Inside))) fault = WrapFault.HoleTooLarge;
        else if (Footprints.Any(f => !f.Outline.FitsInside(OutsideDiameter / 2))) fault = WrapFault.FootprintTooLarge;
        if (fault != WrapFault.None) return false;

        var (lower, upper) = (Around(isUpper: false), Around(isUpper: true));
        // All that a hole may reach into on either side of the seam; of it the pattern is one turn and the lap.
        var wide = Region.Of(Outlined(lower, upper));
        var outline = wide.Intersect(Region.Of(Outline.Rectangle(new(new(0, lower.Bounds.Min.Y - 1), new(Girth + Lap, upper.Bounds.Max.Y + 1)))));
        var holes = ImmutableArray.CreateBuilder<Region>();
        foreach (var hole in Holes)
        {
            var cut = Region.Of(Placed(hole, hole.Outlined(Inside, OutsideDiameter / 2, Neutral)));
            if (!cut.Subtract(wide).IsEmpty) fault = WrapFault.HoleInTheEnd;
            if (holes.Any(other => !Round(other).Intersect(cut).IsEmpty)) fault = WrapFault.HolesMeet;
            holes.Add(cut);
        }
        if (fault != WrapFault.None) return false;
        var shape = outline.Subtract(holes.Select(Round));
        if (shape.IsEmpty || shape.Parts().Length != 1) fault = WrapFault.FallsApart;
        if (fault != WrapFault.None) return false;

        var footprints = Footprints.Select(f => new GuideLine(
            f.Label, Round(Region.Of(Placed(f.Outline, f.Outline.Outlined(OutsideDiameter / 2, OutsideDiameter / 2, Neutral)))).Intersect(outline)));
        pattern = new()
        {
            Shape = shape,
            Generators = TubeWords.Generators(this),
            EdgeNames =
            [
                new($"lower end: {Lower.Title}", lower),
                new($"upper end: {Upper.Title}", upper.Reversed()),
                new(WrapWords.Seam(Seam), Path.Line(At(Seam.Radians, UpperAt(Seam)), At(Seam.Radians, LowerAt(Seam)))),
            ],
            Footprints = [.. footprints.Where(f => !f.Along.IsEmpty)],
            Checks = TubeWords.Checks(this),
            Notes = TubeWords.Notes(this),
            NeutralDiameter = 2 * Neutral,
        };
        return true;
    }

    /// <summary>A place of the pattern: the angle may lie past the seam.</summary>
    internal Point At(double phi, double height) => new((phi - Seam.Radians) * Neutral, height);

    // A hole is drawn about its own generator; here it comes to lie on the pattern, where that lies past the seam or not.
    private Contour Placed(TubeHole hole, Contour contour)
    {
        var past = (hole.Round - Seam).Radians / (2 * Math.PI);
        return contour.Placed(Placement.Moved(new((past - Math.Floor(past)) * Girth, 0)));
    }

    // With its copies a girth before and after: what runs over one edge of the pattern comes in at the other, and into the lap.
    private Region Round(Region hole) => Combination.Union(
        ((double[])[-1, 0, 1]).Select(turns => hole.Placed(Placement.Moved(new(turns * Girth, 0)))));

    // One turn from each edge: the turn itself, that before and that after it.
    private Contour Outlined(Path lower, Path upper)
    {
        var (below, above) = (Turns(lower), Turns(upper));
        return new([.. below, Segment.Line(below[^1].End, above[^1].End), .. new Path(above).Reversed().Segments, Segment.Line(above[0].Start, below[0].Start)]);
    }

    private ImmutableArray<Segment> Turns(Path end) =>
        [.. ((double[])[-1, 0, 1]).SelectMany(turns => end.Placed(Placement.Moved(new(turns * Girth, 0))).Segments)];

    // An end from seam to seam. It is smooth between its corners.
    private Path Around(bool isUpper)
    {
        var (from, to) = (Seam.Radians, Seam.Radians + 2 * Math.PI);
        var (end, height) = isUpper ? (Upper, (Func<Angle, double>)UpperAt) : (Lower, LowerAt);
        if (end.IsSquare) return Path.Line(At(from, height(Angle.Zero)), At(to, height(Angle.Zero)));
        var corners = end.Corners(Inside, OutsideDiameter / 2).Select(quarter => from + WrapWords.Turn(end.Turned + quarter * Angle.QuarterTurn - Seam) * Math.PI / 180);
        const double least = 1e-6;
        List<double> breaks = [from, .. corners.Where(c => c > from + least && c < to - least).Order(), to];
        return new(breaks.Zip(breaks.Skip(1)).SelectMany(b =>
            SmoothArcs.Along(phi => At(phi, height(Angle.FromRadians(phi))), b.First, b.Second).Segments));
    }
}

/// <summary>Why a tube or a cone cannot be laid flat.</summary>
public enum WrapFault
{
    None,

    /// <summary>The ends of the tube run into each other.</summary>
    EndsMeet,

    /// <summary>A hole is wider than the tube inside, or runs along its wall.</summary>
    HoleTooLarge,

    /// <summary>What stands on the tube is wider than it.</summary>
    FootprintTooLarge,

    /// <summary>A hole runs out of an end.</summary>
    HoleInTheEnd,

    /// <summary>Two holes run into each other.</summary>
    HolesMeet,

    /// <summary>What is left is in several parts.</summary>
    FallsApart,

    /// <summary>The sheet is too thick for the small end of a cone.</summary>
    SheetTooThick,
}
