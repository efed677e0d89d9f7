using System.Globalization;
using System.Text;
using System.Text.RegularExpressions;
using CsCheck;
using Path = TemplateForge.Geometry.Path;

namespace TemplateForge.Drawing.Tests.Svg;

/// <summary>Lengths as they stand in DXF and SVG, held against the runtime's own reading of numbers.</summary>
public sealed partial class NumbersInFilesTests
{
    [Fact]
    public void A_length_is_written_to_half_a_unit_of_its_eighth_decimal() =>
        // The product with a power of ten is rounded to a double: a last place of the length more.
        Gen.Double[-2000, 2000].Sample(
            value => Assert.Equal(value, double.Parse(Written(value), NumberStyles.Float, CultureInfo.InvariantCulture), 0.5e-8 + Math.BitIncrement(2000.0) - 2000), iter: 1000);

    [Theory]
    [InlineData(0.0, "0")]
    [InlineData(-1e-9, "0")]
    [InlineData(1.5, "1.5")]
    [InlineData(-12.0, "-12")]
    [InlineData(0.05, "0.05")]
    [InlineData(100.00000001, "100.00000001")]
    [InlineData(99.999999999, "100")]
    [InlineData(-0.00000002, "-0.00000002")]
    [InlineData(1e7, "10000000")]
    [InlineData(12345678.25, "12345678.25")]
    public void No_zero_stands_at_the_end_and_no_sign_before_nothing(double value, string wanted) => Assert.Equal(wanted, Written(value));

    /// <summary>The x of the end of a line in a file.</summary>
    private static string Written(double x) =>
        EndOfLine.Match(Encoding.UTF8.GetString(SvgWriter.Write(Sketch.Of(new OpenStroke(Path.Line(new(0, 1), new(x, -1)))), "Line", margin: 10))).Groups["x"].Value;

    [GeneratedRegex("L(?<x>\\S+) 1\"", RegexOptions.ExplicitCapture | RegexOptions.CultureInvariant)]
    private static partial Regex EndOfLine { get; }
}
