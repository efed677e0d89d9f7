using TemplateForge.Geometry;
using TemplateForge.Testing;

namespace TemplateForge.Fabrication.Tests;

/// <summary>Tubes and cones of the textbooks, which know no wall: printed figures, or those worked out from a printed problem.</summary>
public class PublishedWrapsTests
{
    private static readonly WrapMaterial NoPaper = new(IsRolled: false, Thickness: 0);

    private static Angle Deg(double degrees) => Angle.FromDegrees(degrees);

    private static TubeWrap Bare(double diameter, double length, TubeEnd upper) => new(diameter, 0, length, new SquareCut(), upper, NoPaper);

    private static double[] Heights(TubeWrap tube, double step) => [.. Enumerable.Range(0, (int)(180 / step) + 1).Select(i => tube.UpperAt(Deg(i * step)))];

    // Engineering Drawing, problem 7.9: cylinder of diameter 40, 50 high, cut at 45° through the extreme point of the top. The problem is the
    // book's, the heights are worked out here; three decimals, so 0.0005.
    [Fact]
    public void A_cylinder_cut_at_45_degrees_through_its_top_has_the_heights_of_the_textbook_problem() =>
        All([50, 47.321, 40, 30, 20, 12.679, 10], Heights(Bare(40, 30, new Mitre(Deg(45), Deg(180))), 30));

    // y = R tan m (1 − cos φ) from the short side, m = E / 2 (N − 1); worked out from the formula that any book has.
    [Theory]
    [InlineData(2, new[] { 0, 6.699, 25, 50, 75, 93.301, 100 })]
    [InlineData(4, new[] { 0, 1.795, 6.699, 13.397, 20.096, 25, 26.795 })]
    public void Elbows_of_100_through_90_degrees_rise_from_their_short_side_as_the_formula_has_it(int pieces, double[] ordinates)
    {
        var heights = Heights(Bare(100, 200, new Mitre(Deg(90.0 / (2 * (pieces - 1))), Angle.Zero)), 30);
        All(ordinates, [.. heights.Select(h => h - heights[0])]);
    }

    // z = (√(R² − r² sin² φ) + r cos φ cos ψ) / sin ψ from the middle of the main tube; the construction is in Atkins, Practical Sheet and
    // Plate Metal Work, chapter III; the figures are worked out.
    [Theory]
    [InlineData(50, 25, 90, new[] { 50, 48.412, 45.069, 43.301, 45.069, 48.412, 50 })]
    [InlineData(50, 25, 45, new[] { 95.711, 90.116, 76.238, 61.237, 51.238, 46.815, 45.711 })]
    [InlineData(50, 50, 60, new[] { 86.603, 75, 43.301, 0, 14.434, 25, 28.868 })]
    public void A_branch_is_shorter_than_to_the_middle_of_the_main_tube_by_the_ordinates_of_the_construction(double main, double branch, double angle, double[] ordinates) =>
        All(ordinates, [.. Heights(Bare(2 * branch, 300, new FishMouth(main, Deg(angle), 0, Angle.Zero)), 30).Select(h => 300 - h)]);

    // 1 − |cos φ| above the low point, in radii: four decimals.
    [Fact]
    public void An_equal_tee_falls_and_rises_by_its_radius()
    {
        var heights = Heights(Bare(2, 10, new FishMouth(1, Deg(90), 0, Angle.Zero)), 30);
        All([0, 0.1340, 0.5, 1, 0.5, 0.1340, 0], [.. heights.Select(h => h - heights[0])]);
    }

    // Equal tubes at any angle meet in two plane ellipses (Atkins, oblique tee): each half is a plain mitre, of ψ / 2 and of 90° − ψ / 2.
    [Theory]
    [InlineData(30), InlineData(60), InlineData(75), InlineData(90), InlineData(120)]
    public void Equal_tubes_meet_in_two_mitres(double angle)
    {
        var tube = Bare(60, 400, new FishMouth(30, Deg(angle), 0, Angle.Zero));
        for (var phi = 0.0; phi < 360; phi += 7.5)
        {
            var acute = 30 * Math.Cos(Deg(phi).Radians) / Math.Tan(Deg(angle / 2).Radians);
            var obtuse = -30 * Math.Cos(Deg(phi).Radians) * Math.Tan(Deg(angle / 2).Radians);
            Approximately.Equal(400 - Math.Max(acute, obtuse), tube.UpperAt(Deg(phi)), within: 1e-6);
        }
    }

