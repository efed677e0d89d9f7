using TemplateForge.Testing;

namespace TemplateForge.Profiles.Tests;

public class FlangedWindowTests
{
    private static readonly Profile Window = TheLibrary.Profile("flanged-window");

    // General mechanics: a bend of 90° takes 2 (R + T) − π/2 (R + K T) off two legs over the outside. R 2, T 1, DC01's K 0.44.
    private const double Deduction = 2 * (2 + 1) - Math.PI / 2 * (2 + 0.44);

    [Fact]
    public void It_is_cut_smaller_by_the_flange_less_its_deduction_all_round()
    {
        var hole = Window.Make("flange=10").Piece("panel").Shape.Contours.Single(c => !c.IsCounterClockwise).Bounds;
        Approximately.Equal(220 - 2 * (10 - Deduction), hole.Width, within: 1e-9);
        Approximately.Equal(140 - 2 * (10 - Deduction), hole.Height, within: 1e-9);
    }

    // Radial model, R / (R − h) − 1: the cut edge, R 45 less 10 − deduction, ends on the middle of the sheet, R 45 and half of 1.
    [Fact]
    public void Its_note_says_how_far_the_corners_stretch()
    {
        var share = 45.5 / (45 - (10 - Deduction)) - 1;
        Assert.Contains(
            Window.Make().Piece("panel").Notes,
            n => n.Contains($"stretches by {Math.Round(100 * share)} %", StringComparison.Ordinal));
    }

    [Fact]
    public void Corners_that_the_metal_does_not_take_are_warned_of_until_they_are_relieved()
    {
        Assert.Contains(Window.Make("corner=25").Piece("panel").Warnings, w => w.Rule == "edge stretched too far");
        Assert.DoesNotContain(Window.Make("corner=25", "relief_cuts=5").Piece("panel").Warnings, w => w.Rule == "edge stretched too far");
    }

    [Fact]
    public void A_flange_that_leaves_no_corner_to_cut_is_refused() =>
        Assert.Contains(Window.Refuse("corner=10", "flange=12"), c => c.Problem.Length > 0);

    [Fact]
    public void The_formers_hole_is_a_thickness_larger_all_round() =>
        Approximately.Equal(222, Window.Make().Piece("former").Shape.Contours.Single(c => !c.IsCounterClockwise).Bounds.Width, within: 1e-9);
}
