using System.Collections.Immutable;
using TemplateForge.Geometry;
using TemplateForge.Testing;

namespace TemplateForge.Fabrication.Tests;

/// <summary>Flanges laid flat, against what is worked out by hand beside each.</summary>
public class FlangedBlankTests
{
    private const double Thickness = 1;
    private static readonly KFactorRule Rule = new(0.44);

    // One bend through 90°, R 1.5, T 1, K 0.44: allowance (1.5 + 0.44) π / 2 = 3.0473, two setbacks 5, deduction 1.9527.
    private const double Deduction = 5 - 1.94 * Math.PI / 2;

    private static Fold Up(double leg, double degrees = 90, BendWay way = BendWay.Up) =>
        new(new(Angle.FromDegrees(degrees), 1.5, Thickness, Rule), way, new(leg));

    private static Region Floor => Region.Of(Outline.Rectangle(new(Point.Origin, new(100, 60))));

    private static FlangedBlank Lay(FlangedSheet sheet)
    {
        Assert.True(FlangedBlank.TryLayFlat(sheet, out var blank, out var faults), string.Join(", ", faults));
        Law.IsWellMade(blank.Shape);
        return blank;
    }

    private static FlangedSheet Tray(CornerJoint corners, params Fold[] folds) =>
        new(Floor, Thickness, MeasuredBy.Outside, new Flange(Floor.Contours[0].Segments, [.. folds])) { Corners = corners };

    [Theory]
    [InlineData(CornerJoint.Mitred)]
    [InlineData(CornerJoint.Closed)]
    [InlineData(CornerJoint.Open)]
    public void A_tray_is_as_large_as_its_floor_and_two_flanges_less_their_deductions(CornerJoint corners)
    {
        var blank = Lay(Tray(corners, Up(20)));
        Approximately.Equal(100 + 2 * (20 - Deduction), blank.Shape.Bounds.Width, within: 1e-9);
        Approximately.Equal(60 + 2 * (20 - Deduction), blank.Shape.Bounds.Height, within: 1e-9);
        Assert.Single(blank.Shape.Contours);
        Assert.Equal([1, 2, 3, 4], blank.BendLines(Springback.Unstated).Select(b => b.Number));
    }

    // Inner edges meet where both end a thickness before the corner; one that laps runs on to the corner, one that is open ends at its bend.
    [Theory]
    [InlineData(CornerJoint.Mitred, 98, 98)]
    [InlineData(CornerJoint.Closed, 99, 99)]
    [InlineData(CornerJoint.Open, 95, 95)]
    public void A_flange_is_as_long_at_its_edge_as_its_corners_leave_it(CornerJoint corners, double lower, double upper)
    {
        var shape = Lay(Tray(corners, Up(20))).Shape;
        Approximately.Equal(lower, LengthAt(shape, -15), within: 1e-9);
        Approximately.Equal(upper, LengthAt(shape, 75), within: 1e-9);
    }

    // A flange that leans out by 30° from upright has its free edge 20 sin 30° further out: the mitre opens by as much at both ends.
    [Fact]
    public void A_flange_that_leans_out_gets_longer_towards_its_edge()
    {
        var shape = Lay(Tray(CornerJoint.Mitred, Up(20, degrees: 60))).Shape;
        var longest = LengthAt(shape, shape.Bounds.Min.Y + 0.0005);
        Approximately.Equal(100 + 2 * (20 * 0.5 - Math.Sin(Math.PI / 3)), longest, within: 0.001);
    }

