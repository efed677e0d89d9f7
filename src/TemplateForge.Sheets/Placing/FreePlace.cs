using TemplateForge.Drawing;
using TemplateForge.Geometry;

namespace TemplateForge.Sheets;

/// <summary>Finds places on a drawing that nothing lies on, so that lettering never covers a line or other lettering.</summary>
/// <remarks>
/// <para>The drawing is laid over with square cells. A cell is taken as soon as a stroke with its clearance touches it; a place is
/// free when none of its cells is taken. How many are taken is read from a table of sums, so a search looks at every place there
/// is and finds the nearest.</para>
/// <para>What is taken stays taken: one thing after the other is placed, the most important first.</para>
/// </remarks>
internal sealed class FreePlace
{
    private readonly Box _area;
    private readonly double _cell;
    private readonly int _columns;
    private readonly int _rows;
    private readonly bool[] _taken;
    private readonly int[] _sums;
    private readonly List<Box> _words = [];
    private int _firstOldRow;

    /// <param name="area">Where places are looked for.</param>
    /// <param name="cell">Side of a cell in mm, more than 0.</param>
    public FreePlace(Box area, double cell)
    {
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(cell);
        (_area, _cell) = (area, cell);
        (_columns, _rows) = ((int)Math.Ceiling(area.Width / cell), (int)Math.Ceiling(area.Height / cell));
        _taken = new bool[_columns * _rows];
        _sums = new int[(_columns + 1) * (_rows + 1)];
    }

    /// <summary>Nothing may lie on this box.</summary>
    public void Take(Box box)
    {
        var (left, right) = (Column(box.Min.X), Column(box.Max.X));
        var (bottom, top) = (Row(box.Min.Y), Row(box.Max.Y));
        for (var row = Math.Max(bottom, 0); row <= Math.Min(top, _rows - 1); row++)
        {
            for (var column = Math.Max(left, 0); column <= Math.Min(right, _columns - 1); column++) _taken[row * _columns + column] = true;
        }
        _firstOldRow = Math.Min(_firstOldRow, Math.Max(bottom, 0));
    }

    /// <summary>Nothing may lie on these words, and no leader or extension line may run through them.</summary>
    public void TakeWords(Box box)
    {
        Take(box);
        _words.Add(box);
    }

    /// <summary>Whether a line comes nearer than a clearance to words.</summary>
    public bool RunsThroughWords(Segment line, double clearance)
    {
        var steps = (int)Math.Ceiling(line.Length / (_cell / 2));
        var bounds = line.Bounds;
        foreach (var words in _words)
        {
            var box = words.Grown(clearance);
            if (!box.Touches(bounds)) continue;
            for (var i = 0; i <= steps; i++)
                if (box.Contains(line.At((double)i / steps))) return true;
        }
        return false;
    }

    /// <summary>Nothing may come nearer to these marks than the clearance; round lettering a box is taken.</summary>
    public void Take(IEnumerable<Mark> marks, double clearance)
    {
        foreach (var mark in marks)
        {
            switch (mark)
            {
                case OpenStroke open:
                    Take(open.Path.Segments, clearance);
                    break;
                case ClosedStroke closed:
                    Take(closed.Contour.Segments, clearance);
                    break;
                case Lettering { Text.Length: > 0 } words:
                    foreach (var stroke in Alphabet.Strokes(words)) Take(stroke.Bounds.Grown(clearance));
                    break;
            }
        }
    }

    public void Take(IEnumerable<Segment> segments, double clearance)
    {
        foreach (var segment in segments)
        {
            var steps = (int)Math.Ceiling(segment.Length / (_cell / 2));
            for (var step = 0; step <= steps; step++)
            {
                var point = segment.At((double)step / steps);
                Take(new Box(point, point).Grown(clearance + _cell / 4));
            }
        }
    }

    /// <summary>Nothing may lie outside these boxes.</summary>
    public void TakeOutside(IReadOnlyCollection<Box> boxes)
    {
        for (var row = 0; row < _rows; row++)
        {
            for (var column = 0; column < _columns; column++)
            {
                var middle = _area.Min + new Vector(column + 0.5, row + 0.5) * _cell;
                if (!boxes.Any(b => b.Contains(middle))) _taken[row * _columns + column] = true;
            }
        }
        _firstOldRow = 0;
    }

