using System.Collections.Immutable;
using TemplateForge.Geometry;

namespace TemplateForge.Fabrication;

/// <summary>Where zinc and paint come off beside a weld, on both faces, and are to be put back after it.</summary>
/// <remarks>
/// <code>
///        ┌─────────────────────────────┐ sheet
///        │ - - - - - - - - - - - - - - │ limit: drawn
///        │            zone             │ width
///        │ ══════════ seam ═══════════ │
///        │            zone             │ width
///        │ - - - - - - - - - - - - - - │
///        └─────────────────────────────┘
/// </code>
/// Zinc that boils in an arc makes pores and fume; how wide is the shop's (common practice, no source).
/// </remarks>
public sealed record ZincStrip
{
    private ZincStrip(double width, Region zone, ImmutableArray<Path> limits) => (Width, Zone, Limits) = (width, zone, limits);

    /// <summary>On either side of the weld, in mm.</summary>
    public double Width { get; }

    /// <summary>What is bare then, on each face: no point of it further from the weld than the width. Empty where the sheet does not reach.</summary>
    public Region Zone { get; }

    /// <summary>Where it ends on the sheet; none where it takes in all of the sheet.</summary>
    public ImmutableArray<Path> Limits { get; }

    /// <summary>Beside a seam from end to end, and round its ends.</summary>
    /// <param name="seam">The seam.</param>
    /// <param name="width">On either side of it, in mm, more than 0.</param>
    /// <param name="sheet">The sheet that is stripped.</param>
    public static ZincStrip Beside(Path seam, double width, Region sheet) => On(seam.Slot(2 * width), width, sheet);

    /// <summary>Beside a seam all round an outline.</summary>
    /// <param name="outline">What is welded round.</param>
    /// <param name="width">On either side of it, in mm, more than 0.</param>
    /// <param name="sheet">The sheet that is stripped.</param>
    public static ZincStrip Round(Contour outline, double width, Region sheet)
    {
        var inside = Region.Of(outline);
        return On(inside.Offset(width).Subtract(inside.Offset(-width)), width, sheet);
    }

    /// <summary>All over a shape, as under a lap, and so far round it.</summary>
    /// <param name="shape">What is welded all over.</param>
    /// <param name="width">Past its outline, in mm, more than 0.</param>
    /// <param name="sheet">The sheet that is stripped.</param>
    public static ZincStrip Over(Region shape, double width, Region sheet) => On(shape.Offset(width), width, sheet);

    public ZincStrip Placed(Placement by) => new(Width, Zone.Placed(by), [.. Limits.Select(l => l.Placed(by))]);

    private static ZincStrip On(Region band, double width, Region sheet) => new(
        width,
        band.Intersect(sheet),
        [.. band.Contours.SelectMany(c => c.PartsInside(sheet)).Where(p => sheet.BoundaryDistanceTo(p.PointAlong(p.Length / 2)) > Tolerance.Length)]);
}
