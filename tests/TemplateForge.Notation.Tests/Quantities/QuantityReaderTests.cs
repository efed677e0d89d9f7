namespace TemplateForge.Notation.Tests;

public class QuantityReaderTests
{
    [Theory]
    [InlineData("12", 12)]
    [InlineData("12 mm", 12)]
    [InlineData("12mm", 12)]
    [InlineData(" 12 ", 12)]
    [InlineData("1.4", 1.4)]
    [InlineData(".5", 0.5)]
    [InlineData("5.", 5)]
    [InlineData("1.2e2", 120)]
    [InlineData("1/2", 0.5)]
    [InlineData("1 3/8", 1.375)]
    [InlineData("1/2 in", 12.7)]
    [InlineData("1/2\"", 12.7)]
    [InlineData("1 3/8 in", 34.925)]
    [InlineData("1 3/8\"", 34.925)]
    [InlineData("-1 3/8 in", -34.925)]
    [InlineData("+3", 3)]
    [InlineData("−3", -3)] // the minus sign that is not a hyphen
    [InlineData("2 cm", 20)]
    [InlineData("1.5 ft", 457.2)]
    [InlineData("40 thou", 1.016)]
    [InlineData("999999999", 999999999)]
    public void A_length_is_read_as_people_write_it(string text, double millimetres) =>
        Assert.Equal(millimetres, Read(text, Unit.Millimetre).Value, 1e-12 * Math.Max(1, Math.Abs(millimetres)));

    [Fact]
    public void A_bare_number_has_the_declared_unit()
    {
        Assert.Equal(12.7, Read("1/2", Unit.Inch).Value, 1e-12);
        Assert.Equal(Quantity.Angle(8), Read("8", Unit.Degree));
        Assert.Equal(Quantity.Angle(90), Read("1/4", Unit.Turn));
        Assert.Equal(Quantity.Number(3), Read("3", Unit.None));
        Assert.Equal(Quantity.Area(3), Read("3", Unit.SquareMillimetre));
    }

    [Theory]
    [InlineData("30 deg", 30)]
    [InlineData("30°", 30)]
    [InlineData("0.25 turn", 90)]
    public void An_angle_is_read_in_degrees(string text, double degrees) => Assert.Equal(Quantity.Angle(degrees), Read(text, Unit.Degree));

    [Fact]
    public void What_is_printed_is_read_again()
    {
        var random = new Random(7);
        foreach (var unit in new[] { Unit.Millimetre, Unit.Degree, Unit.SquareMillimetre, Unit.None })
        {
            for (var i = 0; i < 1000; i++)
            {
                var thousandths = random.NextInt64(-999_999_999, 1_000_000_000) / (long)Math.Pow(10, random.Next(0, 7));
                var quantity = new Quantity(thousandths / 1000.0, unit.Dimension);
                Assert.Equal(quantity, Read(quantity.ToString(), unit));
            }
        }
    }

    [Fact]
    public void An_angle_is_no_diameter() =>
        Assert.Equal(
            Wordings.WrongDimension(Heard.Start, "30 deg", Dimension.Angle, "diameter", Unit.Millimetre),
            Refused("30 deg", Unit.Millimetre, "diameter"));

    [Fact]
    public void The_wrong_dimension_is_said_in_those_words()
    {
        Assert.Equal("`30 deg` is an angle, but diameter is a length.", Refused("30 deg", Unit.Millimetre, "diameter").Problem);
        Assert.Equal("`3 mm` is a length, but a plain number is wanted here.", Refused("3 mm", Unit.None).Problem);
    }

    [Theory]
    [InlineData("", 0)]
    [InlineData("   ", 0)]
    public void Nothing_is_no_value(string text, int column) =>
        Assert.Equal(Wordings.EmptyValue(Heard.Start.Right(column), Unit.Millimetre), Refused(text, Unit.Millimetre));

    [Theory]
    [InlineData("NaN")]
    [InlineData("inf")]
    [InlineData("Infinity")]
    [InlineData("-inf")]
    [InlineData("wide")]
    [InlineData("--5")]
    [InlineData("*5")]
    public void A_word_is_no_number(string text) =>
        Assert.Equal(Wordings.NotANumber(Heard.Start, text, Unit.Millimetre), Refused(text, Unit.Millimetre));

    [Theory]
    [InlineData("0x1F")]
    [InlineData("12e3e4")]
    public void Digits_and_letters_mixed_are_no_number(string text) =>
        Assert.Equal(Wordings.NotANumber(Heard.Start, text, Unit.None), Refused(text, Unit.Millimetre));

    [Theory]
    [InlineData("1e300")]
    [InlineData("1e9")]
    [InlineData("1e400")]
    [InlineData("1000000000")]
    public void A_number_beyond_every_shop_is_refused(string text) =>
        Assert.Equal(Wordings.TooLarge(Heard.Start, text), Refused(text, Unit.Millimetre));