    /// <summary>Whether a box lies in the area and none of its cells is taken.</summary>
    public bool IsFree(Box box)
    {
        var (left, right, bottom, top) = (Column(box.Min.X), Column(box.Max.X), Row(box.Min.Y), Row(box.Max.Y));
        if (left < 0 || bottom < 0 || right >= _columns || top >= _rows) return false;
        SumUp();
        return Sum(left, bottom, right + 1, top + 1) == 0;
    }

    /// <summary>How many of a box's cells are taken.</summary>
    public int Taken(Box box)
    {
        var (left, right) = (Math.Clamp(Column(box.Min.X), 0, _columns), Math.Clamp(Column(box.Max.X) + 1, 0, _columns));
        var (bottom, top) = (Math.Clamp(Row(box.Min.Y), 0, _rows), Math.Clamp(Row(box.Max.Y) + 1, 0, _rows));
        SumUp();
        return Sum(left, bottom, right, top);
    }

    /// <summary>The free place of this size whose middle is nearest to a point.</summary>
    /// <param name="width">Width in mm.</param>
    /// <param name="height">Height in mm.</param>
    /// <param name="near">Where it should be best.</param>
    /// <param name="within">The place lies wholly in here.</param>
    /// <param name="place">The place, if there is one.</param>
    public bool TryFind(double width, double height, Point near, Box within, out Box place)
    {
        SumUp();
        var (wide, high) = ((int)Math.Ceiling(width / _cell), (int)Math.Ceiling(height / _cell));
        var first = (Column: Math.Max(0, Column(within.Min.X) + 1), Row: Math.Max(0, Row(within.Min.Y) + 1));
        var last = (Column: Math.Min(_columns, Column(within.Max.X)) - wide, Row: Math.Min(_rows, Row(within.Max.Y)) - high);
        place = default;
        if (last.Column < first.Column || last.Row < first.Row) return false;
        var (best, found) = (double.PositiveInfinity, default(Point));
        // Rows and columns from the nearest outwards, so that a search ends as soon as all that is left lies further off.
        var middle = (near - _area.Min) / _cell - new Vector(wide / 2.0, high / 2.0);
        foreach (var row in Outwards(middle.Y, first.Row, last.Row))
        {
            var up = (row - middle.Y) * (row - middle.Y);
            if (up >= best) break;
            foreach (var column in Outwards(middle.X, first.Column, last.Column))
            {
                var distance = up + (column - middle.X) * (column - middle.X);
                if (distance >= best) break;
                if (Sum(column, row, column + wide, row + high) > 0) continue;
                (best, found) = (distance, _area.Min + new Vector(column + wide / 2.0, row + high / 2.0) * _cell);
            }
        }
        var half = new Vector(width / 2, height / 2);
        place = new(found - half, found + half);
        return best < double.PositiveInfinity;
    }

    // The whole numbers from first to last, the nearest to a value first.
    private static IEnumerable<int> Outwards(double from, int first, int last)
    {
        var above = (int)Math.Clamp(Math.Ceiling(from), first, (double)last + 1);
        var below = above - 1;
        while (below >= first || above <= last)
            yield return above > last || (below >= first && from - below <= above - from) ? below-- : above++;
    }

    private int Column(double x) => (int)Math.Floor((x - _area.Min.X) / _cell);

    private int Row(double y) => (int)Math.Floor((y - _area.Min.Y) / _cell);

    private int Sum(int left, int bottom, int right, int top)
    {
        var line = _columns + 1;
        return _sums[top * line + right] - _sums[top * line + left] - _sums[bottom * line + right] + _sums[bottom * line + left];
    }

    private void SumUp()
    {
        // What was taken changes the sums of its row and of those above it.
        var line = _columns + 1;
        for (var row = _firstOldRow; row < _rows; row++)
        {
            var inRow = 0;
            for (var column = 0; column < _columns; column++)
            {
                if (_taken[row * _columns + column]) inRow++;
                _sums[(row + 1) * line + column + 1] = _sums[row * line + column + 1] + inRow;
            }
        }
        _firstOldRow = _rows;
    }
}
