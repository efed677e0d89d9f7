using System.Collections.Immutable;
using TemplateForge.Geometry;

namespace TemplateForge.Fabrication;

/// <summary>Where clamps hold a plate on its work: over metal that stays, near the plate's edge, clear of the cut and as far apart as can be.</summary>
public static class ClampPlaces
{
    /// <summary>Fewer let the plate turn.</summary>
    public const int Least = 2;

    /// <summary>Diameter of a clamp's foot, in mm.</summary>
    public const double Foot = 30;

    private const int Most = 4;
    private const double LeastApart = 60;
    private const double Step = 10;

    /// <param name="held">The plate as far as it lies on metal that stays.</param>
    /// <param name="cuts">Where the tool cuts.</param>
    /// <param name="clear">Least distance from a cut to a foot's edge, in mm.</param>
    /// <param name="kept">Pins, stops and bushes, which a foot does not cover.</param>
    public static ImmutableArray<Point> On(Region held, ImmutableArray<Path> cuts, double clear, ImmutableArray<Point> kept)
    {
        if (held.IsEmpty) return [];
        var free = held.Offset(-Foot / 2 - Tolerance.Length).Contours.Where(c => c.IsCounterClockwise).SelectMany(c => c.PointsEvery(Step))
            .Where(p => cuts.All(c => c.Segments.All(s => s.DistanceTo(p) >= clear + Foot / 2)) && kept.All(k => k.DistanceTo(p) >= Foot))
            .ToList();
        var places = ImmutableArray.CreateBuilder<Point>();
        var middle = held.Bounds.Centre;
        while (places.Count < Most && free.Count > 0)
        {
            var next = free.MaxBy(p => places.Count == 0 ? p.DistanceTo(middle) : places.Min(o => o.DistanceTo(p)));
            if (places.Any(o => o.DistanceTo(next) < LeastApart)) break;
            places.Add(next);
        }
        return places.ToImmutable();
    }
}
