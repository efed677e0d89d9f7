using System.Collections.Immutable;
using System.Globalization;
using TemplateForge.Drawing;
using TemplateForge.Fabrication;
using TemplateForge.Geometry;

namespace TemplateForge.Sheets;

/// <summary>A piece drawn small with its base line and the number of every vertex, to follow the mark-out tables by.</summary>
internal static class MarkOutPicture
{
    private const double Border = 1;

    /// <summary>Room round the piece for numbers, in mm on the paper.</summary>
    private const double Aside = 9;

    /// <summary>How far a number may stand from its vertex, in mm on the paper.</summary>
    private const double Reach = 11;

    private const double Text = 2.1;

    private static ImmutableArray<double> Reductions { get; } = [0.2, 0.25, 0.4, 0.5, 1, .. Picture.Reductions];

    /// <summary>As large as fits at a round scale.</summary>
    /// <param name="piece">What is shown.</param>
    /// <param name="markOut">Its vertices.</param>
    /// <param name="width">Width in mm.</param>
    /// <param name="height">Height in mm.</param>
    /// <param name="reduction">How many times smaller than the piece the picture is.</param>
    /// <param name="leftOut">How many numbers found no room.</param>
    public static Block Fitting(Piece piece, MarkOut markOut, double width, double height, out double reduction, out int leftOut)
    {
        var bounds = Lines(piece, markOut, unit: 0).Marks.Select(m => m.Bounds).Aggregate((a, b) => a.Joined(b));
        foreach (var candidate in Reductions)
        {
            (reduction, leftOut) = (candidate, 0);
            if (bounds.Width / candidate + 2 * Aside > width || bounds.Height / candidate + 2 * Aside > height) continue;
            return Of(piece, markOut, candidate, out leftOut);
        }
        (reduction, leftOut) = (1, markOut.Points.Length);
        return Block.Empty(width, 0);
    }

    /// <summary>Whether so many places lie so close to others that their marks run together.</summary>
    /// <param name="markOut">The places.</param>
    /// <param name="reduction">How many times smaller than the piece the picture is.</param>
    public static bool IsCrowded(MarkOut markOut, double reduction)
    {
        const double apart = 1.2;
        const double share = 0.25;
        var close = markOut.Points.Count(p => markOut.Points.Any(o => o != p && o.At.DistanceTo(p.At) < apart * reduction));
        return close > share * markOut.Points.Length && close > 8;
    }

    private static Block Of(Piece piece, MarkOut markOut, double unit, out int leftOut)
    {
        var lines = Lines(piece, markOut, unit);
        var area = Box.Around(lines.Marks.Select(m => m.Bounds)).Grown((Aside - Border) * unit);
        var drawing = new PieceDrawing(piece, lines, unit, area);
        var line = markOut.Base;
        drawing.TryName(Name(line.FirstName, 3, unit), line.First, -line.Along, 12);
        drawing.TryName(Name(line.SecondName, 3, unit), line.Second, line.Along, 12);
        drawing.TryName(Name("+", 3, unit), Plus(markOut, unit) + line.Side * (8 * unit), line.Side, 12);
        foreach (var hole in markOut.Holes.Where(h => !h.IsOutline)) drawing.TryName(Name(HoleNames.Of(hole, piece.Tacks), Text, unit), hole.Centre, new(1, 0), Reach + hole.Diameter / 2 / unit);
        var outwards = Outwards(markOut);
        // Round numbers first: by them the others are counted.
        leftOut = markOut.Points.OrderBy(p => p.Number % 10 == 0 ? 0 : p.Number % 5 == 0 || p.Number == 1 ? 1 : 2)
            .Count(p => !drawing.TryName(Name(p.Number.ToString(CultureInfo.InvariantCulture), Text, unit), p.At, outwards[p.Number - 1], Reach));
        var bounds = Box.Around(drawing.Board.Marks.Select(m => m.Bounds));
        var onPaper = new Board();
        onPaper.Add(drawing.Board, Placement.Moved(new(-bounds.Min.X, -bounds.Max.Y))
            .Then(Placement.Scaled(1 / unit, Point.Origin))
            .Then(Placement.Moved(new(Border, -Border))));
        return new(bounds.Width / unit + 2 * Border, bounds.Height / unit + 2 * Border, onPaper);
    }

