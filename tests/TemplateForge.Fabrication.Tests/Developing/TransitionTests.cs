using TemplateForge.Geometry;
using TemplateForge.Testing;

namespace TemplateForge.Fabrication.Tests;

/// <summary>Transitions against figures and closed forms.</summary>
public class TransitionTests
{
    public static TransitionEnd Square(double side, double height = 0) => Rectangle(side, side, 0, height);

    public static TransitionEnd Rectangle(double width, double depth, double radius, double height = 0) =>
        new(Outline.RoundedRectangle(new Box(new(-width / 2, -depth / 2), new(width / 2, depth / 2)), radius).Segments) { Height = height };

    public static TransitionEnd Circle(double diameter, double height = 0) => new(Outline.Circle(Point.Origin, diameter / 2).Segments) { Height = height };

    public static TransitionPattern LaidFlat(Transition transition)
    {
        Assert.True(TransitionPattern.TryLayFlat(transition, out var pattern, out var fault), $"{fault}");
        return pattern;
    }

    // A worked case, reckoned by hand: square 100, round 60 above its middle, height 80, twelve divisions. From a corner to the round at 0° and 90°
    // in plan √(20² + 50²) = 53.8516, true 96.4365; at 30° and 60° true 90.5645; a chord of the round 15.5291; at the seam in the middle of a side
    // √(20² + 80²) = 82.4621. Four decimals, so 0.00005.
    [Fact]
    public void A_square_to_a_round_in_twelve_divisions_has_the_true_lengths()
    {
        var pattern = LaidFlat(new(Square(100), Circle(60, 80)) { Work = TransitionWork.Pressed, Divisions = 3 });
        var rulings = Assert.Single(pattern.Parts).Rulings;
        // The seam twice; the two flats beside it and the three flats on; of the fans four rulings at each of four corners.
        Assert.Equal(2 + 16, rulings.Length);
        var lengths = rulings.Select(r => r.Lower.DistanceTo(r.Upper)).ToList();
        foreach (var (length, count) in ((double, int)[])[(82.4621, 2), (96.4365, 8), (90.5645, 8)])
            Assert.Equal(count, lengths.Count(l => Math.Abs(l - length) < 0.00005));
        var steps = rulings.Zip(rulings.Skip(1), (a, b) => a.Upper.DistanceTo(b.Upper)).Where(d => d > 0).ToList();
        Assert.Equal(12, steps.Count);
        Assert.All(steps, step => Approximately.Equal(15.5291, step, within: 0.00005));
    }

    // Its flat sides are triangles with nothing bent in them: the bends are those of the four fans, four each, and none at the seam.
    [Fact]
    public void A_square_to_a_round_is_bent_along_its_fans_only()
    {
        var pressed = LaidFlat(new(Square(100), Circle(60, 80)) { Work = TransitionWork.Pressed, Divisions = 3 }).Parts[0];
        Assert.Equal(16, pressed.Bends.Length);
        Assert.All(pressed.Bends, bend => Assert.Equal(BendWay.Up, bend.Way));
        var rolled = LaidFlat(new(Square(100), Circle(60, 80)) { Divisions = 6 }).Parts[0];
        Assert.Equal([1, 2, 3, 4], rolled.Bends.Select(b => b.Number).Distinct());
        // Every line of a rolled fan runs to its corner, and there are as many at each.
        Assert.Equal([6, 6, 6, 6], rolled.Bends.GroupBy(b => (Math.Round(b.To.X, 3), Math.Round(b.To.Y, 3))).Select(g => g.Count()));
        Assert.Single(rolled.Bends.Select(b => Math.Round(b.Bend.Degrees, 2)).Distinct());
    }

    // General geometry: faces that rise 80 over a run of 20 have normals (80, 0, 20) and (0, 80, 20); cos = 400 / 6800.
    [Theory, InlineData(TransitionWork.Pressed), InlineData(TransitionWork.Rolled)]
    public void A_pyramid_without_a_top_is_four_flats_bent_as_far_as_their_normals_are_apart(TransitionWork work)
    {
        var part = LaidFlat(new(Square(100), Square(60, 80)) { Work = work }).Parts[0];
        Assert.Equal(4, part.Bends.Length);
        Assert.All(part.Bends, bend => Approximately.Equal(Math.Acos(400.0 / 6800) * 180 / Math.PI, bend.Bend.Degrees, within: 1e-9));
        Approximately.Equal(4 * 80 * Math.Sqrt(6800), part.Shape.Area, within: 1e-6);
        Assert.All(part.Shape.Contours[0].Segments, s => Assert.True(s.IsLine));
    }

