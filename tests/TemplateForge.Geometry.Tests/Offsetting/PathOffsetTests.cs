using CsCheck;
using TemplateForge.Testing;

namespace TemplateForge.Geometry.Tests;

public class PathOffsetTests
{
    private static readonly Path Bent = Paths.Through((0, 0, 0), (40, 0, 0), (40, 30, 0));

    private static readonly Gen<(Path, double)> Offsets =
        Gen.Select(Paths.Any, Gen.OneOf(Gen.Int[1, 6].Select(n => n * Testing.Shapes.Grid / 2), Gen.Double[0.1, 15]));

    [Fact]
    public void A_line_is_moved_aside_and_runs_the_same_way()
    {
        var line = Path.Line(new(0, 0), new(30, 40));
        var right = Assert.Single(line.OffsetToRight(5));
        Approximately.Equal(new Point(4, -3), right.Start, within: Tolerance.Length);
        Approximately.Equal(new Point(34, 37), right.End, within: Tolerance.Length);
        var left = Assert.Single(line.OffsetToLeft(5));
        Approximately.Equal(new Point(-4, 3), left.Start, within: Tolerance.Length);
        Approximately.Equal(new Point(26, 43), left.End, within: Tolerance.Length);
    }

    [Fact]
    public void A_corner_is_rounded_outside_and_sharp_inside()
    {
        var right = Assert.Single(Bent.OffsetToRight(5));
        Approximately.Equal(70 + 5 * Math.PI / 2, right.Length, within: Tolerance.Length);
        Assert.Equal(3, right.Segments.Length);
        var left = Assert.Single(Bent.OffsetToLeft(5));
        Approximately.Equal([new(0, 5), new(35, 5), new(35, 30)], [left.Start, left.Segments[1].Start, left.End], within: Tolerance.Length);
    }

    // In a corridor of 10 mm, 6 mm off one wall is 4 mm off the other: left is what is beyond its mouth, but that is off the ends.
    [Fact]
    public void There_is_nothing_between_two_sides_that_are_too_near_each_other()
    {
        var corridor = Paths.Through((40, 10, 0), (0, 10, 0), (0, 0, 0), (40, 0, 0));
        Assert.Empty(corridor.OffsetToLeft(6));
        Assert.Empty(corridor.OffsetToLeft(5));
        Approximately.Equal(36 + 2 + 36, Assert.Single(corridor.OffsetToLeft(4)).Length, within: Tolerance.Length);
    }

    // Past its centre an arc leaves nothing on its inside; at the ends of half a circle the outside is half a ring's.
    [Fact]
    public void An_arc_shrinks_to_its_centre_and_no_farther()
    {
        var arc = Paths.Through((10, 0, 1), (-10, 0, 0));
        Approximately.Equal(7 * Math.PI, Assert.Single(arc.OffsetToLeft(3)).Length, within: Tolerance.Length);
        Assert.Empty(arc.OffsetToLeft(10));
        Assert.Empty(arc.OffsetToLeft(12));
        Approximately.Equal(22 * Math.PI, Assert.Single(arc.OffsetToRight(12)).Length, within: Tolerance.Length);
    }

    [Fact]
    public void A_path_that_ends_in_its_start_gives_runs_that_do()
    {
        var square = Paths.Through((0, 0, 0), (40, 0, 0), (40, 40, 0), (0, 40, 0), (0, 0, 0));
        var (right, left) = (Assert.Single(square.OffsetToRight(5)), Assert.Single(square.OffsetToLeft(5)));
        Approximately.Equal(160 + 10 * Math.PI, right.Length, within: Tolerance.Length);
        Approximately.Equal(120, left.Length, within: Tolerance.Length);
        foreach (var run in (ReadOnlySpan<Path>)[right, left]) Approximately.Equal(run.Start, run.End, within: Tolerance.Merge);
    }

    // To the left of this loop lie 18 mm before it, a square of 16 mm inside it, and 18 mm after it.
    [Fact]
    public void A_path_that_crosses_itself_has_runs_in_the_order_of_the_path()
    {
        var loop = Paths.Through((-20, 0, 0), (20, 0, 0), (20, 20, 0), (0, 20, 0), (0, -20, 0));
        Assert.Equal([18, 4 * 16, 18], loop.OffsetToLeft(2).Select(run => Math.Round(run.Length, 6)));
    }

