using System.Collections.Immutable;
using TemplateForge.Geometry;

namespace TemplateForge.Fabrication;

/// <summary>Whether a guide can follow its edge so that the cut leaves the finish line everywhere.</summary>
/// <remarks>
/// The guide edge is the finish line moved by the offset into the metal that stays. Its inside radii are larger by the offset, so a bush gets
/// into a corner exactly where its cutter does: inside radius ≥ cutter / 2. Its outside radii are smaller by the offset: a metal corner of
/// a radius below the offset is gone from the guide edge, the guide rolls round a point and the cut rounds the corner.
/// </remarks>
public static class Following
{
    // Within this, in mm, a fault has its place near what is wanted.
    private const double Fine = 1e-4;

    /// <summary>Everything that cannot be followed, each corner once.</summary>
    /// <param name="waste">The side on which the tool works.</param>
    /// <param name="edge">What runs along the plate.</param>
    /// <param name="within">Where it matters.</param>
    public static ImmutableArray<JigFault> Faults(Region waste, GuideEdge edge, Box within)
    {
        if (edge.Kind == GuideKind.Scriber) return [];
        var largest = new Lazy<double>(() => Largest(edge.Cut / 2, r => Left(waste.ClearedBy(r).LeftOver, within).IsEmpty));
        var widest = new Lazy<double>(() => Largest(edge.Offset, r => Left(waste.CutOutBy(r).LeftOver, within).IsEmpty));
        return
        [
            .. Left(waste.ClearedBy(edge.Cut / 2).LeftOver, within).Select(at => new JigFault(JigFaultKind.InsideCorner, at, 2 * largest.Value)),
            .. edge.Offset > Fine
                ? Left(waste.CutOutBy(edge.Offset).LeftOver, within).Select(at => new JigFault(JigFaultKind.OutsideCorner, at, widest.Value))
                : [],
        ];
    }

    private static ImmutableArray<Point> Left(Region leftOver, Box within) =>
        [.. leftOver.Parts().Where(p => p.Bounds.Width + p.Bounds.Height > Fine).Select(p => Tip(p)).Where(within.Contains)];

    // The point of the left-over piece in which two of its sides meet at the finish line: its sharpest, which is the corner itself.
    private static Point Tip(Region part)
    {
        var corners = part.Corners();
        if (corners.IsEmpty) return part.Bounds.Centre;
        var centre = part.Centroid();
        return corners.Length > 2 ? corners.MinBy(c => c.DistanceTo(centre)) : part.Contours[0].Segments.MaxBy(s => s.Length).At(0.5);
    }

    // The largest radius below one that fails which does not, to a hundredth, rounded down; 0 where none does.
    private static double Largest(double fails, Func<double, bool> goes)
    {
        var (low, high) = (0.0, fails);
        while (high - low > 0.005)
        {
            var middle = (low + high) / 2;
            if (goes(middle)) low = middle;
            else high = middle;
        }
        return Math.Floor(low * 100) / 100;
    }
}
