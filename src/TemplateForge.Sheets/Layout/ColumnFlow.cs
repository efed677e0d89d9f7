using System.Collections.Immutable;
using TemplateForge.Geometry;

namespace TemplateForge.Sheets;

/// <summary>Items in two columns, over as many pages as they take.</summary>
/// <remarks>
/// <code>
///     | wide                |     What is narrow runs down the left column and on at the top of the right one. Where something wide
///     | narrow 1 | narrow 3 |     comes after it, or nothing more, both columns end as nearly level as they can, so that the rest of
///     | narrow 2 | narrow 4 |     the page is free for what follows.
///     | wide                |
/// </code>
/// </remarks>
internal sealed class ColumnFlow
{
    /// <summary>Less than this at the foot of a page, in mm, is left empty rather than begun on.</summary>
    private const double LeastBegun = 30;

    private readonly Func<int, Box> _frame;
    private readonly double _between;
    private readonly List<Board> _pages = [new()];
    private double _top;
    private bool _isFresh = true;

    private ColumnFlow(Func<int, Box> frame, double between)
    {
        (_frame, _between) = (frame, between);
        _top = Frame.Max.Y;
    }

    private Box Frame => _frame(_pages.Count);

    private double Room => _top - Frame.Min.Y;

    /// <param name="items">What is shown, in order.</param>
    /// <param name="frame">Where it stands on each page, from 1; all of one width.</param>
    /// <param name="between">Room between the columns in mm.</param>
    /// <returns>A board for each page; none where there is nothing to show.</returns>
    public static IReadOnlyList<Board> Pages(IEnumerable<FlowItem> items, Func<int, Box> frame, double between)
    {
        var (flow, list, i) = (new ColumnFlow(frame, between), items.ToList(), 0);
        while (i < list.Count)
        {
            var run = list.Skip(i).TakeWhile(item => item.IsWide == list[i].IsWide).ToList();
            if (list[i].IsWide) flow.PutWide(run, before: i + run.Count < list.Count ? LeastBegun : 0);
            else flow.PutNarrow([.. Units(run)]);
            i += run.Count;
        }
        return flow._isFresh && flow._pages.Count == 1 ? [] : flow._pages;
    }

    /// <summary>Width of one column in a frame.</summary>
    public static double WidthOf(Box frame, double between) => (frame.Width - between) / 2;

    private void PutWide(IReadOnlyList<FlowItem> run, double before)
    {
        foreach (var unit in Units(run))
        {
            var height = unit.HeightIn(isFirst: _isFresh);
            var after = unit.Last().StaysWithNext ? before : 0;
            if (!_isFresh && height + after > Room) NewPage();
            _top = Put(unit, new(Frame.Min.X, _top), isFirst: _isFresh, Math.Min(1, Room / unit.HeightIn(isFirst: _isFresh)));
            _isFresh = false;
        }
    }

    private void PutNarrow(ImmutableArray<FlowUnit> units)
    {
        var (at, lead) = (0, _isFresh ? 0 : units[0].Gap);
        while (at < units.Length)
        {
            var room = Room - lead;
            var (taken, _) = Filled(units, at, room);
            var fitsHere = at + taken.Sum() == units.Length;
            if (!fitsHere && !_isFresh && (room < LeastBegun || taken.Sum() == 0))
            {
                NewPage();
                lead = 0;
                continue;
            }
            if (fitsHere) room = Leveled(units, at, room);
            (taken, var depth) = Filled(units, at, room);
            var (x, top) = (Frame.Min.X, _top - lead);
            foreach (var count in taken)
            {
                var y = top;
                for (var i = 0; i < count; i++) y = Put(units[at + i], new(x, y), isFirst: i == 0, Math.Min(1, (Frame.Height - lead) / units[at + i].HeightIn(isFirst: true)));
                (at, x) = (at + count, x + WidthOf(Frame, _between) + _between);
            }
            (_top, _isFresh, lead) = (top - depth, false, 0);
            if (at < units.Length) NewPage();
        }
    }

    private void NewPage()
    {
        _pages.Add(new());
        (_top, _isFresh) = (Frame.Max.Y, true);
    }

    // How many units each column takes when it is so high, and how far down the longer one comes. A unit higher than a page is made smaller.
    private (int[] Taken, double Depth) Filled(ImmutableArray<FlowUnit> units, int from, double room)
    {
        var (taken, deepest) = (new int[2], 0.0);
        for (var column = 0; column < 2; column++)
        {
            for (var y = 0.0; from < units.Length; from++, taken[column]++)
            {
                var height = Math.Min(units[from].HeightIn(isFirst: taken[column] == 0), Frame.Height);
                if (y + height > room + 1e-9) break;
                y += height;
                deepest = Math.Max(deepest, y);
            }
        }
        return (taken, deepest);
    }

    // The least height in which all the rest stands in two columns.
    private double Leveled(ImmutableArray<FlowUnit> units, int from, double room)
    {
        var (low, high) = (0.0, room);
        for (var i = 0; i < 24; i++)
        {
            var middle = (low + high) / 2;
            if (Filled(units, from, middle).Taken.Sum() == units.Length - from) high = middle;
            else low = middle;
        }
        return high;
    }

    private double Put(FlowUnit unit, Point upperLeft, bool isFirst, double scale)
    {
        var y = upperLeft.Y;
        for (var i = 0; i < unit.Items.Length; i++)
        {
            var item = unit.Items[i];
            if (i == 0 && isFirst && item.AtTop.Height > 0) y = Block(item.AtTop, y);
            else if (i > 0 || !isFirst) y -= item.Gap * scale;
            y = Block(item.Block, y);
        }
        return y;

        double Block(Block block, double top)
        {
            _pages[^1].Add(block.Board, Placement.Scaled(scale, Point.Origin).Then(Placement.Moved(new(upperLeft.X, top))));
            return top - block.Height * scale;
        }
    }

    private static IEnumerable<FlowUnit> Units(IReadOnlyList<FlowItem> items)
    {
        var unit = ImmutableArray.CreateBuilder<FlowItem>();
        for (var i = 0; i < items.Count; i++)
        {
            unit.Add(items[i]);
            if (items[i].StaysWithNext && i + 1 < items.Count) continue;
            yield return new(unit.ToImmutable());
            unit.Clear();
        }
    }

    /// <summary>Items that no column's end parts.</summary>
    private sealed record FlowUnit(ImmutableArray<FlowItem> Items)
    {
        public double Gap => Items[0].Gap;

        public FlowItem Last() => Items[^1];

        public double HeightIn(bool isFirst) =>
            Items.Sum(i => i.Block.Height) + Items.Skip(1).Sum(i => i.Gap) + (isFirst ? Items[0].AtTop.Height : Gap);
    }
}
