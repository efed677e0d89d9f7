using System.Collections.Immutable;
using TemplateForge.Drawing;
using TemplateForge.Fabrication;
using TemplateForge.Geometry;

namespace TemplateForge.Sheets;

/// <summary>The lines of a piece, exact and without words: what is cut, where it lies, what goes with it.</summary>
internal static class PieceLines
{
    /// <summary>Radius in mm of the middle of a datum's cross that stays open, so that the punch mark can be seen.</summary>
    public const double OpenMiddle = 1;

    /// <summary>How far the cross of a datum reaches past its hole, in mm.</summary>
    private const double CrossPastHole = 5;

    private const double CrossPastSmallHole = 2.5;
    private const double LargestMarkedHole = 60;
    private const double CentreLinePastPiece = 12;
    private const double HatchPitch = 3;
    private const double HatchDepth = 10;
    private const double LeastClearOfFinish = 1.5;

    /// <summary>Puts the lines on a board.</summary>
    /// <param name="board">Where they go.</param>
    /// <param name="piece">Whose they are.</param>
    /// <param name="unit">How many mm of the piece are one mm on the paper: sizes of marks, not of the piece, go with it.</param>
    /// <param name="hatched">Whether the waste side is hatched.</param>
    /// <param name="rings">Where the numbers of bends stand: what is pencilled is broken there.</param>
    public static void PutOn(Board board, Piece piece, double unit, bool hatched = true, params IEnumerable<Circle> rings)
    {
        board.Add(LineKinds.Finish, piece.FinishLines().Select(Stroke));
        board.Add(LineKinds.RoughCut, piece.RoughLines().Select(Stroke));
        if (hatched) board.Add(LineKinds.Waste, Hatch(piece, unit).Select(Stroke));
        board.Add(LineKinds.PanelEdge, piece.Edges.Select(Stroke));
        board.Add(LineKinds.Break, Breaks(piece, unit));
        board.Add(LineKinds.CentreLine, CentreLines(piece).Select(Stroke));
        board.Add(LineKinds.CentreLine, CentresOfHoles(piece, unit));
        board.Add(LineKinds.Guide, piece.GuideLines.SelectMany(g => g.Along.Contours).Select(c => new ClosedStroke(c)));
        board.Add(LineKinds.Guide, JoiningLines.ZincLimits(piece));
        board.Add(LineKinds.WeldRun, JoiningLines.Runs(piece, unit));
        PutMarkedOn(board, piece, rings);
        foreach (var datum in piece.Datums) board.Add(LineKinds.Datum, DatumMarks(datum, unit));
        PlateLettering.PutOn(board, piece, withWords: unit <= 1);
        foreach (var tack in piece.Tacks) board.Add(LineKinds.Tack, TackMarks(piece, tack, unit));
    }

    /// <summary>What is scribed and what is pencilled on the metal: each its own kind of line, for neither is cut.</summary>
    /// <param name="board">Where they go.</param>
    /// <param name="piece">Whose they are.</param>
    /// <param name="rings">Where what is pencilled is broken.</param>
    public static void PutMarkedOn(Board board, Piece piece, params IEnumerable<Circle> rings)
    {
        var clear = rings.Select(r => Region.Of(Outline.Circle(r.Centre, r.Radius))).Aggregate(Region.Empty, Combination.Union);
        board.Add(LineKinds.Scribe, piece.ScribeLines.Select(Stroke));
        board.Add(LineKinds.Generator, piece.Generators.Select(g => Stroke(g.Along)));
        foreach (var bend in piece.BendLines)
        {
            var (held, turned) = bend.TangentLines;
            Pencil(LineKinds.Bend, Path.Line(bend.From, bend.To));
            if (bend.IsPressLine) continue;
            Pencil(LineKinds.BendTangent, held, turned);
            if (bend.HasSightLine) Pencil(LineKinds.Sight, bend.SightLine);
        }
        foreach (var bend in piece.CurvedBends)
        {
            Pencil(LineKinds.Bend, bend.Middle);
            Pencil(LineKinds.BendTangent, bend.Held, bend.Turned);
        }

        void Pencil(LineKind kind, params ReadOnlySpan<Path> lines)
        {
            foreach (var line in lines) board.Add(kind, clear.IsEmpty ? [Stroke(line)] : line.PartsOutside(clear).Select(Stroke));
        }
    }

    /// <summary>How far a datum's marks reach from its centre, in mm.</summary>
    public static double Reach(Datum datum, double unit) => datum.Diameter / 2 + CrossPastHole * unit;

    /// <summary>A cross with an open middle, and the circle of the hole.</summary>
    public static IEnumerable<Mark> DatumMarks(Datum datum, double unit)
    {
        var (from, to) = (OpenMiddle * unit, Reach(datum, unit));
        foreach (var way in (ImmutableArray<Vector>)[new(1, 0), new(0, 1), new(-1, 0), new(0, -1)])
            yield return new OpenStroke(Path.Line(datum.At + way * from, datum.At + way * to));
        if (datum.Diameter > 0) yield return new ClosedStroke(Outline.Circle(datum.At, datum.Diameter / 2));
    }