    // Slant √(r² + h²), sector 360° r / slant. Printed: 6 and 8 give slant 10 and a curved area of 60 π; a 90° point 254.6°; Longfield, Sheet
    // Metal Drafting, 1921, p. 82: base 5 in, slant 12 in, area = girth × slant / 2 with a girth of 15.7080 in.
    [Theory]
    [InlineData(12, 8, 10, 216, 60 * Math.PI)]
    [InlineData(100, 50, 70.711, 254.558, 11107.207)]
    [InlineData(4, 7, 7.2801, 98.900, 45.742)]
    [InlineData(48, 55, 60.008, 143.98, 4524.50)]
    public void A_right_cone_is_a_sector(double diameter, double height, double slant, double sector, double area)
    {
        Assert.True(new ConeWrap(diameter, 0, height, 0, NoPaper).TryLayFlat(out var pattern, out _));
        Approximately.Equal(slant, pattern.Generators[0].Along.Length, within: 0.0005);
        Approximately.Equal(area, pattern.Shape.Area, within: area * 1e-5);
        Approximately.Equal(sector, 2 * pattern.Shape.Area / (slant * slant) * 180 / Math.PI, within: 0.01);
        Approximately.Equal(diameter, pattern.NeutralDiameter, within: 1e-9);
    }

    [Fact]
    public void Longfield_s_cone_of_5_in_and_slant_12_has_his_area()
    {
        Assert.True(new ConeWrap(5, 0, Math.Sqrt(144 - 6.25), 0, NoPaper).TryLayFlat(out var pattern, out _));
        Approximately.Equal(94.248, pattern.Shape.Area, within: 0.0005);
    }

    // Funnel of Longfield, p. 128: ends 6 and 3 in, 3 in high, slant √(1.5² + 3²). And an old mensuration book's frustum: 5 ft 4 in and 8 ft 3 in,
    // slant 10 ft 6 in: sum of diameters × slant × 11 / 7 is 224 1/8 ft² with its 22 / 7; π for that here.
    [Theory]
    [InlineData(6, 3, 3, 3.3541, 47.417)]
    [InlineData(8.25, 5.3333333333333, 10.398275694, 10.5, 224.125 * Math.PI * 7 / 22)]
    public void A_frustum_has_the_slant_and_the_area_of_the_books(double large, double small, double height, double slant, double area)
    {
        Assert.True(new ConeWrap(large, small, height, 0, NoPaper).TryLayFlat(out var pattern, out _));
        Approximately.Equal(slant, pattern.Generators[0].Along.Length, within: 0.0001);
        Approximately.Equal(area, pattern.Shape.Area, within: 0.001);
    }

    // Width of a rolled shell = π (outside diameter − thickness): Cyclopedia of Drawing, 1906.
    [Fact]
    public void A_rolled_tube_is_as_wide_as_its_mean_diameter_goes_round()
    {
        Assert.True(new TubeWrap(100, 2, 80, new SquareCut(), new SquareCut(), new(IsRolled: true, 2)).TryLayFlat(out var pattern, out _));
        Approximately.Equal(Math.PI * 98, pattern.Shape.Bounds.Width, within: 1e-6);
    }

    // Common practice, no source: the middle of the paper lies half its thickness outside of the tube.
    [Fact]
    public void Paper_goes_round_the_outside_and_half_of_itself()
    {
        Assert.True(new TubeWrap(100, 2, 80, new SquareCut(), new SquareCut(), new(IsRolled: false, 0.1)) { Lap = 15 }.TryLayFlat(out var pattern, out _));
        Approximately.Equal(Math.PI * 100.1 + 15, pattern.Shape.Bounds.Width, within: 1e-6);
    }

    private static void All(double[] expected, double[] actual)
    {
        Assert.Equal(expected.Length, actual.Length);
        for (var i = 0; i < expected.Length; i++) Approximately.Equal(expected[i], actual[i], within: 0.00051);
    }
}
