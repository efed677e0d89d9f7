namespace TemplateForge.Notation.Tests;

public class ExpressionReadingTests
{
    [Fact]
    public void The_names_that_are_used_are_told_once_each_in_their_order() =>
        Assert.Equal(["b", "a", "c"], Bench.Read("b + a * sin(c) + b + pi").NamesUsed);

    [Fact]
    public void Shapes_in_measures_are_told_apart_from_values()
    {
        var expression = Bench.Read("panel_depth - distance(opening, edge)");
        Assert.Equal(["panel_depth"], expression.NamesUsed);
        Assert.Equal([new MeasureUse("distance", ["opening", "edge"], Heard.Start.Right(14))], expression.MeasuresUsed);
    }

    [Fact]
    public void Words_of_choices_are_not_names() => Assert.Equal(["process"], Bench.Read("process is mig or process is not tig").NamesUsed);

    public static TheoryData<string, Complaint> Faults => new()
    {
        { "", Wordings.UnfinishedExpression(Heard.Start) },
        { "1 +", Wordings.UnfinishedExpression(Heard.Start.Right(2)) },
        { "* 2", Wordings.ValueExpected(Heard.Start, "*") },
        { "a = = b", Wordings.ValueExpected(Heard.Start.Right(4), "=") },
        { "a == b", Wordings.ValueExpected(Heard.Start.Right(3), "=") },
        { "(1 + 2", Wordings.OpenParenthesis(Heard.Start) },
        { "min(1, 2", Wordings.OpenParenthesis(Heard.Start.Right(3)) },
        { "1 + 2)", Wordings.ClosingParenthesis(Heard.Start.Right(5)) },
        { "1,5", Wordings.CommaOutside(Heard.Start.Right(1)) },
        { "a b", Wordings.SignExpected(Heard.Start.Right(2), "a", "b") },
        { "1 2", Wordings.SignExpected(Heard.Start.Right(2), "1", "2") },
        { "2 a", Wordings.UnknownUnit(Heard.Start.Right(2), "a", "2", inExpression: true) },
        { "2 * if a then 1 else 2", Wordings.ConditionInside(Heard.Start.Right(4)) },
        { "if a then 1", Wordings.KeywordExpected(Heard.Start.Right(10), "else") },
        { "if a else 1", Wordings.KeywordExpected(Heard.Start.Right(5), "then") },
        { "a is", Wordings.ChoiceExpected(Heard.Start.Right(3)) },
        { "a is not 5", Wordings.ChoiceExpected(Heard.Start.Right(9)) },
        { "a & b", Wordings.StrangeCharacter(Heard.Start.Right(2), '&') },
        { "a % 2", Wordings.StrangeCharacter(Heard.Start.Right(2), '%') },
        { "12 mm^2", Wordings.PowerOfUnit(Heard.Start.Right(5), "12 mm") },
        { "6/1/2 in", Wordings.DivisionByFraction(Heard.Start.Right(2), "1/2 in") },
        { "a / 1/2 in", Wordings.DivisionByFraction(Heard.Start.Right(4), "1/2 in") },
        { "a / -1/2 in", Wordings.DivisionByFraction(Heard.Start.Right(4), "-1/2 in") },
        { "a + 18 ga", Wordings.GaugeWithoutSystem(Heard.Start.Right(4), "18 ga", 18) },
        { "1e300", Wordings.TooLarge(Heard.Start, "1e300") },
    };

    [Theory, MemberData(nameof(Faults))]
    public void A_fault_is_told_once_with_its_place(string text, Complaint complaint) => Assert.Equal(complaint, Bench.NotRead(text));

    [Fact]
    public void A_text_of_five_hundred_characters_is_read_and_one_more_is_not()
    {
        Bench.Read("1" + string.Concat(Enumerable.Repeat("+1", 249)) + " ");
        Assert.Equal(Wordings.TextTooLong(Heard.Start, 501, 500), Bench.NotRead(new string('1', 501)));
    }

    [Theory]
    [InlineData("(", ")")]
    [InlineData("-", "")]
    [InlineData("abs(", ")")]
    [InlineData("2^", "")]
    [InlineData("not ", "")]
    public void Fifty_things_stand_one_inside_the_other_and_no_more(string open, string close)
    {
        Bench.Read(Nested(50));
        Assert.Equal(Wordings.NestedTooDeep(default, 50).Problem, Bench.NotRead(Nested(51)).Problem);

        string Nested(int depth) =>
            string.Concat(Enumerable.Repeat(open, depth)) + "1" + string.Concat(Enumerable.Repeat(close, depth));
    }

    [Theory]
    [InlineData("if")]
    [InlineData("pi")]
    [InlineData("sin")]
    [InlineData("mm")]
    public void Words_with_a_meaning_are_reserved(string word) => Assert.True(Expression.IsReserved(word));

    [Theory]
    [InlineData("panel_depth", true)]
    [InlineData("r2", true)]
    [InlineData("2r", false)]
    [InlineData("panel-depth", false)]
    [InlineData("", false)]
    [InlineData("größe", false)]
    public void A_name_is_letters_digits_and_underscores(string word, bool isName) => Assert.Equal(isName, Expression.IsName(word));
}
