using System.Globalization;
using TemplateForge.Fabrication;
using TemplateForge.Geometry;

namespace TemplateForge.Sheets;

/// <summary>Everything to mark pieces out on metal without a printer: how it is done, and for each piece a picture and its tables.</summary>
/// <param name="Modification">Whose pieces they are.</param>
/// <param name="Height">Height in mm of the capitals.</param>
/// <param name="Frame">What both columns share.</param>
/// <param name="Between">Room between them in mm.</param>
/// <param name="InInches">Whether inches stand beside the millimetres.</param>
internal sealed record MarkOutSheets(Modification Modification, double Height, Box Frame, double Between, bool InInches)
{
    private const double HighestBeside = 78;
    private const double HighestAcross = 100;
    private const double HighestCrowded = 150;

    /// <summary>One number in so many may find no room before the picture is drawn larger.</summary>
    private const int FewLeftOut = 12;

    /// <summary>A single piece with fewer lines of figures than this leaves room for a large picture on its page.</summary>
    private const int FewRows = 30;

    private double Column => ColumnFlow.WidthOf(Frame, Between);

    public IEnumerable<FlowItem> Items()
    {
        // A plate's other face is the same plate.
        var pieces = Modification.Pieces.Where(p => p.ForHand.Length == 0 && !p.Shape.IsEmpty).ToList();
        if (pieces.Count == 0) return [];
        var blocks = new CoverBlocks(Modification, Height);
        var how = Wording.MarkingOut(InInches).Select((words, i) => Block.Beside(0,
            Block.Text((i + 1).ToString(CultureInfo.InvariantCulture), Height * 2.8, Height), Block.Text(words, Frame.Width - Height * 2.8, Height)));
        var intro = blocks.Section("Marking out without a printer", Block.Stacked(Height * 0.7, how));
        return [new(intro, Height * 3) { IsWide = true }, .. pieces.SelectMany(p => Of(p, isAlone: pieces.Count == 1))];
    }

    private IEnumerable<FlowItem> Of(Piece piece, bool isAlone)
    {
        var made = MarkOut.Of(piece);
        var tables = new MarkOutTables(made, piece.Tacks, Height, Column, InInches);
        var tangents = Wording.TangentsOf(piece);
        var beside = MarkOutPicture.Fitting(piece, made, Column, HighestBeside, out var reduction, out var leftOut);
        var title = Block.Line($"Mark-out: {piece.Title}", Height * 1.25, strong: true);
        var rows = made.Points.Length + made.Arcs.Length + made.Holes.Length + piece.Tacks.Length;
        var isCrowded = MarkOutPicture.IsCrowded(made, reduction);
        var isWide = isCrowded || leftOut > made.Points.Length / FewLeftOut || title.Width > Column || (isAlone && rows * (InInches ? 2 : 1) < FewRows);
        var picture = isWide ? MarkOutPicture.Fitting(piece, made, Frame.Width, isCrowded ? HighestCrowded : HighestAcross, out reduction, out leftOut) : beside;
        var width = isWide ? Frame.Width : Column;
        var below = string.Join(' ', ((string[])[Scale(reduction), leftOut > 0 ? Wording.NumbersLeftOut : ""]).Where(t => t.Length > 0));
        var head = Block.Stacked(Height * 0.9,
            title,
            Block.Text(Wording.BaseLineOf(made.Base), width, Height),
            Block.Stacked(Height, picture, Block.Text(below, width, Height)));
        return
        [
            new(head, Height * 3) { IsWide = isWide, StaysWithNext = true },
            .. tables.Items(),
            .. tangents.Length > 0 ? [new FlowItem(Block.Text(tangents, Column, Height), Height * 1.2)] : Array.Empty<FlowItem>(),
            .. new WeldTables(piece, made, Height, Column).Items(),
        ];
    }

    private static string Scale(double reduction) => reduction < 1
        ? string.Create(CultureInfo.InvariantCulture, $"Scale {1 / reduction:0.##}:1, {Wording.NotToScale}.")
        : $"{Wording.ScaleOf(reduction)}.";
}
