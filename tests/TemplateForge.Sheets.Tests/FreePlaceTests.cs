using TemplateForge.Drawing;
using TemplateForge.Geometry;
using TemplateForge.Testing;

namespace TemplateForge.Sheets.Tests;

public class FreePlaceTests
{
    private static readonly Box Area = new(new(0, 0), new(100, 60));

    [Fact]
    public void On_an_empty_drawing_a_place_is_where_it_is_wanted()
    {
        Assert.True(new FreePlace(Area, 1).TryFind(10, 4, new(50, 30), Area, out var place));
        Approximately.Equal(new Point(50, 30), place.Centre, within: 1);
        Assert.Equal(10, place.Width, 1e-9);
    }

    [Fact]
    public void A_place_moves_just_clear_of_a_line_and_its_clearance()
    {
        var free = new FreePlace(Area, 1);
        free.Take([new OpenStroke(TemplateForge.Geometry.Path.Line(new(0, 30), new(100, 30)))], clearance: 2);
        Assert.True(free.TryFind(10, 4, new(50, 31), Area, out var place));
        // At least the clearance; at most two cells more, because cells are taken whole.
        Assert.InRange(place.Min.Y - 30, 2, 4.5);
    }

    [Fact]
    public void The_nearest_of_all_free_places_is_found()
    {
        var free = new FreePlace(Area, 1);
        free.Take(new Box(new(0, 10), new(80, 50)));
        Assert.True(free.TryFind(6, 6, new(60, 30), Area, out var place));
        // To the right edge of what is taken it is 20 and half the place, up or down more.
        Approximately.Equal(new Point(84.5, 30), place.Centre, within: 1.5);
    }

    [Fact]
    public void Where_all_is_taken_there_is_no_place()
    {
        var free = new FreePlace(Area, 1);
        free.Take(Area);
        Assert.False(free.TryFind(1, 1, new(50, 30), Area, out _));
        Assert.False(free.TryFind(200, 1, new(50, 30), Area, out _));
    }

    [Fact]
    public void A_place_stays_in_the_boxes_that_it_must_stay_in()
    {
        var free = new FreePlace(Area, 1);
        free.TakeOutside([new(new(0, 0), new(20, 60)), new(new(60, 0), new(100, 60))]);
        Assert.True(free.TryFind(30, 4, new(30, 30), Area, out var place));
        Assert.True(place.Min.X >= 60);
    }
}
