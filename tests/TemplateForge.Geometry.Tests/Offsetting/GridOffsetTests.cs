using CsCheck;
using TemplateForge.Testing;

namespace TemplateForge.Geometry.Tests;

public class GridOffsetTests
{
    // Definition of an offset: the distance to the source decides. On a grid offsets meet along edges and arcs, vanish in
    // centrelines and shrink to radius zero, which chance alone never draws.
    [Fact]
    public void Ten_thousand_grid_shapes_offset_by_grid_steps_are_where_the_distance_says() =>
        Gen.Select(Shapes.GridRegion, Shapes.GridOffset).Check(10_000, (shape, distance) =>
        {
            var offset = shape.Offset(distance);
            Law.IsWellMade(offset);
            Law.IsOffset(offset, shape, distance);
        });
}
