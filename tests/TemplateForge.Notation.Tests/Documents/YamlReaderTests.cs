namespace TemplateForge.Notation.Tests;

public class YamlReaderTests
{
    private const string Notch = """
        # A comment is passed over.
        name: clearance-notch
        parameters:
          - name: diameter
            default: 190 mm   # as measured
            help: 'the component''s own'
          - {name: tilt, range: [0, 45]}
        rule: "Only {a} left"
        notes: |
          first line
            second line

        caution: >-
          Brakes: have them
          inspected.
        empty:
        """;

    [Fact]
    public void Groups_lists_and_texts_are_read_in_their_order()
    {
        var root = Assert.IsType<MappingNode>(Read(Notch));
        Assert.Equal(["name", "parameters", "rule", "notes", "caution", "empty"], root.Entries.Select(entry => entry.Key.Text));
        var parameters = Assert.IsType<SequenceNode>(root.Entries[1].Value);
        var diameter = Assert.IsType<MappingNode>(parameters.Items[0]);
        Assert.Equal(["diameter", "190 mm", "the component's own"], diameter.Entries.Select(entry => Text(entry.Value)));
        var tilt = Assert.IsType<MappingNode>(parameters.Items[1]);
        Assert.Equal(["0", "45"], Assert.IsType<SequenceNode>(tilt.Entries[1].Value).Items.Select(Text));
        Assert.Equal("first line\n  second line\n", Text(root.Entries[3].Value));
        Assert.Equal("Brakes: have them inspected.", Text(root.Entries[4].Value));
        Assert.Equal("", Text(root.Entries[5].Value));
    }

    // Counted in the text above, as an editor does.
    [Fact]
    public void Every_part_knows_its_line_and_column()
    {
        var root = Assert.IsType<MappingNode>(Read(Notch));
        Assert.Equal(At(2, 1), root.Place);
        Assert.Equal(At(2, 7), root.Entries[0].Value.Place);
        var parameters = Assert.IsType<SequenceNode>(root.Entries[1].Value);
        Assert.Equal(At(4, 3), parameters.Place);
        var diameter = Assert.IsType<MappingNode>(parameters.Items[0]);
        Assert.Equal(At(5, 5), diameter.Entries[1].Key.Place);
        Assert.Equal(At(5, 14), diameter.Entries[1].Value.Place);
        Assert.Equal(At(6, 12), diameter.Entries[2].Value.Place); // behind the quote
        var range = Assert.IsType<SequenceNode>(Assert.IsType<MappingNode>(parameters.Items[1]).Entries[1].Value);
        Assert.Equal(At(7, 25), range.Place);
        Assert.Equal(At(7, 29), range.Items[1].Place);
        Assert.Equal(At(8, 8), root.Entries[2].Value.Place); // behind the quote
        Assert.Equal(At(10, 3), root.Entries[3].Value.Place); // the first character of the block
        Assert.Equal(At(14, 3), root.Entries[4].Value.Place);
        Assert.Equal(16, root.Entries[5].Value.Place.Line);
    }

    [Fact]
    public void Every_character_of_a_folded_text_keeps_its_place()
    {
        var caution = Assert.IsType<ScalarNode>(Assert.IsType<MappingNode>(Read(Notch)).Entries[4].Value);
        Assert.Equal(At(15, 3), caution.Writing.At(caution.Text.IndexOf("inspected", StringComparison.Ordinal)));
        Assert.Equal(At(15, 12), caution.Writing.At(caution.Text.Length - 1));
    }

    [Fact]
    public void A_fault_in_the_third_line_of_a_folded_expression_is_told_in_that_line()
    {
        var rule = Assert.IsType<ScalarNode>(Assert.IsType<MappingNode>(Read("rule: >\n  diameter\n  + clearance\n    + tillt\n")).Entries[0].Value);
        Expression.TryRead(rule.Writing, [], out var expression);
        var complaint = Heard.One(complaints => expression.TryCheck(new Bench(), complaints, out _));
        Assert.Equal((4, 7), (complaint.Line, complaint.Column));
    }

    [Theory]
    [InlineData("a: 'it''s x'", 11)] // the quote stands twice in the file
    [InlineData("a: \"q \\\" x\"", 10)] // a backslash stands before it
    public void A_quoted_text_keeps_the_places_behind_what_falls_away(string text, int column)
    {
        var scalar = Assert.IsType<ScalarNode>(Assert.IsType<MappingNode>(Read(text)).Entries[0].Value);
        Assert.Equal(At(1, column), scalar.Writing.At(scalar.Text.IndexOf('x', StringComparison.Ordinal)));
    }