    // Sector: slant √((R − r)² + H²), outer radius slant R / (R − r), angle 360° R / outer radius (mensuration of a frustum). What is promised is
    // 0.01 mm along an edge: 0.002 for each arc and what fitting takes.
    [Fact]
    public void A_round_to_a_round_is_the_sector_of_its_cone()
    {
        var (r1, r2, h) = (100.0, 60.0, 80.0);
        var part = LaidFlat(new(Circle(2 * r1), Circle(2 * r2, h))).Parts[0];
        var slant = Math.Sqrt((r1 - r2) * (r1 - r2) + h * h);
        var outer = slant * r1 / (r1 - r2);
        Approximately.Equal(2 * Math.PI * r1, part.LowerEdge.Sum(r => r.Length), within: 0.01);
        Approximately.Equal(2 * Math.PI * r2, part.UpperEdge.Sum(r => r.Length), within: 0.01);
        Approximately.Equal(Math.PI * (r1 + r2) * slant, part.Shape.Area, within: 0.5);
        var (first, last) = (part.Rulings[0], part.Rulings[^1]);
        var angle = 2 * Math.PI * r1 / outer;
        Approximately.Equal(2 * outer * Math.Sin(angle / 2), first.Lower.DistanceTo(last.Lower), within: 0.005);
    }

    [Fact]
    public void Two_equal_outlines_above_each_other_are_a_rectangle()
    {
        var part = LaidFlat(new(Rectangle(120, 80, 20), Rectangle(120, 80, 20, 50)) { Divisions = 3 }).Parts[0];
        var girth = 2 * (80 + 40) + 2 * Math.PI * 20;
        Approximately.Equal(girth, part.Shape.Bounds.Width, within: 0.008);
        Approximately.Equal(50, part.Shape.Bounds.Height, within: 1e-3);
        // Four quarter turns of three press lines, 30° each.
        Assert.Equal(12, part.Bends.Length);
        Assert.All(part.Bends, bend => Approximately.Equal(30, bend.Bend.Degrees, within: 1e-6));
    }

    // An oblique cone's rulings meet in one point: lines of the two circles' same directions.
    [Fact]
    public void A_round_to_a_round_beside_it_is_an_oblique_cone()
    {
        var part = LaidFlat(new(Circle(200), Circle(100, 80) with { Shift = new(60, 0) })).Parts[0];
        // By thales the apex stands above (120, 0), 160 high: the shortest ruling is half of √((120 − 100)² + 160²), the longest half of √(220² + 160²).
        var lengths = part.Rulings.Select(r => r.Lower.DistanceTo(r.Upper)).ToList();
        Approximately.Equal(Math.Sqrt(20 * 20 + 160 * 160) / 2, lengths.Min(), within: 0.001);
        // Beside it stand rulings that are one step askew.
        Approximately.Equal(Math.Sqrt(220 * 220 + 160 * 160) / 2, lengths.Max(), within: 0.01);
        Approximately.Equal(200 * Math.PI, part.LowerEdge.Sum(r => r.Length), within: 0.01);
    }

    // Fold(1 / cos) apart: a mitred tube is as long on the flat as its girth, its edge y = h + r tan(tilt) cos(phi).
    [Fact]
    public void A_tube_cut_by_a_slanting_plane_is_as_high_all_round_as_the_plane_is()
    {
        var (r, h, tilt) = (50.0, 100.0, Angle.FromDegrees(30));
        var ellipse = Outline.Ellipse(Point.Origin, r / tilt.Cos, r, Angle.Zero).Segments;
        var part = LaidFlat(new(Circle(2 * r), new TransitionEnd(ellipse) { Height = h, Tilt = tilt })).Parts[0];
        Approximately.Equal(2 * Math.PI * r, part.Shape.Bounds.Width, within: 0.01);
        Approximately.Equal(h + r * tilt.Tan, part.Shape.Bounds.Height, within: 0.01);
        // 100 apart, each on its own side: an upright ruling stands where the tube's does. Beside its ends a ruling of a triangle leans.
        Approximately.Equal(2 * Math.PI * r * h, part.Shape.Area, within: 5);
    }

    [Fact]
    public void A_lap_is_the_beginning_of_the_next_part_once_more()
    {
        var plain = LaidFlat(new(Square(100), Circle(60, 80))).Parts[0];
        var lapped = LaidFlat(new(Square(100), Circle(60, 80)) { Lap = 10 }).Parts[0];
        // A strip 10 wide along a seam 82.4621 long, a right angle with the lower edge; the upper edge curves away from one by 10² / 2r, r being 30 or more.
        Assert.InRange(lapped.Shape.Area - plain.Shape.Area, 824.6, 824.6 + 10 * 10 * 10 / 6.0 / 30);
        Assert.Single(lapped.LapLines);
    }