    // The pie to the left of the corner at (10, 15) touches the side to the right of the last line in the very middle.
    [Fact]
    public void A_touch_puts_no_run_on_the_other_side()
    {
        var path = Paths.Through((30, 30, 0), (10, 15, 1), (0, 15, 0), (20, 15, 0));
        IsOffset(path.OffsetToRight(4), path, 4);
        IsOffset([.. path.OffsetToLeft(4).Select(run => run.Reversed())], path.Reversed(), 4);
    }

    // Definition: at the distance, no nearer, on that side; and whatever is so is there.
    [Fact]
    public void Runs_are_at_the_distance_on_their_side_and_nothing_is_missing() => Offsets.Check(150, (path, distance) =>
    {
        IsOffset(path.OffsetToRight(distance), path, distance);
        IsOffset([.. path.OffsetToLeft(distance).Select(run => run.Reversed())], path.Reversed(), distance);
    });

    [Fact]
    public void Moving_turning_and_mirroring_commute_with_moving_aside() => Offsets.Check(40, (path, distance) =>
    {
        var expected = path.OffsetToRight(distance).Sum(run => run.Length);
        foreach (var (name, by) in Symmetries.Placements)
        {
            var placed = path.Placed(by);
            var actual = (by.Mirrors ? placed.OffsetToLeft(distance) : placed.OffsetToRight(distance)).Sum(run => run.Length);
            Law.AreEqual(expected, actual, 1e-3, $"{name}: the length");
        }
    });

    [Fact]
    public void A_distance_is_finite_and_more_than_the_tolerance()
    {
        foreach (var distance in (ReadOnlySpan<double>)[0, -1, 1e-7, double.NaN, double.PositiveInfinity])
            Assert.Throws<ArgumentOutOfRangeException>(() => Bent.OffsetToLeft(distance));
    }

    private static void IsOffset(IReadOnlyList<Path> runs, Path path, double distance)
    {
        var asked = new PathByDefinition(path);
        foreach (var s in runs.SelectMany(run => run.Segments))
        {
            foreach (var share in (ReadOnlySpan<double>)[0.001, 0.3, 0.7, 0.999])
            {
                var p = s.At(share);
                Law.Holds(Math.Abs(asked.DistanceTo(p) - distance) <= Tolerance.Length, $"{p} lies at {asked.DistanceTo(p)}, not at {distance}");
                Law.Holds(asked.IsToTheRight(p, 4 * Tolerance.Length), $"{p} is not to the right");
            }
        }
        foreach (var p in Candidates(path, distance))
        {
            // Not a single point, and not in a corridor without width: a hair farther out is at least as far.
            if (p.Near.Any(at => asked.DistanceTo(at) < distance - 1e-9)) continue;
            if (asked.DistanceTo(p.At + p.Away * 1e-4) < distance + 5e-5) continue;
            var off = runs.SelectMany(run => run.Segments).Select(s => s.DistanceTo(p.At)).Append(double.PositiveInfinity).Min();
            Law.Holds(off <= 2 * Tolerance.Length, $"{p.At} is to the right and no nearer, but {off} from every run");
        }
    }

    /// <summary>Points to the right of sides and of corners, and others close by there.</summary>
    private static IEnumerable<(Point At, Point[] Near, Vector Away)> Candidates(Path path, double distance)
    {
        foreach (var s in path.Segments)
        {
            for (var i = 0; i < 9; i++)
            {
                var share = (i + 0.5) / 9;
                yield return (At(share), [At(share - 0.01), At(share), At(share + 0.01)], Away(share));
            }

            Vector Away(double share) => -s.DirectionAt(share).Left;
            Point At(double share) => s.At(share) + Away(share) * distance;
        }
        for (var i = 1; i < path.Segments.Length; i++)
        {
            var (into, outOf) = (path.Segments[i - 1].EndDirection, path.Segments[i].StartDirection);
            if (into.Cross(outOf) <= 1e-6) continue;
            var (corner, away) = (path.Segments[i].Start, -(into.Left + outOf.Left).Unit);
            Point[] near = [corner + away * distance, corner + (away * 3 - into.Left).Unit * distance, corner + (away * 3 - outOf.Left).Unit * distance];
            yield return (near[0], near, away);
        }
    }
}
