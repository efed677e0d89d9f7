namespace TemplateForge.Fabrication;

/// <summary>Where the guide edge lies so that the tool that runs along it leaves the finish line. Lengths in mm.</summary>
/// <remarks>
/// <code>
///     plate, on the metal that stays │←     guide / 2     →·           the guide's middle runs guide / 2 off the plate's edge,
///     ───────────────────────────────┤         │← cut / 2 →·           the cut reaches back by cut / 2 from there
///                                    │← offset →│ finish line          offset = (guide − cut) / 2, on the side of the metal that stays
/// </code>
/// For a closed hole as for an open notch. A shroud's radius less half the kerf is the same formula.
/// </remarks>
public sealed record GuideEdge
{
    private GuideEdge(GuideKind kind, double guide, double cut) => (Kind, Guide, Cut) = (kind, guide, cut);

    public GuideKind Kind { get; }

    /// <summary>Diameter of what runs along the plate; 0 of a scriber.</summary>
    public double Guide { get; }

    /// <summary>Diameter of the cutter, or width of the kerf; 0 of a scriber.</summary>
    public double Cut { get; }

    /// <summary>How far the guide edge stands back from the finish line, on the metal that stays: (guide − cut) / 2.</summary>
    public double Offset => (Guide - Cut) / 2;

    public static GuideEdge Scriber { get; } = new(GuideKind.Scriber, 0, 0);

    /// <param name="bush">Outside diameter of the guide bush, or of a bearing as large as its cutter.</param>
    /// <param name="cutter">Diameter of the cutter, more than 0 and no more than the bush.</param>
    /// <exception cref="ArgumentOutOfRangeException">The cutter does not pass through the bush, or is none.</exception>
    public static GuideEdge Bush(double bush, double cutter) => Guided(GuideKind.Bush, bush, cutter);

    /// <param name="shroud">Outside diameter of the torch's shroud.</param>
    /// <param name="kerf">Width of the slot that it cuts, more than 0 and no more than the shroud.</param>
    /// <exception cref="ArgumentOutOfRangeException">The kerf is wider than the shroud, or is none.</exception>
    public static GuideEdge Shroud(double shroud, double kerf) => Guided(GuideKind.Shroud, shroud, kerf);

    private static GuideEdge Guided(GuideKind kind, double guide, double cut) =>
        cut > 0 && guide >= cut && double.IsFinite(guide)
            ? new(kind, guide, cut)
            : throw new ArgumentOutOfRangeException(nameof(cut), cut, $"What cuts is more than 0 and no wider than what guides it, {guide}.");

    /// <summary>Least distance in mm from the cut to a clamp: a router's base must pass, a hand with a scriber or a torch less.</summary>
    /// <remarks>Half the base of a common hand router, some 160 mm, and 10 mm to spare. Common practice, no source.</remarks>
    public double ClampsClear => Kind == GuideKind.Bush ? 90 : 40;
}

/// <summary>What runs along the edge of a jig plate. One jig has one, and says it.</summary>
public enum GuideKind
{
    /// <summary>A scriber or a file: the guide edge is the finish line itself.</summary>
    Scriber,

    /// <summary>A guide bush round a router's cutter.</summary>
    Bush,

    /// <summary>The shroud round a torch's nozzle.</summary>
    Shroud,

    /// <summary>Nothing: the plate has bushes for drills.</summary>
    Drill,
}
