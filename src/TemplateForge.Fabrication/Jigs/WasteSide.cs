using System.Collections.Immutable;
using System.Diagnostics.CodeAnalysis;
using TemplateForge.Geometry;

namespace TemplateForge.Fabrication;

/// <summary>The side of a piece's finish lines on which the tool works, run on past the panel's edges.</summary>
/// <param name="Region">All that the tool may take away: holes, and notches with their run-ons far past the edge.</param>
/// <param name="Ends">Where open finish lines end on the panel's edge, and the way out of the panel there, of length 1.</param>
/// <remarks>
/// <code>
///        panel  │  waste  │           An open finish line goes straight on past the edge it ends on. One that meets the edge at less
///     ──────────'         '──────     than 45°, as a rounded mouth does, first bends away from the panel on an arc, so that the cutter
///      ear of  /           \  ear     does not graze the edge that stays. The plate follows for 25 mm past the edge, measured square
///      plate  /             \         to it: the guide is held before the cutter meets metal and after it has left it.
/// </code>
/// </remarks>
public sealed record WasteSide(Region Region, ImmutableArray<(Point At, Vector Outwards)> Ends)
{
    /// <summary>How far past the panel's edge the guide edge runs on, in mm, measured square to the edge.</summary>
    public const double RunOn = 25;

    private static readonly Angle LeastOff = Angle.FromDegrees(45);

    /// <summary>Finds it.</summary>
    /// <param name="piece">Whose finish lines are guided.</param>
    /// <param name="edge">What runs along the plate.</param>
    /// <param name="reach">How far everything that matters lies apart at most, in mm.</param>
    /// <param name="faults">What is wrong.</param>
    /// <param name="found">The waste side.</param>
    public static bool TryFind(Piece piece, GuideEdge edge, double reach, ICollection<JigFault> faults, [MaybeNullWhen(false)] out WasteSide found)
    {
        found = null;
        var (waste, ends, before) = (Region.Empty, ImmutableArray.CreateBuilder<(Point, Vector)>(), faults.Count);
        foreach (var line in piece.FinishLines())
        {
            if (!line.IsClosed())
            {
                if (!TryEdgeAt(piece, line.Start, isEnd: false, out var atStart) || !TryEdgeAt(piece, line.End, isEnd: true, out var atEnd))
                {
                    faults.Add(new(JigFaultKind.EndsOnNoEdge, atStart == Vector.Zero ? line.Start : line.End));
                    continue;
                }
                ends.Add((line.Start, -atStart.Left));
                ends.Add((line.End, -atEnd.Left));
                if (TryOpen(line, atStart, atEnd, edge, reach, out var own)) waste = waste.Union(own);
                else faults.Add(new(JigFaultKind.MouthTooNarrow, line.Start.MidpointTo(line.End)));
                continue;
            }
            var contour = new Contour(line.Segments);
            waste = contour.IsCounterClockwise
                ? waste.Union(Region.Of(Outline.Rectangle(contour.Bounds.Grown(2 * reach))).Subtract(Region.Of(contour)))
                : waste.Union(Region.Of(contour.Reversed()));
        }
        if (faults.Count > before || waste.IsEmpty) return false;
        found = new(waste, ends.ToImmutable());
        return true;
    }

    // The finished piece lies on the left of its finish line, so the way on bends to the right at the end, to the left (looked at backwards) at the start.
    private static bool TryOpen(Path line, Vector atStart, Vector atEnd, GuideEdge edge, double reach, out Region waste)
    {
        waste = Region.Empty;
        var radius = Math.Max(RunOn, edge.Cut);
        foreach (var depth in (double[])[RunOn + reach, RunOn + 3 * edge.Guide + 10])
        {
            var off = Past(line.End, line.Segments[^1].EndDirection, atEnd, turn: -1, radius, depth);
            var on = Past(line.Start, -line.Segments[0].StartDirection, -atStart, turn: 1, radius, depth).Reversed();
            var (last, first) = (off.Segments[^1], on.Segments[0]);
            if (last.DistanceTo(first) <= edge.Cut + Tolerance.Length) continue;
            var whole = new Contour([.. on.Segments, .. line.Segments, .. off.Segments, Segment.Line(off.End, on.Start)]).Reversed();
            if (!whole.IsCounterClockwise) continue;
            waste = Region.Of(whole);
            return waste.Contours.Length == 1;
        }
        return false;
    }

    // From where the finish line leaves the panel, in its own direction; outwards lies to the side of the turn.
    private static Path Past(Point from, Vector direction, Vector panelEdge, int turn, double radius, double depth)
    {
        var outwards = panelEdge.Left * turn;
        var off = Angle.FromRadians(Math.Atan2(direction.Dot(outwards), direction.Dot(panelEdge)));
        var segments = new List<Segment>();
        var (at, way) = (from, direction);
        if (off < LeastOff)
        {
            var bend = LeastOff - off;
            var chord = way.Turned(bend * (turn / 2.0)) * (2 * radius * (bend / 2).Sin);
            segments.Add(Segment.Arc(at, at + chord, turn * Math.Tan(bend.Radians / 4)));
            (at, way) = (segments[0].End, segments[0].EndDirection);
        }
        segments.Add(Segment.Line(at, at + way * (depth / Math.Max(0.5, way.Dot(outwards)))));
        return new(segments);
    }

    // The direction of the panel's own edge where a finish line leaves or meets it.
    private static bool TryEdgeAt(Piece piece, Point at, bool isEnd, out Vector direction)
    {
        const double near = 1e-4;
        direction = Vector.Zero;
        if (!piece.Edges.IsEmpty && piece.Edges.All(e => e.Segments.All(s => s.DistanceTo(at) > near))) return false;
        foreach (var side in piece.Before.Contours.SelectMany(c => c.Segments).Where(s => s.DistanceTo(at) <= near))
        {
            if ((isEnd ? side.End : side.Start).DistanceTo(at) <= near) continue;
            direction = side.IsLine ? side.StartDirection : (at - side.Centre).Unit.Left * Math.Sign(side.Bulge);
            return true;
        }
        return false;
    }
}
