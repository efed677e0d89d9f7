using TemplateForge.Geometry;

namespace TemplateForge.Fabrication;

/// <summary>What is wrong with a curved panel.</summary>
/// <param name="Kind">What it is.</param>
/// <param name="Across">Where, as a distance along the straight edge in mm; of <see cref="CurvedPanelFaultKind.TooSteep"/> and of an
/// opening past the end, as it is seen, from the datum line.</param>
/// <param name="Limit">The nearest place that would do, counted alike; the least radius for
/// <see cref="CurvedPanelFaultKind.RounderThanTheSheet"/>, the lean in degrees for <see cref="CurvedPanelFaultKind.TooSteep"/>.</param>
public sealed record CurvedPanelFault(CurvedPanelFaultKind Kind, double Across, double Limit)
{
    internal static CurvedPanelFault At(CurvedPanelFaultKind kind, Point where) => new(kind, where.X, 0);
}

/// <summary>Why a curved panel cannot be laid flat as it is asked for.</summary>
public enum CurvedPanelFaultKind
{
    /// <summary>The section runs back under itself, or stands straight up: a point of the straight edge would meet it twice.</summary>
    RunsBack,

    /// <summary>From where one looks, one part of the panel hides another.</summary>
    Hides,

    /// <summary>A place is asked for that the section does not reach.</summary>
    PastTheEnd,

    /// <summary>There is no view square to the panel in a corner of its section.</summary>
    SquareInACorner,

    /// <summary>The other face of a sheet has no shape where the section has a sharp corner.</summary>
    SharpCorner,

    /// <summary>The section is rounder than the sheet is thick: its other face has no radius left.</summary>
    RounderThanTheSheet,

    /// <summary>The panel leans away from the view so far that a pencil's width in the view is many on the panel.</summary>
    TooSteep,

    /// <summary>An outline turns so often on the panel that thousands of arcs would not follow it.</summary>
    TooFine,
}
