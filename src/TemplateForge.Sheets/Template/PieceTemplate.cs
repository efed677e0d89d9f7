using System.Collections.Immutable;
using TemplateForge.Drawing;
using TemplateForge.Fabrication;
using TemplateForge.Geometry;

namespace TemplateForge.Sheets;

/// <summary>A piece at true size over as many pages as it takes.</summary>
/// <param name="Piece">Whose template it is.</param>
/// <param name="Laid">The piece as it lies on the pages.</param>
/// <param name="PagesSaved">How many pages fewer that takes than if it had not been turned.</param>
/// <param name="Drawing">All that is on them, in the coordinates of the turned piece.</param>
/// <param name="SeamChecks">The long lines across the seams.</param>
internal sealed record PieceTemplate(Piece Piece, LaidPiece Laid, int PagesSaved, Board Drawing, ImmutableArray<SeamCheck> SeamChecks)
{
    public TilePlan Plan => Laid.Plan;

    public static PieceTemplate Of(Modification modification, Piece piece, PrintSetup setup, int rowsBefore)
    {
        var firstNumber = CheckNumbers.FirstOf(modification, piece);
        var laid = LaidPiece.Of(piece, firstNumber, setup, out var saved).After(rowsBefore);
        var (turned, plan, lines) = (laid.Turned, laid.Plan, laid.Lines);

        // The seams are known: the dimensions are placed anew, and the words, clear of them.
        var windows = plan.Tiles.Select(t => t.Window).ToList();
        var drawing = new PieceDrawing(turned, lines, 1, Box.Around(windows));
        drawing.KeepWithin(windows);
        foreach (var tile in plan.Tiles) drawing.KeepFree(FurnitureInWindow(plan, tile));
        foreach (var flap in laid.Flaps) flap.PutOn(drawing);
        var checks = SeamCheck.Of(plan, drawing, turned.Shape);
        foreach (var check in checks)
        {
            drawing.Board.Add(LineKinds.SeamCheck, check.Marks);
            drawing.Free.Take(check.Marks, 0.8);
        }
        drawing.AddRunNumbers();
        drawing.AddDimensions(firstNumber, laid.Turn, piece);
        drawing.AddDatumLetters(height: 5, withHoles: true);
        drawing.AddTackNumbers();
        drawing.AddNamesOf(DrawnBaseLine.Of(piece, laid.Turn));
        drawing.TryPlaceOne(TitleBlock.Of(modification, turned), PlaceOfTitle(turned), TitleBlock.Least);
        foreach (var tile in plan.Tiles)
            drawing.TryPlaceOne(TitleBlock.WhichWayRound(modification, turned), new(tile.Window.Min.X, tile.Window.Max.Y), tile.Window, TitleBlock.Least);
        foreach (var check in checks)
            drawing.TryAddBeside(check.Words, [.. ((double[])[0.25, 0.75, 0.1, 0.9, 0.4, 0.6]).Select(share => check.Start + check.Along * (share * check.Length))], check.Along.Left);
        drawing.AddWarnings(CheckNumbers.FirstWarningOf(modification, piece));
        drawing.AddNamesOfBends(Wording.BendOf, ImmutableDictionary<int, Circle>.Empty);
        drawing.AddNamesOfWraps();
        drawing.AddLabels();
        drawing.AddNamesOfLines();
        drawing.AddNamesOfGuides();
        drawing.AddWaste();
        return new(piece, laid, saved, drawing.Board, checks);
    }

    public IEnumerable<Page> Pages(Modification modification, PrintSetup setup)
    {
        var drawing = Drawing.ToDrawing().WithLines(setup.Line);
        var title = $"{Wording.ProfileOf(modification)}: {Piece.Title}. {(Piece.ForHand.Length > 0 ? Piece.ForHand : Wording.ShortHandOf(modification))}"
            + (Laid.IsTurned ? $". {Wording.TurnedBy(Laid.Turn)}" : "")
            + (setup.Printer.IsCorrected ? $". {Wording.CorrectedFor(setup.Printer)}" : "");
        return Plan.Tiles.Select(tile => new Page(Plan.PageWidth, Plan.PageHeight,
        [
            .. DemonstrationAcross.Views(modification, Plan.Paper, tile.PageWindow),
            new View(drawing, tile.ToPage, tile.PageWindow),
            new View(Furniture.Of(Plan, tile, title, [.. Laid.Lines.On(LineKinds.Finish), .. Laid.Lines.On(LineKinds.PanelEdge)]), Placement.Unmoved, Plan.Paper),
        ]));
    }

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
