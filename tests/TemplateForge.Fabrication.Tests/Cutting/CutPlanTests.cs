using TemplateForge.Geometry;

namespace TemplateForge.Fabrication.Tests;

/// <summary>Closed forms: what a kerf, a lead and an order come to on shapes that can be reckoned by hand.</summary>
public class CutPlanTests
{
    private const double Kerf = 1.5;

    private static readonly Cutter Torch = new("torch", "torch", double.PositiveInfinity, LeastHole: 5) { LeadIn = 4, LeadOut = 2, LeastLead = 1 };

    // A path round a square with a side a runs at k/2 from it: four sides and, round the four corners, one circle of k/2.
    [Fact]
    public void Round_a_square_the_path_is_its_sides_and_one_circle_of_half_the_kerf()
    {
        var cut = Assert.Single(Plan(Square(100)).Cuts);
        Assert.Equal(CutRole.Outline, cut.Role);
        Assert.Equal(400 + Math.PI * Kerf, Length(cut.Run), 1e-6);
    }

    [Fact]
    public void In_a_square_hole_the_path_is_shorter_by_four_kerfs()
    {
        var hole = Plan(Square(100).Subtract(Square(40))).Cuts[0];
        Assert.Equal(CutRole.Hole, hole.Role);
        Assert.Equal(4 * (40 - Kerf), Length(hole.Run), 1e-6);
    }

    [Theory]
    [InlineData(20, true)]
    [InlineData(7, false)]
    public void A_circle_is_cut_half_a_kerf_outside_as_an_outline_and_half_a_kerf_inside_as_a_hole(double radius, bool isOutline)
    {
        var disc = Disc(0, 0, radius);
        var plan = Plan(isOutline ? disc : Square(100).Subtract(disc));
        var run = plan.Cuts[0].Run;
        var wanted = isOutline ? radius + Kerf / 2 : radius - Kerf / 2;
        Assert.All(run, s => Assert.Equal(wanted, s.Radius, 1e-6));
        Assert.Equal(2 * Math.PI * wanted, Length(run), 1e-6);
    }

    [Fact]
    public void A_controller_that_compensates_is_given_the_finished_edge()
    {
        var plan = CutPlan.Of(Blank(Square(100)), Torch with { Compensates = true }, kerf: 1.5, runOut: 10);
        Assert.Equal((400.0, 0.0), (Math.Round(Length(Assert.Single(plan.Cuts).Run), 6), plan.Kerf));
        Assert.DoesNotContain(plan.Cuts[0].LeadIn, s => Square(100).Contains(s.Start));
    }

    // A quarter of a circle of 4 mm ends on the path's tangent; its pierce stands 4 mm from the path and k/2 more from the part.
    [Fact]
    public void A_lead_in_is_a_quarter_of_a_circle_that_joins_the_path_on_its_tangent_in_the_waste()
    {
        var cut = Plan(Square(100)).Cuts[0];
        var lead = Assert.Single(cut.LeadIn);
        Assert.Equal((4.0, 90.0), (Math.Round(lead.Radius, 9), Math.Round(Math.Abs(lead.Sweep.Degrees), 9)));
        Assert.Equal(0, lead.EndDirection.Cross(cut.Run[0].StartDirection), 1e-9);
        Assert.Equal(4 + Kerf / 2, Square(100).DistanceTo(cut.Pierce), 1e-6);
    }

    [Fact]
    public void A_cut_is_begun_off_the_corners_of_the_part()
    {
        var start = Plan(Square(100)).Cuts[0].Run[0].Start;
        Assert.True(new[] { (-50, -50), (50, -50), (50, 50), (-50, 50) }.All(c => start.DistanceTo(new(c.Item1, c.Item2)) > 24), $"{start}");
    }

    [Theory]
    [InlineData(Side.Left)]
    [InlineData(Side.Right)]
    public void The_part_lies_on_the_hand_that_the_machine_wants(Side side)
    {
        var plan = CutPlan.Of(Blank(Square(100).Subtract(Square(40))), Torch with { PartOn = side }, Kerf, 10);
        foreach (var cut in plan.Cuts)
        {
            var middle = cut.Run[0];
            var left = middle.At(0.5) + middle.DirectionAt(0.5).Left * Kerf;
            Assert.Equal(side == Side.Left, plan.Part.Contains(left));
        }
    }

