using System.Collections.Immutable;
using TemplateForge.Geometry;

namespace TemplateForge.Fabrication;

/// <summary>A flat base whose edges are turned: a tray, a cover, an angle, a hole with a rim.</summary>
/// <remarks>
/// <code>
///            | flange            the base is measured over the outside of its flanges (or on the inside):
///            |                   its outline runs where the outer faces would meet, flanges stand on that line
///     =======+ - - -  outline
///       base
/// </code>
/// </remarks>
public sealed record FlangedSheet
{
    /// <exception cref="ArgumentOutOfRangeException">The thickness is not more than 0.</exception>
    /// <exception cref="ArgumentException">A flange stands on what is no side of the base, a fold is of another thickness, or a flange has no fold, or an edge has two flanges.</exception>
    public FlangedSheet(Region outline, double thickness, MeasuredBy measured, params IEnumerable<Flange> flanges)
    {
        if (!(thickness > 0)) throw new ArgumentOutOfRangeException(nameof(thickness), thickness, "A sheet is thicker than 0.");
        (Base, Thickness, Measured, Flanges) = (outline, thickness, measured, [.. flanges]);
        if (Flanges.Any(f => f.Folds.IsEmpty || f.Folds.Any(fold => fold.Bend.Thickness != thickness)))
            throw new ArgumentException(FormattableString.Invariant($"Every flange has a fold, and every fold is of the base's sheet, {thickness} mm."), nameof(flanges));
        var turned = Flanges.SelectMany(f => f.Edges).ToList();
        if (turned.Except(outline.Contours.SelectMany(c => c.Segments)).Any()) throw new ArgumentException("A flange stands on a side of the base.", nameof(flanges));
        if (turned.Distinct().Count() != turned.Count) throw new ArgumentException("An edge has one flange.", nameof(flanges));
    }

    public Region Base { get; }

    /// <summary>In mm.</summary>
    public double Thickness { get; }

    /// <summary>To where the base and its legs are measured at a bend.</summary>
    public MeasuredBy Measured { get; }

    /// <summary>Where two meet in a closed corner, the one that comes first laps over the edge of the other.</summary>
    public ImmutableArray<Flange> Flanges { get; }

    public CornerJoint Corners { get; init; } = CornerJoint.Mitred;
    public CornerRelief Relief { get; init; } = CornerRelief.Round;

    /// <summary>Diameter or width of the reliefs, in mm.</summary>
    /// <exception cref="ArgumentOutOfRangeException">It is not more than 0.</exception>
    public double ReliefSize
    {
        get;
        init => field = value > 0 ? value : throw new ArgumentOutOfRangeException(nameof(value), value, "A relief is wider than 0.");
    } = 3;

    /// <summary>Between flanges that meet at a corner, in mm.</summary>
    /// <exception cref="ArgumentOutOfRangeException">It is below 0.</exception>
    public double Gap
    {
        get;
        init => field = value >= 0 ? value : throw new ArgumentOutOfRangeException(nameof(value), value, "A gap is 0 or more.");
    }

    /// <summary>A side of a contour and all that go on from it without a corner, in their order.</summary>
    public static ImmutableArray<Segment> RunAlong(Contour contour, Segment side)
    {
        var sides = contour.Segments;
        var at = sides.IndexOf(side);
        var (first, last) = (at, at);
        while (last - first + 1 < sides.Length && FlangeCorner.IsSmooth(new(Side(last)), new(Side(last + 1)))) last++;
        while (last - first + 1 < sides.Length && FlangeCorner.IsSmooth(new(Side(first - 1)), new(Side(first)))) first--;
        return [.. Enumerable.Range(first, last - first + 1).Select(Side)];

        Segment Side(int i) => sides[(i % sides.Length + sides.Length) % sides.Length];
    }

    /// <summary>A relief is at least twice the thickness and 3 mm.</summary>
    /// <remarks>Common practice, no source; <see cref="ReliefHole"/> is what the airframe handbook wants.</remarks>
    public static double LeastRelief(double thickness) => Math.Max(2 * thickness, 3);
}

/// <summary>What is folded up along some edges of a base.</summary>
/// <param name="Edges">Sides of the base's contours; every side is one line or arc.</param>
/// <param name="Folds">The bend at the base, the leg after it, then any others: a return, a hem.</param>
public sealed record Flange(ImmutableArray<Segment> Edges, ImmutableArray<Fold> Folds)
{
    /// <summary>How many cuts reach in from the free edge of every arc, so that it need not stretch or shrink as a whole.</summary>
    public int ReliefCuts { get; init; }
}

/// <summary>How flanges are cut that meet at a corner. At an inner corner of the base, and beside an arc, they are left open.</summary>
public enum CornerJoint
{
    /// <summary>Their inner edges meet: a groove to weld on the outside.</summary>
    Mitred,

    /// <summary>One laps over the edge of the other.</summary>
    Closed,

    /// <summary>Each ends where its bend does.</summary>
    Open,
}

/// <summary>What is taken out of the corner where two bends meet, so that the sheet does not tear there.</summary>
public enum CornerRelief
{
    Round,
    Square,

    /// <summary>Nothing: for sheet so soft that it may tear a little.</summary>
    Tear,
}
