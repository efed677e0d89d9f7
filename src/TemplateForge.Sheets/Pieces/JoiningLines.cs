using System.Collections.Immutable;
using System.Globalization;
using TemplateForge.Drawing;
using TemplateForge.Fabrication;
using TemplateForge.Geometry;

namespace TemplateForge.Sheets;

/// <summary>How runs of weld are drawn, beside their seam so that the seam itself stays clear, and where zinc comes off.</summary>
internal static class JoiningLines
{
    private const double Aside = 3.5;
    private const double Shortest = 9;

    /// <summary>The arrows of all runs; none where they are too short on the paper to tell apart.</summary>
    public static IEnumerable<Mark> Runs(Piece piece, double unit) =>
        AreShown(piece, unit) ? piece.WeldSeams.SelectMany(s => s.Runs).SelectMany(run => Arrow(piece, run, unit)) : [];

    /// <summary>Where zinc and paint end that are taken off.</summary>
    public static IEnumerable<Mark> ZincLimits(Piece piece) => piece.ZincStrips.SelectMany(z => z.Limits).Select(PieceLines.Stroke);

    /// <summary>Whether runs are long enough on the paper for their arrows and numbers.</summary>
    public static bool AreShown(Piece piece, double unit) =>
        piece.WeldSeams.SelectMany(s => s.Runs).All(run => run.Along.Length >= Shortest * unit);

    /// <summary>The number of a run in a ring, so that nobody takes it for that of a tack.</summary>
    public static Block Number(WeldRun run, double unit)
    {
        const double height = 2.2;
        var (board, radius) = (new Board(), (run.Number < 100 ? 2.3 : 3) * unit);
        board.Add(LineKinds.WeldRun, new ClosedStroke(Outline.Circle(new(radius, -radius), radius)));
        board.Text(run.Number.ToString(CultureInfo.InvariantCulture), new(radius, -radius - height / 2 * unit), height * unit, Anchor.BaseMiddle);
        return new(2 * radius, 2 * radius, board);
    }

    /// <summary>Where the number of a run stands best.</summary>
    public static Point PlaceOfNumber(Piece piece, WeldRun run, double unit)
    {
        var middle = run.Along.Length / 2;
        return run.Along.PointAlong(middle) + ToMetal(piece, run) * (8 * unit);
    }

    // Along the run on the side of the metal, from a short bar where it begins to a tip where it ends.
    private static IEnumerable<Mark> Arrow(Piece piece, WeldRun run, double unit)
    {
        var isLeft = ToMetal(piece, run).Dot(run.Along.DirectionAlong(run.Along.Length / 2).Left) > 0;
        var beside = isLeft ? run.Along.OffsetToLeft(Aside * unit) : run.Along.OffsetToRight(Aside * unit);
        if (beside.IsEmpty) yield break;
        var line = beside.MaxBy(p => p.Length)!;
        // A stretch between two arrows, so that each is seen to end.
        var clear = Math.Min(1.2 * unit, line.Length / 8);
        line = line.Part(clear, line.Length - clear);
        yield return new OpenStroke(line);
        var (start, across) = (line.Start, line.DirectionAlong(0).Left * (0.8 * unit));
        yield return new OpenStroke(Path.Line(start - across, start + across));
        var back = -line.Segments[^1].EndDirection * (2.2 * unit);
        var half = Angle.FromDegrees(18);
        yield return new OpenStroke(new Path(Segment.Line(line.End + back.Turned(half), line.End), Segment.Line(line.End, line.End + back.Turned(-half))));
    }

    // Square to the run, to the side on which the piece has metal; to the left where it has it on both or on neither.
    private static Vector ToMetal(Piece piece, WeldRun run)
    {
        const double look = 0.5;
        var middle = run.Along.Length / 2;
        var (at, left) = (run.Along.PointAlong(middle), run.Along.DirectionAlong(middle).Left);
        return piece.Shape.Contains(at - left * look) && !piece.Shape.Contains(at + left * look) ? -left : left;
    }
}
