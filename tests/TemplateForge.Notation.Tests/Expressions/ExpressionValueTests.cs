namespace TemplateForge.Notation.Tests;

public class ExpressionValueTests
{
    [Theory]
    [InlineData("diameter / 2 + clearance", "107 mm")]
    [InlineData("2 + 3 * 4", "14")]
    [InlineData("(2 + 3) * 4", "20")]
    [InlineData("10 - 2 - 3", "5")]
    [InlineData("24 / 4 / 2", "3")]
    [InlineData("2^3^2", "512")]
    [InlineData("-2^2", "-4")]
    [InlineData("2^-1", "0.5")]
    [InlineData("2 * -3", "-6")]
    [InlineData("2 × 3 ÷ 4 − 1", "0.5")]
    [InlineData("1/2 in", "12.7 mm")]
    [InlineData("2 * 1/2 in", "25.4 mm")]
    [InlineData("1 3/8 in", "34.925 mm")]
    [InlineData("1 3/8 in + 1 3/8 in", "69.85 mm")]
    [InlineData("1 3/8 * 2", "2.75")]
    [InlineData("2 * 3 mm", "6 mm")]
    [InlineData("1/2", "0.5")]
    [InlineData("6/(1/2 in) * 1 in", "12")]
    [InlineData("diameter/2 in", "3.74")] // 190 over 50.8
    [InlineData("(12 mm)^2", "144 mm²")]
    [InlineData("12 mm² / 3 mm", "4 mm")]
    [InlineData("18 ga us-standard * 2", "2.54 mm")]
    [InlineData("90 deg / 1 turn", "0.25")]
    [InlineData("pi", "3.142")]
    [InlineData("top(opening) + distance(opening, edge)", "75.25 mm")]
    [InlineData("sqrt(area(opening))", "30 mm")]
    [InlineData("abs(-3 mm)", "3 mm")]
    [InlineData("min(3 mm, 1 cm, 0)", "0 mm")]
    [InlineData("max(3 mm, 1 cm, 0)", "10 mm")]
    [InlineData("hypot(3 mm, 4 mm)", "5 mm")]
    [InlineData("round(2.5)", "3")]
    [InlineData("round(-2.5)", "-3")]
    [InlineData("round(12.3 mm, 0.5 mm)", "12.5 mm")]
    [InlineData("floor(2.9 mm)", "2 mm")]
    [InlineData("ceil(2.1)", "3")]
    [InlineData("ceil(0.9 / 0.3)", "3")] // a double says 3.0000000000000004
    [InlineData("floor(0.3 / 0.1)", "3")] // a double says 2.9999999999999996
    [InlineData("if process is mig then 0.8 mm else 0.2 mm", "0.8 mm")]
    [InlineData("if process is tig then 1 else if lapped then 2 else 3", "2")]
    [InlineData("if diameter = 0 then 0 mm else 1 mm", "1 mm")]
    [InlineData("outline is rounded-rectangle", "yes")]
    [InlineData("process is not mig", "no")]
    [InlineData("lapped is yes", "yes")]
    [InlineData("not lapped or diameter > 100 mm", "yes")]
    [InlineData("not lapped and count = 3", "no")]
    [InlineData("0 < diameter < 190 mm", "no")]
    [InlineData("0 < diameter ≤ 190 mm", "yes")]
    [InlineData("0.1 + 0.2 = 0.3", "yes")]
    [InlineData("0.1 + 0.2 <= 0.3 and not 0.1 + 0.2 > 0.3", "yes")]
    [InlineData("count <> 3", "no")]
    [InlineData("if lapped then process else outline", "mig")]
    [InlineData("tilt", "8°")]
    [InlineData("atan2(1 mm, 1 mm)", "45°")]
    [InlineData("diameter * (90 deg) / 1 rad", "298.451 mm")] // a quarter of a circle with this radius: 190 π / 2
    public void An_expression_comes_to_what_a_person_expects(string text, string value) => Assert.Equal(value, Bench.Evaluate(text).ToString());

