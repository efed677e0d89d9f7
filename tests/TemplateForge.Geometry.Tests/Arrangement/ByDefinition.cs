namespace TemplateForge.Geometry.Tests;

/// <summary>Inside and distance straight from their definitions, sharing nothing with what they judge.</summary>
internal static class ByDefinition
{
    /// <summary>Distance to the boundary, negative inside.</summary>
    public static double SignedDistance(this Region region, Point p) =>
        region.Encloses(p) ? -region.DistanceToBoundary(p) : region.DistanceToBoundary(p);

    public static double DistanceToBoundary(this Region region, Point p)
    {
        var nearest = double.PositiveInfinity;
        foreach (var contour in region.Contours)
        {
            foreach (var segment in contour.Segments) nearest = Math.Min(nearest, segment.DistanceFrom(p));
        }
        return nearest;
    }

    /// <summary>Adds up the angles under which the boundary is seen.</summary>
    public static bool Encloses(this Region region, Point p) => Math.Round(region.Contours.Sum(c => c.TurnsRound(p))) >= 1;

    public static double TurnsRound(this Contour contour, Point p)
    {
        var turns = 0.0;
        foreach (var s in contour.Segments)
        {
            var (a, b) = (s.Start - p, s.End - p);
            var cross = a.Cross(b);
            // From a point on its chord an arc is seen under half a turn, the way that it turns.
            if (cross == 0 && !s.IsLine && a.Dot(b) < 0)
            {
                turns += Math.Sign(s.Bulge) / 2.0;
                continue;
            }
            turns += Math.Atan2(cross, a.Dot(b)) / (2 * Math.PI);
            // Between chord and arc it is seen the other way round.
            if (cross * s.Bulge < 0 && s.OutsideCircle(p) < 0) turns += Math.Sign(s.Bulge);
        }
        return turns;
    }

    public static double DistanceFrom(this Segment s, Point p)
    {
        // The foot is on the segment when the point lies between the normals at its ends.
        if ((p - s.Start).Dot(s.StartDirection) < 0 || (p - s.End).Dot(s.EndDirection) > 0)
            return Math.Min(p.DistanceTo(s.Start), p.DistanceTo(s.End));
        return Math.Abs(s.IsLine ? s.StartDirection.Cross(p - s.Start) : s.OutsideCircle(p));
    }

    /// <summary>Distance outside the circle of an arc, negative inside; without its centre, which a flat arc has far away.</summary>
    private static double OutsideCircle(this Segment arc, Point p)
    {
        var q = p - arc.Start;
        var towardsCentre = arc.StartDirection.Left * Math.Sign(arc.Bulge);
        var power = q.LengthSquared / arc.Radius - 2 * q.Dot(towardsCentre);
        return power / (1 + Math.Sqrt(Math.Max(0, 1 + power / arc.Radius)));
    }

    /// <summary>Points spread along the boundary, with the direction there.</summary>
    public static IEnumerable<(Point Point, Vector Along)> BoundarySamples(this Region region, int perSegment) =>
        from contour in region.Contours
        from segment in contour.Segments
        from i in Enumerable.Range(0, perSegment)
        let share = (i + 0.5) / perSegment
        select (segment.At(share), segment.DirectionAt(share));
}
