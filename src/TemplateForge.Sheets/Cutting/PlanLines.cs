using TemplateForge.Drawing;
using TemplateForge.Fabrication;
using TemplateForge.Geometry;

namespace TemplateForge.Sheets;

/// <summary>The lines of a plan of cutting, each kind on its own layer.</summary>
internal static class PlanLines
{
    private const double PierceRadius = 0.6;
    private const double CrossPastHole = 1.5;

    /// <param name="board">Where they go.</param>
    /// <param name="piece">Whose plan it is.</param>
    /// <param name="unit">How many mm of the piece are one mm on the paper.</param>
    public static void PutOn(Board board, Piece piece, double unit)
    {
        var plan = piece.Planned;
        board.Add(LineKinds.FinishedEdge, piece.FinishLines().Select(PieceLines.Stroke));
        board.Add(LineKinds.Finish, plan.Cuts.Select(c => new OpenStroke(c.Path)));
        foreach (var cut in plan.Cuts.Where(c => c.Pierces)) board.Add(LineKinds.Pierce, new ClosedStroke(Outline.Circle(cut.Pierce, PierceRadius * unit)));
        foreach (var mark in plan.Drilled)
        {
            board.Add(LineKinds.Drill, new ClosedStroke(Outline.Circle(mark.Centre, mark.Diameter / 2)));
            foreach (var way in (Vector[])[new(1, 0), new(0, 1)])
            {
                var reach = way * (mark.Diameter / 2 + CrossPastHole * unit);
                board.Add(LineKinds.Drill, new OpenStroke(Path.Line(mark.Centre - reach, mark.Centre + reach)));
            }
        }
    }

    /// <summary>Moves between cuts, and the way that each cut is made.</summary>
    public static void PutWaysOn(Board board, CutPlan plan, double unit)
    {
        board.Add(LineKinds.Move, plan.Rapids.Select(r => new OpenStroke(r)));
        // On the shortest an arrow head would hide the cut.
        foreach (var cut in plan.Cuts.Where(c => c.Length > 10 * unit))
        {
            var run = new Path(cut.Run);
            foreach (var share in run.Length > 120 * unit ? (double[])[0.2, 0.7] : [0.4]) board.Add(LineKinds.Arrow, Head(run, share, unit));
        }
    }

    private static OpenStroke Head(Path run, double share, double unit)
    {
        var (tip, back) = (run.PointAlong(run.Length * share), run.DirectionAlong(run.Length * share) * (-2.2 * unit));
        var half = Angle.FromDegrees(18);
        return new(new Path(Segment.Line(tip + back.Turned(half), tip), Segment.Line(tip, tip + back.Turned(-half))));
    }
}
