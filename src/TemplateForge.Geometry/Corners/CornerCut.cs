namespace TemplateForge.Geometry;

/// <summary>What takes the place of a corner: the arc of a fillet, or the line of a chamfer.</summary>
/// <param name="Start">Where it leaves the side that arrives at the corner.</param>
/// <param name="End">Where it joins the side that leaves the corner.</param>
/// <param name="TakenBefore">Length of the arriving side that it takes the place of.</param>
/// <param name="TakenAfter">Length of the leaving side that it takes the place of.</param>
/// <param name="Segments">The line, or the arc, in two where it turns through more than half a circle.</param>
internal sealed record CornerCut(Place Start, Place End, double TakenBefore, double TakenAfter, Segment[] Segments)
{
    /// <summary>A corner that turns by less than this from turning right back, in radians, is a cusp.</summary>
    private const double Cusp = 1e-6;

    /// <summary>What is taken away from a corner that points out of the region, or filled at one that points into it.</summary>
    public Contour Tip(Segment[] arriving, Segment[] leaving) => new(
    [
        .. Place.Between(leaving, Place.StartOf(leaving), End),
        .. Segments.Reverse().Select(s => s.Reversed()),
        .. Place.Between(arriving, Start, Place.EndOf(arriving)),
    ]);

    /// <summary>1 where a corner turns left, as those do that point out of the region, and −1 where it turns right.</summary>
    public static int SideOf(Segment arriving, Segment leaving)
    {
        var (into, outOf) = (arriving.EndDirection, leaving.StartDirection);
        var turn = Math.Atan2(into.Cross(outOf), into.Dot(outOf));
        // In a cusp the directions do not tell; the side that bends more does, away from the other.
        var bend = Curvature(arriving) + Curvature(leaving);
        return Math.PI - Math.Abs(turn) < Cusp && bend != 0 ? -Math.Sign(bend) : turn > 0 ? 1 : -1;
    }

    private static double Curvature(Segment s) => Math.Sign(s.Bulge) / s.Radius;
}

/// <summary>Cuts the corner between two sides, at a share (0 to 1) of the size that is asked for; null where that cannot be.</summary>
internal delegate CornerCut? Cutter(Segment[] arriving, Segment[] leaving, double share);
