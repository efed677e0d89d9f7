using TemplateForge.Geometry;

namespace TemplateForge.Fabrication;

/// <summary>The hole of a plug weld: round, or a slot with round ends. Lengths in mm.</summary>
/// <param name="From">Its middle; of a slot the middle of one end.</param>
/// <param name="To">The same; of a slot the middle of the other end.</param>
/// <param name="Width">Its diameter, or the width of the slot.</param>
public readonly record struct PlugWeld(Point From, Point To, double Width)
{
    // Ends of one slot and its area are worked out from arcs, each for itself.
    private const double Alike = 1e-5;

    public Point Middle => From.MidpointTo(To);

    public bool IsRound => From == To;

    /// <returns>Whether the hole is round, or a slot with round ends.</returns>
    public static bool TryOf(Contour hole, out PlugWeld plug)
    {
        plug = default;
        if (hole.TryAsCircle(out var centre, out var radius))
        {
            plug = new(centre, centre, 2 * radius);
            return true;
        }
        var arcs = hole.Segments.Where(s => !s.IsLine).ToList();
        if (arcs.Count < 2) return false;
        var (from, to) = (arcs[0].Centre, arcs.Select(a => a.Centre).MaxBy(c => c.DistanceTo(arcs[0].Centre)));
        radius = arcs[0].Radius;
        if (arcs.Exists(a => Math.Abs(a.Radius - radius) > Alike || Math.Min(a.Centre.DistanceTo(from), a.Centre.DistanceTo(to)) > Alike)) return false;
        var stadium = Math.PI * radius * radius + 2 * radius * from.DistanceTo(to);
        plug = new(from, to, 2 * radius);
        return Math.Abs(hole.Area - stadium) <= Alike * hole.Length;
    }

    /// <summary>From the middle line of one to that of the other; of round ones from centre to centre.</summary>
    public (Point On, Point OnOther) NearestPoints(PlugWeld other)
    {
        if (IsRound && other.IsRound) return (From, other.From);
        if (IsRound) return (From, Segment.Line(other.From, other.To).Nearest(From));
        if (other.IsRound) return (Segment.Line(From, To).Nearest(other.From), other.From);
        return Segment.Line(From, To).NearestPoints(Segment.Line(other.From, other.To));
    }
}
