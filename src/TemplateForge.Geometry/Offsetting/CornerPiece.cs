namespace TemplateForge.Geometry;

/// <summary>Corners that are mitred or flat.</summary>
internal static class CornerPiece
{
    /// <summary>Adds the outer side of the piece, from where one strip arrived to where the next one left.</summary>
    /// <remarks>
    /// The bisector meets both tangents at 1 / cos(θ / 2) = √(2 / (1 + cos θ)) distances from the corner. Towards a full reversal
    /// the flat piece gets as thin as it takes to be told on which side of it the corner parts; so neither answer is wrong.
    /// </remarks>
    public static void Add(
        Arrangement arrangement, Point corner, in Strip strip, in Strip next, double distance, CornerStyle style)
    {
        var cosine = strip.EndDirection.Dot(next.StartDirection);
        var reach = Math.Sqrt(2 / (1 + cosine));
        if (style.Limit > 1 && Math.Abs(distance) * (reach - style.Limit) <= Tolerance.Merge)
        {
            var tip = corner - (strip.EndDirection + next.StartDirection).Left * (distance / (1 + cosine));
            arrangement.Add(strip.Arrived, tip, bulge: 0, count: 1);
            arrangement.Add(tip, next.Left, bulge: 0, count: 1);
            return;
        }
        arrangement.Add(strip.Arrived, next.Left, bulge: 0, count: 1);
    }

    /// <summary>Whether the kite of a short cut lies wholly in both strips, so that leaving it out leaves one.</summary>
    /// <remarks>
    /// Its far corners lie d sin θ along either strip. Beyond the end of one, or beside an arc, it may lie in the other alone: there a
    /// pie at that end holds it all the same, but not the smaller piece of a mitred or flat corner.
    /// </remarks>
    public static bool LeavesKite(in Strip strip, in Strip next, double sine, double cosine, double distance)
    {
        if (strip.Bulge != 0 || next.Bulge != 0 || cosine < 0) return false;
        var along = distance * sine;
        return along * along <= Math.Min((strip.Arrived - strip.Left).LengthSquared, (next.Arrived - next.Left).LengthSquared);
    }
}
