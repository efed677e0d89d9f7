using System.Collections.Immutable;
using TemplateForge.Geometry;

namespace TemplateForge.Fabrication;

/// <summary>The lines that follow from what a piece was and what it becomes.</summary>
/// <remarks>
/// <code>
///     panel        |          |     finish line: what bounds the finished panel and lies inside the panel as it was
///          .-------'  waste   '-------.    rough cut: the same for the finished panel grown by the rough allowance
///     ----'   run-on       run-off     '----  panel edge; an open cut leaves it on curves that bend away from the panel
/// </code>
/// </remarks>
public static class CutLines
{
    /// <summary>The edges that are wanted: open runs where a panel is cut away from its edge, closed ones (a path that ends where
    /// it began) elsewhere. Inner contours come before outer ones.</summary>
    public static ImmutableArray<Path> FinishLines(this Piece piece) =>
        [.. InnerFirst(piece.Shape).SelectMany(c => piece.Kind == PieceKind.CutAway ? c.PartsInside(piece.Before) : [new Path(c.Segments)])];

    /// <summary>What is cut away from the panel as it was.</summary>
    public static Region Waste(this Piece piece) => piece.Before.Subtract(piece.Shape);

    /// <summary>The line on the waste side that snips, saw or torch follow first; none where the piece asks for none.</summary>
    public static ImmutableArray<Path> RoughLines(this Piece piece) =>
        piece.Kind != PieceKind.CutAway || piece.RoughAllowance <= 0
            ? []
            : [.. piece.Shape.Offset(piece.RoughAllowance).Contours.SelectMany(c => c.PartsInside(piece.Before))];

    /// <summary>The finish lines as a table cuts them, holes first; one that ends on the panel's edge runs on and off past it.</summary>
    /// <param name="piece">The piece that is cut.</param>
    /// <param name="runOut">How far past the edge the cut begins and ends, in mm, more than 0.</param>
    /// <remarks>A run-out leaves the finish line on its tangent and curves away from the finished piece, so that it never grazes
    /// an edge that stays.</remarks>
    public static ImmutableArray<Path> TableCuts(this Piece piece, double runOut)
    {
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(runOut);
        return [.. piece.FinishLines().Select(line => IsClosed(line) ? line : WithRunOuts(line, runOut))];
    }

    /// <summary>Whether a finish line comes back to where it began.</summary>
    public static bool IsClosed(this Path path) => path.Start.DistanceTo(path.End) <= Tolerance.Merge;

    private static IEnumerable<Contour> InnerFirst(Region region) => region.Contours.OrderBy(c => c.IsCounterClockwise);

    // The finished piece lies on the left of its own boundary, so a run-out turns right: at the end by an eighth of a turn to the
    // right, at the start the mirror of that.
    internal static Path WithRunOuts(Path line, double runOut)
    {
        var off = RunOff(line.End, line.Segments[^1].EndDirection, turn: -1, runOut);
        var on = RunOff(line.Start, -line.Segments[0].StartDirection, turn: 1, runOut).Reversed();
        return new([.. on.Segments, .. line.Segments, .. off.Segments]);
    }

    private static Path RunOff(Point from, Vector direction, int turn, double runOut)
    {
        const double eighth = Math.PI / 4;
        var chord = direction.Turned(Angle.FromRadians(turn * eighth / 2)) * (2 * runOut * Math.Sin(eighth / 2));
        var bend = Segment.Arc(from, from + chord, turn * Math.Tan(eighth / 4));
        return new(bend, Segment.Line(bend.End, bend.End + bend.EndDirection * runOut));
    }
}
