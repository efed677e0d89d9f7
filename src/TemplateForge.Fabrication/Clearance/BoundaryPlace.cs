using TemplateForge.Geometry;

namespace TemplateForge.Fabrication;

/// <summary>A place on the boundary of a clearance region.</summary>
/// <param name="At">The place.</param>
/// <param name="Out">The way square out of the region, of length 1.</param>
/// <param name="Label">The feature that is nearest there.</param>
internal readonly record struct BoundaryPlace(Point At, Vector Out, int Label)
{
    /// <summary>The way along the boundary, what is inside to the left.</summary>
    public Vector Along => Out.Left;

    /// <summary>How far the boundary turns on the way to another place, in radians, above 0 to the left.</summary>
    public double TurnTo(BoundaryPlace other) => Math.Atan2(Out.Cross(other.Out), Out.Dot(other.Out));
}