    // Room for no arc of 4 mm: the disc is 6 mm, its path 2.25 mm in radius.
    [Fact]
    public void In_a_small_hole_the_lead_is_shorter()
    {
        var plan = Plan(Square(100).Subtract(Disc(0, 0, 3)));
        Assert.Empty(plan.Troubles);
        Assert.InRange(plan.Cuts[0].Pierce.DistanceTo(Point.Origin), 0, 2.25 - 1);
    }

    [Fact]
    public void A_hole_smaller_than_the_process_cuts_is_drilled()
    {
        var plan = Plan(Square(100).Subtract(Disc(10, 20, 2.4)));
        var mark = Assert.Single(plan.Drilled);
        Assert.Equal((10.0, 20.0, 4.8, DrillReason.TooSmall), (Math.Round(mark.Centre.X, 6), Math.Round(mark.Centre.Y, 6), Math.Round(mark.Diameter, 6), mark.Reason));
        Assert.Single(plan.Cuts);
        Assert.Equal(100 * 100, plan.Part.Area, 1e-6);
    }

    [Fact]
    public void The_least_hole_grows_with_the_sheet()
    {
        var plate = Square(100).Subtract(Disc(0, 0, 4));
        Assert.Empty(CutPlan.Of(Blank(plate, thickness: 1), Torch with { LeastHoleRatio = 2 }, Kerf, 10).Drilled);
        Assert.Single(CutPlan.Of(Blank(plate, thickness: 5), Torch with { LeastHoleRatio = 2 }, Kerf, 10).Drilled);
    }

    [Fact]
    public void A_hole_in_which_the_torch_finds_no_room_is_drilled()
    {
        var plan = CutPlan.Of(Blank(Square(100).Subtract(Disc(0, 0, 3))), Torch with { LeastLead = 3 }, Kerf, 10);
        Assert.Equal(DrillReason.NoRoom, Assert.Single(plan.Drilled).Reason);
        Assert.Equal(6, plan.Drilled[0].Diameter, 1e-6);
    }

    [Fact]
    public void A_slot_in_which_the_torch_finds_no_room_is_told_of_and_not_cut()
    {
        var slot = Region.Of(Outline.Slot(new(-10, 0), new(10, 0), 3));
        var plan = CutPlan.Of(Blank(Square(100).Subtract(slot)), Torch with { LeastLead = 3, LeastHole = 0 }, Kerf, 10);
        Assert.Equal(CutTroubleKind.NoRoomToPierce, Assert.Single(plan.Troubles).Kind);
        Assert.Single(plan.Cuts);
    }

    // A disc of k/2 in a square corner stays (√2 − 1) k/2 off it.
    [Fact]
    public void Inside_corners_that_the_torch_does_not_reach_are_told_of()
    {
        var plan = Plan(Square(100).Subtract(Square(40)));
        Assert.Equal(4, plan.Troubles.Length);
        Assert.All(plan.Troubles, t =>
        {
            Assert.Equal(CutTroubleKind.NotReached, t.Kind);
            Assert.Equal((Math.Sqrt(2) - 1) * Kerf / 2, t.Size, 1e-5);
            Assert.Equal((20.0, 20.0), (Math.Abs(Math.Round(t.At.X, 5)), Math.Abs(Math.Round(t.At.Y, 5))));
        });
    }

    [Fact]
    public void A_slot_narrower_than_the_kerf_is_told_of()
    {
        var plan = Plan(Square(100).Subtract(Region.Of(Outline.Slot(new(-10, 0), new(10, 0), 1))));
        Assert.Equal(CutTroubleKind.HoleTooNarrow, Assert.Single(plan.Troubles).Kind);
    }

    // A stop hole touches both sides of its corner, so its middle stands half its diameter from each.
    [Fact]
    public void A_stop_hole_touches_both_sides_of_its_corner_and_the_cut_runs_round_it()
    {
        var piece = Blank(Square(100).Subtract(Square(40))) with { Cutting = new() { StopHole = 6 } };
        var plan = CutPlan.Of(piece, Torch, Kerf, 10);
        Assert.Equal(4, plan.Drilled.Length);
        Assert.All(plan.Drilled, d => Assert.Equal((17.0, 17.0, 6.0), (Math.Abs(Math.Round(d.Centre.X, 6)), Math.Abs(Math.Round(d.Centre.Y, 6)), d.Diameter)));
        Assert.Empty(plan.Troubles);
        Assert.Equal(4 * (40 - 6) + 2 * Math.PI * (3 - Kerf / 2), Length(plan.Cuts[0].Run), 1e-6);
    }

