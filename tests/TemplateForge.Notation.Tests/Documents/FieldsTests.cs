namespace TemplateForge.Notation.Tests;

public class FieldsTests
{
    [Fact]
    public void Fields_are_found_by_their_names()
    {
        var (fields, complaints) = Open("radius: 5\nnotes: [a, b]\nhole: {x: 1}\n");
        Assert.True(fields.RequiredText("radius", out var radius));
        Assert.True(fields.OptionalList("notes", out var notes));
        Assert.True(fields.RequiredGroup("hole", out var hole));
        Assert.False(fields.Optional("depth", out _));
        Assert.True(fields.Done());
        Assert.Equal("5", radius.Text);
        Assert.Equal(2, notes.Items.Length);
        Assert.Equal("x", hole.Entries[0].Key.Text);
        Assert.Empty(complaints);
    }

    [Fact]
    public void A_field_that_nobody_asks_for_is_told_with_the_nearest_right_name()
    {
        var (fields, complaints) = Open("raduis: 5\n");
        Assert.False(fields.Optional("radius", out _));
        Assert.False(fields.Optional("depth", out _));
        Assert.False(fields.Done());
        Assert.Equal([Wordings.UnknownField(At(1, 1), "raduis", ["radius", "depth"])], complaints);
        Assert.Equal("`raduis` is not understood here; did you mean `radius`?", complaints[0].Problem);
    }

    [Fact]
    public void A_name_that_is_there_already_is_not_suggested()
    {
        var (fields, complaints) = Open("radius: 5\nradiusx: 6\n");
        fields.RequiredText("radius", out _);
        fields.OptionalText("depth", out _);
        Assert.False(fields.Done());
        Assert.Equal([Wordings.UnknownField(At(2, 1), "radiusx", ["depth"])], complaints);
    }

    [Fact]
    public void A_field_that_must_be_there_is_missed_at_the_place_of_its_group()
    {
        var (fields, complaints) = Open("\n\nradius: 5\n");
        Assert.False(fields.Required("depth", out _));
        Assert.False(fields.RequiredText("help", out var help));
        Assert.Equal([Wordings.MissingField(At(3, 1), "The hole", "depth"), Wordings.MissingField(At(3, 1), "The hole", "help")], complaints);
        Assert.Equal("", help.Text);
    }

    [Fact]
    public void A_field_of_the_wrong_kind_is_told_with_its_place()
    {
        var (fields, complaints) = Open("a: [1]\nb: 1\nc:\nd: {e: 1}\n");
        Assert.False(fields.RequiredText("a", out _));
        Assert.False(fields.OptionalList("b", out _));
        Assert.False(fields.OptionalText("c", out _));
        Assert.False(fields.RequiredList("d", out _));
        Assert.False(fields.RequiredGroup("b", out _));
        Assert.True(fields.Done());
        Assert.Equal(
            [
                Wordings.WrongKindOfNode(At(1, 4), "`a`", "a list", "a text"),
                Wordings.WrongKindOfNode(At(2, 4), "`b`", "a text", "a list"),
                Wordings.WrongKindOfNode(At(3, 3), "`c`", "empty", "a text"),
                Wordings.WrongKindOfNode(At(4, 4), "`d`", "a group of fields", "a list"),
                Wordings.WrongKindOfNode(At(2, 4), "`b`", "a text", "a group of fields"),
            ],
            complaints);
    }

    [Fact]
    public void A_node_that_is_no_group_has_no_fields()
    {
        var list = new SequenceNode(At(4, 2), []);
        Assert.Equal(
            Wordings.WrongKindOfNode(At(4, 2), "A hole", "a list", "a group of fields"),
            Heard.One(complaints => Fields.TryOpen(list, "A hole", complaints, out _)));
    }

    private static Place At(int line, int column) => new("a.yaml", line, column);

    private static (Fields Fields, List<Complaint> Complaints) Open(string text)
    {
        var complaints = new List<Complaint>();
        Assert.True(YamlReader.TryRead("a.yaml", text, complaints, out var root));
        Assert.True(Fields.TryOpen(root, "The hole", complaints, out var fields));
        return (fields, complaints);
    }
}
