namespace TemplateForge.Notation.Tests;

public class FilledTextTests
{
    [Theory]
    [InlineData("Only {diameter - top(opening)} of the panel is left.", "Only 154.75 mm of the panel is left.")]
    [InlineData("{tilt}, {process}, {lapped}", "8°, mig, yes")]
    [InlineData("a {{b}} c", "a {b} c")]
    [InlineData("{{{count}}}", "{3}")]
    [InlineData("plain", "plain")]
    [InlineData("", "")]
    public void Values_are_put_in_where_the_braces_stand(string text, string filled)
    {
        var found = "?";
        Heard.Nothing(complaints =>
            FilledText.TryRead(text, Heard.Start, complaints, out var read)
            && read.TryCheck(new Bench(), complaints)
            && read.TryFill(new Bench(), complaints, out found));
        Assert.Equal(filled, found);
    }

    [Fact]
    public void A_brace_alone_is_told_with_its_place()
    {
        Assert.Equal(Wordings.LoneBrace(Heard.Start.Right(2), '{'), Refused("a { b"));
        Assert.Equal(Wordings.LoneBrace(Heard.Start.Right(2), '}'), Refused("a } b"));
    }

    [Fact]
    public void Empty_braces_are_told_with_their_place() =>
        Assert.Equal(Wordings.UnfinishedExpression(Heard.Start.Right(1)), Refused("{}"));

    [Fact]
    public void A_fault_in_braces_has_its_own_place()
    {
        var complaint = Heard.One(complaints =>
            FilledText.TryRead("Only {diameter - tpo(opening)} left", Heard.Start, complaints, out var text) && text.TryCheck(new Bench(), complaints));
        Assert.Equal(Heard.Start.Column + 17, complaint.Column);
    }

    [Fact]
    public void What_cannot_be_computed_is_told_and_leaves_no_text()
    {
        FilledText.TryRead("{1 / nothing}", Heard.Start, [], out var text);
        Assert.Equal(
            Wordings.DividesByZero(Heard.Start.Right(5), "nothing"),
            Heard.One(complaints => text.TryFill(new Bench(), complaints, out _)));
    }

    [Fact]
    public void The_expressions_of_a_text_are_told()
    {
        FilledText.TryRead("{a} and {b + c}", Heard.Start, [], out var text);
        Assert.Equal(["a", "b", "c"], text.Expressions.SelectMany(expression => expression.NamesUsed));
    }

    [Fact]
    public void A_text_of_many_characters_is_refused() =>
        Assert.Equal(Wordings.TextTooLong(Heard.Start, 4001, 4000), Refused(new string('a', 4001)));

    private static Complaint Refused(string text) => Heard.One(complaints => FilledText.TryRead(text, Heard.Start, complaints, out _));
}
