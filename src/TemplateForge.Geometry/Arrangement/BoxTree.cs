namespace TemplateForge.Geometry;

/// <summary>Boxes in the order in which they were put in, and above every four of them the box that holds them.</summary>
/// <remarks>Neighbours along a contour lie beside each other, so that nothing need be sorted, and the tree needs no links.</remarks>
internal sealed class BoxTree
{
    private const int Fan = 4;
    private const int FewEnoughToTryAll = 10;
    private const int FewEnoughToScan = 50;

    private readonly Buffer<Bounds> _boxes = new();
    private readonly Buffer<int> _levels = new();
    private int _count;

    public Bounds this[int leaf] => _boxes[leaf];

    /// <summary>A box on a level: 0 are those that were put in.</summary>
    public Bounds this[int level, int node] => _boxes[_levels[level] + node];

    /// <summary>The level of the one box that holds all.</summary>
    public int Top => _levels.Count - 2;

    /// <summary>Room for boxes, which are to be filled in before <see cref="Build"/>.</summary>
    public Span<Bounds> Leaves(int count)
    {
        _count = count;
        var room = count;
        for (var level = count; level > 1; room += level) level = (level + Fan - 1) / Fan;
        return _boxes.Sized(room)[..count];
    }

    public void Build()
    {
        _levels.Clear();
        _levels.Add(0);
        var (from, until) = (0, _count);
        while (until - from > 1)
        {
            _levels.Add(until);
            var next = until;
            for (var i = from; i < until; i += Fan)
            {
                var box = _boxes[i];
                for (var j = i + 1; j < Math.Min(i + Fan, until); j++) box = box.Joined(_boxes[j]);
                _boxes[next++] = box;
            }
            (from, until) = (until, next);
        }
        _levels.Add(until);
    }

    /// <summary>All pairs of boxes that touch, the lower first.</summary>
    public void Pairs(Buffer<(int, int)> pairs)
    {
        if (_count > FewEnoughToTryAll)
        {
            Within(_levels.Count - 2, 0, pairs);
            return;
        }
        var boxes = _boxes.Items[.._count];
        for (var i = 0; i < boxes.Length; i++)
        {
            var box = boxes[i];
            for (var j = i + 1; j < boxes.Length; j++)
            {
                if (box.Touches(boxes[j])) pairs.Add((i, j));
            }
        }
    }

    /// <summary>All boxes that touch another box.</summary>
    public void Touching(Bounds box, Buffer<int> leaves)
    {
        if (_count > FewEnoughToScan)
        {
            Touching(_levels.Count - 2, 0, box, leaves);
            return;
        }
        var boxes = _boxes.Items[.._count];
        for (var i = 0; i < boxes.Length; i++)
        {
            if (boxes[i].Touches(box)) leaves.Add(i);
        }
    }

    private void Touching(int level, int node, Bounds box, Buffer<int> leaves)
    {
        if (!_boxes[_levels[level] + node].Touches(box)) return;
        if (level == 0)
        {
            leaves.Add(node);
            return;
        }
        var (first, last) = Children(level, node);
        for (var i = first; i < last; i++) Touching(level - 1, i, box, leaves);
    }

    private void Within(int level, int node, Buffer<(int, int)> pairs)
    {
        var (first, last) = Children(level, node);
        for (var i = first; i < last; i++)
        {
            if (level > 1) Within(level - 1, i, pairs);
            var box = _boxes[_levels[level - 1] + i];
            for (var j = i + 1; j < last; j++)
            {
                if (box.Touches(_boxes[_levels[level - 1] + j])) Between(level - 1, i, j, pairs);
            }
        }
    }

    private void Between(int level, int one, int other, Buffer<(int, int)> pairs)
    {
        if (level == 0)
        {
            pairs.Add((one, other));
            return;
        }
        var (first, last) = Children(level, one);
        var (otherFirst, otherLast) = Children(level, other);
        var (whole, otherWhole) = (_boxes[_levels[level] + one], _boxes[_levels[level] + other]);
        var below = _boxes.Items[_levels[level - 1].._levels[level]];
        for (var i = first; i < last; i++)
        {
            var box = below[i];
            if (!box.Touches(otherWhole)) continue;
            for (var j = otherFirst; j < otherLast; j++)
            {
                if (below[j].Touches(whole) && box.Touches(below[j])) Between(level - 1, i, j, pairs);
            }
        }
    }

    /// <summary>The boxes of the level below that a box holds, at most four; the last is not among them.</summary>
    public (int First, int Last) Children(int level, int node) =>
        (node * Fan, Math.Min(node * Fan + Fan, _levels[level] - _levels[level - 1]));
}
