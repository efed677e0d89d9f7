using TemplateForge.Testing;

namespace TemplateForge.Profiles.Tests;

public class JoggledPatchTests
{
    private static readonly Profile Patch = TheLibrary.Profile("joggled-patch");

    // General mechanics. Step: depth 1.1 = 2 (R + T/2)(1 − cos A) + s sin A, run 2 (R + T/2) sin A + s cos A, R 1, T 1, A 45°, DC04's K 0.44.
    [Fact]
    public void The_blank_grows_by_the_lap_and_the_flat_of_the_joggle_less_what_the_step_takes()
    {
        const double a = Math.PI / 4;
        var straight = (1.1 - 2 * 1.5 * (1 - Math.Cos(a))) / Math.Sin(a);
        var run = 2 * 1.5 * Math.Sin(a) + straight * Math.Cos(a);
        var flat = 2 * a * 1.44 + straight;
        // From the opening inwards to where the step begins, then outwards on the flat to the edge of the rim.
        var wanted = 200 - 2 * (run + 0.5) + 2 * (flat + 18 + 0.5);
        Approximately.Equal(wanted, Patch.Make().Piece("patch").Shape.Bounds.Width, within: 1e-9);
    }

    [Theory, InlineData("outside", "panel"), InlineData("inside", "patch")]
    public void Plug_holes_are_in_the_sheet_that_is_welded_from(string from, string piece)
    {
        var made = Patch.Make($"welded_from={from}");
        foreach (var each in new[] { "panel", "patch" })
        {
            var holes = made.Piece(each).Shape.Contours.Count(c => !c.IsCounterClockwise && c.Bounds.Width < 6);
            Assert.Equal(each == piece ? made.Piece(each).Tacks.Length : 0, holes);
        }
    }

    [Theory, InlineData("plug_pitch=20"), InlineData("plug_pitch=37"), InlineData("opening_width=333")]
    public void As_many_plug_welds_are_shown_on_the_rim_as_on_the_panel(string given)
    {
        var made = Patch.Make(given);
        Assert.Equal(made.Piece("panel").Tacks.Length, made.Piece("patch").Tacks.Length);
    }

    [Fact]
    public void A_lap_without_room_for_its_plugs_is_refused() =>
        Assert.Contains("no room for plug welds", Assert.Single(Patch.Refuse("plug_hole=8")).Problem, StringComparison.Ordinal);
}
