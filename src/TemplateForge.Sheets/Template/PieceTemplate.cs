using System.Collections.Immutable;
using TemplateForge.Drawing;
using TemplateForge.Fabrication;
using TemplateForge.Geometry;

namespace TemplateForge.Sheets;

/// <summary>A piece at true size over as many pages as it takes.</summary>
/// <param name="Piece">Whose template it is.</param>
/// <param name="Lines">Its lines alone.</param>
/// <param name="Plan">Its pages.</param>
/// <param name="Drawing">All that is on them in the piece's own coordinates.</param>
internal sealed record PieceTemplate(Piece Piece, Board Lines, TilePlan Plan, Board Drawing)
{
    /// <summary>White border round what is drawn, in mm: a window cuts off what lies outside it.</summary>
    private const double Border = 3;

    /// <summary>Room round a piece for its dimension lines while nobody knows yet where they go, in mm.</summary>
    private const double RoomForDimensions = 70;

    public static PieceTemplate Of(Modification modification, Piece piece, Paper paper, PageLayout layout, int rowsBefore)
    {
        var firstNumber = CheckNumbers.FirstOf(modification, piece);
        // 1. The piece with its dimensions says what must be on the pages.
        var lines = new Board();
        PieceLines.PutOn(lines, piece, unit: 1);
        var first = new PieceDrawing(piece, lines, 1, BoundsOf(lines).Grown(RoomForDimensions));
        first.AddDimensions(firstNumber);
        var plan = Pages(lines, BoundsOf(first.Board).Grown(Border), paper, layout).After(rowsBefore);

        // 2. Now the seams are known: the dimensions are placed anew, and the words, clear of them.
        var windows = plan.Tiles.Select(t => t.Window).ToList();
        var drawing = new PieceDrawing(piece, lines, 1, Box.Around(windows));
        drawing.KeepWithin(windows);
        foreach (var tile in plan.Tiles) drawing.KeepFree(FurnitureInWindow(plan, tile));
        drawing.AddTackNumbers();
        drawing.AddRunNumbers();
        drawing.AddDatumLetters(height: 5, withHoles: true);
        drawing.AddDimensions(firstNumber);
        drawing.Place(TitleBlock.Of(modification, piece), PlaceOfTitle(piece));
        foreach (var tile in plan.Tiles)
            drawing.Place(TitleBlock.WhichWayRound(modification, piece), new(tile.Window.Min.X, tile.Window.Max.Y), tile.Window);
        drawing.AddWarnings(CheckNumbers.FirstWarningOf(modification, piece));
        drawing.AddNamesOfBends(Wording.BendOf);
        drawing.AddNamesOfWraps();
        drawing.AddLabels();
        drawing.AddNamesOfLines();
        drawing.AddNamesOfGuides();
        drawing.AddWaste();
        return new(piece, lines, plan, drawing.Board);
    }

    // Of all places of the grid that take the fewest pages, the one whose seams and marks lie least on the lines.
    private static TilePlan Pages(Board lines, Box content, Paper paper, PageLayout layout)
    {
        var (taken, ink) = (new FreePlace(content, 1), new FreePlace(content, 1));
        taken.Take(lines.Marks, 1);
        ink.Take(Ink.SelectMany(lines.On), 0);
        var plans = Shifts
            .SelectMany(right => Shifts.Select(up => new Vector(right, up)))
            .Select(shift => (Shift: shift, Plan: Tiling.Plan(Shifted(content, shift), paper, layout, window => ink.Taken(window) > 0)))
            .ToList();
        var fewest = plans.Min(p => p.Plan.Tiles.Length);
        return plans.Where(p => p.Plan.Tiles.Length == fewest)
            .OrderBy(p => Clashes(p.Plan, taken))
            .ThenBy(p => p.Shift.LengthSquared)
            .First().Plan;
    }

    /// <summary>A page with none of these on it is left out.</summary>
    private static ImmutableArray<LineKind> Ink { get; } =
        [LineKinds.Finish, LineKinds.RoughCut, LineKinds.PanelEdge, LineKinds.Datum, LineKinds.Guide, LineKinds.Tack, LineKinds.Bend, LineKinds.Scribe];

    private static ImmutableArray<double> Shifts { get; } = [0, 8, -8, 16, -16, 24, -24];

    // The grid lies in the middle of the content, so content that is wider on one side moves it.
    private static Box Shifted(Box content, Vector shift) => new(
        content.Min + new Vector(2 * Math.Min(shift.X, 0), 2 * Math.Min(shift.Y, 0)),
        content.Max + new Vector(2 * Math.Max(shift.X, 0), 2 * Math.Max(shift.Y, 0)));

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

    public IEnumerable<Page> Pages(Modification modification)
    {
        var drawing = Drawing.ToDrawing();
        var title = $"{Wording.ProfileOf(modification)}: {Piece.Title}. {(Piece.ForHand.Length > 0 ? Piece.ForHand : Wording.ShortHandOf(modification))}";
        return Plan.Tiles.Select(tile => new Page(Plan.PageWidth, Plan.PageHeight,
        [
            .. DemonstrationAcross.Views(modification, Plan.Paper, tile.PageWindow),
            new View(drawing, tile.ToPage, tile.PageWindow),
            new View(Furniture.Of(Plan, tile, title), Placement.Unmoved, Plan.Paper),
        ]));
    }

    private static Box BoundsOf(Board board) => Box.Around(board.Marks.Select(m => m.Bounds));

    private static Point PlaceOfTitle(Piece piece)
    {
        var waste = piece.Kind == PieceKind.CutAway ? piece.Waste() : Region.Empty;
        return waste.IsEmpty ? new(piece.Shape.Bounds.Centre.X, piece.Shape.Bounds.Min.Y - 60) : waste.Bounds.Centre;
    }

    private static IEnumerable<Mark> FurnitureInWindow(TilePlan plan, Tile tile)
    {
        var board = new Board();
        var marks = Furniture.Of(plan, tile, "").Layers.SelectMany(l => l.Marks);
        board.Add(LineKinds.Frame, marks.Where(m => m is not Lettering { Text: "" } && m.Bounds.Touches(tile.PageWindow)));
        var inDrawing = new Board();
        inDrawing.Add(board, Placement.Moved(tile.Window.Min - tile.PageWindow.Min));
        return inDrawing.Marks;
    }
}