    // What a tab leaves between two slots is the path between their ends less half a kerf at each.
    [Theory]
    [InlineData(Side.Left)]
    [InlineData(Side.Right)]
    public void Tabs_leave_their_width_of_metal_between_the_slots(Side partOn)
    {
        var piece = Blank(Square(100)) with { Cutting = new() { Tabs = 4 } };
        var plan = CutPlan.Of(piece, Torch with { Tab = 2, PartOn = partOn }, Kerf, 10);
        Assert.All(plan.Cuts, c => Assert.Equal(4 + Kerf / 2, Square(100).DistanceTo(c.Pierce), 1e-6));
        Assert.Equal((4, 4), (plan.Cuts.Length, plan.Pierces));
        for (var i = 0; i < 4; i++)
        {
            var (end, next) = (plan.Cuts[i].Run[^1].End, plan.Cuts[(i + 1) % 4].Run[0].Start);
            Assert.Equal(2, end.DistanceTo(next) - Kerf, 1e-6);
        }
        Assert.Equal(400 + Math.PI * Kerf - 4 * (2 + Kerf), plan.Cuts.Sum(c => Length(c.Run)), 1e-6);
    }

    [Fact]
    public void A_tab_stands_where_it_is_asked_for()
    {
        var piece = Blank(Square(100)) with { Cutting = new() { TabsAt = [new(30, 52)] } };
        var cut = Assert.Single(CutPlan.Of(piece, Torch, Kerf, 10).Cuts);
        Assert.Equal((30.0, 50 + Kerf / 2), (Math.Round(cut.Run[0].Start.MidpointTo(cut.Run[^1].End).X, 6), Math.Round(cut.Run[0].Start.Y, 6)));
    }

    [Fact]
    public void A_closed_cut_runs_on_past_its_start_by_the_overcut()
    {
        var plan = CutPlan.Of(Blank(Square(100)), Torch with { Overcut = 3 }, Kerf, 10);
        Assert.Equal(400 + Math.PI * Kerf + 3, Length(plan.Cuts[0].Run), 1e-6);
    }

    // A bite 60 × 40 out of the panel's edge: the path stands k/2 in from the three sides.
    [Theory]
    [InlineData(Side.Left)]
    [InlineData(Side.Right)]
    public void An_open_cut_runs_in_over_the_edge_and_off_again_beside_the_finish_line(Side partOn)
    {
        var plan = CutPlan.Of(Pieces.Bitten, Torch with { PartOn = partOn }, Kerf, 10);
        var cut = Assert.Single(plan.Cuts);
        Assert.Equal((CutRole.Open, 0), (cut.Role, plan.Pierces));
        var inside = new Path(cut.Run).PartsInside(Pieces.Bitten.Before);
        Assert.Equal(40 + 60 + 40 - 4 * Kerf / 2, Assert.Single(inside).Length, 1e-6);
        Assert.True(cut.Pierce.Y < -9 && cut.Path.End.Y < -9);
    }

    // Between the tabs of an open cut the torch is lit in the waste, so only the first cut comes in from the edge.
    [Theory]
    [InlineData(Side.Left)]
    [InlineData(Side.Right)]
    public void An_open_cut_with_tabs_pierces_after_each(Side partOn)
    {
        var plan = CutPlan.Of(Pieces.Bitten with { Cutting = new() { Tabs = 2 } }, Torch with { PartOn = partOn }, Kerf, 10);
        Assert.Equal((3, 2), (plan.Cuts.Length, plan.Pierces));
        Assert.True(plan.Cuts[0].Pierce.Y < -9 && plan.Cuts[2].Path.End.Y < -9);
        Assert.All(plan.Cuts.Skip(1), c => Assert.True(Pieces.Bitten.Waste().Contains(c.Pierce)));
    }

