using System.Collections.Immutable;
using TemplateForge.Drawing;
using TemplateForge.Fabrication;
using TemplateForge.Geometry;

namespace TemplateForge.Sheets;

/// <summary>A piece for a cutting table: the cut, marks to lay it by, and notes clear of it.</summary>
/// <remarks>Only layer CUT is cut. Inner cuts come before outer ones; an open cut runs on and off past the panel's edge. Where the piece has a
/// plan, CUT is the course of the torch in its order, leads and all, and the finished edge stands on a layer of its own.</remarks>
public static class CutSheet
{
    /// <summary>How far past the panel's edge an open cut begins and ends, in mm.</summary>
    public const double RunOut = 10;

    private const double NotesBelow = 20;
    private const double LeastNotesWidth = 160;

    /// <summary>What is on layer CUT, in the order in which it is cut.</summary>
    public static ImmutableArray<Path> Cuts(Piece piece) =>
        piece.Planned.IsNone ? piece.TableCuts(RunOut) : [.. piece.Planned.Cuts.Select(c => c.Path)];

    /// <param name="modification">What is made.</param>
    /// <param name="piece">The piece that is cut.</param>
    /// <param name="unit">What the notes say that the file is in; the drawing itself is in mm until it is written.</param>
    public static LineDrawing Of(Modification modification, Piece piece, string unit = "mm")
    {
        var board = new Board();
        if (piece.Planned.IsNone) board.Add(LineKinds.Finish, Cuts(piece).Select(PieceLines.Stroke));
        else PlanLines.PutOn(board, piece, unit: 1);
        PieceLines.PutMarkedOn(board, piece);
        board.Add(LineKinds.PanelEdge, piece.Edges.Select(PieceLines.Stroke));
        foreach (var datum in piece.Datums) board.Add(LineKinds.Datum, PieceLines.DatumMarks(datum, unit: 1));
        foreach (var tack in piece.Tacks) board.Add(LineKinds.Tack, PieceLines.TackMarks(piece, tack, unit: 1));
        PlateLettering.PutOn(board, piece, withWords: true);
        board.Add(LineKinds.CentreLine, PieceLines.CentreLines(piece).Select(PieceLines.Stroke));
        board.Add(LineKinds.Guide, piece.GuideLines.SelectMany(g => g.Along.Contours).Select(c => new ClosedStroke(c)));
        board.Add(LineKinds.Guide, JoiningLines.ZincLimits(piece));

        var bounds = Box.Around(board.Marks.Select(m => m.Bounds));
        var width = Math.Max(LeastNotesWidth, bounds.Width);
        Notes(modification, piece, unit, width, Math.Clamp(width / 60, 3, 8)).PutOn(board, new Point(bounds.Min.X, bounds.Min.Y - NotesBelow));
        board.Add(LineKinds.Demonstration, DemonstrationAcross.Marks(modification, Large(bounds)));
        return CutFirst(board.ToDrawing());
    }

    private static Block Notes(Modification modification, Piece piece, string unit, double width, double height)
    {
        var notes = new List<string>
        {
            $"{piece.Title}. {Wording.ProfileOf(modification)}",
            $"{Wording.HandOf(modification, piece)}. {Wording.FaceUpOf(piece)}",
            $"{Wording.MakingOf(piece)}. Unit: {unit}. {Wording.KerfOf(piece.Planned)} Only layer CUT is cut.",
        };
        notes.AddRange(Wording.WaysOf(piece.Planned));
        if (!piece.Bends.IsEmpty) notes.Add(Wording.PencilOnly);
        if (piece.Kind == PieceKind.CutAway) notes.Add(Wording.NotOnATable);
        notes.AddRange(piece.Notes.Where(n => !notes.Contains(n)));
        if (!modification.Cautions.IsEmpty) notes.Add("Cautions: " + string.Join(", ", modification.Cautions.Select(c => c.Title)) + ".");
        var board = new Board();
        var block = Block.Stacked(height * 0.7, notes.Select(n => Block.Text(n, width, height)));
        board.Add(LineKinds.Note, block.Board.Marks);
        return block with { Board = board };
    }

    // Small pieces get letters that are large all the same.
    private static Box Large(Box bounds) => bounds.Grown(Math.Max(0, (60 - Math.Max(bounds.Width, bounds.Height)) / 2));

    private static LineDrawing CutFirst(LineDrawing drawing) => new(
        [.. drawing.Layers.OrderBy(l => l.Name == LineKinds.Finish.Layer ? 0 : 1)]);
}
