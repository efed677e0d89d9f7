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
    /// <exception cref="ArgumentException">A fold is of another thickness, or a flange has no fold, or an edge has two flanges.</exception>
    public FlangedSheet(Region outline, double thickness, MeasuredBy measured, params IEnumerable<Flange> flanges)
    {
        if (!(thickness > 0)) throw new ArgumentOutOfRangeException(nameof(thickness), thickness, "A sheet is thicker than 0.");
        (Base, Thickness, Measured, Flanges) = (outline, thickness, measured, [.. flanges]);
        if (Flanges.Any(f => f.Folds.IsEmpty || f.Folds.Any(fold => fold.Bend.Thickness != thickness)))
            throw new ArgumentException(FormattableString.Invariant($"Every flange has a fold, and every fold is of the base's sheet, {thickness} mm."), nameof(flanges));
        var turned = Flanges.SelectMany(f => f.Edges).ToList();
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
    public double ReliefSize { get; init; } = 3;

    /// <summary>Between flanges that meet at a corner, in mm.</summary>
    public double Gap { get; init; }

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
    /// <remarks>FAA-H-8083-31, chapter 4: about twice the radius of the bend, 1/8 in at least up to 0.064 in of sheet.</remarks>
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
