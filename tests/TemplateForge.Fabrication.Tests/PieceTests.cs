using TemplateForge.Geometry;

namespace TemplateForge.Fabrication.Tests;

public class PieceTests
{
    [Fact]
    public void The_mirror_image_exchanges_left_and_right_of_everything_that_has_a_place()
    {
        var mirrored = Pieces.Plate.Mirrored();
        Assert.Equal(new Box(new(-80, 0), new(0, 50)), mirrored.Shape.Bounds);
        Assert.Equal(new Point(-20, 25), mirrored.Datums[0].At);
        Assert.Equal(new Point(-40, 50), mirrored.Tacks[0].At);
        Assert.Equal(new Point(-80, 25), mirrored.CentreLines[0].To);
        Assert.Equal(-28, mirrored.GuideLines[0].Along.Bounds.Min.X, 1e-9);
        Assert.Equal(180, Math.Abs(mirrored.Arrows[0].Direction.Degrees), 1e-9);
        Assert.Equal(90, mirrored.Arrows[1].Direction.Degrees, 1e-9);
    }

    [Fact]
    public void Mirrored_twice_a_piece_is_where_it_was() =>
        Assert.Equal(Pieces.Plate.Shape.Bounds, Pieces.Plate.Mirrored().Mirrored().Shape.Bounds);

    [Fact]
    public void The_mirror_image_measures_the_same() =>
        Assert.Equal(Pieces.Plate.Checks[0].Distance, Pieces.Plate.Mirrored().Checks[0].Distance);

    [Theory]
    [InlineData(CheckDirection.Straight, 50)] // 3-4-5
    [InlineData(CheckDirection.Across, 30)]
    [InlineData(CheckDirection.Up, 40)]
    public void A_check_is_measured_straight_across_or_up(CheckDirection along, double distance) =>
        Assert.Equal(distance, new DistanceCheck("d", new(10, 20), new(-20, 60), along).Distance, 1e-12);
}
