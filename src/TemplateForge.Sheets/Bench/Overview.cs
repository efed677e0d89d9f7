using System.Collections.Immutable;
using TemplateForge.Fabrication;
using TemplateForge.Geometry;

namespace TemplateForge.Sheets;

/// <summary>The first sheet of a job: pictures, what to check, values to confirm, material, bends, welds, and the work in order.</summary>
/// <param name="Modification">The job.</param>
/// <param name="Frame">What its columns share.</param>
/// <param name="Height">Height in mm of the capitals.</param>
/// <param name="Between">Room between the columns in mm.</param>
/// <param name="InColumn">Its pictures for one of these columns.</param>
/// <param name="InInches">Whether inches stand beside the millimetres.</param>
internal sealed record Overview(Modification Modification, Box Frame, double Height, double Between, ColumnPictures InColumn, bool InInches)
{
    /// <summary>Less height than this in mm for all pictures, and they show nothing.</summary>
    private const double LeastPicture = 60;

    /// <summary>So many times smaller than the column is wide, and nothing can be told on a picture.</summary>
    private const double MostSmaller = 2.5;

    /// <summary>A picture over both columns must show things so much larger to be worth the room beside it.</summary>
    private const double WorthTheWidth = 1.7;

    /// <summary>How much of two columns several blocks fill at best.</summary>
    private const double Filled = 0.85;

    private CoverBlocks Blocks { get; } = new(Modification, Height);

    private double Column => ColumnFlow.WidthOf(Frame, Between);

    /// <summary>The items with pictures as large as leave room for all the rest on one page, then with smaller ones; nothing where the rest
    /// alone is too much.</summary>
    public IEnumerable<OverviewItems> OnOnePage()
    {
        var (above, rest) = (Above(), Rest().ToImmutableArray());
        var room = Frame.Height - above.Height - 2 * Height;
        var left = 2 * room - rest.Sum(i => i.Block.Height + i.Gap);
        var tried = 0.0;
        foreach (var share in (ImmutableArray<double>)[0.96, 0.85, 0.7])
        {
            if (left * share < LeastPicture || !InColumn.TryFit(room, left * share, Height, out var fit)) yield break;
            if (fit.Reduction > MostSmaller * InColumn.AsWideAsTheColumn) yield break;
            if (fit.Reduction == tried) continue;
            tried = fit.Reduction;
            yield return new([Wide(above, 0), .. Pictures(fit), .. rest], fit.Reduction, fit.AtOneScale);
        }
    }

    /// <summary>The items over as many pages as they take.</summary>
    public OverviewItems RunningOn()
    {
        const double most = 0.45;
        const double mostBeside = 0.6;
        var above = Above();
        // Pictures that leave room for the checks on the same page, unless nothing could be told on them.
        var room = Frame.Height - above.Height - 4 * Height;
        var checks = new BenchBlocks(Modification, Height, InInches).Checks(Column).Height + 6 * Height;
        var isBeside = IsBeside(2 * room * Filled - checks, out var beside) || IsBeside(2 * room * Filled, out beside)
            || InColumn.TryFit(Frame.Height * mostBeside, double.PositiveInfinity, Height, out beside);
        var widest = Modification.Pieces.Select(p => p.Shape.Bounds.Width).DefaultIfEmpty(0).Max();
        if (isBeside && widest / Frame.Width * WorthTheWidth > beside.Reduction) return Beside();
        var across = Picture.Fitting(Modification, Frame.Width, Frame.Height * most, Height, withGuideNames: false, out var wide);
        // Rather the rest of the page than a picture that shows nothing.
        if (!isBeside && Picture.IsTooSmall(Modification, Frame.Width, wide))
            across = Picture.Fitting(Modification, Frame.Width, Frame.Height - above.Height - 6 * Height, Height, withGuideNames: false, out wide);
        if (!double.IsFinite(across.Height) || (isBeside && wide * WorthTheWidth > beside.Reduction)) return Beside();
        var shown = Block.Stacked(Height, across, Block.Text(Wording.PictureScaleOf(wide), Frame.Width, Height));
        return new([Wide(above, 0), Wide(shown, Height * 2), .. Rest()], wide, AtOneScale: true);

        bool IsBeside(double together, out ColumnPictures.Fit fit) =>
            InColumn.TryFit(Math.Min(room, Frame.Height * mostBeside), together, Height, out fit) && fit.Reduction <= MostSmaller * InColumn.AsWideAsTheColumn;

        OverviewItems Beside() => new([Wide(above, 0), .. Pictures(beside), .. Rest()], beside.Reduction, beside.AtOneScale);
    }

