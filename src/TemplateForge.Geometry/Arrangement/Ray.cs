namespace TemplateForge.Geometry;

/// <summary>A ray to the left from a point, towards −x.</summary>
internal static class Ray
{
    /// <summary>How often an edge crosses the ray downwards, less how often upwards: what it adds to the winding number there.</summary>
    /// <remarks>
    /// A run crosses when one end lies above the ray and the other on or below it. Runs that follow one another share the height
    /// where they meet, exactly, so a ray through a node or past the top of an arc counts right.
    /// </remarks>
    public static int Crossings(Curve curve, Point start, Point end, Point from)
    {
        var (first, second) = (curve.LevelPlace, curve.UprightPlace);
        if (first > second) (first, second) = (second, first);
        var (crossings, at) = (0, start);
        foreach (var place in (ReadOnlySpan<double>)[first, second])
        {
            if (!curve.Reaches(place)) continue;
            var extreme = curve.At(place);
            crossings += CrossingOfRun(curve, at, extreme, from);
            at = extreme;
        }
        return crossings + CrossingOfRun(curve, at, end, from);
    }

    /// <summary>The same for an edge that lies to the left of the point as a whole: what it crosses more than once cancels out.</summary>
    public static int CrossingsOfAllToTheLeft(Point start, Point end, Point from) => (start.Y > from.Y ? 1 : 0) - (end.Y > from.Y ? 1 : 0);

    /// <summary>The same for a part of a curve that nowhere turns back, neither in x nor in y.</summary>
    private static int CrossingOfRun(Curve curve, Point start, Point end, Point from)
    {
        var falls = start.Y > from.Y;
        if (falls == end.Y > from.Y) return 0;
        if (from.X <= Math.Min(start.X, end.X)) return 0;
        if (from.X < Math.Max(start.X, end.X) && curve.RightOf(from) > 0 == falls) return 0;
        return falls ? 1 : -1;
    }
}
