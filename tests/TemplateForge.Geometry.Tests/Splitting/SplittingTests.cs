using CsCheck;
using TemplateForge.Testing;

namespace TemplateForge.Geometry.Tests;

public class SplittingTests
{
    private static readonly Region Square = Draw.Rectangle(0, 0, 40, 40);
    private static readonly Region Frame = Square.Subtract(Draw.Rectangle(10, 10, 30, 30));

    [Fact]
    public void A_cut_from_side_to_side_makes_two_parts() => Has(Square.SplitBy(Cut((10, -5), (10, 45))), 400, 1200);

    [Fact]
    public void A_cut_from_corner_to_corner_makes_two_triangles()
    {
        var parts = Square.SplitBy(Cut((0, 0), (40, 40)));
        Has(parts, 800, 800);
        Assert.Equal([3, 3], parts.Select(p => Assert.Single(p.Contours).Segments.Length));
    }

    [Fact]
    public void A_cut_that_ends_inside_separates_nothing()
    {
        Has(Square.SplitBy(Cut((10, -5), (10, 30))), 1600);
        Has(Square.SplitBy(Cut((10, 10), (30, 30))), 1600);
        // What it separates before, it separates all the same.
        Has(Square.SplitBy(Cut((-5, 10), (45, 10), (45, 20), (20, 20))), 400, 1200);
    }

    [Fact]
    public void A_cut_outside_or_along_the_edge_separates_nothing()
    {
        Has(Square.SplitBy(Cut((-5, -5), (45, -5))), 1600);
        Has(Square.SplitBy(Cut((-5, 0), (45, 0))), 1600);
        Has(Square.SplitBy(Cut((0, 0), (40, 0), (40, 40), (0, 40), (0, 0))), 1600);
    }

    [Fact]
    public void A_cut_that_leaves_the_edge_it_runs_along_separates_where_it_comes_back_to_it() =>
        Has(Square.SplitBy(Cut((-5, 0), (10, 0), (10, 10), (20, 10), (20, 0), (45, 0))), 100, 1500);

    // One cut opens a frame, the second takes it apart, and it does not matter that they are one path through its hole.
    [Fact]
    public void A_frame_comes_apart_at_the_second_cut()
    {
        Has(Frame.SplitBy(Cut((20, -5), (20, 20))), 1200);
        Has(Frame.SplitBy(Cut((20, -5), (20, 45))), 600, 600);
        Has(Frame.SplitBy(Cut((-5, 20), (20, 20), (20, -5))), 300, 900);
        // There and back through its upper side.
        Has(Frame.SplitBy(Cut((15, 45), (15, 20), (25, 20), (25, 45))), 100, 1100);
    }

    [Fact]
    public void A_cut_that_closes_within_cuts_out_what_it_runs_round()
    {
        var parts = Square.SplitBy(Paths.Through((10, 20, 1), (30, 20, 1), (10, 20, 0)));
        Has(parts, 100 * Math.PI, 1600 - 100 * Math.PI);
        Assert.Equal([1, 2], parts.Select(p => p.Contours.Length).Order());
    }

    // Round a hole: the part between is a ring. Round half of it, from the hole to the hole: the part is half a ring.
    [Fact]
    public void A_cut_round_a_hole_leaves_a_ring()
    {
        var plate = Square.Subtract(Draw.Disc(new(20, 20), 5));
        Has(plate.SplitBy(Paths.Through((10, 20, 1), (30, 20, 1), (10, 20, 0))), 75 * Math.PI, 1600 - 100 * Math.PI);
        Has(plate.SplitBy(Paths.Through((20, 20, 0), (10, 20, 1), (30, 20, 0), (20, 20, 0))), 37.5 * Math.PI, 1600 - 62.5 * Math.PI);
    }

    // A five-pointed star drawn in one line has five points and a pentagon within.
    [Fact]
    public void A_cut_that_crosses_itself_cuts_at_its_crossings()
    {
        var corners = Enumerable.Range(0, 6).Select(i => new Point(20, 20) + Vector.Polar(15, Angle.FullTurn * (0.4 * i))).Select(p => (p.X, p.Y));
        Assert.Equal(7, Square.SplitBy(Cut([.. corners])).Length);
    }

    // The cut touches the edge half way: above it two parts are left, that meet in the touch only.
    [Fact]
    public void A_cut_that_touches_the_edge_takes_apart_what_lies_on_either_side_of_the_touch()
    {
        var arch = Paths.Through((0, 20, -Math.Tan(Math.PI / 8)), (20, 40, -Math.Tan(Math.PI / 8)), (40, 20, 0));
        var corner = 400 - 100 * Math.PI;
        Has(Square.SplitBy(arch), corner, corner, 1600 - 2 * corner);
        Has(Square.SplitBy(Cut((0, 20), (20, 40), (40, 20))), 200, 200, 1200);
    }

