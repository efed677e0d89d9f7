using TemplateForge.Testing;

namespace TemplateForge.Profiles.Tests;

public class FlangedLighteningHolesTests
{
    private static readonly Profile Holes = TheLibrary.Profile("flanged-lightening-holes");

    // General mechanics. The outer faces would meet on the clear diameter and 2 leg cos A; the leg, rise / sin A, is cut shorter by
    // 2 (R + T) tan(A/2) − A (R + K T). R 2, T 1, DC01's K 0.44.
    [Theory, InlineData(45), InlineData(60), InlineData(90)]
    public void A_hole_is_cut_smaller_by_its_flange_laid_flat(double degrees)
    {
        var a = degrees * Math.PI / 180;
        var leg = 6 / Math.Sin(a);
        var cut = 40 + 2 * leg * Math.Cos(a) - 2 * (leg - (2 * 3 * Math.Tan(a / 2) - a * 2.44));
        var strip = Holes.Make($"flare={degrees}", "clear=40", "rise=6").Piece("strip").Shape;
        var holes = strip.Contours.Where(c => !c.IsCounterClockwise).ToList();
        Assert.Equal(5, holes.Count);
        foreach (var hole in holes) Approximately.Equal(cut, hole.Bounds.Width, within: 1e-9);
    }

    [Theory, InlineData("2"), InlineData("12")]
    public void Every_hole_has_its_bend(string count)
    {
        var strip = Holes.Make($"holes={count}").Piece("strip");
        Assert.Equal(count, $"{strip.Bends.Length}");
    }

    [Fact]
    public void Holes_too_near_each_other_are_refused_with_the_pitch_that_is_enough() =>
        Assert.Contains("Raise hole_pitch", Assert.Single(Holes.Refuse("hole_pitch=60")).Remedy, StringComparison.Ordinal);
}
