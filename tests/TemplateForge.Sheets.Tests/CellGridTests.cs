using CsCheck;

namespace TemplateForge.Sheets.Tests;

/// <summary>Held against a table of cells that is looked through one by one.</summary>
public class CellGridTests
{
    private static readonly Gen<(int Left, int Bottom, int Right, int Top)> Block =
        from left in Gen.Int[-5, 150]
        from bottom in Gen.Int[-5, 25]
        from wide in Gen.Int[0, 70]
        from high in Gen.Int[0, 6]
        select (left, bottom, left + wide, bottom + high);

    [Fact]
    public void What_is_taken_and_what_is_free_is_what_a_table_of_cells_says() =>
        Gen.Select(Gen.Int[1, 140], Gen.Int[1, 20], Block.Array[0, 6], Block).Sample((columns, rows, taken, asked) =>
        {
            var (grid, table) = Both(columns, rows, taken);
            var cells = from row in Enumerable.Range(asked.Bottom, asked.Top - asked.Bottom + 1)
                        from column in Enumerable.Range(asked.Left, asked.Right - asked.Left + 1)
                        select (column, row);
            var onGrid = cells.Where(c => c.column >= 0 && c.column < columns && c.row >= 0 && c.row < rows).ToList();
            var count = onGrid.Count(c => table[c.column, c.row]);
            Assert.Equal(count, grid.Taken(asked.Left, asked.Bottom, asked.Right, asked.Top));
            Assert.Equal(count == 0 && onGrid.Count == cells.Count(), grid.IsFree(asked.Left, asked.Bottom, asked.Right, asked.Top));
        }, iter: 2000);

    [Fact]
    public void The_nearest_free_column_is_the_one_that_a_table_of_cells_gives() =>
        Gen.Select(Gen.Int[1, 140], Gen.Int[1, 8], Block.Array[0, 6], Gen.Int[1, 140], Gen.Int[1, 8], Gen.Double[-20, 160]).Sample((columns, rows, taken, wide, high, near) =>
        {
            (wide, high) = (Math.Min(wide, columns), Math.Min(high, rows));
            var (grid, table) = Both(columns, rows, taken);
            var (first, last) = (Math.Min(3, columns - wide), columns - wide);
            var free = Enumerable.Range(first, last - first + 1)
                .Where(left => !Enumerable.Range(left, wide).Any(column => Enumerable.Range(0, high).Any(row => table[column, row])))
                .OrderBy(left => Math.Abs(left - near)).ThenBy(left => left).ToList();
            Assert.Equal(free.Count > 0, grid.TryNearest(0, wide, high, first, last, near, out var found));
            if (free.Count > 0) Assert.Equal(free[0], found);
        }, iter: 2000);

    [Fact]
    public void All_that_is_free_on_another_grid_can_be_taken()
    {
        var (grid, other) = (new CellGrid(100, 3), new CellGrid(100, 3));
        other.Take(10, 1, 80, 1);
        grid.TakeOthers(other);
        Assert.Equal(300 - 71, grid.Taken(0, 0, 99, 2));
        Assert.True(grid.IsFree(10, 1, 80, 1));
    }

    private static (CellGrid Grid, bool[,] Table) Both(int columns, int rows, (int Left, int Bottom, int Right, int Top)[] taken)
    {
        var (grid, table) = (new CellGrid(columns, rows), new bool[columns, rows]);
        foreach (var (left, bottom, right, top) in taken)
        {
            grid.Take(left, bottom, right, top);
            for (var column = Math.Max(left, 0); column <= Math.Min(right, columns - 1); column++)
                for (var row = Math.Max(bottom, 0); row <= Math.Min(top, rows - 1); row++) table[column, row] = true;
        }
        return (grid, table);
    }
}
