using CsCheck;
using TemplateForge.Testing;

namespace TemplateForge.Geometry.Tests;

public class SlotTests
{
    private static readonly Path Straight = Path.Line(new(0, 0), new(30, 40));

    private static readonly Gen<(Path, double)> Slots =
        Gen.Select(Paths.Any, Gen.OneOf(Gen.Int[1, 6].Select(n => n * Testing.Shapes.Grid / 2), Gen.Double[0.1, 15]));

    [Fact]
    public void A_straight_slot_is_a_rectangle_with_half_a_disc_at_each_end_or_without()
    {
        var round = Straight.Slot(10);
        Approximately.Equal(50 * 10 + 25 * Math.PI, round.Area, within: Tolerance.Area(round.Length));
        var flat = Straight.Slot(10, PathEnds.Flat);
        Approximately.Equal(50 * 10, flat.Area, within: Tolerance.Area(flat.Length));
        Assert.Equal(4, Assert.Single(flat.Contours).Segments.Length);
    }

    [Fact]
    public void A_bent_slot_has_a_pie_at_its_corner()
    {
        var flat = Paths.Through((0, 0, 0), (40, 0, 0), (40, 30, 0)).Slot(10, PathEnds.Flat);
        Approximately.Equal(70 * 10 - 25 + 25 * Math.PI / 4, flat.Area, within: Tolerance.Area(flat.Length));
        Assert.Equal(7, Assert.Single(flat.Contours).Segments.Length);
    }

    // Half a circle of 10 mm, 6 mm wide: half a ring, and with round ends two half discs. At 24 mm nothing is left of its inside.
    [Fact]
    public void A_slot_along_half_a_circle_is_half_a_ring_until_it_reaches_the_centre()
    {
        var arc = Paths.Through((10, 0, 1), (-10, 0, 0));
        Approximately.Equal(Math.PI / 2 * (13 * 13 - 7 * 7), arc.Slot(6, PathEnds.Flat).Area, within: Tolerance.Area(100));
        Approximately.Equal(Math.PI / 2 * (13 * 13 - 7 * 7) + 9 * Math.PI, arc.Slot(6).Area, within: Tolerance.Area(100));
        Approximately.Equal(Math.PI / 2 * 22 * 22, arc.Slot(24, PathEnds.Flat).Area, within: Tolerance.Area(100));
    }

    [Fact]
    public void A_path_that_ends_in_its_start_has_no_ends()
    {
        var square = Paths.Through((0, 0, 0), (40, 0, 0), (40, 40, 0), (0, 40, 0), (0, 0, 0));
        var ring = 160 * 10 - 4 * 25 + 25 * Math.PI;
        foreach (var ends in (ReadOnlySpan<PathEnds>)[PathEnds.Round, PathEnds.Flat])
        {
            var slot = square.Slot(10, ends);
            Approximately.Equal(ring, slot.Area, within: Tolerance.Area(slot.Length));
            Assert.Equal([8, 4], slot.Contours.Select(c => c.Segments.Length));
        }
    }

    // There, round half a turn on the spot, and back: no more than there, and half a disc where it turned.
    [Fact]
    public void A_path_back_along_itself_is_round_where_it_turns()
    {
        var back = Paths.Through((0, 0, 0), (40, 0, 0), (10, 0, 0)).Slot(10, PathEnds.Flat);
        Approximately.Equal(400 + 25 * Math.PI / 2, back.Area, within: Tolerance.Area(back.Length));
    }

    [Fact]
    public void A_cross_is_covered_once()
    {
        var cross = Paths.Through((-20, 0, 0), (20, 0, 0), (20, 20, 0), (0, 20, 0), (0, -20, 0)).Slot(4, PathEnds.Flat);
        Approximately.Equal(40 * 4 + 20 * 4 + 20 * 4 + 40 * 4 - 3 * 4 + 3 * Math.PI - 16, cross.Area, within: Tolerance.Area(cross.Length));
    }