    [Fact]
    public void An_empty_line_in_a_block_has_a_line_of_its_own()
    {
        var block = Assert.IsType<ScalarNode>(Assert.IsType<MappingNode>(Read("a: |\n  one\n\n  two\n")).Entries[0].Value);
        Assert.Equal([At(2, 3), At(2, 6), At(3, 1), At(4, 3)], new[] { 0, 3, 4, 5 }.Select(block.Writing.At));
    }

    [Fact]
    public void Quoted_text_is_told_from_plain_text()
    {
        var list = Assert.IsType<SequenceNode>(Read("- a\n- 'a'\n- \"a\"\n- |\n  a"));
        Assert.Equal([true, false, false, false], list.Items.Select(item => Assert.IsType<ScalarNode>(item).IsPlain));
    }

    [Theory]
    [InlineData("a: 1\r\nb: 2\r\n")]
    [InlineData("a: 1\rb: 2\r")]
    public void Every_kind_of_line_end_is_counted(string text) =>
        Assert.Equal(At(2, 4), Assert.IsType<MappingNode>(Read(text)).Entries[1].Value.Place);

    [Fact]
    public void The_mark_before_UTF_8_is_passed_over() =>
        Assert.Equal("a", Assert.IsType<MappingNode>(Read("\uFEFFa: 1")).Entries[0].Key.Text);

    [Fact]
    public void Letters_with_accents_are_text() => Assert.Equal("Maß ½ 90°", Text(Read("Maß ½ 90°")));

    public static TheoryData<string, Complaint> Faults => new()
    {
        { "", Wordings.EmptyFile(At(1, 1)) },
        { "   \n\n", Wordings.EmptyFile(At(1, 1)) },
        { "# nothing\n", Wordings.EmptyFile(At(1, 1)) },
        { "---\n", Wordings.EmptyFile(At(1, 1)) },
        { "a: &x 1\n", Wordings.Anchor(At(1, 4)) },
        { "a: 1\nb: *x\n", Wordings.Anchor(At(2, 4)) },
        { "a: !!str 1\n", Wordings.Tag(At(1, 4)) },
        { "a: !run x\n", Wordings.Tag(At(1, 4)) },
        { "a: 1\n---\nb: 2\n", Wordings.SecondDocument(At(2, 1)) },
        { "a: 1\n...\nb\n", Wordings.SecondDocument(At(3, 1)) },
        { "a: 1\nb: 2\na: 3\n", Wordings.DuplicateField(At(3, 1), "a", 1) },
        { "? [x]\n: y\n", Wordings.FieldNotPlain(At(1, 3)) },
        { "\"a\": 1\n", Wordings.FieldNotPlain(At(1, 2)) },
        { "{a: 1}: 2\n", Wordings.FieldNotPlain(At(1, 1)) },
        { ": 1\n", Wordings.FieldNotPlain(At(1, 1)) },
        { "a:\n\tb: 1\n", Wordings.TabIndent(At(2, 1)) },
        { "a:\n  b: 1\n\tc: 2\n", Wordings.TabIndent(At(3, 1)) },
        { "\ta: 1\n", Wordings.TabIndent(At(1, 1)) },
        { "a: \"x\nb: 1\n", Wordings.QuoteNotClosed(At(1, 4)) },
        { "a: 'x\n", Wordings.QuoteNotClosed(At(1, 4)) },
        { "a: \"\\q\"\n", Wordings.EscapeNotUnderstood(At(1, 4)) },
        { "a: [1, 2\nb: 3\n", Wordings.BracketNotClosed(At(1, 5)) },
        { "a: {x: 1\n", Wordings.BracketNotClosed(At(1, 9)) },
        { "a: b: c\n", Wordings.ColonNotUnderstood(At(1, 5)) },
        { "a:\n  - 1\n - 2\n", Wordings.IndentNotUnderstood(At(3, 2)) },
        { "- 1\nb: 2\n", Wordings.IndentNotUnderstood(At(2, 1)) },
        { "a: @x\n", Wordings.SignBeforeText(At(1, 4)) },
        { "a: \u0001\n", Wordings.NotText(At(1, 4)) },
        { "a: \u0085\n", Wordings.NotText(At(1, 4)) },
        { "\u007fELF\u0002", Wordings.NotText(At(1, 1)) },
        { "a: \uFFFD\n", Wordings.NotText(At(1, 4)) },
        { "a: \uD800\n", Wordings.NotText(At(1, 4)) },
    };

    [Theory, MemberData(nameof(Faults))]
    public void A_fault_is_told_once_with_its_place(string text, Complaint complaint) =>
        Assert.Equal(complaint, Heard.One(complaints => YamlReader.TryRead("a.yaml", text, complaints, out _)));

