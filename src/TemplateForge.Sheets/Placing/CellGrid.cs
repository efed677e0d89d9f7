using System.Numerics;

namespace TemplateForge.Sheets;

/// <summary>Rows of cells that are free or taken, a bit each. Blocks of cells are given by their first and last columns and rows.</summary>
internal sealed class CellGrid
{
    private const int Bits = 64;

    private readonly int _wordsInARow;
    private readonly ulong[] _taken;
    private readonly ulong[] _blocked;

    public CellGrid(int columns, int rows)
    {
        (Columns, Rows) = (columns, rows);
        _wordsInARow = (columns + Bits - 1) / Bits;
        (_taken, _blocked) = (new ulong[_wordsInARow * rows], new ulong[_wordsInARow]);
    }

    public int Columns { get; }
    public int Rows { get; }

    /// <summary>Takes what of a block lies on the grid.</summary>
    public void Take(int left, int bottom, int right, int top)
    {
        (left, bottom, right, top) = (Math.Max(left, 0), Math.Max(bottom, 0), Math.Min(right, Columns - 1), Math.Min(top, Rows - 1));
        for (var word = left / Bits; word <= right / Bits && left <= right; word++)
        {
            var mask = Mask(word, left, right);
            for (var row = bottom; row <= top; row++) _taken[row * _wordsInARow + word] |= mask;
        }
    }

    /// <summary>Takes every cell that is free on another grid of this size.</summary>
    public void TakeOthers(CellGrid than)
    {
        for (var word = 0; word < _taken.Length; word++) _taken[word] |= ~than._taken[word];
    }

    /// <summary>How many cells of what of a block lies on the grid are taken.</summary>
    public int Taken(int left, int bottom, int right, int top)
    {
        (left, bottom, right, top) = (Math.Max(left, 0), Math.Max(bottom, 0), Math.Min(right, Columns - 1), Math.Min(top, Rows - 1));
        var taken = 0;
        for (var word = left / Bits; word <= right / Bits && left <= right; word++)
        {
            var mask = Mask(word, left, right);
            for (var row = bottom; row <= top; row++) taken += BitOperations.PopCount(_taken[row * _wordsInARow + word] & mask);
        }
        return taken;
    }

    /// <summary>Whether a block lies on the grid and none of it is taken.</summary>
    public bool IsFree(int left, int bottom, int right, int top)
    {
        if (left < 0 || bottom < 0 || right >= Columns || top >= Rows) return false;
        for (var word = left / Bits; word <= right / Bits && left <= right; word++)
        {
            var mask = Mask(word, left, right);
            for (var row = bottom; row <= top; row++)
                if ((_taken[row * _wordsInARow + word] & mask) != 0) return false;
        }
        return true;
    }

    /// <summary>The column nearest to a place at which a free block of this size begins, of equally near ones the lower.</summary>
    /// <param name="bottom">Row of the block's lower edge; the block's rows lie on the grid.</param>
    /// <param name="wide">Columns of the block, at least 1.</param>
    /// <param name="high">Rows of the block, at least 1.</param>
    /// <param name="first">The least column that is asked for, on the grid.</param>
    /// <param name="last">The greatest; a block that begins there ends on the grid.</param>
    /// <param name="near">The place, in columns.</param>
    /// <param name="column">The column, if there is one.</param>
    public bool TryNearest(int bottom, int wide, int high, int first, int last, double near, out int column)
    {
        Array.Copy(_taken, bottom * _wordsInARow, _blocked, 0, _wordsInARow);
        for (var row = bottom + 1; row < bottom + high; row++)
        {
            for (var word = 0; word < _wordsInARow; word++) _blocked[word] |= _taken[row * _wordsInARow + word];
        }
        // A cell that is taken blocks the columns of all blocks that hold it: twice as many after each step.
        for (var reach = 1; reach < wide;)
        {
            var step = Math.Min(reach, wide - reach);
            Spread(step);
            reach += step;
        }
        var above = (int)Math.Clamp(Math.Ceiling(near), first, (double)last + 1);
        var (lower, upper) = (FreeAtOrBelow(above - 1, first), FreeAtOrAbove(above, last));
        column = upper > last || (lower >= first && near - lower <= upper - near) ? lower : upper;
        return column >= first;
    }

    private void Spread(int step)
    {
        var (words, bits) = (step / Bits, step % Bits);
        for (var word = 0; word + words < _wordsInARow; word++)
        {
            var next = word + words + 1 < _wordsInARow && bits > 0 ? _blocked[word + words + 1] << (Bits - bits) : 0;
            _blocked[word] |= (_blocked[word + words] >> bits) | next;
        }
    }

    private int FreeAtOrBelow(int column, int first)
    {
        while (column >= first)
        {
            // The columns up to this one, the nearest in the highest bit.
            var free = ~_blocked[column / Bits] << (Bits - 1 - column % Bits);
            if (free != 0) return column - BitOperations.LeadingZeroCount(free);
            column = column / Bits * Bits - 1;
        }
        return first - 1;
    }

    private int FreeAtOrAbove(int column, int last)
    {
        while (column <= last)
        {
            var free = ~_blocked[column / Bits] >> (column % Bits);
            if (free != 0) return column + BitOperations.TrailingZeroCount(free);
            column = (column / Bits + 1) * Bits;
        }
        return last + 1;
    }

    // The bits of a word that are columns from left to right.
    private static ulong Mask(int word, int left, int right)
    {
        var from = Math.Max(left - word * Bits, 0);
        var to = Math.Min(right - word * Bits, Bits - 1);
        return (ulong.MaxValue >> (Bits - 1 - to)) & (ulong.MaxValue << from);
    }
}