    // Values that every school table has; exact, so that a square template has square corners.
    [Theory]
    [InlineData("sin(30 deg)", 0.5)]
    [InlineData("sin(150 deg)", 0.5)]
    [InlineData("sin(-30 deg)", -0.5)]
    [InlineData("sin(210 deg)", -0.5)]
    [InlineData("sin(180 deg)", 0)]
    [InlineData("sin(270 deg)", -1)]
    [InlineData("sin(720 deg)", 0)]
    [InlineData("cos(60 deg)", 0.5)]
    [InlineData("cos(90 deg)", 0)]
    [InlineData("cos(-90 deg)", 0)]
    [InlineData("cos(120 deg)", -0.5)]
    [InlineData("cos(180 deg)", -1)]
    [InlineData("cos(300 deg)", 0.5)]
    [InlineData("tan(45 deg)", 1)]
    [InlineData("tan(135 deg)", -1)]
    [InlineData("tan(-45 deg)", -1)]
    [InlineData("tan(225 deg)", 1)]
    [InlineData("tan(180 deg)", 0)]
    [InlineData("asin(0.5)", 30)]
    [InlineData("acos(0.5)", 60)]
    [InlineData("acos(-1)", 180)]
    [InlineData("atan(1)", 45)]
    [InlineData("atan2(0, -1)", 180)]
    [InlineData("atan2(-1, 0)", -90)]
    public void Angles_of_the_set_square_are_exact(string text, double value) =>
        Assert.Equal(value, Bench.Evaluate(text).AsQuantity().Value);

    [Fact]
    public void Sine_cosine_and_tangent_agree_with_the_system()
    {
        for (var degrees = -725.0; degrees < 725; degrees += 3.7)
        {
            var text = FormattableString.Invariant($"{degrees:0.0} deg");
            var radians = double.DegreesToRadians(Math.Round(degrees, 1));
            Assert.Equal(Math.Sin(radians), Bench.Evaluate($"sin({text})").AsQuantity().Value, 1e-13);
            Assert.Equal(Math.Cos(radians), Bench.Evaluate($"cos({text})").AsQuantity().Value, 1e-13);
            var tangent = Math.Tan(radians);
            Assert.Equal(tangent, Bench.Evaluate($"tan({text})").AsQuantity().Value, 1e-12 * (1 + (tangent * tangent)));
        }
    }

    public static TheoryData<string, Complaint> Faults => new()
    {
        { "1 / (count - 3)", Wordings.DividesByZero(Heard.Start.Right(4), "(count - 3)") },
        { "diameter / nothing", Wordings.DividesByZero(Heard.Start.Right(11), "nothing") },
        { "(count - 3)^-1", Wordings.DividesByZero(Heard.Start, "(count - 3)") },
        { "sqrt(clearance^2 - diameter^2)", Wordings.NoAnswer(Heard.Start, "sqrt(clearance^2 - diameter^2)", "sqrt", [Quantity.Area(144 - 36100)]) },
        { "1 + asin(diameter / clearance) / 1 deg", Wordings.NoAnswer(Heard.Start.Right(4), "asin(diameter / clearance)", "asin", [Quantity.Number(190 / 12.0)]) },
        { "tan(90 deg)", Wordings.NoAnswer(Heard.Start, "tan(90 deg)", "tan", [Quantity.Angle(90)]) },
        { "atan2(0, 0)", Wordings.NoAnswer(Heard.Start, "atan2(0, 0)", "atan2", [default, default]) },
        { "round(1, 0)", Wordings.NoAnswer(Heard.Start, "round(1, 0)", "round", [Quantity.Number(1), default]) },
        { "(-2)^0.5", Wordings.PowerOfNegative(Heard.Start, "(-2)", Quantity.Number(-2)) },
        { "10^400", Wordings.ResultTooLarge(Heard.Start, "10^400") },
        { "gone(opening)", Wordings.NoMeasure(Heard.Start, "gone(opening)") },
    };

    [Theory, MemberData(nameof(Faults))]
    public void What_cannot_be_computed_is_told_with_its_place(string text, Complaint complaint) =>
        Assert.Equal(complaint, Bench.NotComputed(text));

    [Theory]
    [InlineData("if nothing = 0 then 1 else diameter / nothing")]
    [InlineData("if nothing > 0 and diameter / nothing > 3 then 2 else 1")]
    [InlineData("if nothing = 0 or diameter / nothing > 3 then 1 else 2")]
    public void Only_what_is_needed_is_computed(string text) => Assert.Equal("1", Bench.Evaluate(text).ToString());

    [Fact]
    public void An_expression_that_was_not_checked_is_a_mistake_of_the_program() =>
        Assert.Throws<InvalidOperationException>(() => Bench.Read("diameter + tilt").TryEvaluate(new Bench(), [], out _));
}
