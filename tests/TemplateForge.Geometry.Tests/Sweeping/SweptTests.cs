using CsCheck;
using TemplateForge.Testing;

namespace TemplateForge.Geometry.Tests;

public class SweptTests
{
    private static readonly Gen<Vector> GridWay =
        Gen.Select(Gen.Int[-4, 4], Gen.Int[-4, 4], (x, y) => new Vector(x * Testing.Shapes.Grid, y * Testing.Shapes.Grid));

    [Fact]
    public void A_disc_sweeps_a_slot_of_four_segments()
    {
        var slot = Draw.Disc(new(0, 0), 5).Swept(new(30, 40));
        Approximately.Equal(25 * Math.PI + 50 * 10, slot.Area, within: Tolerance.Area(slot.Length));
        Assert.Equal(4, Assert.Single(slot.Contours).Segments.Length);
    }

    [Fact]
    public void A_rectangle_swept_along_its_side_stays_a_rectangle()
    {
        var swept = Draw.Rectangle(0, 0, 40, 20).Swept(new(15, 0));
        Approximately.Equal(55 * 20, swept.Area, within: Tolerance.Area(swept.Length));
        Assert.Equal(4, Assert.Single(swept.Contours).Segments.Length);
    }

    // Every line along the way that meets the 40 mm wide plate is lengthened by 10 mm, and so the hole is shortened by 10 mm.
    [Fact]
    public void A_hole_shortens_by_the_way_and_vanishes_when_it_is_no_longer()
    {
        var plate = Draw.Rectangle(0, 0, 40, 40).Subtract(Draw.Rectangle(10, 10, 25, 30));
        Approximately.Equal(50 * 40 - 5 * 20, plate.Swept(new(10, 0)).Area, within: Tolerance.Area(300));
        Assert.Single(plate.Swept(new(15, 0)).Contours);
    }

    [Fact]
    public void Nothing_is_swept_by_no_way_but_the_region_itself()
    {
        var square = Draw.Rectangle(0, 0, 10, 10);
        Assert.Same(square, square.Swept(Vector.Zero));
        Assert.True(Region.Empty.Swept(new(1, 2)).IsEmpty);
    }

    [Fact]
    public void Grid_shapes_sweep_what_they_pass_over() => Gen.Select(Testing.Shapes.GridRegion, GridWay).Check(60, (shape, by) =>
    {
        var swept = shape.Swept(by);
        Law.IsWellMade(swept);
        SweptLaw.IsSwept(swept, shape, by);
    });

    [Fact]
    public void A_way_in_two_parts_sweeps_the_same_and_so_does_the_way_back() =>
        Gen.Select(Testing.Shapes.GridRegion, GridWay).Check(200, (shape, by) =>
        {
            var swept = shape.Swept(by);
            var tolerance = Tolerance.Area(2 * swept.Length);
            Law.AreEqual(swept.Area, shape.Swept(by * 0.4).Swept(by * 0.6).Area, tolerance, "In two parts");
            Law.AreEqual(swept.Area, shape.Placed(Placement.Moved(by)).Swept(-by).Area, tolerance, "The way back");
        });
}
