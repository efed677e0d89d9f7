using TemplateForge.Testing;

namespace TemplateForge.Geometry.Tests.Measuring;

public class NearestPointsTests
{
    private static readonly Region Disc = Given.Region(Outline.Circle(new(0, 0), 10));

    [Fact]
    public void Two_discs_are_nearest_on_the_line_of_their_centres()
    {
        var (on, onOther) = Disc.NearestPoints(Given.Region(Outline.Circle(new(30, 40), 5)));
        Approximately.Equal(0, on.DistanceTo(new(6, 8)), within: Tolerance.Length);
        Approximately.Equal(0, onOther.DistanceTo(new(27, 36)), within: Tolerance.Length);
    }

    [Fact]
    public void A_disc_and_a_corner_are_nearest_at_the_corner()
    {
        var (on, onOther) = Disc.NearestPoints(Given.Region(Outline.Rectangle(new(new(30, 40), new(60, 70)))));
        Approximately.Equal(0, on.DistanceTo(new(6, 8)), within: Tolerance.Length);
        Assert.Equal(new Point(30, 40), onOther);
    }

    [Fact]
    public void Regions_that_overlap_share_one_point_of_both()
    {
        var other = Given.Region(Outline.Circle(new(12, 0), 10));
        var (on, onOther) = Disc.NearestPoints(other);
        Assert.Equal(on, onOther);
        Approximately.Equal(0, Disc.DistanceTo(on) + other.DistanceTo(on), within: Tolerance.Length);
    }

    [Fact]
    public void All_corners_are_rounded_by_one_word()
    {
        var rounding = Given.Region(Outline.Rectangle(new(new(0, 0), new(40, 20)))).RoundedCorners(5);
        Assert.Empty(rounding.Unfit);
        Approximately.Equal(800 - (4 - Math.PI) * 25, rounding.Region.Area, within: 1e-9);
    }
}
