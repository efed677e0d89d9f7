using System.Collections.Immutable;
using System.Globalization;
using TemplateForge.Drawing;
using TemplateForge.Fabrication;
using TemplateForge.Geometry;

namespace TemplateForge.Sheets;

/// <summary>The paper template: cover pages, then every piece at true size, tile by tile.</summary>
/// <param name="Document">What is printed.</param>
/// <param name="Layings">How each piece lies on its pages, in the order of the pieces.</param>
public sealed record TemplateSheet(Document Document, ImmutableArray<Laying> Layings)
{
    private const double Text = 2.5;
    private const double Gap = 7;
    private const double LeastColumn = 120;
    private const double MapHeight = 70;

    // Of several pieces, so that what is said of them stays on one page with them.
    private const double SmallMapHeight = 58;

    /// <param name="modification">What is made.</param>
    /// <param name="paper">What it is printed on.</param>
    /// <param name="overlap">How far neighbouring pages lie over each other, in mm.</param>
    public static Document Of(Modification modification, Paper paper, double overlap) => Of(modification, new PrintSetup(paper, overlap)).Document;

    /// <param name="modification">What is made.</param>
    /// <param name="setup">How it is printed.</param>
    public static TemplateSheet Of(Modification modification, PrintSetup setup)
    {
        var (pieces, rows) = (ImmutableArray.CreateBuilder<PieceTemplate>(), 0);
        foreach (var piece in modification.Pieces)
        {
            pieces.Add(PieceTemplate.Of(modification, piece, setup, rows));
            rows += pieces[^1].Plan.Rows;
        }
        var templates = pieces.ToImmutable();
        var document = new Document(
            modification.Title,
            $"{Wording.ProfileOf(modification)}, {Wording.HandOf(modification)}",
            [
                .. CoverPages(modification, setup, templates).Select(p => setup.Corrected(SmallPaper.Printed(p, setup.Room.AsSheet()), across: false)),
                .. templates.SelectMany(t => t.Pages(modification, setup).Select(p => setup.Corrected(p, t.Plan.IsAcross))),
            ]);
        return new(document, [.. templates.Select(t => new Laying(t.Piece.Name, t.Piece.Title, t.Laid.Turn, t.Plan.Tiles.Length, t.PagesSaved))]);
    }

    private static IEnumerable<Page> CoverPages(Modification modification, PrintSetup setup, ImmutableArray<PieceTemplate> templates)
    {
        var sheet = setup.Room.AsSheet();
        var blocks = new CoverBlocks(modification, Text);
        var width = Columns(SmallPaper.LaidOutOn(sheet))[0].Width;
        var running = Block.LineOrText($"{modification.Title}: {Wording.HandOf(modification)}", width, Text, strong: true);
        ImmutableArray<Block> cover =
        [
            blocks.Heading("Paper template at true size", width),
            .. blocks.Banners(width),
            Block.Beside(8, blocks.FaceUp(width - 60), blocks.Arrows()),
            .. PagesAndAssembly(blocks, setup, templates, width),
            blocks.Section("What the lines mean", blocks.Legend(width, columns: 2, withFlaps: templates.Any(t => !t.Laid.Flaps.IsEmpty))),
            blocks.Section("Warnings", blocks.Warnings(width)),
            blocks.Section("Check before anything is cut", blocks.Checks(width)),
            blocks.Section("Bends, in this order", blocks.Bends(width)),
            blocks.Section("Welding", blocks.Joining(width)),
            blocks.Section("The curved panel", blocks.Panels(width)),
            blocks.Section("Cautions", blocks.Cautions(width, columns: 2)),
            blocks.Section("Values used", blocks.Values(width, toConfirm: false)),
        ];
        // A roll is cut where the text ends.
        if (setup.Paper.IsRoll) sheet = PageFlow.Shortest(sheet, s => Columns(SmallPaper.LaidOutOn(s)), Gap, cover);
        var paper = SmallPaper.LaidOutOn(sheet);
        return PageFlow.Pages(modification, paper, Columns(paper), Gap, running, cover);

        static ImmutableArray<Box> Columns(Paper paper) =>
            PageFlow.Columns(new Box(Point.Origin, new(paper.Width, paper.Height)).Grown(-paper.Margin - 4), LeastColumn, Gap * 1.5);
    }

    // The pieces' maps in rows of two, each where there is room for it; beside a single one how the pages are joined.
    private static IEnumerable<Block> PagesAndAssembly(CoverBlocks blocks, PrintSetup setup, ImmutableArray<PieceTemplate> templates, double width)
    {
        const double between = 8;
        var half = (width - between) / 2;
        var maps = templates.Select(t => PagesMap.Of(t, half, templates.Length > 2 ? SmallMapHeight : MapHeight, Text).AsWideAs(half)).ToList();
        if (maps.Count == 1)
            return [Block.Beside(between, blocks.Section("Pages", maps[0]), blocks.Section("How to put it together", Assembly(setup, templates, half)))];
        var rows = maps.Chunk(2).Select(row => Block.Beside(between, row)).ToList();
        return [blocks.Section("Pages", rows[0]), .. rows[1..], blocks.Section("How to put it together", Assembly(setup, templates, width))];
    }

    private static Block Assembly(PrintSetup setup, ImmutableArray<PieceTemplate> templates, double width)
    {
        var seams = templates.SelectMany(t => t.SeamChecks).ToList();
        ImmutableArray<string> steps =
        [
            "Print at 100 %, no fit to page. Measure both scale checks on every page with a good rule before you trust it.",
            .. seams.Count == 0 ? ImmutableArray<string>.Empty :
            [
                "Trim the pages where it says so, lay each over its neighbour by the marks, and glue: the map shows which goes where.",
                $"Measure the long lines across the seams: {string.Join("; ", seams.Select(s => s.Stated))}. If one is wrong, part the pages and join them anew.",
            ],
            "Measure the distances below on the joined paper, then on the work. If one does not agree, find out why first.",
        ];
        return Block.Stacked(1.8,
        [
            .. steps.Select((s, i) => Block.Beside(0,
                Block.Text((i + 1).ToString(CultureInfo.InvariantCulture), 6, Text), Block.Text(s, width - 6, Text))),
            .. ((string[])[Wording.Damp, Wording.OfPrinter(setup.Printer, setup.Paper)]).Where(s => s.Length > 0).Select(s => Block.Text(s, width, Text)),
        ]);
    }
}

/// <summary>How a piece lies on the pages of its template.</summary>
/// <param name="Piece">Its name.</param>
/// <param name="Title">What it is.</param>
/// <param name="Turn">By how much it was turned, anticlockwise.</param>
/// <param name="Pages">How many pages it takes.</param>
/// <param name="PagesSaved">How many fewer than if it had not been turned.</param>
public sealed record Laying(string Piece, string Title, Angle Turn, int Pages, int PagesSaved)
{
    /// <summary>The turn and what it saved in words; empty for a piece that lies as it is drawn.</summary>
    public string InWords => Turn == Angle.Zero ? "" : $"{Wording.TurnedBy(Turn)}{(PagesSaved > 0 ? $", {Wording.PagesOf(PagesSaved)} saved" : "")}";
}
