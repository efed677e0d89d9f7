using System.Collections.Immutable;

namespace TemplateForge.Sheets;

/// <summary>What stands in a run of two columns: a block as wide as one of them, or as both.</summary>
/// <param name="Block">What is shown.</param>
/// <param name="Gap">Room above it in mm, unless it is the first of its column.</param>
internal sealed record FlowItem(Block Block, double Gap)
{
    /// <summary>Whether it goes over both columns.</summary>
    public bool IsWide { get; init; }

    /// <summary>Whether it is no use without what follows: a heading.</summary>
    public bool StaysWithNext { get; init; }

    /// <summary>What is said again where it comes to be the first of its column: a table's line of headings.</summary>
    public Block AtTop { get; init; } = Block.Empty(0, 0);

    /// <summary>A table with fewer rows than this stands in one column.</summary>
    private const int LeastParted = 8;

    /// <summary>A titled block; nothing where it has no content.</summary>
    public static IEnumerable<FlowItem> Section(string title, double height, params ImmutableArray<FlowItem> content)
    {
        var shown = content.Where(i => i.Block.Height > 0).ToList();
        if (shown.Count == 0) yield break;
        yield return new(Block.Line(title, height * 1.25, strong: true), height * 2.4) { StaysWithNext = true };
        yield return shown[0] with { Gap = height * 0.9 };
        foreach (var item in shown.Skip(1)) yield return item;
    }

    /// <summary>A table that runs on from column to column.</summary>
    /// <param name="columns">Heading and width in mm of each column.</param>
    /// <param name="rows">The cells of each row.</param>
    /// <param name="height">Height of capitals in mm.</param>
    /// <param name="gap">Room above it in mm.</param>
    /// <param name="continued">What is said over it where it goes on in another column.</param>
    public static IEnumerable<FlowItem> Table(
        ImmutableArray<(string Title, double Width)> columns, IEnumerable<ImmutableArray<Cell>> rows, double height, double gap, string continued = "")
    {
        var heading = Sheets.Table.Heading(columns, height);
        var again = continued.Length == 0 ? heading : Block.Stacked(height * 0.6, Block.Line(continued, height, strong: true), heading);
        yield return new(heading, gap) { StaysWithNext = true };
        // No column begins or ends with one row alone, and a short table is not parted at all.
        var blocks = rows.Select(r => Sheets.Table.Row(columns, r, height)).ToList();
        for (var i = 0; i < blocks.Count; i++)
            yield return new(blocks[i], 0) { AtTop = again, StaysWithNext = i + 1 < blocks.Count && (blocks.Count < LeastParted || i == 0 || i == blocks.Count - 2) };
    }
}
