using System.Collections.Immutable;

namespace TemplateForge.Fabrication;

/// <summary>A bolt or a rivet, and what is drilled for it.</summary>
/// <param name="Name">By which profiles call it: M8, rivet_1_8.</param>
/// <param name="Holes">Diameters in mm by what the hole is for; only those that the shop's table gives.</param>
public sealed record Fastener(string Name, ImmutableDictionary<FastenerHole, double> Holes)
{
    /// <returns>Whether the shop's table gives this hole.</returns>
    public bool TryHole(FastenerHole hole, out double diameter) => Holes.TryGetValue(hole, out diameter);
}

/// <summary>What a hole for a fastener is for.</summary>
public enum FastenerHole
{
    /// <summary>Goes through with the least play: ISO 273 fine, H12.</summary>
    ClearanceFine,

    /// <summary>ISO 273 medium, H13: what is meant where nobody says more.</summary>
    ClearanceMedium,

    /// <summary>ISO 273 coarse, H14.</summary>
    ClearanceCoarse,

    /// <summary>Before a thread is tapped.</summary>
    Tapping,

    /// <summary>For a rivet to be driven or drawn in.</summary>
    Rivet,
}
