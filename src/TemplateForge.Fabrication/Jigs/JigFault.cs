using TemplateForge.Geometry;

namespace TemplateForge.Fabrication;

/// <summary>Why a jig cannot be made, and where.</summary>
/// <param name="Kind">What is wrong.</param>
/// <param name="At">Where.</param>
/// <param name="Limit">The size in mm that would do, where there is one: the largest cutter, the largest offset, the largest pin.</param>
public readonly record struct JigFault(JigFaultKind Kind, Point At, double Limit = 0);

public enum JigFaultKind
{
    /// <summary>The cutter does not get into an inside corner, the bush cannot follow it; the limit is the largest cutter that can.</summary>
    InsideCorner,

    /// <summary>The guide rolls round an outside corner and the cut rounds it; the limit is the largest offset that leaves it whole.</summary>
    OutsideCorner,

    /// <summary>The finish line ends where the panel is only shown to end.</summary>
    EndsOnNoEdge,

    /// <summary>The opening closes to its mouth so much that the run-ons meet.</summary>
    MouthTooNarrow,

    /// <summary>Nothing or several pieces are left of the plate.</summary>
    FallsApart,

    /// <summary>A pin, stop or bush lies on the guide edge or nearer to it, or to another, than a plate holds.</summary>
    HoleTooNear,

    /// <summary>What locates stands too close together to locate anything; the limit is how far apart it must stand.</summary>
    LocatorsTooNear,

    /// <summary>A stop does not stand on a straight edge of the panel, or the two not on one edge.</summary>
    StopOffEdge,

    /// <summary>A pin is asked for in a datum that is no hole.</summary>
    NoHoleForPin,

    /// <summary>A hole is larger than the fits and bushes that are known; the limit is the largest.</summary>
    HoleTooLarge,

    /// <summary>Clamps have no room clear of the cut.</summary>
    NoRoomForClamps,

    /// <summary>What is to be drilled is no round hole.</summary>
    NotRound,
}