    private static Block Name(string text, double height, double unit) => Block.Line(text, height * unit);

    // The lines to mark, a small ring on each vertex, the base line with its plus side; with no unit nothing but the lines.
    private static Board Lines(Piece piece, MarkOut markOut, double unit)
    {
        const double past = 6;
        const double ring = 0.45;
        var (board, line) = (new Board(), markOut.Base);
        board.Add(LineKinds.Finish, piece.FinishLines().Select(PieceLines.Stroke));
        board.Add(LineKinds.Bend, piece.Bends.SelectMany(b => b).Select(b => PieceLines.Stroke(b.Middle)));
        board.Add(LineKinds.Scribe, piece.ScribeLines.Select(PieceLines.Stroke));
        board.Add(LineKinds.Generator, piece.Generators.Select(g => PieceLines.Stroke(g.Along)));
        board.Line(LineKinds.CentreLine, line.First - line.Along * (past * unit), line.Second + line.Along * (past * unit));
        // The panel goes on past what is marked on it.
        var near = Region.Of(Outline.Rectangle(Box.Around(board.Marks.Select(m => m.Bounds)).Grown(Math.Max(2 * unit, Tolerance.Length * 10))));
        board.Add(LineKinds.PanelEdge, piece.Edges.SelectMany(e => e.PartsInside(near)).Select(PieceLines.Stroke));
        if (unit <= 0) return board;
        foreach (var datum in piece.Datums) board.Add(LineKinds.Datum, PieceLines.DatumMarks(datum, unit));
        board.Add(LineKinds.Dimension, markOut.Points.Select(p => new ClosedStroke(Outline.Circle(p.At, ring * unit))));
        foreach (var hole in markOut.Holes.Where(h => piece.Datums.All(d => d.At.DistanceTo(h.Centre) > 0.01)))
        {
            foreach (var way in (ImmutableArray<Vector>)[new(1, 0), new(0, 1)])
                board.Line(LineKinds.CentreLine, hole.Centre - way * (1.2 * unit), hole.Centre + way * (1.2 * unit));
        }
        var foot = Plus(markOut, unit);
        var tip = foot + line.Side * (7 * unit);
        board.Line(LineKinds.Arrow, foot, tip);
        foreach (var turn in (ImmutableArray<double>)[155, -155])
            board.Line(LineKinds.Arrow, tip, tip + line.Side.Turned(Angle.FromDegrees(turn)) * (2 * unit));
        return board;
    }

    // Past the first end, so that it lies on nothing.
    private static Point Plus(MarkOut markOut, double unit) => markOut.Base.First - markOut.Base.Along * (5 * unit);

    // Away from the metal that is kept to the left of an outline; past the end of a line.
    private static Vector[] Outwards(MarkOut markOut)
    {
        var ways = new Vector[markOut.Points.Length];
        foreach (var line in markOut.Lines)
        {
            var isRound = line.Kind is MarkedLineKind.Outline or MarkedLineKind.Opening or MarkedLineKind.OpenCut;
            foreach (var stretch in line.Stretches)
            {
                var way = (markOut[stretch.To].At - markOut[stretch.From].At).Unit;
                Add(stretch.From, isRound ? -way.Left : -way);
                Add(stretch.To, isRound ? -way.Left : way);
            }
        }
        return [.. ways.Select(w => w.Length > 1e-6 ? w.Unit : new(0, 1))];

        void Add(int number, Vector way) => ways[number - 1] += way;
    }
}
