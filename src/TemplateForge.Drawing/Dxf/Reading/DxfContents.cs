using System.Collections.Immutable;
using TemplateForge.Geometry;

namespace TemplateForge.Drawing;

/// <summary>Somebody's DXF as lines and arcs, in mm, seen from above.</summary>
/// <param name="Release">As the file names it, AC1009 for R12; empty where it does not.</param>
/// <param name="Unit">In which its numbers were taken.</param>
/// <param name="StatedUnit">What the file itself says that its unit is; empty where it does not.</param>
/// <param name="Strokes">What is drawn, in the order of the file.</param>
/// <param name="Findings">What was met on reading that a table might choke on.</param>
public sealed record DxfContents(
    string Release, DxfUnit Unit, string StatedUnit, ImmutableArray<DxfStroke> Strokes, ImmutableArray<DxfFinding> Findings);

/// <summary>One entity as a run of lines and arcs.</summary>
/// <param name="Layer">The layer that it lies on.</param>
/// <param name="Entity">Its name in the format: LINE, SPLINE.</param>
/// <param name="Line">The line of the file where it begins.</param>
/// <param name="Segments">Its lines and arcs, one at least.</param>
public sealed record DxfStroke(string Layer, string Entity, int Line, ImmutableArray<Segment> Segments)
{
    /// <summary>Whether nobody sees it: its layer is off or frozen, or it is marked invisible itself.</summary>
    public bool IsHidden { get; init; }

    public Point Start => Segments[0].Start;
    public Point End => Segments[^1].End;
    public bool IsClosed => Segments.Length > 1 && Start.DistanceTo(End) <= Tolerance.Merge;
}

/// <summary>One thing that a table would choke on.</summary>
/// <param name="Kind">What it is.</param>
/// <param name="Layer">The layer that it lies on.</param>
/// <param name="Line">The line of the file; 0 where no single line is to blame.</param>
/// <param name="At">Where it is in the drawing, in mm.</param>
/// <param name="Size">How large it is, in mm: a gap, a length, a radius; 0 where it has no size.</param>
/// <param name="Detail">What the format calls it: an entity, a block, a value.</param>
public sealed record DxfFinding(DxfFindingKind Kind, string Layer, int Line, Point At, double Size, string Detail);

public enum DxfFindingKind
{
    NoUnit,
    UnitContradicted,
    UnusualUnit,
    UnitOverruled,
    UnitConverted,
    ReleaseWritten,
    LayerRenamed,
    CutShort,
    Empty,
    TooWide,
    HiddenLayer,
    OnPaper,
    Unreadable,
    TooFar,
    NotCut,
    NotFlat,
    FromBelow,
    Block,
    LostBlock,
    Spline,
    Ellipse,
    ZeroLength,
    TinyArc,
    OpenEnd,
    Gap,
    Doubled,
    Overlapping,
    Crossing,
    ChordsOfArc,
}
