using System.Collections.Immutable;
using TemplateForge.Drawing;
using TemplateForge.Fabrication;
using TemplateForge.Geometry;

namespace TemplateForge.Sheets;

/// <summary>A piece as it lies on its pages.</summary>
/// <param name="Turned">The piece, turned.</param>
/// <param name="Turn">By how much, anticlockwise.</param>
/// <param name="Lines">Its lines alone.</param>
/// <param name="Flaps">Its flaps.</param>
/// <param name="Content">Its lines with flaps and dimensions, on a drawing that has no pages yet.</param>
/// <param name="Plan">Its pages.</param>
internal sealed record LaidPiece(Piece Turned, Angle Turn, Board Lines, ImmutableArray<Flap> Flaps, Board Content, TilePlan Plan)
{
    /// <summary>White border round what is drawn, in mm: a window cuts off what lies outside it.</summary>
    private const double Border = 3;

    /// <summary>Room round a piece for its dimension lines while nobody knows yet where they go, in mm.</summary>
    private const double RoomForDimensions = 70;

    /// <summary>How many turns are laid out in full before the drawing stays as it is.</summary>
    private const int MostTries = 2;

    public bool IsTurned => Turn != Angle.Zero;

    /// <summary>The same pages after those of other pieces.</summary>
    public LaidPiece After(int rows) => this with { Plan = Plan.After(rows) };

    /// <summary>The piece as it takes the fewest pages, or turned as somebody wishes.</summary>
    /// <param name="piece">The piece.</param>
    /// <param name="firstNumber">Number of its first check.</param>
    /// <param name="setup">What it is printed on.</param>
    /// <param name="saved">How many pages the turn saves.</param>
    public static LaidPiece Of(Piece piece, int firstNumber, PrintSetup setup, out int saved)
    {
        saved = 0;
        // What is lettered on a piece to stay must lie as it does in its cut file.
        if (!piece.Lettering.IsEmpty || setup.Turn == TurnWish.None) return At(piece, Angle.Zero, firstNumber, setup);
        if (!setup.Turn.IsFewest) return At(piece, setup.Turn.By, firstNumber, setup);
        var unturned = At(piece, Angle.Zero, firstNumber, setup);
        foreach (var turn in TurnSearch.Candidates(Ink.SelectMany(unturned.Lines.On), unturned.Content.Marks, unturned.Plan, setup.Room, setup.Layout).Take(MostTries))
        {
            var turned = At(piece, turn, firstNumber, setup);
            if (!TurnSearch.TakesLess(turned.Plan, unturned.Plan, setup.Paper)) continue;
            saved = unturned.Plan.Tiles.Length - turned.Plan.Tiles.Length;
            return turned;
        }
        return unturned;
    }

    // With its flaps, unless they take a page more: then as deep as there is room for them.
    private static LaidPiece At(Piece piece, Angle turn, int firstNumber, PrintSetup setup)
    {
        var turned = piece.Turned(turn);
        var lines = new Board();
        PieceLines.PutOn(lines, turned, unit: 1);
        lines.Add(LineKinds.Dimension, DrawnBaseLine.Of(piece, turn).Crosses(unit: 1));
        var flaps = Flap.Of(turned);
        var laid = With(flaps);
        if (flaps.Length > 0 && laid.Plan.Tiles.Length > 1 && With([]) is var without && without.Plan.Tiles.Length < laid.Plan.Tiles.Length) laid = without;
        ImmutableArray<Box> windows = [.. laid.Plan.Tiles.Select(t => t.Window)];
        return laid with { Flaps = [.. flaps.SelectMany(f => f.Within(windows))] };

        LaidPiece With(ImmutableArray<Flap> wanted)
        {
            var first = new PieceDrawing(turned, lines, 1, BoundsOf(lines).Grown(RoomForDimensions));
            foreach (var flap in wanted) flap.PutOn(first);
            first.AddDimensions(firstNumber, turn, piece);
            return new(turned, turn, lines, wanted, first.Board, Pages(turned, lines, BoundsOf(first.Board).Grown(Border), setup));
        }
    }