    [Fact]
    public void A_slot_with_round_ends_is_all_that_is_near_enough() => Slots.Check(100, (path, distance) =>
    {
        var slot = path.Slot(2 * distance);
        Law.IsWellMade(slot);
        var (actual, asked) = (new ByDefinition(slot), new PathByDefinition(path));
        foreach (var (point, _) in Law.BoundarySamples(slot, perSegment: 3))
            Law.Holds(Math.Abs(asked.DistanceTo(point) - distance) <= Tolerance.Length, $"{point} lies at {asked.DistanceTo(point)}, not at {distance}");
        foreach (var p in Beside(path, distance))
        {
            if (Math.Abs(asked.DistanceTo(p) - distance) < 1e-5) continue;
            Law.Holds(actual.Encloses(p) == asked.DistanceTo(p) < distance, $"{p} lies at {asked.DistanceTo(p)}");
        }
    });

    [Fact]
    public void A_slot_with_flat_ends_is_what_lies_square_to_a_side_or_at_a_corner() => Slots.Check(60, (path, distance) =>
    {
        var slot = path.Slot(2 * distance, PathEnds.Flat);
        Law.IsWellMade(slot);
        var (actual, asked) = (new ByDefinition(slot), new PathByDefinition(path));
        var beside = Law.BoundarySamples(slot, perSegment: 2).SelectMany(s => new[] { s.Point - s.Along.Left * 1e-5, s.Point + s.Along.Left * 1e-5 });
        foreach (var p in beside.Concat(Beside(path, distance)))
        {
            var holds = asked.IsInFlatSlot(p, distance);
            var isSure = Enumerable.Range(0, 4).All(i =>
                asked.IsInFlatSlot(p + Vector.Polar(3 * Tolerance.Length, Angle.FullTurn * (i / 4.0 + 0.1)), distance) == holds);
            if (isSure) Law.Holds(actual.Encloses(p) == holds, $"{p} is {(holds ? "left out" : "taken in")} at {distance}");
        }
    });

    [Fact]
    public void Moving_turning_mirroring_and_running_back_commute_with_slots() => Slots.Check(25, (path, distance) =>
    {
        foreach (var ends in (ReadOnlySpan<PathEnds>)[PathEnds.Round, PathEnds.Flat])
        {
            var expected = path.Slot(2 * distance, ends);
            var tolerance = Tolerance.Area(2 * expected.Length);
            Law.AreEqual(expected.Area, path.Reversed().Slot(2 * distance, ends).Area, tolerance, "Reversed, the area");
            foreach (var (name, by) in Symmetries.Placements)
                Law.AreEqual(expected.Area, path.Placed(by).Slot(2 * distance, ends).Area, tolerance, $"{name}: the area");
        }
    });

    [Fact]
    public void A_slot_has_a_width()
    {
        foreach (var width in (ReadOnlySpan<double>)[0, -1, 1e-7, double.NaN, double.PositiveInfinity])
            Assert.Throws<ArgumentOutOfRangeException>(() => Straight.Slot(width));
    }

    /// <summary>Points near where the slot might end: beside the path, about its corners and ends.</summary>
    private static IEnumerable<Point> Beside(Path path, double distance)
    {
        foreach (var s in path.Segments)
        {
            foreach (var share in new[] { 0.01, 0.5, 0.97 })
            {
                foreach (var aside in new[] { -distance - 0.01, -distance + 0.01, distance / 2, distance - 0.001, distance + 0.001 })
                    yield return s.At(share) - s.DirectionAt(share).Left * aside;
            }
            for (var i = 0; i < 7; i++)
            {
                yield return s.End + Vector.Polar(distance - 0.001, Angle.FullTurn * ((i + 0.3) / 7));
                yield return s.Start + Vector.Polar(0.9 * distance, Angle.FullTurn * ((i + 0.6) / 7));
            }
        }
    }
}
