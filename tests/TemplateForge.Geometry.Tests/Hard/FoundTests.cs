using TemplateForge.Testing;

namespace TemplateForge.Geometry.Tests;

/// <summary>What the fuzz program found, as small as it could be made. Each once went wrong.</summary>
public class FoundTests
{
    // Every corner was cut short, and where the cuts overlapped something was left.
    [Fact]
    public void A_quadrilateral_shrunk_by_more_than_its_width_leaves_nothing() => Laws.Distance.Check(new Trial(
        -15, 5,
        [
            [(0, 0, -0.1), (0, -5, 0), (10, -13, 0), (18, -10, 0)],
        ]));

    [Fact]
    public void A_thin_quadrilateral_shrunk_in_two_steps_leaves_nothing() => Laws.Sum.Check(new Trial(
        -15, 5,
        [
            [(0, 0, 0), (5, 0, 0), (10.5, 2.5, 0), (13, 8, 0)],
        ]));

    [Fact]
    public void A_quadrilateral_beside_a_half_disc_grows_and_leaves_nothing_within() => Laws.Distance.Check(new Trial(
        10, 0,
        [
            [(0, 0, 0), (30, -30, 1)],
            [(20, -15, 0), (15, -14.9, 0.1), (12.5, -11.5, 0), (15, -5, 0)],
        ]));

    [Fact]
    public void A_half_disc_over_a_quadrilateral_grows_and_leaves_nothing_within() => Laws.Distance.Check(new Trial(
        12, 10,
        [
            [(0, 0, 1), (30, -30, 0)],
            [(7, -28, 0), (6, -22.5, 0), (9, -18, 0), (15, -16.2, 0)],
        ]));

    [Fact]
    public void A_cog_of_half_circles_shrunk_twice_is_where_the_distance_says() => Laws.Sum.Check(new Trial(
        -7.5, 7.5,
        [
            [(0, 0, -1), (-6, 15, 0), (-20, 5, -1), (-26, -5, 0), (-22, -21, -1), (-18, -35, 0), (-8, -25, -1), (-1, -21, 0)],
        ]));

    [Fact]
    public void A_bulged_triangle_with_a_bulged_hole_grown_twice_is_where_the_distance_says() => Laws.Sum.Check(new Trial(
        15, 8,
        [
            [(0, 0, 0.5), (10, -80, 0), (40, -70, 0.5)],
            [(33, -45, 0), (5, -55, -1), (-5, -32, -1), (4, -21, -1), (17, -18, -1), (30, -25, 0)],
        ]));

    [Fact]
    public void A_strip_a_millionth_of_a_micrometre_wider_than_both_offsets_may_vanish_at_one_scale_only() => Laws.Scaling.Check(new Trial(
        -2.5, 7.5,
        [
            [(0, 0, 0), (0, -5, 0), (5, -10, 0), (5.000000000954454, 0, 0)],
        ]));
}
