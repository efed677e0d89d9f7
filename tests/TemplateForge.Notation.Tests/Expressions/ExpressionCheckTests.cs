namespace TemplateForge.Notation.Tests;

public class ExpressionCheckTests
{
    [Theory]
    [InlineData("diameter / 2 + clearance", "a length")]
    [InlineData("diameter * diameter", "an area")]
    [InlineData("diameter^2", "an area")]
    [InlineData("sqrt(diameter^2 + clearance^2)", "a length")]
    [InlineData("diameter / clearance", "a plain number")]
    [InlineData("cos(tilt) * 5", "a plain number")]
    [InlineData("asin(clearance / diameter)", "an angle")]
    [InlineData("atan2(clearance, diameter) + tilt", "an angle")]
    [InlineData("0 < diameter", "a yes or no")]
    [InlineData("lapped and process is mig", "a yes or no")]
    [InlineData("if lapped then process else outline", "a choice of mig, tig, rounded-rectangle or round")]
    [InlineData("area(opening) / top(opening)", "a length")]
    [InlineData("max(0, 0, diameter)", "a length")]
    [InlineData("diameter * tilt / 1 rad", "a length")]
    [InlineData("diameter^-1 * diameter", "a plain number")]
    public void The_kind_of_an_expression_is_known_before_any_value(string text, string kind) =>
        Assert.Equal(kind, Bench.Check(text).Name);

    [Fact]
    public void Adding_a_length_to_an_angle_is_an_error_in_those_words() =>
        Assert.Equal("`diameter + tilt` adds a length to an angle.", Bench.NotRight("diameter + tilt").Problem);

    public static TheoryData<string, Complaint> Faults => new()
    {
        { "2 * (diameter + tilt)", Wordings.AddsUnlike(Heard.Start.Right(4), "(diameter + tilt)", true, Dimension.Length, Dimension.Angle, "") },
        { "diameter - 5", Wordings.AddsUnlike(Heard.Start, "diameter - 5", false, Dimension.Length, Dimension.Number, "5") },
        { "1 + diamter", Wordings.UnknownName(Heard.Start.Right(4), "diamter", new Bench().AllNames) },
        { "diamter * diamter", Wordings.UnknownName(Heard.Start, "diamter", new Bench().AllNames) },
        { "opening + 1", Wordings.ShapeAsValue(Heard.Start, "opening", "top") },
        { "process is mug", Wordings.UnknownOption(Heard.Start.Right(11), "mug", "process", ["mig", "tig"]) },
        { "lapped is maybe", Wordings.UnknownOption(Heard.Start.Right(10), "maybe", "lapped", ["yes", "no"]) },
        { "process = mig", Wordings.ChoiceWithEquals(Heard.Start, "process", true, "mig") },
        { "process <> mig", Wordings.ChoiceWithEquals(Heard.Start, "process", false, "mig") },
        { "diameter is mig", Wordings.IsNeedsChoice(Heard.Start, "diameter", ValueKind.Length) },
        { "diameter < tilt", Wordings.ComparesUnlike(Heard.Start, "diameter < tilt", Dimension.Length, Dimension.Angle, "") },
        { "0 < diameter < 5", Wordings.ComparesUnlike(Heard.Start.Right(4), "diameter < 5", Dimension.Length, Dimension.Number, "5") },
        { "sin(30)", Wordings.NeedsAngle(Heard.Start.Right(4), "sin", "30", Dimension.Number) },
        { "cos(diameter)", Wordings.NeedsAngle(Heard.Start.Right(4), "cos", "diameter", Dimension.Length) },
        { "asin(diameter)", Wordings.NeedsNumber(Heard.Start.Right(5), "asin", "diameter", Dimension.Length) },
        { "sqrt(diameter)", Wordings.RootOf(Heard.Start.Right(5), "diameter", Dimension.Length) },
        { "min(diameter, tilt)", Wordings.ArgumentsUnlike(Heard.Start.Right(14), "min", Dimension.Length, Dimension.Angle, "") },
        { "min(5, 0, diameter)", Wordings.ArgumentsUnlike(Heard.Start.Right(10), "min", Dimension.Number, Dimension.Length, "5") },
        { "min(diameter)", Wordings.WrongCount(Heard.Start, "min", 2, int.MaxValue, 1) },
        { "sin()", Wordings.WrongCount(Heard.Start, "sin", 1, 1, 0) },
        { "round(1, 2, 3)", Wordings.WrongCount(Heard.Start, "round", 1, 2, 3) },
        { "2^diameter", Wordings.ExponentWithUnit(Heard.Start.Right(2), "diameter", Dimension.Length) },
        { "diameter^count", Wordings.ExponentNotWhole(Heard.Start.Right(9), "diameter", Dimension.Length, 9) },
        { "diameter^0.5", Wordings.ExponentNotWhole(Heard.Start.Right(9), "diameter", Dimension.Length, 9) },
        { "diameter^9 * diameter", Wordings.PowerTooHigh(Heard.Start, "diameter^9 * diameter") },
        { "lapped + 1", Wordings.NeedsQuantity(Heard.Start, "lapped", ValueKind.Truth) },
        { "-process", Wordings.NeedsQuantity(Heard.Start.Right(1), "process", ValueKind.Choice("mig", "tig")) },
        { "diameter and lapped", Wordings.NeedsTruth(Heard.Start, "diameter", ValueKind.Length) },
        { "if process then 1 else 2", Wordings.NeedsTruth(Heard.Start.Right(3), "process", ValueKind.Choice("mig", "tig")) },
        { "if lapped then 1 else tilt", Wordings.BranchesUnlike(Heard.Start.Right(22), ValueKind.Number, ValueKind.Angle, "1") },
        { "tpo(opening)", Wordings.UnknownFunction(Heard.Start, "tpo", ["top", "sin"]) },
        { "top(openin)", Wordings.UnknownShape(Heard.Start.Right(4), "openin", ["opening", "edge"]) },
        { "top(diameter + 1)", Wordings.NotAShape(Heard.Start.Right(4), "top", "diameter + 1") },
        { "distance(opening)", Wordings.WrongShapeCount(Heard.Start, "distance", 1) },
    };

    [Theory, MemberData(nameof(Faults))]
    public void A_fault_is_told_once_with_the_place_of_the_faulty_part(string text, Complaint complaint) =>
        Assert.Equal(complaint, Bench.NotRight(text));

    [Theory]
    [InlineData("1 + diamter", "diameter")]
    [InlineData("process is mug", "mig")]
    [InlineData("tpo(opening)", "top")]
    [InlineData("sinn(30 deg)", "sin")]
    [InlineData("top(openin)", "opening")]
    [InlineData("sin(30)", "sin(30 deg)")]
    [InlineData("sin(count)", "sin(count * 1 deg)")]
    [InlineData("sin(count + 3)", "sin((count + 3) * 1 deg)")]
    [InlineData("process = mig", "process is mig")]
    [InlineData("diameter + 5", "5 mm")]
    [InlineData("tilt + 5", "5 deg")]
    public void The_remedy_names_what_is_nearest(string text, string nearest) =>
        Assert.Contains(nearest, Bench.NotRight(text).Remedy, StringComparison.Ordinal);

    [Fact]
    public void All_faults_are_told_at_once()
    {
        var complaints = new List<Complaint>();
        Assert.False(Bench.Read("sin(30) * wide + (diameter + tilt) * top(openin)").TryCheck(new Bench(), complaints, out _));
        Assert.Equal([11, 17, 24, 48], complaints.Select(complaint => complaint.Column).Order());
    }
}
