namespace TemplateForge.Notation.Tests;

public class ComplaintTests
{
    [Fact]
    public void A_complaint_is_printed_with_its_place_and_the_remedy_below() =>
        Assert.Equal(
            "a.yaml:14:18: It is too wide.\n    Make it narrower.",
            new Place("a.yaml", 14, 18).Complain("It is too wide.", "Make it narrower.").ToString());

    [Fact]
    public void A_place_moves_right_on_its_line() => Assert.Equal(new Place("a", 2, 9), new Place("a", 2, 4).Right(5));

    [Fact]
    public void A_text_of_several_lines_knows_the_place_of_each_character()
    {
        var writing = new Writing("ab\ncd", new Place("a", 5, 3));
        Assert.Equal(new Place("a", 5, 4), writing.At(1));
        Assert.Equal(new Place("a", 6, 1), writing.At(3));
        Assert.Equal(new Place("a", 6, 2), writing.At(4));
    }

    [Fact]
    public void Beyond_the_text_stands_the_place_of_its_last_character() =>
        Assert.Equal(new Place("a", 1, 3), new Writing("abc", new Place("a", 1, 1)).At(100));

    [Fact]
    public void A_part_of_a_text_keeps_its_places()
    {
        var part = new Writing("ab\ncd", new Place("a", 5, 3)).Part(1, 5);
        Assert.Equal("b\ncd", part.Text);
        Assert.Equal(new Place("a", 5, 4), part.At(0));
        Assert.Equal(new Place("a", 6, 2), part.At(3));
    }
}
