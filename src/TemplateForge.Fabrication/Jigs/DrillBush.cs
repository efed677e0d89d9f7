using System.Collections.Immutable;

namespace TemplateForge.Fabrication;

/// <summary>A press-fit drill bush. Lengths in mm.</summary>
/// <param name="Bore">Of the drill that it guides; F7, so that the drill runs free.</param>
/// <param name="Outside">Diameter; n6 in a hole H7, pressed in.</param>
/// <remarks>DIN 179 (from memory). Measure the bush that you buy.</remarks>
public sealed record DrillBush(double Bore, double Outside)
{
    private static readonly ImmutableArray<(double UpTo, double Outside)> Sizes =
        [(1, 3), (1.8, 4), (2.6, 5), (3.3, 6), (4, 7), (5, 8), (6, 10), (8, 12), (10, 15), (12, 18), (15, 22), (18, 26), (22, 30)];

    /// <summary>The largest drill that has a bush.</summary>
    public static double Largest => Sizes[^1].UpTo;

    /// <summary>The bush for a drill.</summary>
    /// <param name="drill">Diameter in mm, more than 0.</param>
    /// <param name="bush">What was found.</param>
    /// <returns>Whether there is one so large.</returns>
    public static bool TryFor(double drill, out DrillBush bush)
    {
        var outside = Sizes.FirstOrDefault(s => drill <= s.UpTo + Geometry.Tolerance.Length).Outside;
        bush = new(drill, outside);
        return drill > 0 && outside > 0;
    }
}
