using System.Collections.Immutable;
using SkiaSharp;
using TemplateForge.Geometry;

namespace TemplateForge.Drawing;

/// <summary>Lines and arcs as a Skia path. Skia's y runs down, so a point lands at <c>height − y</c>.</summary>
/// <remarks>
/// An arc of sweep θ becomes cubics whose handles are 4/3 tan(θ/4) radii long; they stray outwards by at most
/// r · 2/27 · sin⁶(θ/4) / cos²(θ/4) (the usual end-tangent approximation; derived in the test). Skia's own arcs are turned into
/// quadratics on the way to a PDF and stray by 0.0007 mm.
/// </remarks>
internal static class Curves
{
    /// <summary>How far a cubic may stray from its arc, in mm.</summary>
    private const double Stray = 1e-4;

    public static void Add(this SKPathBuilder builder, ImmutableArray<Segment> segments, double height, bool closed)
    {
        builder.MoveTo(On(segments[0].Start, height));
        for (var i = 0; i < segments.Length; i++)
        {
            // The closing line is drawn by Close, once.
            if (closed && i == segments.Length - 1 && segments[i].IsLine) break;
            if (segments[i].IsLine) builder.LineTo(On(segments[i].End, height));
            else builder.AddArc(segments[i], height);
        }
        if (closed) builder.Close();
    }

    private static void AddArc(this SKPathBuilder builder, Segment arc, double height)
    {
        var (pieces, sweep) = (Pieces(arc), Math.Abs(arc.Sweep.Radians));
        var handle = 4.0 / 3 * Math.Tan(sweep / pieces / 4) * arc.Radius;
        for (var i = 0; i < pieces; i++)
        {
            var (from, to) = ((double)i / pieces, (double)(i + 1) / pieces);
            builder.CubicTo(
                On(arc.At(from) + arc.DirectionAt(from) * handle, height),
                On(arc.At(to) - arc.DirectionAt(to) * handle, height),
                On(arc.At(to), height));
        }
    }

    private static int Pieces(Segment arc)
    {
        var (pieces, sweep) = (1, Math.Abs(arc.Sweep.Radians));
        while (arc.Radius * StrayPerRadius(sweep / pieces) > Stray) pieces++;
        return pieces;
    }

    private static double StrayPerRadius(double sweep)
    {
        var (sin, cos) = Math.SinCos(sweep / 4);
        return 2.0 / 27 * Math.Pow(sin, 6) / (cos * cos);
    }

    private static SKPoint On(Point p, double height) => new((float)p.X, (float)(height - p.Y));
}
