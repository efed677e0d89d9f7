using System.Collections.Immutable;

namespace TemplateForge.Geometry;

/// <summary>An area of the plane: outer contours (counter-clockwise) and their holes (clockwise), none touching another's inside.</summary>
/// <remarks>
/// A region is simple: no contour crosses itself or another, none is thinner than <see cref="Tolerance.Merge"/>. Loose contours
/// become a region through <c>Region.FromContours</c>; every operation answers with one. It may have several separate parts, or none.
/// </remarks>
public sealed partial class Region
{
    /// <summary>Takes contours that are known to be simple and turned the right way: the answer of an operation.</summary>
    internal Region(ImmutableArray<Contour> contours) => Contours = contours;

    public static Region Empty { get; } = new([]);

    public ImmutableArray<Contour> Contours { get; }
    public bool IsEmpty => Contours.IsEmpty;
    public double Area => Contours.Sum(c => c.SignedArea);

    /// <summary>Length of the whole boundary, holes included.</summary>
    public double Length => Contours.Sum(c => c.Length);

    /// <exception cref="InvalidOperationException">The region is empty.</exception>
    public Box Bounds => Box.Around(Contours.Select(c => c.Bounds));

    /// <summary>Moved, turned, mirrored, scaled. What was one point within the tolerance may be two when it is made larger.</summary>
    public Region Placed(Placement by)
    {
        var placed = Contours.Select(c => by.Mirrors ? c.Placed(by).Reversed() : c.Placed(by));
        return by.Scale > 1 + 1e-9 ? FromContours(placed) : new([.. placed]);
    }
}
