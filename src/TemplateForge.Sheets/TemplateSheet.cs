using System.Collections.Immutable;
using System.Globalization;
using TemplateForge.Drawing;
using TemplateForge.Fabrication;
using TemplateForge.Geometry;

namespace TemplateForge.Sheets;

/// <summary>The paper template: cover pages, then every piece at true size, tile by tile.</summary>
public static class TemplateSheet
{
    private const double Text = 2.5;
    private const double Gap = 7;
    private const double LeastColumn = 120;
    private const double MapHeight = 70;

    /// <param name="modification">What is made.</param>
    /// <param name="paper">What it is printed on.</param>
    /// <param name="overlap">How far neighbouring pages lie over each other, in mm.</param>
    public static Document Of(Modification modification, Paper paper, double overlap)
    {
        var layout = new PageLayout(PageLayout.Usual.SideStrip, PageLayout.Usual.FootStrip, overlap);
        var (pieces, rows) = (ImmutableArray.CreateBuilder<PieceTemplate>(), 0);
        foreach (var piece in modification.Pieces)
        {
            pieces.Add(PieceTemplate.Of(modification, piece, paper, layout, rows));
            rows += pieces[^1].Plan.Rows;
        }
        var templates = pieces.ToImmutable();
        return new(
            modification.Title,
            $"{Wording.ProfileOf(modification)}, {Wording.HandOf(modification)}",
            [.. CoverPages(modification, paper, templates), .. templates.SelectMany(t => t.Pages(modification))]);
    }

    private static IEnumerable<Page> CoverPages(Modification modification, Paper paper, ImmutableArray<PieceTemplate> templates)
    {
        var blocks = new CoverBlocks(modification, Text);
        var frame = new Box(Point.Origin, new(paper.Width, paper.Height)).Grown(-paper.Margin - 4);
        var columns = PageFlow.Columns(frame, LeastColumn, Gap * 1.5);
        var width = columns[0].Width;
        return PageFlow.Pages(modification, paper, columns, Gap,
        [
            blocks.Heading("Paper template at true size", width),
            .. blocks.Banners(width),
            Block.Beside(8, blocks.FaceUp(width - 60), blocks.Arrows()),
            PagesAndAssembly(blocks, templates, width),
            blocks.Section("What the lines mean", blocks.Legend(width, columns: 2)),
            blocks.Section("Warnings", blocks.Warnings(width)),
            blocks.Section("Check before anything is cut", blocks.Checks(width)),
            blocks.Section("Bends, in this order", blocks.Bends(width)),
            blocks.Section("Welding", blocks.Joining(width)),
            blocks.Section("The curved panel", blocks.Panels(width)),
            blocks.Section("Cautions", blocks.Cautions(width, columns: 2)),
            blocks.Section("Values used", blocks.Values(width, toConfirm: false)),
        ]);
    }

    // The pieces' maps beside each other; beside a single one how the pages are joined.
    private static Block PagesAndAssembly(CoverBlocks blocks, ImmutableArray<PieceTemplate> templates, double width)
    {
        const double between = 8;
        var half = (width - between) / 2;
        var maps = templates.Select(t => PagesMap.Of(t.Piece, t.Lines, t.Plan, half, MapHeight, Text).AsWideAs(half)).ToList();
        if (maps.Count == 1)
            return Block.Beside(between, blocks.Section("Pages", maps[0]), blocks.Section("How to put it together", Assembly(half)));
        return Block.Stacked(Gap,
            blocks.Section("Pages", Block.Stacked(4, maps.Chunk(2).Select(row => Block.Beside(between, row)))),
            blocks.Section("How to put it together", Assembly(width)));
    }

    private static Block Assembly(double width)
    {
        ImmutableArray<string> steps =
        [
            "Print at 100 %, no fit to page. Measure both scale checks on every page with a good rule before you trust it.",
            "Trim the pages where it says so, lay each over its neighbour by the marks, and glue: the map shows which goes where.",
            "Measure the distances below on the joined paper, then on the work. If one does not agree, find out why first.",
        ];
        return Block.Stacked(1.8, steps.Select((s, i) => Block.Beside(0,
            Block.Text((i + 1).ToString(CultureInfo.InvariantCulture), 6, Text), Block.Text(s, width - 6, Text))));
    }
}
