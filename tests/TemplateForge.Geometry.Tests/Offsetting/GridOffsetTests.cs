using CsCheck;
using TemplateForge.Testing;

namespace TemplateForge.Geometry.Tests;

public class GridOffsetTests
{
    private static readonly Gen<(Region, double)> Offsets = Gen.Select(Testing.Shapes.GridRegion, Testing.Shapes.GridOffset);

    // Definition of an offset: the distance to the source decides. On a grid offsets meet along edges and arcs, vanish in
    // centrelines and shrink to radius zero, which chance alone never draws.
    [Fact]
    public void Ten_thousand_grid_shapes_offset_by_grid_steps_are_where_the_distance_says() => Offsets.Check(10_000, IsRight);

    // Referee: NetTopologySuite 2.6, arcs flattened to 0.5 µm, SimplifyFactor = 0.
    [Fact]
    public void An_independent_polygon_engine_finds_the_same_areas() => Offsets.Check(400, (shape, distance) =>
    {
        var offset = shape.Offset(distance);
        Law.AreEqual(
            Referee.OffsetArea(shape, distance), offset.Area, Referee.Flattening * 2 * (shape.Length + offset.Length), "The area");
    });

    [Fact]
    public void Stars_with_needles_offset_by_any_distance_are_where_the_distance_says() =>
        Gen.Select(Testing.Shapes.Star.Select(Region.Of), Gen.Double[-12, 12]).Check(500, IsRight);

    [Fact]
    public void Outwards_or_inwards_by_a_and_then_by_b_is_by_a_plus_b() =>
        Gen.Select(Testing.Shapes.GridRegion, Gen.Select(Testing.Shapes.GridOffset, Testing.Shapes.GridOffset)).Check(500, (shape, distances) =>
        {
            var (a, b) = (distances.Item1, Math.CopySign(distances.Item2, distances.Item1));
            var (twice, once) = (shape.Offset(a).Offset(b), shape.Offset(a + b));
            Law.AreEqual(once.Area, twice.Area, Tolerance.Area(once.Length + twice.Length), "The area");
        });

    // Moved 100 m away a coordinate keeps 1.5e-11 mm; turned by an odd angle nothing is on a grid any more but the coincidences.
    [Fact]
    public void Moving_turning_mirroring_and_scaling_commute_with_offsetting() =>
        Gen.Select(Offsets, Gen.Select(Gen.Double[0, 360], Gen.Bool, Gen.Double[-3, 2])).Check(500, (offset, place) =>
        {
            var ((shape, distance), (degrees, mirrored, power)) = (offset, place);
            var scale = Math.Pow(10, power);
            var placement = (mirrored ? Placement.Mirrored(Point.Origin, Angle.FromDegrees(degrees)) : Placement.Unmoved)
                .Then(Placement.Scaled(scale, Point.Origin))
                .Then(Placement.Turned(Angle.FromDegrees(degrees), Point.Origin))
                .Then(Placement.Moved(new(70_000, -70_000)));
            var (placed, expected) = (shape.Placed(placement).Offset(distance * scale), shape.Offset(distance));
            Law.AreEqual(
                expected.Area * scale * scale, placed.Area, Tolerance.Area(placed.Length + expected.Length * scale), "The area");
        });

    [Fact]
    public void Start_and_direction_of_the_contours_do_not_matter() =>
        Gen.Select(Offsets, Gen.Int[0, 20]).Check(500, (offset, start) =>
        {
            var (shape, distance) = offset;
            var redrawn = Region.FromContours(
                shape.Contours.Select(c => new Contour(c.Segments.Skip(start % c.Segments.Length).Concat(
                    c.Segments.Take(start % c.Segments.Length))).Reversed()),
                FillRule.EvenOdd);
            var (expected, actual) = (shape.Offset(distance), redrawn.Offset(distance));
            Law.AreEqual(expected.Area, actual.Area, Tolerance.Area(expected.Length), "The area");
            Law.AreEqual(expected.Length, actual.Length, Tolerance.Length * 100, "The boundary");
        });

    private static void IsRight(Region shape, double distance)
    {
        var offset = shape.Offset(distance);
        Law.IsWellMade(offset);
        Law.IsOffset(offset, shape, distance);
    }
}
