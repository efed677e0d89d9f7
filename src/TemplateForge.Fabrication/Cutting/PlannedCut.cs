using System.Collections.Immutable;
using TemplateForge.Geometry;

namespace TemplateForge.Fabrication;

/// <summary>One cut from the place where the torch is lit to where it goes out.</summary>
/// <param name="Role">What it makes.</param>
/// <param name="LeadIn">From the pierce to the path; none of a cut that begins off the panel.</param>
/// <param name="Run">The path along the part, overcut or run-outs included.</param>
/// <param name="LeadOut">Away from the part; none where the torch goes out on the path.</param>
public sealed record PlannedCut(CutRole Role, ImmutableArray<Segment> LeadIn, ImmutableArray<Segment> Run, ImmutableArray<Segment> LeadOut)
{
    /// <summary>All of it, in the order in which it is cut.</summary>
    public Path Path { get; } = new([.. LeadIn, .. Run, .. LeadOut]);

    /// <summary>Where the torch is lit.</summary>
    public Point Pierce => Path.Start;

    /// <summary>Whether it goes through metal there, not in from the edge.</summary>
    public bool Pierces => !LeadIn.IsEmpty || Role != CutRole.Open;

    public double Length => Path.Length;
}

/// <summary>What a cut makes.</summary>
public enum CutRole
{
    /// <summary>A hole: the waste falls out of it.</summary>
    Hole,

    /// <summary>The outline: the part falls out of the sheet.</summary>
    Outline,

    /// <summary>It runs in from an edge of the panel and off again.</summary>
    Open,
}

/// <summary>A hole that is drilled, not cut.</summary>
/// <param name="Centre">Where to punch.</param>
/// <param name="Diameter">In mm, more than 0.</param>
/// <param name="Reason">Why it is drilled.</param>
public sealed record DrillMark(Point Centre, double Diameter, DrillReason Reason);

public enum DrillReason
{
    /// <summary>The process does not cut so small a hole round.</summary>
    TooSmall,

    /// <summary>The piece asks for it.</summary>
    Wanted,

    /// <summary>There is no room for the torch to be lit in it.</summary>
    NoRoom,

    /// <summary>It takes the sharp end off an inside corner before a crack starts there.</summary>
    StopHole,
}

/// <summary>A place where the cut does not make what is drawn, or not well.</summary>
/// <param name="Kind">What is wrong.</param>
/// <param name="At">Where.</param>
/// <param name="Size">In mm: how far the metal that stays stands in from the corner; how wide a hole is.</param>
public sealed record CutTrouble(CutTroubleKind Kind, Point At, double Size);

public enum CutTroubleKind
{
    /// <summary>The torch is too wide for an inside corner or a gap: metal stays there.</summary>
    NotReached,

    /// <summary>A hole is narrower than the kerf and is not cut.</summary>
    HoleTooNarrow,

    /// <summary>There is no room for the torch to be lit; nothing is cut here.</summary>
    NoRoomToPierce,

    /// <summary>A tab finds no straight stretch, or no room for the torch to be lit beside it, and is left out.</summary>
    NoRoomForTab,

    /// <summary>A stop hole does not fit into its corner.</summary>
    NoRoomForStopHole,

    /// <summary>The waste is too narrow for a hole that the process cuts well.</summary>
    NarrowerThanTheProcessLikes,

    /// <summary>Where it runs on or off past the panel's edge, the cut comes too near to the part.</summary>
    RunOutTouches,
}