    // A mouth rounded by 20 runs out along the panel's edge: the path follows it to its very end, half a kerf off the edge.
    [Fact]
    public void A_rounded_mouth_is_cut_to_its_end_though_the_path_has_left_the_panel()
    {
        var opening = Region.Of(Outline.Rectangle(new(new(70, -10), new(130, 60))));
        var sharp = Pieces.CutAway(opening, roughAllowance: 0);
        var piece = sharp with { Shape = sharp.Shape.RoundedCorners(20, p => p.Y < 1 && p.X is > 60 and < 140).Region };
        var cut = Assert.Single(CutPlan.Of(piece, Torch, kerf: 6, runOut: 10).Cuts);
        Assert.Equal(3, cut.Path.Segments.Min(s => s.DistanceTo(new Point(50, 0))), 1e-6);
        Assert.Equal(3, cut.Path.Segments.Min(s => s.DistanceTo(new Point(150, 0))), 1e-6);
    }

    // A washer in the hole of a plate: its own hole, itself, the hole round it, the plate.
    [Fact]
    public void Holes_come_before_the_outline_round_them_and_nested_parts_inner_first()
    {
        var nested = Square(200).Subtract(Square(120)).Union(Square(80).Subtract(Square(30)));
        var plan = Plan(nested);
        Assert.Equal([CutRole.Hole, CutRole.Outline, CutRole.Hole, CutRole.Outline], plan.Cuts.Select(c => c.Role));
        var sizes = plan.Cuts.Select(c => new Path(c.Run).Bounds.Width).ToList();
        Assert.Equal(sizes.Order(), sizes);
    }

    // Holes in a row at a pitch: no order joins them by less than the pitch each, less what the places to begin give.
    [Fact]
    public void Moves_are_no_shorter_than_their_bound_and_in_a_row_of_holes_no_more_than_a_quarter_longer()
    {
        var plate = Enumerable.Range(0, 12).Aggregate(
            Region.Of(Outline.Rectangle(new(new(-20, -20), new(320, 20)))), (p, i) => p.Subtract(Disc(25 * ((i * 7) % 12), 0, 6)));
        var plan = Plan(plate);
        Assert.Equal(13, plan.Cuts.Length);
        Assert.True(plan.RapidLength >= plan.RapidBound - 1e-6);
        Assert.InRange(plan.RapidLength / plan.RapidBound, 1, 1.25);
    }

    [Fact]
    public void Cuts_that_are_spread_against_heat_are_not_begun_beside_each_other()
    {
        var plate = Enumerable.Range(0, 12).Aggregate(
            Region.Of(Outline.Rectangle(new(new(-20, -20), new(320, 20)))), (p, i) => p.Subtract(Disc(25 * i, 0, 6)));
        var cuts = CutPlan.Of(Blank(plate), Torch with { Spread = 60 }, Kerf, 10).Cuts;
        Assert.All(cuts.Zip(cuts.Skip(1)).Take(11), pair => Assert.True(pair.First.Pierce.DistanceTo(pair.Second.Pierce) >= 60));
        Assert.Equal(CutRole.Outline, cuts[^1].Role);
    }

    // 2000 mm/min over the length, and half a second a pierce.
    [Fact]
    public void Time_is_length_by_feed_and_the_pierces()
    {
        var torch = Torch with { Feed = new((2, 2000)), PierceTime = new((2, 0.5)), RapidFeed = 10_000 };
        var plan = CutPlan.Of(Blank(Square(100).Subtract(Square(40))), torch, Kerf, 10);
        Assert.True(plan.TryTime(out var minutes));
        Assert.Equal(plan.CutLength / 2000 + 2 * 0.5 / 60 + plan.RapidLength / 10_000, minutes, 1e-9);
        Assert.False(CutPlan.Of(Blank(Square(100), thickness: 3), torch, Kerf, 10).TryTime(out _));
    }

    private static double Length(IEnumerable<Segment> segments) => segments.Sum(s => s.Length);

    private static CutPlan Plan(Region shape) => CutPlan.Of(Blank(shape), Torch, Kerf, 10);

    private static Piece Blank(Region shape, double thickness = 1) => Pieces.Plate with { Shape = shape, Thickness = thickness };

    private static Region Square(double side) => Region.Of(Outline.Rectangle(new(new(-side / 2, -side / 2), new(side / 2, side / 2))));

    private static Region Disc(double x, double y, double radius) => Region.Of(Outline.Circle(new(x, y), radius));
}
