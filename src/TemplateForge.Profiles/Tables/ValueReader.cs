using System.Collections.Immutable;
using TemplateForge.Notation;
using TemplateForge.Shop;

namespace TemplateForge.Profiles;

/// <summary>Reads derived values: an expression, one for each word of a choice, the column of a table, or a value of the shop.</summary>
internal static class ValueReader
{
    /// <summary>Makes a value known, with what it is.</summary>
    public static void Declare(ProfileNames names, ScalarNode name, Node node, ICollection<Complaint> complaints)
    {
        if (TryColumn(node, out var column, out var table))
        {
            names.AddValue(name, names.ColumnsOf(table).GetValueOrDefault(column, Dimension.Number), complaints);
            return;
        }
        if (ShopValueReader.TryDimension(node, out var dimension))
        {
            names.AddValue(name, dimension, complaints);
            return;
        }
        // What cannot be read is complained of when the value is read; what it is stays open until then.
        var expressions = Branches(node).OfType<ScalarNode>()
            .Select(s => Expression.TryRead(s.Writing, new List<Complaint>(), out var expression) ? expression : null)
            .OfType<Expression>().ToImmutableArray();
        if (expressions.IsEmpty) names.AddUnread(name, complaints);
        else names.AddValue(name, expressions, complaints);
    }

    public static ValueRecipe Read(Node node, ShopTables shop, Reading reading)
    {
        if (node is not MappingNode || Reading.IsChosen(node)) return new TermValue(reading.OfAnyKind(node).Term);
        var nothing = new TermValue(reading.Standing("0", node.Place));
        if (!reading.TryOpen(node, "The value", [TableReader.ColumnWord, ShopValueReader.WordFor(node)], out var fields, out var word)) return nothing;
        if (word != TableReader.ColumnWord) return ShopValueReader.Read(fields, shop, reading);
        if (!(fields.RequiredText("column", out var column) & fields.RequiredText("of", out var table))) return nothing;
        var columns = reading.Names.ColumnsOf(table.Text);
        if (!reading.Names.Tables.Contains(table.Text)) reading.Complain(Wordings.UnknownTable(table.Place, table.Text, reading.Names.Tables));
        else if (!columns.ContainsKey(column.Text)) reading.Complain(Wordings.UnknownColumn(column.Place, column.Text, table.Text, columns.Keys));
        else return new ColumnValue(table.Text, column.Text);
        return nothing;
    }

    private static bool TryColumn(Node node, out string column, out string table)
    {
        var entries = node is MappingNode mapping && !Reading.IsChosen(node) ? mapping.Entries : [];
        (column, table) = (Text("column"), Text("of"));
        return column.Length > 0;

        string Text(string key) => entries.Where(e => e.Key.Text == key).Select(e => e.Value).OfType<ScalarNode>().Select(s => s.Text).FirstOrDefault("");
    }

    private static IEnumerable<Node> Branches(Node node) =>
        node is MappingNode mapping ? mapping.Entries.Where(e => e.Key.Text != "by").Select(e => e.Value) : [node];
}
