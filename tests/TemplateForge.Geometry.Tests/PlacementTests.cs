using TemplateForge.Testing;

namespace TemplateForge.Geometry.Tests;

public class PlacementTests
{
    [Fact]
    public void Turning_by_a_quarter_about_a_point_keeps_the_point_and_takes_right_to_up()
    {
        var turn = Placement.Turned(Angle.QuarterTurn, new(10, 20));
        Assert.Equal(new Point(10, 20), turn.Of(new Point(10, 20)));
        Assert.Equal(new Point(10, 25), turn.Of(new Point(15, 20)));
    }

    [Fact]
    public void A_mirror_keeps_its_line_and_takes_each_side_to_the_other()
    {
        var mirror = Placement.Mirrored(new(10, 0), Angle.QuarterTurn);
        Approximately.Equal(new Point(10, 7), mirror.Of(new Point(10, 7)), within: 1e-14);
        Approximately.Equal(new Point(6, 7), mirror.Of(new Point(14, 7)), within: 1e-14);
        Assert.True(mirror.Mirrors);
        Assert.False(mirror.Then(mirror).Mirrors);
    }

    [Fact]
    public void First_one_and_then_another_is_what_the_two_do_in_turn()
    {
        var all = Symmetries.Placements.Select(p => p.By).Append(Placement.Scaled(2.5, new(3, 1))).ToArray();
        var p = new Point(11, -4);
        foreach (var first in all)
        {
            foreach (var next in all)
                Approximately.Equal(next.Of(first.Of(p)), first.Then(next).Of(p), within: 1e-9);
        }
    }

    [Fact]
    public void Scaling_keeps_its_centre_and_multiplies_lengths()
    {
        var twice = Placement.Scaled(2, new(5, 5));
        Assert.Equal(new Point(5, 5), twice.Of(new Point(5, 5)));
        Assert.Equal(new Point(7, 5), twice.Of(new Point(6, 5)));
        Assert.Equal(2, twice.Scale);
        Assert.Throws<ArgumentOutOfRangeException>(() => Placement.Scaled(0, Point.Origin));
        Assert.Throws<ArgumentOutOfRangeException>(() => Placement.Scaled(double.NaN, Point.Origin));
    }
}