    [Fact]
    public void A_round_hole_is_cut_smaller_by_its_flange()
    {
        var hole = Region.Of(Outline.Circle(new(50, 30), 15));
        var holed = Floor.Subtract(hole);
        var rim = new Flange([.. holed.Contours.Single(c => !c.IsCounterClockwise).Segments], [Up(6, degrees: 45)]);
        var blank = Lay(new(holed, Thickness, MeasuredBy.Outside, rim));
        var bend = new Bend(Angle.FromDegrees(45), 1.5, Thickness, Rule);
        var cut = blank.Shape.Contours.Single(c => !c.IsCounterClockwise);
        Approximately.Equal(2 * (15 - (6 - bend.OutsideDeduction)), cut.Bounds.Width, within: 1e-9);
        Assert.Empty(blank.BendLines(Springback.Unstated));
        Assert.Equal([1], blank.CurvedBends(Springback.Unstated).Select(b => b.Number).Distinct());
        Assert.All(blank.Strains, s => Assert.True(s.IsStretch));
    }

    // The radial model: 50 / 40 - 1 for an edge that is 10 mm wide on the flat and comes to stand on its bend.
    [Fact]
    public void The_edge_of_an_upright_flange_round_a_hole_is_stretched_by_what_the_closed_form_says()
    {
        var plate = Region.Of(Outline.Circle(Point.Origin, 90)).Subtract(Region.Of(Outline.Circle(Point.Origin, 50)));
        var rim = new Flange([.. plate.Contours.Single(c => !c.IsCounterClockwise).Segments], [Up(10 + Deduction)]);
        var strain = Lay(new(plate, Thickness, MeasuredBy.Outside, rim)).Strains[0];
        // The middle of the sheet stands half a thickness outside the bend line.
        Approximately.Equal(EdgeStrain.Share(40, 50.5), strain.Share, within: 1e-9);
        Approximately.Equal(0.25, strain.Share, within: 0.02);
    }

    [Fact]
    public void A_flange_that_runs_round_a_rounded_corner_is_one_and_shrinks_there()
    {
        var lid = Floor.RoundedCorners(12).Region;
        var blank = Lay(new(lid, Thickness, MeasuredBy.Outside, new Flange([.. lid.Contours[0].Segments], [Up(10)])));
        Approximately.Equal(100 + 2 * (10 - Deduction), blank.Shape.Bounds.Width, within: 1e-9);
        Assert.Equal([1], blank.BendLines(Springback.Unstated).Select(b => b.Number).Concat(blank.CurvedBends(Springback.Unstated).Select(b => b.Number)).Distinct());
        Assert.Equal(4, blank.Strains.Length);
        Assert.All(blank.Strains, s => Assert.False(s.IsStretch));
        Assert.Contains(blank.Warnings(Soft, Brake), w => w.Rule == "edge shrunk too far");
    }

    [Fact]
    public void Thin_sheet_is_held_to_the_limit_of_its_thickness()
    {
        var lid = Floor.RoundedCorners(12).Region;
        var blank = Lay(new(lid, Thickness, MeasuredBy.Outside, new Flange([.. lid.Contours[0].Segments], [Up(10)])));
        var soft = new Material("soft", "soft sheet", MetalFamily.Steel, 7850, 0.5, 0.44, 0.9, false);
        Assert.DoesNotContain(blank.Warnings(soft, Brake), w => w.Rule == "edge shrunk too far");
        var thin = soft with { ThinStretchLimits = new((Thickness, 0.2)) };
        Assert.Contains(blank.Warnings(thin, Brake), w => w.Rule == "edge shrunk too far");
        var thinner = soft with { ThinStretchLimits = new((Thickness - 0.1, 0.2)) };
        Assert.DoesNotContain(blank.Warnings(thinner, Brake), w => w.Rule == "edge shrunk too far");
    }

    private static FlangedBlank Lid(double radius, double leg, int cuts)
    {
        var lid = Floor.RoundedCorners(radius).Region;
        return Lay(new(lid, Thickness, MeasuredBy.Outside, new Flange([.. lid.Contours[0].Segments], [Up(leg)]) { ReliefCuts = cuts }));
    }

    private static readonly Material Soft = new("soft", "soft sheet", MetalFamily.Steel, 7850, 0.5, 0.44, 0.2, false);