    // Of all places of the grid that take the fewest pages, the one whose seams lie least on what must not be cut in two, and on the lines.
    private static TilePlan Pages(Piece piece, Board lines, Box content, PrintSetup setup)
    {
        var (taken, ink) = (new FreePlace(content, 1), new FreePlace(content, 1));
        taken.Take(lines.Marks, 1);
        ink.Take(Ink.SelectMany(lines.On), 0);
        var delicate = Delicate(piece);
        var (paper, layout) = (setup.Room, setup.Layout);
        var plans = Shifts
            .SelectMany(right => Shifts.Select(up => new Vector(right, up)))
            .Select(shift => (Shift: shift, Plan: Tiling.Plan(Shifted(content, shift), paper, layout, window => ink.Taken(window) > 0)))
            .ToList();
        var fewest = plans.Min(p => p.Plan.Tiles.Length);
        var shortest = plans.Where(p => p.Plan.Tiles.Length == fewest).Min(p => p.Plan.PageWidth * p.Plan.PageHeight);
        return plans.Where(p => p.Plan.Tiles.Length == fewest && p.Plan.PageWidth * p.Plan.PageHeight <= shortest)
            .OrderBy(p => CutInTwo(p.Plan, delicate))
            .ThenBy(p => Clashes(p.Plan, taken))
            .ThenBy(p => p.Shift.LengthSquared)
            .First().Plan;
    }

    /// <summary>A page with none of these on it is left out.</summary>
    private static ImmutableArray<LineKind> Ink { get; } =
        [LineKinds.Finish, LineKinds.RoughCut, LineKinds.PanelEdge, LineKinds.Datum, LineKinds.Guide, LineKinds.Tack, LineKinds.Bend, LineKinds.Scribe];

    private static ImmutableArray<double> Shifts { get; } = [0, 8, -8, 16, -16, 24, -24, 36, -36, 48, -48];

    // The grid lies in the middle of the content, so content that is wider on one side moves it.
    internal static Box Shifted(Box content, Vector shift) => new(
        content.Min + new Vector(2 * Math.Min(shift.X, 0), 2 * Math.Min(shift.Y, 0)),
        content.Max + new Vector(2 * Math.Max(shift.X, 0), 2 * Math.Max(shift.Y, 0)));

    /// <summary>Datums, holes and tight corners: where a seam runs through one, its middle or its radius is joined and not printed.</summary>
    private static ImmutableArray<(Box Around, double Weight)> Delicate(Piece piece)
    {
        const double datum = 8, hole = 4, corner = 1;
        const double largestHole = 80, tight = 15, turn = 0.3;
        var found = ImmutableArray.CreateBuilder<(Box, double)>();
        foreach (var d in piece.Datums) found.Add((new Box(d.At, d.At).Grown(PieceLines.Reach(d, 1)), datum));
        foreach (var contour in piece.Shape.Contours)
        {
            if (!contour.IsCounterClockwise && Math.Max(contour.Bounds.Width, contour.Bounds.Height) <= largestHole)
            {
                found.Add((contour.Bounds, hole));
                continue;
            }
            var before = contour.Segments[^1];
            foreach (var segment in contour.Segments)
            {
                if (!segment.IsLine && segment.Radius < tight && Math.Abs(segment.Sweep.Radians) > turn) found.Add((segment.Bounds, corner));
                else if (before.EndDirection.Dot(segment.StartDirection) < Math.Cos(turn)) found.Add((new(segment.Start, segment.Start), corner));
                before = segment;
            }
        }
        return found.ToImmutable();
    }

    private static double CutInTwo(TilePlan plan, ImmutableArray<(Box Around, double Weight)> delicate)
    {
        const double clear = 2;
        return plan.Seams.Sum(seam =>
        {
            var strip = Box.Around([seam.Start, seam.End + seam.Inwards * seam.Overlap]).Grown(clear);
            return delicate.Where(d => d.Around.Touches(strip)).Sum(d => d.Weight);
        });
    }

    // How much of what is drawn lies where a seam has its words and its registration marks.
    private static double Clashes(TilePlan plan, FreePlace taken)
    {
        const double mark = 4;
        const double wordsLong = 30;
        return plan.Seams.Sum(seam =>
        {
            var middle = seam.Start.MidpointTo(seam.End) + seam.Inwards * (seam.Overlap / 2);
            var words = Box.Around([middle - seam.Along * (wordsLong / 2), middle + seam.Along * (wordsLong / 2)]).Grown(mark / 2);
            var marks = seam.Places.Select(place => seam.Start + seam.Along * place)
                .Select(edge => Box.Around([edge, edge + seam.Inwards * (seam.Overlap / 2)]).Grown(mark));
            return 3 * taken.Taken(words) + marks.Sum(taken.Taken);
        });
    }

    private static Box BoundsOf(Board board) => Box.Around(board.Marks.Select(m => m.Bounds));
}
