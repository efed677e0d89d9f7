using System.Collections.Immutable;
using System.Diagnostics.CodeAnalysis;
using TemplateForge.Notation;

namespace TemplateForge.Profiles;

/// <summary>Reads tables: their columns first, so that every value knows what it is, and what chooses the row when all names are known.</summary>
internal static class TableReader
{
    private const int MostRows = 200;
    private const int MostColumns = 20;

    public static Word Word { get; } = new("table", "rows of values, of which a word or a size chooses one",
        Field.Must("row", Holds.Expression, "what chooses the row: a parameter with choices, or a size"),
        Field.May("between_rows", Holds.OneOf("refused", "next_larger"), "a size between two rows; refused if nothing is said"),
        Field.Must("columns", Holds.ListOf(Holds.Name, 1, MostColumns), "names of the columns"),
        Field.Must("rows", Holds.NamesOf(Holds.ListOf(Holds.Literal, 1, MostColumns)), "for each word or size, a value for each column"));

    public static Word ColumnWord { get; } = new("column", "a value from a table",
        Field.Must("column", Holds.Name, "name of the column"),
        Field.Must("of", Holds.Name, "name of the table"));

    /// <summary>What the columns of a table hold, by their names; complaints come when the table is read.</summary>
    public static ImmutableDictionary<string, Dimension> ColumnsOf(Node node)
    {
        var entries = node is MappingNode mapping ? mapping.Entries : [];
        var columns = entries.Where(e => e.Key.Text == "columns").Select(e => e.Value).OfType<SequenceNode>().SelectMany(s => s.Items).OfType<ScalarNode>().ToList();
        var firstRow = entries.Where(e => e.Key.Text == "rows").Select(e => e.Value).OfType<MappingNode>()
            .SelectMany(m => m.Entries).Select(e => e.Value).OfType<SequenceNode>().SelectMany(s => s.Items.Take(columns.Count)).Take(columns.Count).ToList();
        return columns.Select((c, i) => (c.Text, Dimension: i < firstRow.Count && TryCell(firstRow[i], [], out var cell) ? cell.Dimension : Dimension.Number))
            .DistinctBy(c => c.Text)
            .ToImmutableDictionary(c => c.Text, c => c.Dimension, StringComparer.Ordinal);
    }

    public static Table Read(ScalarNode name, Node node, Reading reading)
    {
        var zero = reading.Standing("0", node.Place);
        if (!reading.TryOpen(node, $"The table {name.Text}", Word, out var fields)) return new(name.Place, name.Text, zero, false, false, [], []);
        var (row, kind) = fields.Required("row", out var chooser) ? reading.OfAnyKind(chooser) : (zero, ValueKind.Number);
        if (kind is TruthKind) reading.Complain(Wordings.OtherKindWanted(row.Place, row.Text, kind, ValueKind.Length));
        var nextLarger = fields.Optional("between_rows", out var between) && reading.OneOf(between, "refused", "next_larger") == "next_larger";
        if (nextLarger && kind is ChoiceKind) reading.Complain(Wordings.NoSizeBetweenWords(between.Place));
        var columns = ReadColumns(fields, reading);
        var dimensions = ColumnsOf(node);
        var rows = ImmutableArray.CreateBuilder<TableRow>();
        if (fields.Required("rows", out var section))
        {
            var named = reading.Named(section).ToList();
            if (named.Count == 0 && section is MappingNode) reading.Complain(Wordings.TooFew(section.Place, 1, "rows"));
            if (named.Count > MostRows) reading.Complain(Wordings.TooMany(section.Place, "rows", MostRows));
            foreach (var (key, cells) in named.Take(MostRows)) ReadRow(key, cells);
            if (kind is ChoiceKind all)
            {
                foreach (var missing in all.Options.Where(o => rows.All(r => r.Word != o)))
                    reading.Complain(Wordings.RowMissing(section.Place, name.Text, missing));
            }
        }
        return new(name.Place, name.Text, row, kind is ChoiceKind, nextLarger, columns, [.. rows.OrderBy(r => r.Size.Value)]);

        void ReadRow(ScalarNode key, Node cells)
        {
            var size = Quantity.Number(0);
            if (kind is ChoiceKind choice)
            {
                if (!choice.Options.Contains(key.Text)) reading.Complain(Wordings.UnknownOption(key.Place, key.Text, row.Text, choice.Options));
            }
            else if (TryCell(key, reading.Complaints, out size))
            {
                if (kind is QuantityKind wanted && size.Dimension != wanted.Dimension)
                    reading.Complain(Wordings.OtherKindWanted(key.Place, key.Text, ValueKind.Of(size.Dimension), wanted));
                if (rows.Any(r => r.Size.Value == size.Value)) reading.Complain(Wordings.RowTwice(key.Place, key.Text));
            }
            var found = ImmutableArray.CreateBuilder<Quantity>();
            var items = reading.Items(cells).ToList();
            if (cells is SequenceNode && items.Count != columns.Length) reading.Complain(Wordings.CellsWanted(cells.Place, items.Count, columns.Length));
            foreach (var (item, column) in items.Zip(columns))
            {
                if (!TryCell(item, reading.Complaints, out var cell)) continue;
                found.Add(cell);
                if (dimensions.TryGetValue(column, out var dimension) && cell.Dimension != dimension)
                    reading.Complain(Wordings.OtherKindWanted(item.Place, $"{cell}", ValueKind.Of(cell.Dimension), ValueKind.Of(dimension)));
            }
            rows.Add(new(key.Text, size, found.ToImmutable()));
        }
    }

    private static ImmutableArray<string> ReadColumns(Fields fields, Reading reading)
    {
        if (!fields.Required("columns", out var node)) return [];
        var found = ImmutableArray.CreateBuilder<string>();
        foreach (var item in reading.Items(node))
        {
            var name = item is ScalarNode scalar ? scalar.Text : "";
            if (!Expression.IsName(name) || Expression.IsReserved(name)) reading.Complain(Wordings.NotAName(item.Place, name));
            else if (found.Contains(name)) reading.Complain(Wordings.NameTaken(item.Place, name, node.Place));
            found.Add(name);
        }
        if (found.Count == 0 && node is SequenceNode) reading.Complain(Wordings.TooFew(node.Place, 1, "columns"));
        if (found.Count > MostColumns) reading.Complain(Wordings.TooMany(node.Place, "columns", MostColumns));
        return found.ToImmutable();
    }

    private static bool TryCell(Node node, ICollection<Complaint> complaints, out Quantity cell)
    {
        cell = Quantity.Number(0);
        if (node is not ScalarNode scalar)
        {
            complaints.Add(Wordings.ValueWanted(node.Place));
            return false;
        }
        if (!Expression.TryRead(scalar.Writing, complaints, out var expression) || !expression.TryCheck(new ProfileNames(), complaints, out var kind)) return false;
        if (kind is not QuantityKind)
        {
            complaints.Add(Wordings.ValueWanted(node.Place));
            return false;
        }
        if (!expression.TryEvaluate(NoNames.Known, complaints, out var value)) return false;
        cell = value.AsQuantity();
        return true;
    }

    /// <summary>A cell names nothing: it was checked against no names at all.</summary>
    private sealed class NoNames : IExpressionValues
    {
        public static NoNames Known { get; } = new();

        public bool TryValue(string name, Place place, [MaybeNullWhen(false)] out Value value)
        {
            value = null;
            return false;
        }

        public bool TryMeasure(string function, ImmutableArray<string> shapes, Place place, out Quantity measure)
        {
            measure = default;
            return false;
        }
    }
}