    private Block Above() => Block.Stacked(Height * 1.5, [.. Title(), Blocks.FaceUp(Frame.Width)]);

    // The title with the hand at the end of its line, unless that has more to say.
    private IEnumerable<Block> Title()
    {
        var (title, banners) = (Block.LineOrText(Modification.Title, Frame.Width, Height * 2.1, strong: true), Blocks.Banners(Frame.Width));
        var hand = Block.Line(Wording.HandOf(Modification), Height * 1.4, strong: true);
        if (Wording.SaysNotMeasured(Modification) || title.Width + hand.Width + 8 * Height > Frame.Width) return [title, .. banners];
        var board = new Board();
        title.PutOn(board, Point.Origin);
        hand.PutOn(board, new Point(Frame.Width - hand.Width, -Height * 0.7));
        return [new(Frame.Width, title.Height, board), .. banners.Skip(1)];
    }

    private static FlowItem Wide(Block block, double gap) => new(block, gap) { IsWide = true };

    private IEnumerable<FlowItem> Pictures(ColumnPictures.Fit fit) => fit.Shown.Select(b => new FlowItem(b, Height * 2));

    private IEnumerable<FlowItem> Rest()
    {
        var (bench, work, caution) = (new BenchBlocks(Modification, Height, InInches), new WorkBlocks(Modification.Steps, Height), Height * 0.9);
        return
        [
            .. Section("Warnings", Blocks.Warnings(Column)),
            .. Section("Check by rule before cutting", bench.Checks(Column)),
            .. Section("Values used: confirm, then tick", Values()),
            .. Section("Material", bench.CutList(Column)),
            .. Section("Cutting", new PlanBlocks(Modification, Height).Summary(Column)),
            .. Section("Parts of the jig", PartList.Of(Modification, Column, Height)),
            .. Section("Bends, in this order", Bends()),
            .. Section("Welding", [.. Blocks.JoiningParagraphs(Column).Select(b => new FlowItem(b, Height * 0.75))]),
            .. Section("The curved panel", Panels()),
            .. Section("The work in order", [.. work.Of(Column).Select(b => new FlowItem(b, Height * 0.75))]),
            .. Section("Cautions all the while", [.. work.Others(Modification.Cautions).Select(c => new FlowItem(OneCaution(c), caution))]),
        ];
    }

    private ImmutableArray<FlowItem> Values() =>
    [
        new(Blocks.WhoseWords(Column), 0) { StaysWithNext = true },
        .. Blocks.ValueTables(Column, toConfirm: true).SelectMany(t => FlowItem.Table(t.Columns, t.Rows, Height, Height * 1.2, "Values used, continued")),
    ];

    private Block OneCaution(Caution caution) => new CoverBlocks(Modification with { Cautions = [caution] }, Height).Cautions(Column, columns: 1);

    private ImmutableArray<FlowItem> Panels()
    {
        ImmutableArray<Piece> pieces = [.. Modification.Pieces.Where(p => p.Bends.IsEmpty && !p.EdgeViews.IsEmpty)];
        return pieces.IsEmpty ? [] :
        [
            new(EdgeViews.Of(pieces, Column, Height), 0),
            .. pieces.SelectMany(p => p.Notes).Distinct().Select(n => new FlowItem(Block.Text(n, Column, Height), Height * 0.8)),
        ];
    }

    private ImmutableArray<FlowItem> Bends()
    {
        var table = new BendTable(Modification.Pieces, Height);
        var (columns, rows) = table.Of(Column);
        return rows.IsEmpty ? [] :
        [
            new(table.Origins(Column), 0) { StaysWithNext = true },
            .. FlowItem.Table(columns, rows, Height, Height * 0.5),
            new(Block.Text(Wording.PencilOnly, Column, Height), Height * 0.8),
            new(EdgeViews.Of(Modification.Pieces, Column, Height), Height * 0.8),
        ];
    }

    private IEnumerable<FlowItem> Section(string title, Block content) => Section(title, [new FlowItem(content, 0)]);

    private IEnumerable<FlowItem> Section(string title, ImmutableArray<FlowItem> content) => FlowItem.Section(title, Height, content);
}

/// <summary>What stands on the first sheet.</summary>
/// <param name="Items">In order.</param>
/// <param name="Reduction">How many times smaller than its piece the largest is shown.</param>
/// <param name="AtOneScale">Whether all pieces are shown at that scale.</param>
internal sealed record OverviewItems(ImmutableArray<FlowItem> Items, double Reduction, bool AtOneScale)
{
    public string Scale => AtOneScale ? Wording.ShortScaleOf(Reduction) : Wording.ScalesDiffer;
}
