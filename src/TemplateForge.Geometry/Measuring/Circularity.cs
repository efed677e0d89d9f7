namespace TemplateForge.Geometry;

/// <summary>Whether a contour is a circle, which many formats write in one piece.</summary>
public static class Circularity
{
    /// <summary>Whether all segments are arcs of one circle, within <see cref="Tolerance.Length"/>, and go round it once.</summary>
    public static bool TryAsCircle(this Contour contour, out Point centre, out double radius)
    {
        (centre, radius) = (default, 0);
        var turns = Math.Sign(contour.Segments[0].Bulge);
        if (turns == 0 || contour.Segments.Any(s => Math.Sign(s.Bulge) != turns)) return false;
        if (Math.Abs(contour.Segments.Sum(s => Math.Abs(s.Sweep.Radians)) - 2 * Math.PI) > 1e-3) return false;

        var balance = new Region([contour]).Centroid();
        var size = contour.Length / (2 * Math.PI);
        if (contour.Segments.Any(s => Strays(s.Start) || Strays(s.At(0.5)))) return false;
        (centre, radius) = (balance, size);
        return true;

        bool Strays(Point p) => Math.Abs(p.DistanceTo(balance) - size) > Tolerance.Length;
    }
}
