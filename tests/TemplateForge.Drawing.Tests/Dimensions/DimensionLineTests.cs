using TemplateForge.Geometry;

namespace TemplateForge.Drawing.Tests.Dimensions;

public class DimensionLineTests
{
    private static Lettering Text(IEnumerable<Mark> marks) => Assert.Single(marks.OfType<Lettering>());

    private static List<TemplateForge.Geometry.Path> Lines(IEnumerable<Mark> marks) => [.. marks.OfType<OpenStroke>().Select(s => s.Path)];

    [Fact]
    public void A_level_dimension_has_extension_lines_off_the_points_a_line_between_and_its_text_above()
    {
        var marks = DimensionLine.Of(new(10, 20), new(110, 35), new(1, 0), offset: 30, "100", textHeight: 3.5);
        var lines = Lines(marks);
        Assert.Contains(lines, l => l.Start == new Point(10, 21) && l.End == new Point(10, 52));
        Assert.Contains(lines, l => l.Start == new Point(110, 36) && l.End == new Point(110, 52));
        Assert.Contains(lines, l => l.Start == new Point(10, 50) && l.End == new Point(110, 50));
        var text = Text(marks);
        Assert.Equal((60, Anchor.BaseMiddle, 0), (text.At.X, text.Anchor, text.Turn.Radians));
        Assert.InRange(text.At.Y, 50.5, 52);
    }

    [Theory]
    [InlineData(1, 0, 0)]
    [InlineData(-1, 0, 0)]
    [InlineData(0, 1, 90)]
    [InlineData(0, -1, 90)]
    [InlineData(1, 1, 45)]
    [InlineData(-1, 1, -45)]
    [InlineData(1, -1, -45)]
    [InlineData(-3, -3, 45)]
    public void Text_is_read_from_the_bottom_or_the_right_whichever_way_is_measured(double x, double y, double degrees)
    {
        var along = new Vector(x, y);
        var text = Text(DimensionLine.Of(Point.Origin, Point.Origin + along.Unit * 80, along, offset: 12, "80", 3.5));
        Assert.Equal(degrees, text.Turn.Degrees, 1e-9);
    }

    [Fact]
    public void Points_in_either_order_give_the_same_line_in_the_same_place()
    {
        var marks = DimensionLine.Of(new(0, 0), new(60, 10), new(1, 0), 25, "60", 3.5);
        var swapped = DimensionLine.Of(new(60, 10), new(0, 0), new(1, 0), 15, "60", 3.5);
        Assert.Equal(Text(marks), Text(swapped));
        Assert.Equal(0, Box.Around(marks.Select(m => m.Bounds)).Min.DistanceTo(Box.Around(swapped.Select(m => m.Bounds)).Min), 1e-9);
    }

    [Fact]
    public void Only_the_distance_along_the_direction_is_measured()
    {
        var lines = Lines(DimensionLine.Of(new(0, 0), new(30, 40), new(0, 1), -20, "40", 3.5));
        // Square to the direction, 20 to the right of the first point.
        Assert.Contains(lines, l => l.Start == new Point(20, 0) && l.End == new Point(20, 40));
    }

    [Fact]
    public void Arrows_are_three_millimetres_and_point_outwards_to_the_extension_lines()
    {
        var arrows = Lines(DimensionLine.Of(new(0, 0), new(100, 0), new(1, 0), 10, "100", 3.5)).Where(l => l.Segments.Length == 2).ToList();
        Assert.Equal([new(0, 10), new(100, 10)], arrows.Select(a => a.Segments[0].End));
        Assert.All(arrows.SelectMany(a => a.Segments), s => Assert.Equal(3, s.Length, 1e-9));
        Assert.True(arrows[0].Start.X > 0 && arrows[1].Start.X < 100);
    }

    [Fact]
    public void Where_the_room_is_too_small_arrows_and_text_go_outside_and_nothing_overlaps()
    {
        var marks = DimensionLine.Of(new(0, 0), new(2, 0), new(1, 0), 10, "2.00 mm", 3.5);
        var arrows = Lines(marks).Where(l => l.Segments.Length == 2).ToList();
        Assert.True(arrows[0].Start.X < 0 && arrows[1].Start.X > 2);
        Assert.True(Text(marks).Bounds.Min.X > 2 + 3);
        // The line carries the text.
        Assert.Contains(Lines(marks), l => l.Segments.Length == 1 && l.Start.X < -3 && l.End.X >= Text(marks).Bounds.Max.X - 1e-9);
    }

    [Fact]
    public void A_point_on_the_dimension_line_needs_no_extension_line()
    {
        var marks = DimensionLine.Of(new(0, 0), new(50, 0), new(1, 0), 0, "50", 3.5);
        Assert.Equal(3, Lines(marks).Count);
    }

    [Fact]
    public void Points_that_do_not_differ_along_the_direction_are_refused() =>
        Assert.Throws<ArgumentException>(() => DimensionLine.Of(new(0, 0), new(0, 50), new(1, 0), 10, "0", 3.5));
}