    [Fact]
    public void Laps_at_the_ends_are_as_wide_as_was_asked_for_and_lean_in_at_corners()
    {
        var plain = LaidFlat(new(Square(100), Square(60, 80))).Parts[0];
        var lapped = LaidFlat(new(Square(100), Square(60, 80)) { LowerLap = 12 }).Parts[0];
        Law.IsWellMade(lapped.Shape);
        // Five strips 12 wide on edges 400 long in all, each less two triangles of 12² tan 25° / 2.
        Approximately.Equal(400 * 12 - 5 * 12 * 12 * Math.Tan(25 * Math.PI / 180), lapped.Shape.Area - plain.Shape.Area, within: 1e-6);
        Assert.Equal(5, lapped.LapLines.Length);
    }

    // The corners of two squares 100 mm across and 100 tall lie on upright edges: on the flat the lower edge goes straight on through them.
    [Fact]
    public void A_lap_ends_at_a_corner_of_the_outline_through_which_the_flat_edge_goes_straight_on()
    {
        var plain = LaidFlat(new(Square(100), Square(100, 100))).Parts[0];
        var lapped = LaidFlat(new(Square(100), Square(100, 100)) { LowerLap = 12 }).Parts[0];
        Approximately.Equal(400 * 12 - 5 * 12 * 12 * Math.Tan(25 * Math.PI / 180), lapped.Shape.Area - plain.Shape.Area, within: 1e-6);
    }

    [Fact]
    public void A_lap_runs_on_round_an_ellipse()
    {
        TransitionEnd Ellipse(double height) => new(Outline.Ellipse(Point.Origin, 60, 40, Angle.Zero).Segments) { Height = height };
        var plain = LaidFlat(new(Ellipse(0), Ellipse(100))).Parts[0];
        var lapped = LaidFlat(new(Ellipse(0), Ellipse(100)) { LowerLap = 12 }).Parts[0];
        // One strip beside an edge that is straight on the flat, less its two ends.
        Approximately.Equal(plain.LowerEdge.Sum(r => r.Length) * 12 - 12 * 12 * Math.Tan(25 * Math.PI / 180), lapped.Shape.Area - plain.Shape.Area, within: 0.1);
    }

    [Theory, InlineData(2), InlineData(4)]
    public void Parts_share_the_girth_evenly_and_meet_in_the_middle_of_sides(int parts)
    {
        var pattern = LaidFlat(new(Square(100), Circle(60, 80)) { Parts = parts });
        Assert.Equal(parts, pattern.Parts.Length);
        var whole = LaidFlat(new(Square(100), Circle(60, 80))).Parts[0];
        Assert.All(pattern.Parts, part =>
        {
            Approximately.Equal(400.0 / parts, part.LowerEdge.Sum(r => r.Length), within: 1e-6);
            Approximately.Equal(82.46211251, part.Rulings[0].Lower.DistanceTo(part.Rulings[0].Upper), within: 1e-6);
            Approximately.Equal(whole.Shape.Area / parts, part.Shape.Area, within: 0.05);
        });
        for (var i = 1; i < parts; i++) Assert.True(pattern.Parts[i].Shape.Bounds.Min.X > pattern.Parts[i - 1].Shape.Bounds.Max.X + 1);
    }

    [Fact]
    public void The_seam_stands_where_it_was_asked_for()
    {
        var pattern = LaidFlat(new(Square(100), Circle(60, 80)) { SeamAt = [new(80, 60)] });
        var first = pattern.Parts[0].Rulings[0];
        Assert.Contains(Math.Round(first.Lower.DistanceTo(first.Upper), 3), (double[])[90.204, 96.437, 90.565]);
        var middle = LaidFlat(new(Square(100), Circle(60, 80)) { SeamAt = [new(0, 50)] }).Parts[0].Rulings[0];
        Approximately.Equal(82.46211251, middle.Lower.DistanceTo(middle.Upper), within: 1e-6);
    }

    public static TheoryData<string, Transition, TransitionFault> Impossible => new()
    {
        { "in one plane", new(Square(100), Circle(60)), TransitionFault.OutlinesCross },
        { "the upper one below", new(Square(100), Circle(60, -20)), TransitionFault.OutlinesCross },
        { "tilted through the lower one", new(Square(100), Circle(60, 30) with { Tilt = Angle.FromDegrees(60) }), TransitionFault.OutlinesCross },
        { "turned upside down", new(Square(100), Circle(60, 80) with { Tilt = Angle.HalfTurn }), TransitionFault.OutlinesCross },
    };

    [Theory, MemberData(nameof(Impossible))]
    public void What_cannot_be_joined_is_refused(string why, Transition transition, TransitionFault fault)
    {
        Assert.NotEmpty(why);
        Assert.False(TransitionPattern.TryLayFlat(transition, out _, out var found));
        Assert.Equal(fault, found);
    }
}