    [Fact]
    public void The_limit_holds_for_the_unit_that_is_declared() =>
        Assert.Equal(Wordings.TooLarge(Heard.Start, "999999999"), Refused("999999999", Unit.Inch));

    // Who writes 1,234 means a little more than one in one country, a little more than a thousand in another.
    [Theory]
    [InlineData("1,234", "1.234", "1234")]
    [InlineData("12,500 mm", "12.500", "12500")]
    [InlineData("187,4", "187.4", "")]
    [InlineData("0,125", "0.125", "")]
    [InlineData("1234,567", "1234.567", "")]
    [InlineData("1,234.5", "1234.5", "")]
    public void A_comma_before_three_digits_may_part_thousands_and_any_other_is_a_decimal_s(string text, string one, string other)
    {
        var complaints = new List<Complaint>();
        Assert.False(QuantityReader.TryRead(text, Unit.Millimetre, Heard.Start, complaints, out _));
        var remedy = Assert.Single(complaints).Remedy;
        Assert.Contains($" {one} ", remedy, StringComparison.Ordinal);
        Assert.Equal(other.Length > 0, remedy.Contains("thousands", StringComparison.Ordinal));
        if (other.Length > 0) Assert.Contains($" {other} ", remedy, StringComparison.Ordinal);
    }

    [Fact]
    public void A_decimal_comma_is_refused_with_the_point_that_is_right()
    {
        var complaint = Refused("1,5", Unit.Millimetre);
        Assert.Equal(Wordings.DecimalComma(Heard.Start.Right(1), "1", "5"), complaint);
        Assert.Contains("1.5", complaint.Remedy, StringComparison.Ordinal);
    }

    [Fact]
    public void A_hyphen_in_a_mixed_number_is_refused() =>
        Assert.Equal(Wordings.HyphenInMixedNumber(Heard.Start.Right(1), "1-3/8 in", "1 3/8 in"), Refused("1-3/8 in", Unit.Millimetre));

    [Fact]
    public void The_fraction_of_a_mixed_number_is_less_than_one() =>
        Assert.Equal(Wordings.FractionOfMixedNumber(Heard.Start.Right(2), "11/8"), Refused("1 11/8", Unit.Millimetre));

    [Theory]
    [InlineData("1/0")]
    [InlineData("1/0 in")]
    public void A_fraction_does_not_divide_by_zero(string text) =>
        Assert.Equal(Wordings.FractionByZero(Heard.Start.Right(2), "1/0"), Refused(text, Unit.Millimetre));

    [Fact]
    public void A_mixed_number_does_not_divide_by_zero() => Assert.Equal(9, Refused("1 1/0", Unit.Millimetre).Column);

    [Fact]
    public void An_unknown_unit_is_told_with_its_place() =>
        Assert.Equal(
            Wordings.UnknownUnit(Heard.Start.Right(3), "iches", "12", inExpression: false), Refused("12 iches", Unit.Millimetre));

    [Fact]
    public void A_misspelt_unit_is_told_with_the_right_one() =>
        Assert.Contains("12 inches", Refused("12 iches", Unit.Millimetre).Remedy, StringComparison.Ordinal);

    [Theory]
    [InlineData("12 mm 5", 6, "5", "12 mm")]
    [InlineData("5 ft 3 in", 5, "3 in", "5 ft")]
    [InlineData("5 + 3", 2, "+ 3", "5")]
    public void One_value_is_one_value(string text, int column, string behind, string value) =>
        Assert.Equal(Wordings.MoreThanOneValue(Heard.Start.Right(column), behind, value), Refused(text, Unit.Millimetre));

    [Theory]
    [InlineData("½", 0, '½')]
    [InlineData("5 %", 2, '%')]
    [InlineData("5'", 1, '\'')]
    public void A_sign_without_a_meaning_is_told_with_its_place(string text, int column, char sign) =>
        Assert.Equal(Wordings.StrangeCharacter(Heard.Start.Right(column), sign), Refused(text, Unit.Millimetre));

    [Fact]
    public void A_value_of_many_characters_is_refused() =>
        Assert.Equal(Wordings.TextTooLong(Heard.Start, 501, 500), Refused(new string('1', 501), Unit.Millimetre));

    internal static Quantity Read(string text, Unit declared)
    {
        var quantity = Quantity.Number(0);
        Heard.Nothing(complaints => QuantityReader.TryRead(text, declared, Heard.Start, complaints, out quantity));
        return quantity;
    }

    internal static Complaint Refused(string text, Unit declared, string subject = "") =>
        Heard.One(complaints => QuantityReader.TryRead(text, declared, Heard.Start, complaints, out _, subject));
}
