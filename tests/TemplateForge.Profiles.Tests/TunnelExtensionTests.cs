using TemplateForge.Fabrication;
using TemplateForge.Testing;

namespace TemplateForge.Profiles.Tests;

public class TunnelExtensionTests
{
    private static readonly Profile Tunnel = TheLibrary.Profile("tunnel-extension");

    private static readonly string[] Straight = ["new_width=260", "new_height=170", "new_radius=60", "sideways=0", "front_lap=0", "rear_lap=0"];

    // The same section at both ends: a folded sheet. Two flanges 22 − 5, two walls 170 − 60 − 5, a roof 260 − 120; round the middle of 1.2 sheet
    // two quarters of radius 60 − 0.6 and two of 5 − 0.6, whose flanges turn the other way, so that outside is inside there: 5 + 0.6.
    [Fact]
    public void With_one_section_throughout_it_is_as_wide_as_the_section_is_long()
    {
        var shape = Tunnel.Make(Straight).Piece("extension").Shape;
        var girth = 2 * (22 - 5) + 2 * (170 - 60 - 5) + 140 + Math.PI * (60 - 0.6) + Math.PI * (5 + 0.6);
        Approximately.Equal(girth, shape.Bounds.Width, within: 0.02);
        Approximately.Equal(280, shape.Bounds.Height, within: 0.01);
    }

    [Fact]
    public void Its_upper_corners_are_pressed_in_and_its_flanges_out_a_right_angle_each()
    {
        var turns = Tunnel.Make(Straight).Piece("extension").BendLines.GroupBy(b => b.Number).Select(g => (Turn: g.Sum(b => b.Bend.Degrees), g.First().Way)).ToList();
        Assert.Equal([BendWay.Down, BendWay.Up, BendWay.Up, BendWay.Down], turns.Select(t => t.Way));
        Assert.All(turns, t => Approximately.Equal(90, t.Turn, within: 1));
    }

    [Fact]
    public void Grown_and_to_the_side_it_still_unrolls() => Assert.Empty(Tunnel.Make("sideways=60", "floor_rise=20").Piece("extension").Warnings);

    [Fact]
    public void One_that_would_grow_too_fast_is_refused() =>
        Assert.Contains("lean", Tunnel.Refuse("length=100", "front_lap=10", "rear_lap=10", "new_height=300", "new_radius=75")[0].Problem, StringComparison.Ordinal);
}
