namespace TemplateForge.Geometry;

/// <summary>How far a region reaches.</summary>
public static class Extremes
{
    /// <summary>The point that lies furthest in a direction; where several do, one of them.</summary>
    /// <exception cref="InvalidOperationException">The region is empty.</exception>
    /// <exception cref="ArgumentException">The direction has no length.</exception>
    public static Point Extreme(this Region region, Vector direction)
    {
        if (region.IsEmpty) throw new InvalidOperationException("An empty region reaches nowhere.");
        if (!(direction.Length > 0)) throw new ArgumentException("A direction has a length.", nameof(direction));
        var origin = region.Contours[0].Segments[0].Start;
        return region.Contours.SelectMany(c => c.Segments).Select(s => s.Extreme(direction)).MaxBy(p => (p - origin).Dot(direction));
    }
}
