using TemplateForge.Drawing;
using TemplateForge.Geometry;

namespace TemplateForge.Sheets;

/// <summary>Finds places on a drawing that nothing lies on, so that lettering never covers a line or other lettering.</summary>
/// <remarks>
/// <para>The drawing is laid over with square cells. A cell is taken as soon as a stroke with its clearance touches it; a place is
/// free when none of its cells is taken. A search looks at every place there is and finds the nearest.</para>
/// <para>What is taken stays taken: one thing after the other is placed, the most important first.</para>
/// </remarks>
internal sealed class FreePlace
{
    private readonly Box _area;
    private readonly double _cell;
    private readonly CellGrid _cells;
    private readonly List<Box> _words = [];

    /// <param name="area">Where places are looked for.</param>
    /// <param name="cell">Side of a cell in mm, more than 0.</param>
    public FreePlace(Box area, double cell)
    {
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(cell);
        (_area, _cell) = (area, cell);
        _cells = new((int)Math.Ceiling(area.Width / cell), (int)Math.Ceiling(area.Height / cell));
    }

    /// <summary>Nothing may lie on this box.</summary>
    public void Take(Box box) => _cells.Take(Column(box.Min.X), Row(box.Min.Y), Column(box.Max.X), Row(box.Max.Y));

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
        var inside = new CellGrid(_cells.Columns, _cells.Rows);
        // A cell lies where its middle does.
        foreach (var box in boxes) inside.Take(Column(box.Min.X + _cell / 2), Row(box.Min.Y + _cell / 2), Column(box.Max.X - _cell / 2), Row(box.Max.Y - _cell / 2));
        _cells.TakeOthers(inside);
    }

    /// <summary>Whether a box lies in the area and none of its cells is taken.</summary>
    public bool IsFree(Box box) => _cells.IsFree(Column(box.Min.X), Row(box.Min.Y), Column(box.Max.X), Row(box.Max.Y));

    /// <summary>How many of a box's cells are taken.</summary>
    public int Taken(Box box) => _cells.Taken(Column(box.Min.X), Row(box.Min.Y), Column(box.Max.X), Row(box.Max.Y));

    /// <summary>The free place of this size whose middle is nearest to a point.</summary>
    /// <param name="width">Width in mm.</param>
    /// <param name="height">Height in mm.</param>
    /// <param name="near">Where it should be best.</param>
    /// <param name="within">The place lies wholly in here.</param>
    /// <param name="place">The place, if there is one.</param>
    public bool TryFind(double width, double height, Point near, Box within, out Box place)
    {
        var (wide, high) = ((int)Math.Ceiling(width / _cell), (int)Math.Ceiling(height / _cell));
        var first = (Column: Math.Max(0, Column(within.Min.X) + 1), Row: Math.Max(0, Row(within.Min.Y) + 1));
        var last = (Column: Math.Min(_cells.Columns, Column(within.Max.X)) - wide, Row: Math.Min(_cells.Rows, Row(within.Max.Y)) - high);
        place = default;
        if (last.Column < first.Column || last.Row < first.Row) return false;
        var (best, found) = (double.PositiveInfinity, default(Point));
        // Rows from the nearest outwards, so that a search ends as soon as all that is left lies further off.
        var middle = (near - _area.Min) / _cell - new Vector(wide / 2.0, high / 2.0);
        var above = (int)Math.Clamp(Math.Ceiling(middle.Y), first.Row, (double)last.Row + 1);
        var below = above - 1;
        while (below >= first.Row || above <= last.Row)
        {
            var row = above > last.Row || (below >= first.Row && middle.Y - below <= above - middle.Y) ? below-- : above++;
            var up = (row - middle.Y) * (row - middle.Y);
            if (up >= best) break;
            if (!_cells.TryNearest(row, wide, high, first.Column, last.Column, middle.X, out var column)) continue;
            var distance = up + (column - middle.X) * (column - middle.X);
            if (distance < best) (best, found) = (distance, _area.Min + new Vector(column + wide / 2.0, row + high / 2.0) * _cell);
        }
        var half = new Vector(width / 2, height / 2);
        place = new(found - half, found + half);
        return best < double.PositiveInfinity;
    }

    private int Column(double x) => (int)Math.Floor((x - _area.Min.X) / _cell);

    private int Row(double y) => (int)Math.Floor((y - _area.Min.Y) / _cell);
}