    /// <summary>A short line across the edge that is tacked, or a small cross where there is a plug hole.</summary>
    public static IEnumerable<Mark> TackMarks(Piece piece, Tack tack, double unit)
    {
        var (edge, away) = piece.Shape.Contours.SelectMany(c => c.Segments)
            .Select(s => (Segment: s, Distance: s.DistanceTo(tack.At)))
            .MinBy(s => s.Distance);
        if (away > 0.01)
        {
            foreach (var way in (ImmutableArray<Vector>)[new(1, 0), new(0, 1)])
                yield return new OpenStroke(Path.Line(tack.At - way * (1.5 * unit), tack.At + way * (1.5 * unit)));
            yield break;
        }
        var across = (edge.IsLine ? edge.StartDirection.Left : (tack.At - edge.Centre).Unit) * (2 * unit);
        yield return new OpenStroke(Path.Line(tack.At - across, tack.At + across));
    }

    public static Mark Stroke(Path path) => path.IsClosed() ? new ClosedStroke(new Contour(path.Segments)) : new OpenStroke(path);

    /// <summary>The centre lines, no further past the piece than a line is easily followed.</summary>
    public static ImmutableArray<Path> CentreLines(Piece piece)
    {
        var shown = Region.Of(Outline.Rectangle(piece.Shape.Bounds.Grown(CentreLinePastPiece)));
        return [.. piece.CentreLines.SelectMany(c => Path.Line(c.From, c.To).PartsInside(shown))];
    }

    // A round hole is punched and drilled by its middle; datums and plug welds have marks of their own.
    private static IEnumerable<Mark> CentresOfHoles(Piece piece, double unit)
    {
        foreach (var hole in piece.Shape.Contours.Where(c => !c.IsCounterClockwise))
        {
            if (!hole.TryAsCircle(out var centre, out var radius) || radius > LargestMarkedHole / 2) continue;
            if (piece.Datums.Select(d => d.At).Concat(piece.Tacks.Select(t => t.At)).Any(at => at.DistanceTo(centre) < 0.01)) continue;
            foreach (var way in (ImmutableArray<Vector>)[new(1, 0), new(0, 1), new(-1, 0), new(0, -1)])
                yield return new OpenStroke(Path.Line(centre + way * Math.Min(OpenMiddle * unit, radius / 2), centre + way * (radius + CrossPastSmallHole * unit)));
        }
    }

    // A band along the finish line, on the side that falls away; clear of the line itself and of the rough cut.
    private static ImmutableArray<Path> Hatch(Piece piece, double unit)
    {
        var clear = Math.Max(piece.RoughAllowance, LeastClearOfFinish * unit);
        var band = piece.Kind switch
        {
            PieceKind.CutAway => piece.Waste()
                .Intersect(piece.Shape.Offset(clear + HatchDepth * unit))
                .Subtract(piece.Shape.Offset(clear)),
            PieceKind.Blank => Outer(piece.Shape).Offset(clear + HatchDepth * unit / 2).Subtract(Outer(piece.Shape).Offset(clear)),
            _ => Region.Empty,
        };
        return band.IsEmpty ? [] : band.HatchLines(HatchPitch * unit, Angle.FromDegrees(45));
    }

    private static Region Outer(Region shape) =>
        shape.Contours.Where(c => c.IsCounterClockwise).Select(Region.Of).Aggregate(Region.Empty, Combination.Union);

    // Where the shown stretch of a panel ends there is no edge: a thin line with a zigzag says that the panel goes on.
    private static IEnumerable<Mark> Breaks(Piece piece, double unit)
    {
        if (piece.Edges.IsEmpty) yield break;
        var sides = piece.Before.Contours.SelectMany(c => c.Segments).Where(s => s.IsLine);
        foreach (var side in sides.Where(s => piece.Edges.All(e => !Covers(e, s.At(0.5)))))
        {
            if (side.Length >= 12 * unit) yield return BreakLine(side, unit);
        }
    }

    /// <summary>A line with a zigzag in its middle.</summary>
    public static Mark BreakLine(Segment side, double unit)
    {
        var (middle, along, aside) = (side.At(0.5), side.StartDirection * unit, side.StartDirection.Left * unit);
        return new OpenStroke(new Path(
            Segment.Line(side.Start, middle - along * 2),
            Segment.Line(middle - along * 2, middle - along + aside * 3),
            Segment.Line(middle - along + aside * 3, middle + along - aside * 3),
            Segment.Line(middle + along - aside * 3, middle + along * 2),
            Segment.Line(middle + along * 2, side.End)));
    }

    private static bool Covers(Path edge, Point point) => edge.Segments.Any(s => s.DistanceTo(point) <= 0.01);
}