    // An arc of a quarter turn, 22 mm long at its free edge and 7 wide, wants five cuts (31.5 mm by 7.5). With cuts the free edge is as long as where it ends.
    [Theory]
    [InlineData(0, true)]
    [InlineData(1, true)]
    [InlineData(5, false)]
    public void Enough_relief_cuts_take_the_warning_away_and_as_much_edge_as_is_too_long(int cuts, bool warned)
    {
        var blank = Lid(radius: 12, leg: 10, cuts);
        Assert.Single(blank.Shape.Contours);
        Assert.Equal(warned, blank.Warnings(Soft, Brake).Any(w => w.Rule == "edge shrunk too far"));
        var free = 12 + 10 - Deduction;
        var edge = blank.Shape.Contours[0].Segments.Where(s => !s.IsLine && Math.Abs(s.Radius - free) < 1e-6).Sum(s => s.Length);
        if (cuts > 0) Approximately.Equal(4 * Math.PI / 2 * (12 - 0.5), edge, within: 0.02);
    }

    [Theory]
    [InlineData(10, 40)]
    [InlineData(7, 4)]
    public void Relief_cuts_for_which_there_is_no_room_are_refused(double leg, int cuts)
    {
        var lid = Floor.RoundedCorners(12).Region;
        Flange rim = new([.. lid.Contours[0].Segments], [Up(leg)]) { ReliefCuts = cuts };
        Assert.False(FlangedBlank.TryLayFlat(new(lid, Thickness, MeasuredBy.Outside, rim), out _, out var faults));
        Assert.All(faults, f => Assert.Equal(FlangeFaultKind.NoRoomForCuts, f.Kind));
    }

    // Where the neighbour goes on without a corner the joint is smooth but for rounding: the same blank whichever way it is turned.
    [Theory]
    [InlineData(7)]
    [InlineData(29)]
    [InlineData(41)]
    [InlineData(77)]
    public void A_blank_that_is_turned_is_the_same_blank(double degrees)
    {
        Approximately.Equal(AreaTurned(0), AreaTurned(degrees), within: 1e-6);

        static double AreaTurned(double degrees)
        {
            var turned = Floor.RoundedCorners(20).Region.Placed(Placement.Turned(Angle.FromDegrees(degrees), new(3, 5)));
            var longest = turned.Contours[0].Segments.MaxBy(s => s.IsLine ? s.Length : 0);
            return Lay(new(turned, Thickness, MeasuredBy.Outside, new Flange([longest], [Up(20)]))).Shape.Area;
        }
    }

    [Theory]
    [InlineData(1)]
    [InlineData(2)]
    [InlineData(3)]
    public void An_arc_with_no_room_for_its_bend_is_refused(double radius)
    {
        var lid = Floor.RoundedCorners(radius).Region;
        Assert.False(FlangedBlank.TryLayFlat(new(lid, Thickness, MeasuredBy.Outside, new Flange([.. lid.Contours[0].Segments], [Up(10)])), out _, out var faults));
        Assert.All(faults, f => Assert.Equal(FlangeFaultKind.ArcTooTight, f.Kind));
    }

    [Fact]
    public void Edges_that_go_on_without_a_corner_are_bent_alike_or_refused()
    {
        var lid = Floor.RoundedCorners(20).Region;
        var sides = lid.Contours[0].Segments;
        FlangedSheet sheet = new(lid, Thickness, MeasuredBy.Outside, new Flange([sides[0]], [Up(20)]), new Flange([.. sides.Skip(1)], [Up(20, degrees: 60)]));
        Assert.False(FlangedBlank.TryLayFlat(sheet, out _, out var faults));
        Assert.Contains(faults, f => f.Kind == FlangeFaultKind.NeighbourDiffers);
    }

    // 4 t + r = 5.5 over the outside: one leg of the run is too short, and it is not the longest edge's.
    [Fact]
    public void Every_leg_of_a_run_is_looked_at()
    {
        var lid = Floor.RoundedCorners(20).Region;
        var sides = lid.Contours[0].Segments;
        var shortest = sides.Where(s => s.IsLine).MinBy(s => s.Length);
        FlangedSheet sheet = new(lid, Thickness, MeasuredBy.Outside, new Flange([shortest], [Up(5)]), new Flange([.. sides.Where(s => s != shortest)], [Up(12)]));
        Assert.Contains(Lay(sheet).Warnings(Soft, Brake), w => w.Rule == "flange too short");
    }

