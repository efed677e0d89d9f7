using TemplateForge.Testing;

namespace TemplateForge.Fabrication.Tests.Fits;

/// <summary>Limits in µm as they are printed.</summary>
public class FitTests
{
    private const double Micrometre = 0.001;

    // ISO 286-2. H7 and h6: BS 4500 data, Aeronautical Engineer's Data Book p. 227 (read); g6 over 6 mm, the same (read); F7 over 10 mm as the
    // mirror of f7 there (read); up to 3 mm, H7 and h6 in tables of steel makers (read). g6 to 6 mm and F7 to 10 mm: from memory.
    [Theory]
    [InlineData(3, 0, 10, -8, -2, -6, 0, 6, 16)]
    [InlineData(6, 0, 12, -12, -4, -8, 0, 10, 22)]
    [InlineData(10, 0, 15, -14, -5, -9, 0, 13, 28)]
    [InlineData(18, 0, 18, -17, -6, -11, 0, 16, 34)]
    [InlineData(30, 0, 21, -20, -7, -13, 0, 20, 41)]
    public void A_class_allows_what_the_standard_prints_for_its_range(
        double upTo, int lowerH7, int upperH7, int lowerG6, int upperG6, int lowerH6, int upperH6, int lowerF7, int upperF7)
    {
        foreach (var diameter in new[] { upTo, upTo - 0.9 })
        {
            Is(lowerH7, upperH7, "H7", diameter);
            Is(lowerG6, upperG6, "g6", diameter);
            Is(lowerH6, upperH6, "h6", diameter);
            Is(lowerF7, upperF7, "F7", diameter);
        }
    }

    // ISO 286-2 m6 and n6 (from memory). By ISO 286-1 (from memory) a shaft m begins at IT7 − IT6, a shaft n at 5 D^0.34, D the mean of the range.
    [Theory]
    [InlineData(3, 6, 4, 8)]
    [InlineData(6, 10, 6, 10)]
    [InlineData(10, 18, 7, 12)]
    [InlineData(18, 30, 8, 15)]
    public void Shafts_to_press_in_keep_to_the_formulas_of_the_standard(double over, double upTo, int m, int n)
    {
        Assert.True(ToleranceClass.TryLimits("H7", upTo, out var h7));
        Assert.True(ToleranceClass.TryLimits("h6", upTo, out var h6));
        var (it7, it6) = ((h7.Upper - h7.Lower) / Micrometre, (h6.Upper - h6.Lower) / Micrometre);
        Approximately.Equal(m, it7 - it6, within: 1e-9);
        Approximately.Equal(n, 5 * Math.Pow(Math.Sqrt(over * upTo), 0.34), within: 1);
        Is(m, (int)Math.Round(m + it6), "m6", upTo);
        Is(n, (int)Math.Round(n + it6), "n6", upTo);
    }

    // Data Book p. 227 (read): shaft f7 over 10 to 18 mm −16 / −34, over 18 to 30 mm −20 / −41. A hole F is a shaft f in the mirror.
    [Theory]
    [InlineData(14, -16, -34)]
    [InlineData(25, -20, -41)]
    public void Hole_F7_is_the_mirror_of_shaft_f7(double diameter, int upper, int lower) => Is(-upper, -lower, "F7", diameter);

    // Worked out from the printed limits: least hole less largest shaft, largest hole less least shaft.
    [Theory]
    [InlineData(2, 2, 18)]
    [InlineData(5, 4, 24)]
    [InlineData(8, 5, 29)]
    [InlineData(12, 6, 35)]
    [InlineData(20, 7, 41)]
    public void A_pin_slides_in_its_hole_with_this_clearance(double diameter, int least, int most)
    {
        Assert.True(Fit.TryFind("H7/g6", diameter, out var fit));
        Approximately.Equal(least * Micrometre, fit.LeastClearance, within: 1e-12);
        Approximately.Equal(most * Micrometre, fit.MostClearance, within: 1e-12);
    }

    // "Over … up to and including": a size on the border belongs to the range below.
    [Theory]
    [InlineData(6, 12)]
    [InlineData(6.001, 15)]
    [InlineData(18, 18)]
    [InlineData(18.001, 21)]
    public void A_size_on_the_border_of_two_ranges_belongs_to_the_lower(double diameter, int upper) => Is(0, upper, "H7", diameter);

    // ISO 286-1 (from memory): tolerance unit i = 0.45 ∛D + 0.001 D in µm with D the geometric mean of the range, IT6 = 10 i, IT7 = 16 i;
    // a hole F begins at 5.5 D^0.41, a shaft g at −2.5 D^0.34. The standard rounds, by less than a µm here.
    [Theory]
    [InlineData(3, 6)]
    [InlineData(6, 10)]
    [InlineData(10, 18)]
    [InlineData(18, 30)]
    public void The_figures_keep_to_the_formulas_of_the_standard(double over, double upTo)
    {
        var mean = Math.Sqrt(over * upTo);
        var unit = 0.45 * Math.Cbrt(mean) + 0.001 * mean;
        foreach (var (name, grade, nearest) in new[]
        {
            ("H7", 16, 0), ("F7", 16, 5.5 * Math.Pow(mean, 0.41)), ("h6", 10, 0), ("g6", 10, -2.5 * Math.Pow(mean, 0.34)),
        })
        {
            Assert.True(ToleranceClass.TryLimits(name, upTo, out var limits));
            Approximately.Equal(grade * unit, (limits.Upper - limits.Lower) / Micrometre, within: 1);
            Approximately.Equal(nearest, (char.IsUpper(name[0]) ? limits.Lower : limits.Upper) / Micrometre, within: 1);
        }
    }

    [Theory]
    [InlineData("H7", 30.001)]
    [InlineData("H7", 0)]
    [InlineData("H7", double.NaN)]
    [InlineData("H8", 10)]
    [InlineData("h7", 10)]
    public void What_the_table_does_not_have_is_not_made_up(string name, double diameter) =>
        Assert.False(ToleranceClass.TryLimits(name, diameter, out _));

    [Theory]
    [InlineData("g6/H7")]
    [InlineData("H7")]
    [InlineData("H7/g6/h6")]
    [InlineData("H7/")]
    [InlineData("/")]
    [InlineData("")]
    public void A_fit_is_a_hole_and_a_shaft(string name) => Assert.False(Fit.TryFind(name, 10, out _));

    private static void Is(int lower, int upper, string name, double diameter)
    {
        Assert.True(ToleranceClass.TryLimits(name, diameter, out var limits));
        Approximately.Equal(lower * Micrometre, limits.Lower, within: 1e-12);
        Approximately.Equal(upper * Micrometre, limits.Upper, within: 1e-12);
    }
}
