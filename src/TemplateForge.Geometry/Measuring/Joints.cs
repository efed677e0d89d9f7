namespace TemplateForge.Geometry;

/// <summary>Where one segment of a contour goes over into the next.</summary>
internal static class Joints
{
    /// <summary>A turn, in radians, that rounding may have made of a full reversal or of the opposite one.</summary>
    private const double Reversal = 1e-6;

    /// <summary>Every segment of a contour behind the one that it follows.</summary>
    public static IEnumerable<(Segment Before, Segment After)> Of(Contour contour)
    {
        var before = contour.Segments[^1];
        foreach (var after in contour.Segments)
        {
            yield return (before, after);
            before = after;
        }
    }

    /// <summary>How far the direction turns at the joint, in radians, positive to the left: there a contour has a corner that points outwards.</summary>
    public static double Turn(Segment before, Segment after)
    {
        var (arriving, leaving) = (before.EndDirection, after.StartDirection);
        var turn = Math.Atan2(arriving.Cross(leaving), arriving.Dot(leaving));
        if (Math.Abs(turn) < Math.PI - Reversal) return turn;
        // Back along itself: what bends more to the right on arriving than to the left on leaving has its left hand in the tip.
        return Curvature(before) + Curvature(after) < 0 ? Math.Abs(turn) : -Math.Abs(turn);
    }

    private static double Curvature(Segment s) => s.IsLine ? 0 : Math.Sign(s.Bulge) / s.Radius;
}