    [Fact]
    public void A_sheet_with_a_relief_or_gap_that_is_none_or_a_flange_beside_its_base_is_refused()
    {
        Assert.Throws<ArgumentOutOfRangeException>(() => Tray(CornerJoint.Mitred, Up(20)) with { ReliefSize = 0 });
        Assert.Throws<ArgumentOutOfRangeException>(() => Tray(CornerJoint.Mitred, Up(20)) with { Gap = -1 });
        var elsewhere = new Flange([Segment.Line(new(200, 0), new(300, 0))], [Up(20)]);
        Assert.Throws<ArgumentException>(() => new FlangedSheet(Floor, Thickness, MeasuredBy.Outside, elsewhere));
    }

    [Fact]
    public void At_an_inner_corner_the_flanges_are_kept_apart_by_a_slot()
    {
        var angle = Region.Of(Outline.Polygon(new(0, 0), new(100, 0), new(100, 40), new(50, 40), new(50, 90), new(0, 90)));
        var blank = Lay(new(angle, Thickness, MeasuredBy.Outside, new Flange([.. angle.Contours[0].Segments], [Up(15)])));
        Assert.Single(blank.Shape.Contours);
        Assert.Equal(6, blank.BendLines(Springback.Unstated).Length);
        Assert.False(blank.Shape.Contains(new(55, 45)));
    }

    [Fact]
    public void A_hem_is_bent_before_the_flange_that_it_edges()
    {
        var hem = Hem.Closed(6, Thickness, BendWay.Up)[0];
        var blank = Lay(Tray(CornerJoint.Mitred, Up(20), hem));
        var lines = blank.BendLines(Springback.Unstated);
        Assert.Equal(8, lines.Length);
        Assert.All(lines.Take(4), l => Assert.Equal(Angle.HalfTurn, l.Bend));
        Approximately.Equal(100 + 2 * (20 - Deduction + 6), blank.Shape.Bounds.Width, within: 1e-9);
    }

    [Theory]
    [InlineData(1, FlangeFaultKind.LegTooShort)]
    [InlineData(20, FlangeFaultKind.ArcTooTight)]
    public void What_cannot_be_laid_flat_says_why(double leg, FlangeFaultKind kind)
    {
        var holed = Floor.Subtract(Region.Of(Outline.Circle(new(50, 30), 15)));
        var rim = new Flange([.. holed.Contours.Single(c => !c.IsCounterClockwise).Segments], [Up(leg)]);
        Assert.False(FlangedBlank.TryLayFlat(new(holed, Thickness, MeasuredBy.Outside, rim), out _, out var faults));
        Assert.Contains(faults, f => f.Kind == kind);
    }

    [Fact]
    public void Flanges_that_would_lie_over_each_other_on_the_flat_are_refused()
    {
        var holed = Floor.Subtract(Region.Of(Outline.Rectangle(new(new(30, 25), new(70, 35)))));
        var rim = new Flange([.. holed.Contours.Single(c => !c.IsCounterClockwise).Segments], [Up(9)]);
        Assert.False(FlangedBlank.TryLayFlat(new(holed, Thickness, MeasuredBy.Outside, rim), out _, out var faults));
        Assert.Contains(faults, f => f.Kind is FlangeFaultKind.LiesOverAnother or FlangeFaultKind.LiesOverTheBase or FlangeFaultKind.NothingLeft);
    }

    private static Brake Brake => new("brake", 1250, 12, 12, 25, 25, Angle.FromDegrees(45));

    // How much metal there is across the blank at a height.
    private static double LengthAt(Region shape, double height) =>
        Path.Line(new(-500, height), new(500, height)).PartsInside(shape).Sum(p => p.Length);
}