    [Fact]
    public void Every_name_that_stands_twice_is_told()
    {
        var complaints = new List<Complaint>();
        Assert.False(YamlReader.TryRead("a.yaml", "a: 1\na: 2\nb: {c: 1, c: 2}\n", complaints, out _));
        Assert.Equal([Wordings.DuplicateField(At(2, 1), "a", 1), Wordings.DuplicateField(At(3, 11), "c", 3)], complaints);
    }

    [Fact]
    public void An_alias_bomb_is_refused_at_its_first_anchor()
    {
        var bomb = "a: &a [x, x, x]\n" + string.Concat(Enumerable.Range(1, 25).Select(i =>
            $"{(char)('a' + i)}: &{(char)('a' + i)} [{string.Join(", ", Enumerable.Repeat($"*{(char)('a' + i - 1)}", 9))}]\n"));
        Assert.Equal(Wordings.Anchor(At(1, 4)), Heard.One(complaints => YamlReader.TryRead("a.yaml", bomb, complaints, out _)));
    }

    [Fact]
    public void A_file_may_have_its_limit_of_characters_and_no_more()
    {
        Read("a: " + new string('x', YamlReader.LongestFile - 3));
        Assert.Equal(Wordings.FileTooLong(At(1, 1), 200_000), Heard.One(complaints =>
            YamlReader.TryRead("a.yaml", "a: " + new string('x', YamlReader.LongestFile - 2), complaints, out _)));
    }

    [Fact]
    public void A_file_may_have_its_limit_of_values_and_no_more()
    {
        Read(string.Concat(Enumerable.Repeat("- x\n", YamlReader.MostNodes - 1)));
        Assert.Equal(Wordings.TooManyParts(At(20_000, 3), 20_000), Heard.One(complaints =>
            YamlReader.TryRead("a.yaml", string.Concat(Enumerable.Repeat("- x\n", YamlReader.MostNodes)), complaints, out _)));
    }

    [Theory]
    [InlineData("- ", 2)]
    [InlineData("[", 1)]
    public void A_file_may_be_nested_to_its_limit_and_no_deeper(string open, int width)
    {
        Read(Nested(30));
        Assert.Equal(Wordings.NestedFileTooDeep(At(1, (31 * width) + 1), 30), Heard.One(complaints =>
            YamlReader.TryRead("a.yaml", Nested(31), complaints, out _)));

        string Nested(int depth) =>
            string.Concat(Enumerable.Repeat(open, depth)) + "x" + (open == "[" ? new string(']', depth) : "");
    }

    [Theory]
    [InlineData("[", 200_000)]
    [InlineData("{", 200_000)]
    [InlineData("{a: ", 50_000)]
    [InlineData("- ", 100_000)]
    [InlineData("? ", 100_000)]
    [InlineData("[a, ", 50_000)]
    [InlineData("a, ", 66_000)]
    [InlineData("\"a\n\n", 50_000)]
    [InlineData("a: |\n", 40_000)]
    [InlineData("!", 200_000)]
    [InlineData("&a ", 66_000)]
    [InlineData("\t", 200_000)]
    [InlineData("\n", 200_000)]
    [InlineData("# ", 100_000)]
    [InlineData("''", 100_000)]
    [InlineData("- \"\\u00e9\\u00e9\\u00e9\\u00e9\\u00e9\"\n", 5_000)]
    public void A_file_made_to_wear_the_reader_out_is_answered_soon(string part, int times)
    {
        var clock = System.Diagnostics.Stopwatch.StartNew();
        YamlReader.TryRead("a.yaml", string.Concat(Enumerable.Repeat(part, times)), [], out _);
        Assert.True(clock.Elapsed < TimeSpan.FromSeconds(5), $"took {clock.Elapsed}");
    }

    [Fact]
    public void A_text_of_nothing_but_escapes_is_read_soon()
    {
        var clock = System.Diagnostics.Stopwatch.StartNew();
        Read("a: \"" + string.Concat(Enumerable.Repeat("\\u00e9", 33_000)) + "\"");
        Assert.True(clock.Elapsed < TimeSpan.FromSeconds(5), $"took {clock.Elapsed}");
    }

    private static Place At(int line, int column) => new("a.yaml", line, column);

    private static string Text(Node node) => Assert.IsType<ScalarNode>(node).Text;

    private static Node Read(string text)
    {
        Node? root = null;
        Heard.Nothing(complaints => YamlReader.TryRead("a.yaml", text, complaints, out root));
        return root!;
    }
}
