using TemplateForge.Testing;

namespace TemplateForge.Profiles.Tests;

public class EdgeLipStripsTests
{
    private static readonly Profile Lip = TheLibrary.Profile("edge-lip-strips");

    // General mechanics: a bend of 90° takes 2 (R + T) − π/2 (R + K T) off two legs over the outside. R 1.5, T 1.2, DC01's K 0.44.
    private const double Deduction = 2 * (1.5 + 1.2) - Math.PI / 2 * (1.5 + 0.44 * 1.2);

    // A mitred foot, then the lip as long as is clear inside. MIG/MAG leaves 1.2 in 1.2 sheet, as the shop's table has it.
    [Theory, InlineData("along", 320), InlineData("up", 200)]
    public void A_strip_is_a_mitred_foot_and_a_lip_as_long_as_the_clear_opening(string strip, double opening)
    {
        var (outer, clear) = (opening - 2 * 1.2, opening - 2 * 1.2 - 2 * 16);
        var shape = Lip.Make("corner=0").Piece(strip).Shape;
        // Beside the bend the mitre is cut free down to the tangent line: half a square of R + T at each end.
        var freed = (1.5 + 1.2) * (1.5 + 1.2);
        Approximately.Equal((outer + clear) / 2 * 16 - freed + clear * (18 - Deduction), shape.Area, within: 1e-6);
        Approximately.Equal(outer, shape.Bounds.Width, within: 1e-9);
    }

    [Fact]
    public void A_wanted_clear_size_comes_out_clear_inside_the_lips() =>
        Approximately.Equal(320 + 2 * (16 + 1.2), Lip.Make("sized_by=clear").Piece("opening").Shape.Bounds.Width, within: 1e-9);

    [Fact]
    public void Two_of_each_strip_are_made() =>
        Assert.Equal((2, 2), (Lip.Make().Piece("along").Quantity, Lip.Make().Piece("up").Quantity));

    [Fact]
    public void A_weld_close_to_the_bend_is_refused() =>
        Assert.Contains("10 mm clear", Assert.Single(Lip.Refuse("foot_width=12")).Problem, StringComparison.Ordinal);
}
