using TemplateForge.Geometry;

namespace TemplateForge.Drawing;

/// <summary>Arcs as the cubics that a PDF and a picture have in their place.</summary>
/// <remarks>
/// An arc of sweep θ becomes cubics whose handles are 4/3 tan(θ/4) radii long; they stray outwards by at most
/// r · 2/27 · sin⁶(θ/4) / cos²(θ/4) (the usual end-tangent approximation; derived in the test).
/// </remarks>
internal static class Curves
{
    /// <summary>How far a cubic may stray from its arc, in mm.</summary>
    private const double Stray = 1e-4;

    public static IEnumerable<Cubic> Of(Segment arc)
    {
        var (pieces, sweep) = (Pieces(arc), Math.Abs(arc.Sweep.Radians));
        var handle = 4.0 / 3 * Math.Tan(sweep / pieces / 4) * arc.Radius;
        var (from, leaving) = (arc.Start, arc.StartDirection);
        for (var i = 1; i <= pieces; i++)
        {
            var share = (double)i / pieces;
            var (to, arriving) = i == pieces ? (arc.End, arc.EndDirection) : (arc.At(share), arc.DirectionAt(share));
            yield return new(from + leaving * handle, to - arriving * handle, to);
            (from, leaving) = (to, arriving);
        }
    }

    private static int Pieces(Segment arc)
    {
        var (pieces, sweep, radius) = (1, Math.Abs(arc.Sweep.Radians), arc.Radius);
        while (radius * StrayPerRadius(sweep / pieces) > Stray) pieces++;
        return pieces;
    }

    private static double StrayPerRadius(double sweep)
    {
        var (sin, cos) = Math.SinCos(sweep / 4);
        var cubed = sin * sin * sin;
        return 2.0 / 27 * (cubed * cubed) / (cos * cos);
    }
}

/// <summary>A cubic that goes on from where the one before it ended.</summary>
internal readonly record struct Cubic(Point First, Point Second, Point End);
