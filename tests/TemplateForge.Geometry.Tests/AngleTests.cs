using TemplateForge.Testing;

namespace TemplateForge.Geometry.Tests;

public class AngleTests
{
    [Theory]
    [InlineData(0, 0, 1)]
    [InlineData(90, 1, 0)]
    [InlineData(180, 0, -1)]
    [InlineData(270, -1, 0)]
    [InlineData(360, 0, 1)]
    [InlineData(-90, -1, 0)]
    [InlineData(-180, 0, -1)]
    [InlineData(1170, 1, 0)]
    [InlineData(-99990, 1, 0)]
    public void Sine_and_cosine_are_exact_at_whole_quarter_turns(double degrees, double sine, double cosine)
    {
        Assert.Equal(sine, Angle.FromDegrees(degrees).Sin);
        Assert.Equal(cosine, Angle.FromDegrees(degrees).Cos);
    }

    [Fact]
    public void Angles_that_add_up_to_a_quarter_turn_are_one() =>
        Assert.Equal(0, (Angle.FromDegrees(30) + Angle.FromDegrees(60)).Cos);

    [Fact]
    public void An_angle_so_small_that_only_its_sine_tells_it_is_not_taken_for_none() =>
        Approximately.Equal(1e-17, Angle.FromRadians(1e-17).Sin, within: 1e-30);

    [Fact]
    public void Degrees_and_radians_are_the_same_angle()
    {
        Approximately.Equal(Math.PI / 6, Angle.FromDegrees(30).Radians, within: 1e-16);
        Approximately.Equal(57.29577951308232, Angle.FromRadians(1).Degrees, within: 1e-13);
        Assert.True(Angle.FromDegrees(20) < Angle.FromDegrees(30));
        Assert.Equal(Angle.HalfTurn, Angle.QuarterTurn * 2);
    }
}
