using System.Collections.Immutable;
using TemplateForge.Geometry;

namespace TemplateForge.Drawing;

/// <summary>Part of a circle or an ellipse: C + U cos t + V sin t.</summary>
internal static class ConicArc
{
    private const double Round = 1e-9;

    /// <param name="centre">C.</param>
    /// <param name="u">U, a half axis or its image.</param>
    /// <param name="v">V, that square to it or its image.</param>
    /// <param name="from">The t at the start, in radians.</param>
    /// <param name="to">The t at the end, more than at the start by a whole turn at most.</param>
    /// <param name="fit">How far, in mm, arcs may stray where it is no circle.</param>
    /// <returns>Nothing where it is seen on its edge or has no length.</returns>
    public static ImmutableArray<Segment> Segments(Point centre, Vector u, Vector v, double from, double to, double fit)
    {
        Point At(double t) => centre + u * Math.Cos(t) + v * Math.Sin(t);
        var (turn, size) = (to - from, Math.Max(u.Length, v.Length));
        if (!(size * turn > Tolerance.Merge) || Math.Abs(u.Cross(v)) <= Round * size * size) return [];
        if (Math.Abs(u.Length - v.Length) > Round * size || Math.Abs(u.Dot(v)) > Round * size * size)
            return SmoothArcs.Along(At, t => v * Math.Cos(t) - u * Math.Sin(t), from, to, fit).Segments;

        var count = turn > Math.PI * (1 + Round) ? 2 : 1;
        var bulge = Math.CopySign(Math.Min(1, Math.Tan(turn / count / 4)), u.Cross(v));
        var (start, end) = (At(from), Math.Abs(turn - 2 * Math.PI) < Round ? At(from) : At(to));
        if (count == 1) return start.DistanceTo(end) > Tolerance.Merge ? [Segment.Arc(start, end, bulge)] : [];
        var middle = At(from + turn / 2);
        return [Segment.Arc(start, middle, bulge), Segment.Arc(middle, end, bulge)];
    }
}
