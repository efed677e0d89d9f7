namespace TemplateForge.Geometry.Tests;

public class CoincidentEdgesTests
{
    private static readonly Region Square = Draw.Rectangle(0, 0, 40, 40);

    [Fact]
    public void A_line_on_part_of_a_line_that_runs_the_same_way() =>
        Everywhere.Combines(Square, Draw.Rectangle(10, 0, 30, 20), union: 1600, intersection: 400);

    [Fact]
    public void A_line_on_part_of_a_line_that_runs_the_opposite_way() =>
        Everywhere.Combines(Square, Draw.Rectangle(10, -20, 30, 0), union: 2000, intersection: 0);

    [Fact]
    public void Lines_that_overlap_by_a_part_of_both_the_same_way() =>
        Everywhere.Combines(Square, Draw.Rectangle(20, 0, 60, 20), union: 2000, intersection: 400);

    [Fact]
    public void Lines_that_overlap_by_a_part_of_both_the_opposite_way() =>
        Everywhere.Combines(Square, Draw.Rectangle(20, -20, 60, 0), union: 2400, intersection: 0);

    [Fact]
    public void A_whole_line_on_a_whole_line_either_way()
    {
        Everywhere.Combines(Square, Draw.Rectangle(40, 0, 60, 40), union: 2400, intersection: 0);
        Everywhere.Combines(Square, Draw.Rectangle(20, 0, 40, 40), union: 1600, intersection: 800);
    }

    [Fact]
    public void An_arc_on_part_of_an_arc_that_runs_the_same_way() =>
        Everywhere.Combines(Draw.Disc(new(0, 0), 20), Sector(20, 30, 150), union: 400 * Math.PI, intersection: 400 * Math.PI / 3);

    [Fact]
    public void Arcs_that_overlap_by_a_part_of_both_the_same_way() =>
        Everywhere.Combines(Sector(20, 0, 120), Sector(20, 60, 180), union: 200 * Math.PI, intersection: 200 * Math.PI / 3);

    // A plug in the hole that it was cut from.
    [Fact]
    public void An_arc_on_part_of_an_arc_that_runs_the_opposite_way()
    {
        var plate = Draw.Rectangle(-40, -40, 40, 40).Subtract(Draw.Disc(new(0, 0), 20));
        Everywhere.Combines(plate, Sector(20, 30, 150), union: 6400 - 800 * Math.PI / 3, intersection: 0, contoursOfUnion: 2);
        Everywhere.Combines(plate, Sector(20, 0, 180).Union(Sector(20, 180, 360)), union: 6400, intersection: 0);
    }

    [Fact]
    public void Arcs_that_overlap_by_a_part_of_both_the_opposite_way()
    {
        var ring = Sector(40, 0, 120).Subtract(Draw.Disc(new(0, 0), 20));
        Everywhere.Combines(
            ring, Sector(20, 60, 180), union: 1200 * Math.PI / 3 + 400 * Math.PI / 3, intersection: 0);
    }

    /// <summary>From the centre out at one angle, round, and back in at the other; angles in degrees.</summary>
    private static Region Sector(double radius, double from, double to)
    {
        var (first, middle, last) = (On(from), On((from + to) / 2), On(to));
        var bulge = Math.Tan((to - from) / 8 * Math.PI / 180);
        return Region.Of(Draw.Outline((0, 0, 0), (first.X, first.Y, bulge), (middle.X, middle.Y, bulge), (last.X, last.Y, 0)));

        Vector On(double degrees) => Vector.Polar(radius, Angle.FromDegrees(degrees));
    }
}
