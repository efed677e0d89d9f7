using CsCheck;

namespace TemplateForge.Notation.Tests.Tables;

/// <summary>RFC 4180, section 2; the numbers in the names are those of its rules.</summary>
public class CsvTableTests
{
    private static CsvTable Read(string text)
    {
        var complaints = new List<Complaint>();
        Assert.True(CsvTable.TryRead(new("values.csv", text), complaints, out var table), string.Join('\n', complaints));
        return table;
    }

    private static Complaint Refuse(string text)
    {
        var complaints = new List<Complaint>();
        Assert.True(!CsvTable.TryRead(new("values.csv", text), complaints, out var table) || table.Rows.Any(r => !r.IsSound));
        return Assert.Single(complaints);
    }

    private static string[][] Cells(CsvTable table) => [.. table.Rows.Select(r => r.Cells.Select(c => c.Text).ToArray())];

    [Theory]
    [InlineData("job,tilt\r\none,8\r\ntwo,9\r\n")]
    [InlineData("job,tilt\none,8\ntwo,9")]
    [InlineData("job,tilt\rone,8\r\rtwo,9\r")]
    [InlineData("\n\njob,tilt\none,8\n\n,\ntwo,9\n\n")]
    public void Lines_end_as_on_any_system_and_rows_with_nothing_in_them_are_passed_over_rules_1_and_2(string text)
    {
        var table = Read(text);
        Assert.Equal(["job", "tilt"], table.Headings.Select(h => h.Text));
        Assert.Equal([["one", "8"], ["two", "9"]], Cells(table));
    }

    [Fact]
    public void Spaces_belong_to_a_cell_and_the_last_cell_may_be_empty_rule_4() =>
        Assert.Equal([[" one ", ""]], Cells(Read("job,tilt\n one ,\n")));

    [Fact]
    public void Quotes_may_stand_round_a_cell_and_hold_commas_lines_and_quotes_written_twice_rules_5_to_7() =>
        Assert.Equal([["a,b", "c\nd", "7 1/2\"", ""]], Cells(Read("a,b,c,d\n\"a,b\",\"c\r\nd\",\"7 1/2\"\"\",\"\"\n")));

    [Fact]
    public void A_cell_knows_where_its_text_begins_even_below_a_cell_of_two_lines()
    {
        var table = Read("a,b\n\"x\ny\",\"z\"\nu,v\n");
        Assert.Equal(new Place("values.csv", 3, 5), table.Rows[0].Cells[1].Place);
        Assert.Equal(new Place("values.csv", 4, 3), table.Rows[1].Cells[1].Place);
        Assert.Equal(new Place("values.csv", 4, 1), table.Rows[1].Place);
    }

    [Theory]
    [InlineData("", 1, 1)]
    [InlineData("a,b\n1,2,3\n", 2, 1)]
    [InlineData("a,b\n1\n", 2, 1)]
    [InlineData("a,b\n1,7 1/2\"\n", 2, 8)]
    [InlineData("a,b\n1,\"2\n3,4\n", 2, 3)]
    [InlineData("a,b\n1,\"2\" mm\n", 2, 6)]
    public void What_is_no_table_is_told_once_with_its_place(string text, int line, int column)
    {
        var complaint = Refuse(text);
        Assert.Equal(new Place("values.csv", line, column), new Place(complaint.File, complaint.Line, complaint.Column));
    }

    // What spreadsheets save where 1.5 is written 1,5, and what is pasted from one.
    [Theory]
    [InlineData("job;tilt\none;8\n\"tw;o\";9,5\n")]
    [InlineData("job\ttilt\none\t8\n\"tw;o\"\t9,5\n")]
    [InlineData("\"job\";\"tilt\"\r\n\"one\";\"8\"\r\ntw;o;9,5\n", false)]
    public void Cells_are_parted_by_semicolons_or_tabs_where_the_headings_are(string text, bool sound = true)
    {
        var complaints = new List<Complaint>();
        Assert.True(CsvTable.TryRead(new("values.csv", text), complaints, out var table));
        Assert.Equal(["job", "tilt"], table.Headings.Select(h => h.Text));
        Assert.Equal(["one", "8"], table.Rows[0].Cells.Select(c => c.Text));
        if (sound) Assert.Equal(["tw;o", "9,5"], table.Rows[1].Cells.Select(c => c.Text));
        else Assert.Contains("semicolon", Assert.Single(complaints).Remedy, StringComparison.Ordinal);
    }

    [Fact]
    public void A_semicolon_inside_of_quotes_or_beside_commas_parts_nothing()
    {
        Assert.Equal(["a;b", "c"], Read("\"a;b\",c\n1,2\n").Headings.Select(h => h.Text));
        Assert.Equal(["a;b"], Read("\"a;b\"\n1\n").Headings.Select(h => h.Text));
        Assert.Equal(["a;b", "c"], Read("a;b,c\n1,2\n").Headings.Select(h => h.Text));
    }

    [Fact]
    public void A_row_with_a_fault_stands_among_the_others_and_says_so()
    {
        var complaints = new List<Complaint>();
        Assert.True(CsvTable.TryRead(new("values.csv", "a,b\n1,2\n1\n1,7\"\n3,4\n"), complaints, out var table));
        Assert.Equal([true, false, false, true], table.Rows.Select(r => r.IsSound));
        Assert.Equal([3, 4], complaints.Select(c => c.Line).Order());
    }

    // The law: what is written by the rules is read as it was.
    [Fact]
    public void Any_cells_written_by_the_rules_are_read_as_they_were() =>
        Gen.OneOf(Gen.Const(","), Gen.Const("\""), Gen.Const("\n"), Gen.Const(" "), Gen.Char['a', 'z'].Select(c => $"{c}")).Array[0, 6].Select(string.Concat)
            .Array[2].Array[1, 5].Where(rows => rows.All(r => r.Any(c => c.Trim().Length > 0)))
            .Sample(rows =>
            {
                var text = string.Concat(rows.Prepend(["x", "y"]).Select(r => string.Join(',', r.Select(c => $"\"{c.Replace("\"", "\"\"", StringComparison.Ordinal)}\"")) + "\r\n"));
                Assert.Equal(rows, Cells(Read(text)));
            }, iter: 500);
}
