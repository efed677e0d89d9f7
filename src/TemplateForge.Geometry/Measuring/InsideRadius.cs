namespace TemplateForge.Geometry;

/// <summary>How round the cutter must be at the most that runs along the edge of a part.</summary>
public static class InsideRadius
{
    /// <summary>The least radius with which the boundary bends into the material, and where: there is none if it nowhere does.</summary>
    /// <param name="region">The part, material to the left of its contours.</param>
    /// <param name="radius">In mm; 0 at a sharp corner.</param>
    /// <param name="at">The corner, or the middle of the arc.</param>
    /// <remarks>
    /// <code>
    ///      │ material              A cutter works on the side of the boundary where no material is: round the outline of a
    ///      │                       part, or inside of its holes. Into the material bend the arcs that turn right and the
    ///       ' .                    corners that turn right by more than 1e-5 rad: the inside corners of an outline, all
    ///           ' ──────────       round a round hole, the corners of a square one.
    ///   cutter       material
    /// </code>
    /// A larger cutter leaves material at that place. A smaller one may still not get there, or get stuck between two sides:
    /// where it gets, <see cref="CutterReach"/> tells.
    /// </remarks>
    public static bool TrySmallestInsideRadius(this Region region, out double radius, out Point at)
    {
        (radius, at) = (double.PositiveInfinity, default);
        foreach (var (before, segment) in region.Contours.SelectMany(Joints.Of))
        {
            if (Joints.Turn(before, segment) < -CornerCutting.Tangent)
            {
                (radius, at) = (0, segment.Start);
                return true;
            }
            if (segment.Bulge < 0 && segment.Radius < radius) (radius, at) = (segment.Radius, segment.At(0.5));
        }
        return double.IsFinite(radius);
    }
}
