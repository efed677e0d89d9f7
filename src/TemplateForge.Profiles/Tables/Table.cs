using System.Collections.Immutable;
using TemplateForge.Notation;

namespace TemplateForge.Profiles;

/// <summary>Rows of values of which a word or a size chooses one.</summary>
/// <param name="Place">Where it is written.</param>
/// <param name="Name">Its name.</param>
/// <param name="Row">What chooses the row: the word of a choice, or a quantity.</param>
/// <param name="IsByWord">Whether rows are chosen by a word.</param>
/// <param name="TakesNextLarger">Between two sizes: the row of the larger, or none.</param>
/// <param name="Columns">Names of the columns.</param>
/// <param name="Rows">The rows, by size from the smallest up.</param>
internal sealed record Table(
    Place Place, string Name, Term Row, bool IsByWord, bool TakesNextLarger, ImmutableArray<string> Columns, ImmutableArray<TableRow> Rows)
{
    // A size typed in inches comes to a row in mm only to within rounding.
    private const double Same = 1e-9;

    public bool TryRow(Evaluation from, out ImmutableArray<Quantity> cells)
    {
        cells = [];
        if (!from.TryValue(Row, out var value)) return false;
        if (IsByWord)
        {
            cells = Rows.Where(r => r.Word == value.AsWord()).Select(r => r.Cells).FirstOrDefault([]);
            return !cells.IsEmpty || from.Refuse(Wordings.NoSuchRow(Row.Place, Name, value.AsWord()));
        }
        var size = value.AsQuantity().Value;
        var found = Rows.FirstOrDefault(r => TakesNextLarger ? r.Size.Value >= size - Same : Math.Abs(r.Size.Value - size) <= Same);
        cells = found?.Cells ?? [];
        return found is not null || from.Refuse(Wordings.NoRowForSize(Row.Place, Name, value.AsQuantity(), Rows, TakesNextLarger));
    }
}

/// <summary>One row.</summary>
/// <param name="Word">The word that chooses it, as it is written.</param>
/// <param name="Size">The size that chooses it, where sizes do.</param>
/// <param name="Cells">A value for each column.</param>
internal sealed record TableRow(string Word, Quantity Size, ImmutableArray<Quantity> Cells);
