namespace TemplateForge.Notation.Tests;

public class QuantityTests
{
    public static TheoryData<Quantity, string> Printed => new()
    {
        { Quantity.Length(190), "190 mm" },
        { Quantity.Length(1.4), "1.4 mm" },
        { Quantity.Length(-1.4), "-1.4 mm" },
        { Quantity.Angle(8), "8°" },
        { Quantity.Area(12), "12 mm²" },
        { Quantity.Number(0.5), "0.5" },
        { Quantity.Length(1.23456), "1.235 mm" },
        { Quantity.Length(-0.0), "0 mm" },
        { Quantity.Length(-0.0004), "0 mm" },
        { Quantity.Length(123456789.125), "123456789.125 mm" },
        { new(2, new(3, 0)), "2 mm³" },
        { new(2, new(-1, 0)), "2 mm^-1" },
        { new(2, new(1, 1)), "2 mm·°" },
    };

    [Theory, MemberData(nameof(Printed))]
    public void A_quantity_is_printed_as_a_person_writes_it(Quantity quantity, string text) => Assert.Equal(text, quantity.ToString());

    [Fact]
    public void A_length_times_a_length_is_an_area() =>
        Assert.Equal(Quantity.Area(6), Quantity.Length(2) * Quantity.Length(3));

    [Fact]
    public void An_area_divided_by_a_length_is_a_length() =>
        Assert.Equal(Quantity.Length(2), Quantity.Area(6) / Quantity.Length(3));

    [Fact]
    public void Like_quantities_are_added_and_taken_away()
    {
        Assert.Equal(Quantity.Length(5), Quantity.Length(2) + Quantity.Length(3));
        Assert.Equal(Quantity.Angle(-1), Quantity.Angle(2) - Quantity.Angle(3));
        Assert.Equal(Quantity.Angle(-2), -Quantity.Angle(2));
    }

    [Fact]
    public void Unlike_quantities_are_not_added() =>
        Assert.Throws<ArgumentException>(() => Quantity.Length(1) + Quantity.Angle(1));

    [Theory]
    [InlineData(0, 0, "a plain number")]
    [InlineData(1, 0, "a length")]
    [InlineData(0, 1, "an angle")]
    [InlineData(2, 0, "an area")]
    [InlineData(3, 0, "a volume")]
    [InlineData(1, -1, "a quantity in mm·°^-1")]
    public void A_dimension_has_a_name_for_a_sentence(int length, int angle, string name) =>
        Assert.Equal(name, new Dimension(length, angle).Name);

    // The inch is 25.4 mm by the agreement of 1959; the rest follows from it or from the definition of the unit.
    [Theory]
    [InlineData("mm", 1)]
    [InlineData("cm", 10)]
    [InlineData("m", 1000)]
    [InlineData("in", 25.4)]
    [InlineData("inch", 25.4)]
    [InlineData("\"", 25.4)]
    [InlineData("ft", 304.8)]
    [InlineData("thou", 0.0254)]
    [InlineData("deg", 1)]
    [InlineData("°", 1)]
    [InlineData("turn", 360)]
    [InlineData("rad", 57.29577951308232)]
    [InlineData("MM", 1)]
    public void A_unit_is_found_by_the_way_it_is_written(string text, double factor)
    {
        Assert.True(Unit.TryFind(text, out var unit));
        Assert.Equal(factor, unit.Factor, 1e-12);
    }

    [Fact]
    public void What_is_no_unit_is_not_found() => Assert.False(Unit.TryFind("furlong", out _));
}
