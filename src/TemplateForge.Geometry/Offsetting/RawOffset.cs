namespace TemplateForge.Geometry;

/// <summary>The raw offset of a region: its boundary moved aside, as it runs before it is seen where it crosses itself.</summary>
/// <remarks>
/// <code>
///      E'____arc____S'        a corner that the boundary turns round: its pie
///       |  .     .  |
///   ────┘     V     └────
///
///            V                 a corner that it turns into: spokes back to the corner and out again
///    S'────/─\────E'
/// </code>
/// It bounds the sum of the region, the strip that each segment sweeps sideways, and the pie at every corner between two strips
/// that part; sideways into the region, strips and pies count negatively. Each nearest foot lies on a segment or at such a corner,
/// so a point is in the offset exactly when its winding number in the sum is 1 or more.
/// </remarks>
internal sealed class RawOffset(Arrangement arrangement, double distance)
{
    // Near a full reversal it cannot be told which way a corner turns. A pie is right for both, as it never reaches too far.
    private const double NearReversal = 0.05;

    public void Add(Contour contour)
    {
        var count = contour.Segments.Length;
        var strips = new Strip[count];
        for (var i = 0; i < count; i++) strips[i] = StripOf(contour.Segments[i]);
        for (var i = 0; i < count; i++)
        {
            var (strip, next) = (strips[i], strips[(i + 1) % count]);
            if (!strip.Stops) Add(strip.Left, strip.Arrived, strip.Bulge);
            Join(strip, next, contour.Segments[(i + 1) % count].Start);
        }
    }

    private Strip StripOf(Segment segment)
    {
        var (startDirection, endDirection) = (segment.StartDirection, segment.EndDirection);
        var left = segment.Start - startDirection.Left * distance;
        var arrived = segment.End - endDirection.Left * distance;
        var radius = segment.Radius + Math.Sign(segment.Bulge) * distance;
        var stops = !segment.IsLine && radius < Tolerance.Merge;
        return new(startDirection, endDirection, left, arrived, segment.Bulge, stops, stops ? segment.Centre : default);
    }

    private void Join(Strip strip, Strip next, Point corner)
    {
        var (from, to) = (strip.Stops ? strip.Centre : strip.Arrived, next.Stops ? next.Centre : next.Left);
        var turn = Math.Atan2(
            strip.EndDirection.Cross(next.StartDirection), strip.EndDirection.Dot(next.StartDirection));
        if (Math.Abs(turn) > Math.PI - NearReversal && turn * distance < 0) turn += Math.CopySign(2 * Math.PI, distance);
        if (from.DistanceTo(to) < Tolerance.Merge)
        {
            Add(from, to);
        }
        else if (turn * distance < 0)
        {
            Add(from, corner);
            Add(corner, to);
        }
        else
        {
            if (strip.Stops)
            {
                Add(from, corner);
                Add(corner, strip.Arrived);
            }
            AddPie(strip.Arrived, next.Left, corner, turn);
            if (next.Stops)
            {
                Add(next.Left, corner);
                Add(corner, to);
            }
        }
    }

    private void AddPie(Point from, Point to, Point corner, double turn)
    {
        if (Math.Abs(turn) <= Math.PI)
        {
            Add(from, to, Math.Tan(turn / 4));
            return;
        }
        var middle = corner + (from - corner).Turned(Angle.FromRadians(turn / 2));
        Add(from, middle, Math.Tan(turn / 8));
        Add(middle, to, Math.Tan(turn / 8));
    }

    private void Add(Point from, Point to, double bulge = 0) => arrangement.Add(from, to, bulge, count: 1);

    /// <summary>What a segment sweeps sideways: the far side runs from where it left to where it arrived.</summary>
    /// <param name="StartDirection">Of the segment.</param>
    /// <param name="EndDirection">Of the segment.</param>
    /// <param name="Left">Its start, moved aside.</param>
    /// <param name="Arrived">Its end, moved aside.</param>
    /// <param name="Bulge">Of the segment and of the far side alike.</param>
    /// <param name="Stops">An arc that would go past its centre stops there: the strip has no far side, only its two spokes.</param>
    /// <param name="Centre">Where it stops.</param>
    private readonly record struct Strip(
        Vector StartDirection, Vector EndDirection, Point Left, Point Arrived, double Bulge, bool Stops, Point Centre);
}
