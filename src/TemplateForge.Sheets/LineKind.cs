using System.Collections.Immutable;
using TemplateForge.Drawing;

namespace TemplateForge.Sheets;

/// <summary>What a line means: its layer's name, its pen, and the words of the legend.</summary>
/// <param name="Layer">ASCII capitals and hyphens.</param>
/// <param name="Pen">Told apart from all others without colour, for many shops print in black only.</param>
/// <param name="Meaning">What a person is told about it; empty where the line needs no legend.</param>
internal sealed record LineKind(string Layer, Pen Pen, string Meaning);

/// <summary>Every kind of line that the outputs have, in the order in which they are drawn: what matters most comes last, on top.</summary>
/// <remarks>
/// Lines to work to are 0.35 mm wide, thin lines 0.18 mm, lettering a tenth of its height (ISO 128 and ISO 3098 type B). Panel
/// edges have the line that ISO 128 gives to neighbouring parts and to shapes before they are worked, centre lines its chain line.
/// </remarks>
internal static class LineKinds
{
    private static readonly Colour Grey = new(130, 130, 130);
    private static readonly Colour PaleGrey = new(212, 212, 212);

    /// <summary>On paper large pale letters under the lines.</summary>
    public static LineKind Demonstration { get; } = new("DEMONSTRATION", Pen.Solid(1.8, PaleGrey), "");
    public static LineKind Waste { get; } = new("WASTE", Pen.Solid(0.18, Grey), "hatched: waste side");
    public static LineKind Shade { get; } = new("SHADE", Pen.Solid(0.18, PaleGrey), "");
    public static LineKind CentreLine { get; } = new("CENTRE-LINE", new(0.18, [8, 1.5, 1, 1.5], Colour.Black), "centre line");
    public static LineKind Guide { get; } = new("GUIDE", new(0.25, [4, 2], Colour.Black), "guide line: to see, not to cut");
    public static LineKind Break { get; } = new("BREAK-LINE", Pen.Solid(0.18, Colour.Black), "the panel goes on past here");
    public static LineKind Move { get; } = new("MOVE", new(0.18, [1.2, 1.2], Colour.Black), "");
    public static LineKind FinishedEdge { get; } = new("FINISHED-EDGE", Pen.Solid(0.18, Grey), "");
    public static LineKind Drill { get; } = new("DRILL", Pen.Solid(0.25, Colour.Black), "");
    public static LineKind Pierce { get; } = new("PIERCE", Pen.Solid(0.25, Colour.Black), "");
    public static LineKind SeamCheck { get; } = new("SEAM-CHECK", Pen.Solid(0.2, Colour.Black), "");
    public static LineKind Flap { get; } = new("FLAP", Pen.Solid(0.25, Colour.Black), "flap: cut round it, fold it back along the panel edge, hook it over");
    public static LineKind Dimension { get; } = new("DIMENSION", Pen.Solid(0.18, Colour.Black), "distance to check by rule, in mm");
    public static LineKind Frame { get; } = new("FRAME", Pen.Solid(0.18, Colour.Black), "");
    public static LineKind Note { get; } = new("NOTE", Pen.Solid(0.22, Colour.Black), "");
    public static LineKind Heading { get; } = new("HEADING", Pen.Solid(0.45, Colour.Black), "");
    public static LineKind Arrow { get; } = new("ARROW", Pen.Solid(0.35, Colour.Black), "");
    public static LineKind Warning { get; } = new("WARNING", Pen.Solid(0.35, Colour.Black), "");
    public static LineKind Tack { get; } = new("TACK", Pen.Solid(0.35, Colour.Black), "tack or plug weld, in the order of the numbers");
    public static LineKind WeldRun { get; } = new("WELD-RUN", Pen.Solid(0.25, Colour.Black), "run of weld: laid as its arrow points, in the order of the ringed numbers");
    public static LineKind Datum { get; } = new("DATUM", Pen.Solid(0.25, Colour.Black), "datum: cross over the hole, punch in the open middle");
    public static LineKind PanelEdge { get; } =
        new("PANEL-EDGE", new(0.35, [9, 1.5, 0.6, 1.5, 0.6, 1.5], Colour.Black), "panel edge: lay it on the edge of the panel");

    // ISO 128 draws bend lines narrow and whole: half as wide as what is cut.
    public static LineKind Bend { get; } = new("PENCIL-BEND", Pen.Solid(0.18, Colour.Black), "bend line: pencil it, never scribe it");
    public static LineKind BendTangent { get; } =
        new("PENCIL-TANGENT", new(0.18, [1, 1], Colour.Black), "tangent lines: pencil, the bend lies between them");
    public static LineKind Sight { get; } =
        new("PENCIL-SIGHT", new(0.18, [5, 1, 1, 1], Colour.Black), "sight line: pencil, the nose bar's edge stands over it");
    public static LineKind Generator { get; } =
        new("PENCIL-GENERATOR", new(0.18, [14, 1.5, 3, 1.5], Colour.Black), "generator: pencil it; line the wrap up by it, roll along it");
    public static LineKind Scribe { get; } = new("SCRIBE", new(0.35, [12, 1.2], Colour.Black), "scribe line: a mark that stays, not a cut, not a bend");
    public static LineKind PlateLettering { get; } = new("SCRIBE-LETTERING", Pen.Solid(0.3, Colour.Black), "lettered on the plate, to stay");
    public static LineKind RoughCut { get; } = new("ROUGH-CUT", new(0.35, [2.5, 1.5], Colour.Black), "rough cut: snips, saw or torch stay on it");
    public static LineKind Finish { get; } = new("CUT", Pen.Solid(0.35, Colour.Black), "finish line: the edge that is wanted");

    public static ImmutableArray<LineKind> InOrder { get; } =
    [
        Demonstration, Shade, Waste, CentreLine, Guide, Break, Move, FinishedEdge, Drill, Pierce, SeamCheck, Flap, Dimension, Frame, Warning, Arrow, Note, Heading, BendTangent, Sight,
        Generator, WeldRun, Tack, Datum, PanelEdge, Bend, Scribe, PlateLettering, RoughCut, Finish,
    ];

    /// <summary>The drawing with lines to work to as wide as the shop likes them, and none of the thinner ones wider than they.</summary>
    /// <param name="drawing">As it is drawn usually.</param>
    /// <param name="line">Width in mm of the lines to work to.</param>
    public static LineDrawing WithLines(this LineDrawing drawing, double line) => line == LineWidth.Usual
        ? drawing
        : new([.. drawing.Layers.Select(l => l with { Pen = l.Pen with { Width = WidthOf(l, line) } })]);

    private static double WidthOf(Layer layer, double line) =>
        layer.Name == Demonstration.Layer || layer.Name == Heading.Layer ? layer.Pen.Width
        : layer.Pen.Width >= LineWidth.Usual ? line
        : Math.Min(layer.Pen.Width, line);
}