    // It dips to a hole twice and ends in the air: between the two touches it closes a loop with the hole's edge.
    [Fact]
    public void A_cut_that_touches_a_hole_twice_cuts_out_what_lies_between() =>
        Has(Frame.SplitBy(Cut((2, 15), (10, 15), (5, 20), (10, 25), (2, 25))), 25, 1175);

    [Fact]
    public void A_cut_run_twice_cuts_once()
    {
        Has(Square.SplitBy(Cut((10, -5), (10, 45), (10, -5))), 400, 1200);
        Has(Square.SplitBy(Cut((10, -5), (10, 30), (10, 10), (10, 45))), 400, 1200);
    }

    [Fact]
    public void Separate_parts_are_cut_each_and_told_apart()
    {
        var two = Square.Union(Draw.Rectangle(50, 0, 90, 40));
        Has(two.SplitBy(Cut((-5, 50), (95, 50))), 1600, 1600);
        Has(two.SplitBy(Cut((-5, 10), (95, 10))), 400, 400, 1200, 1200);
        Has(Square.Union(Draw.Rectangle(40, 40, 80, 80)).Parts(), 1600, 1600);
        Assert.Empty(Region.Empty.SplitBy(Cut((0, 0), (1, 0))));
    }

    [Fact]
    public void Each_part_has_its_own_holes()
    {
        var island = Frame.Union(Draw.Rectangle(12, 12, 28, 28).Subtract(Draw.Disc(new(20, 20), 4)));
        Assert.Equal([2, 2], island.Parts().Select(p => p.Contours.Length));
        Has(island.Parts(), 256 - 16 * Math.PI, 1200);
    }

    // Areas add up, the union is the region, each part is one, and it does not matter which way the path runs or where it all lies.
    [Fact]
    public void Parts_are_whole_apart_and_together_the_region() =>
        Gen.Select(Testing.Shapes.GridRegion, Paths.OnGrid).Check(40, IsSplit);

    [Fact]
    public void Parts_off_the_grid_are_whole_apart_and_together_the_region() =>
        Gen.Select(Testing.Shapes.Star.Select(Region.Of), Gen.OneOf(Paths.OffGrid, Paths.NearlyTangent)
            .Select(p => p.Placed(Placement.Moved(new(-20, -20))))).Check(20, IsSplit);

    // A slot as narrow as nothing leaves the same parts: their number is that of the region less a slot of 0.1 µm along the path; those that such a
    // slot might eat up are not counted.
    [Fact]
    public void There_are_as_many_parts_as_a_very_narrow_slot_leaves() =>
        Gen.Select(Testing.Shapes.GridRegion, Paths.OnGrid).Check(150, (region, path) =>
        {
            var left = region.Subtract(path.Slot(0.0001));
            var expected = left.Parts().Count(p => p.Area > 0.1);
            Law.AreEqual(expected, region.SplitBy(path).Count(p => p.Area > 0.1), 0, "The number of parts");
        });

    private static void IsSplit(Region region, Path path)
    {
        var parts = region.SplitBy(path);
        var tolerance = Tolerance.Area(region.Length + 2 * path.Length);
        Law.AreEqual(region.Area, parts.Sum(p => p.Area), tolerance, "The sum of the areas");
        Law.AreEqual(0, Combination.Union(parts).ExclusiveOr(region).Area, 2 * tolerance, "What the parts together are not");
        foreach (var part in parts)
        {
            Law.IsWellMade(part);
            Law.Holds(part.Contours.Count(c => c.IsCounterClockwise) == 1, "A part falls apart");
        }
        var (same, reversed) = (parts.Select(p => p.Area).Order().ToArray(), region.SplitBy(path.Reversed()).Select(p => p.Area).Order().ToArray());
        Law.AreEqual(same.Length, reversed.Length, 0, "The number of parts by the reversed path");
        for (var i = 0; i < same.Length; i++) Law.AreEqual(same[i], reversed[i], tolerance, "The area by the reversed path");
        foreach (var (name, by) in Symmetries.Placements)
            Law.AreEqual(parts.Length, region.Placed(by).SplitBy(path.Placed(by)).Length, 0, $"{name}: the number of parts");
    }

    private static Path Cut(params (double X, double Y)[] corners) => Paths.Through([.. corners.Select(c => (c.X, c.Y, 0.0))]);

    private static void Has(IEnumerable<Region> parts, params double[] areas)
    {
        var found = parts.Select(p => p.Area).Order().ToArray();
        Assert.Equal(areas.Order().Select(a => Math.Round(a, 3)), found.Select(a => Math.Round(a, 3)));
        for (var i = 0; i < areas.Length; i++) Approximately.Equal(areas.Order().ElementAt(i), found[i], within: Tolerance.Area(500));
    }
}
