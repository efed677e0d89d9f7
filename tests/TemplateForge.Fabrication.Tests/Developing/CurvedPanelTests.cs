using TemplateForge.Geometry;
using TemplateForge.Testing;

namespace TemplateForge.Fabrication.Tests.Developing;

/// <summary>Openings on curved panels by closed forms, with the face, the cut and the view that is asked for.</summary>
public class CurvedPanelTests
{
    // What docs/curved-panels.md promises of every curve.
    private const double Promise = 0.005;

    /// <summary>An arch of a radius over the straight edge from -half to half, its top at height 0.</summary>
    internal static Path Arch(double radius, double half)
    {
        var rise = radius - Math.Sqrt(radius * radius - half * half);
        return new(Segment.Arc(new(-half, -rise), new(half, -rise), -Math.Tan(Math.Asin(half / radius) / 2)));
    }

    internal static CurvedPanel Panel(PanelSection section)
    {
        Assert.True(CurvedPanel.TryOf(section, out var panel, out var fault), $"{fault}");
        return panel;
    }

    internal static Region Carried(CurvedPanel panel, Region shape)
    {
        Assert.True(panel.TryCarry(shape, out var carried, out var fault), $"{fault}");
        Law.IsWellMade(carried);
        return carried;
    }

    private static CurvedPanelFault Fault(PanelSection section)
    {
        Assert.False(CurvedPanel.TryOf(section, out _, out var fault));
        return fault!;
    }

    private static Region Disc(double radius, double x = 0, double y = 0) => Region.Of(Outline.Circle(new(x, y), radius));

    // Closed form: a circle of radius a seen square on a cylinder of radius R lies flat where x² + (R sin(s / R))² = a², 2 R asin(a / R) tall.
    [Theory]
    [InlineData(60, 80)]
    [InlineData(45, 300)]
    [InlineData(150, 1200)]
    public void A_circle_on_a_cylinder_is_the_curve_of_its_closed_form(double a, double radius)
    {
        var flat = Carried(Panel(new() { Section = Arch(radius, 0.96 * radius), Thickness = 1 }), Disc(a));
        Approximately.Equal(2 * radius * Math.Asin(a / radius), flat.Bounds.Height, within: 1e-6);
        Approximately.Equal(2 * a, flat.Bounds.Width, within: 1e-6);
        foreach (var p in flat.Contours[0].PointsEvery(0.7))
        {
            // How far the point lies from the curve: what the equation is out by, over its slope.
            var (x, y) = (p.X, radius * Math.Sin(p.Y / radius));
            var slope = 2 * Math.Sqrt(x * x + y * y * Math.Cos(p.Y / radius) * Math.Cos(p.Y / radius));
            Approximately.Equal(0, (x * x + y * y - a * a) / slope, within: Promise);
        }
    }

    // A straight line square to the rulings stays one; aslant across a cylinder it is a sine.
    [Fact]
    public void A_rectangle_keeps_its_sides_and_grows_as_tall_as_the_arc()
    {
        var flat = Carried(Panel(new() { Section = Arch(200, 190), Thickness = 1 }), Region.Of(Outline.Rectangle(new Box(new(-50, -120), new(70, 100)))));
        Assert.Equal(4, flat.Contours[0].Segments.Length);
        Assert.All(flat.Contours[0].Segments, s => Assert.True(s.IsLine));
        Approximately.Equal(new Point(-50, -200 * Math.Asin(0.6)), flat.Bounds.Min, within: 1e-9);
        Approximately.Equal(new Point(70, 200 * Math.Asin(0.5)), flat.Bounds.Max, within: 1e-9);
    }

    [Fact]
    public void On_a_straight_section_an_opening_stays_what_it_is()
    {
        var opening = Disc(40, 10, 5).Subtract(Region.Of(Outline.Rectangle(new Box(new(-100, -10), new(0, 10)))));
        var flat = Carried(Panel(new() { Section = Path.Line(new(-200, 7), new(200, 7)), Thickness = 1 }), opening);
        Assert.Equal(opening.Contours[0].Segments.Length, flat.Contours[0].Segments.Length);
        Approximately.Equal(opening.Area, flat.Area, within: 1e-6);
        foreach (var p in flat.Contours[0].PointsEvery(3)) Approximately.Equal(0, opening.BoundaryDistanceTo(p), within: 1e-7);
    }

    // A plane that leans by α is 1 / cos α longer than it is seen: a circle becomes an ellipse.
    [Fact]
    public void On_a_plane_that_leans_a_circle_is_an_ellipse()
    {
        var lean = Angle.FromDegrees(35);
        var section = Path.Line(Point.Origin + Vector.Polar(-300, lean), Point.Origin + Vector.Polar(300, lean));
        var flat = Carried(Panel(new() { Section = section, Thickness = 1 }), Disc(50));
        Approximately.Equal(100 / lean.Cos, flat.Bounds.Height, within: 1e-6);
        Approximately.Equal(Math.PI * 50 * 50 / lean.Cos, flat.Area, within: 0.3);

        // Seen square to the plane nothing is stretched.
        var square = Carried(Panel(new() { Section = section, Thickness = 1, SquareAt = [20] }), Disc(50));
        Approximately.Equal(100, square.Bounds.Height, within: 1e-6);
        var tilted = Carried(Panel(new() { Section = section, Thickness = 1, Tilt = lean }), Disc(50));
        Approximately.Equal(100, tilted.Bounds.Height, within: 1e-6);
    }

    // Half on the flat, half on a cylinder of 50: the lower half of the circle is exact, the upper ends at 50 asin(30 / 50).
    [Fact]
    public void Where_the_section_goes_over_from_flat_to_round_only_the_round_part_is_stretched()
    {
        var section = new Path(Segment.Line(new(-100, 0), new(0, 0)), Segment.Arc(new(0, 0), new(45, 50 - Math.Sqrt(2500 - 45 * 45)), Math.Tan(Math.Asin(0.9) / 4)));
        var flat = Carried(Panel(new() { Section = section, Thickness = 1 }), Disc(30));
        Approximately.Equal(-30, flat.Bounds.Min.Y, within: 1e-9);
        Approximately.Equal(50 * Math.Asin(0.6), flat.Bounds.Max.Y, within: 1e-6);
        Assert.All(flat.Contours[0].PointsEvery(0.5).Where(p => p.Y < 0), p => Approximately.Equal(30, p.DistanceTo(Point.Origin), within: 1e-7));
    }

    [Fact]
    public void Rulings_may_run_any_way_in_the_drawing()
    {
        var section = Arch(100, 90);
        var upright = Carried(Panel(new() { Section = section, Thickness = 1, Rulings = Angle.QuarterTurn }), Disc(60));
        Approximately.Equal(2 * 100 * Math.Asin(0.6), upright.Bounds.Width, within: 1e-6);
        var aslant = Panel(new() { Section = section, Thickness = 1, Rulings = Angle.FromDegrees(30) });
        Assert.True(aslant.TryCarry(Point.Origin + Vector.Polar(50, Angle.FromDegrees(120)), out var p, out _));
        Approximately.Equal(Point.Origin + Vector.Polar(100 * Math.Asin(0.5), Angle.FromDegrees(120)), p, within: 1e-9);
        Assert.True(aslant.TryCarry(Point.Origin + Vector.Polar(50, Angle.FromDegrees(30)), out p, out _));
        Approximately.Equal(Point.Origin + Vector.Polar(50, Angle.FromDegrees(30)), p, within: 1e-9);
    }

    // Sheet of 2 on a radius of 100 outside, 98 inside. Seen is the outside.
    [Theory]
    [InlineData(PanelFace.Outside, PanelFace.Outside, ThroughCut.Square, 100, 0.6)]
    [InlineData(PanelFace.Outside, PanelFace.Inside, ThroughCut.Square, 98, 0.6)]
    [InlineData(PanelFace.Outside, PanelFace.Inside, ThroughCut.Straight, 98, 60 / 98.0)]
    [InlineData(PanelFace.Outside, PanelFace.Outside, ThroughCut.Straight, 100, 0.6)]
    [InlineData(PanelFace.Inside, PanelFace.Outside, ThroughCut.Square, 102, 60 / 102.0)]
    [InlineData(PanelFace.Inside, PanelFace.Inside, ThroughCut.Square, 100, 60 / 102.0)]
    [InlineData(PanelFace.Inside, PanelFace.Inside, ThroughCut.Straight, 100, 0.6)]
    public void The_faces_differ_by_the_thickness_and_the_cut_says_how(PanelFace measured, PanelFace laid, ThroughCut cut, double radius, double sine)
    {
        var flat = Carried(Panel(new() { Section = Arch(100, 90), Thickness = 2, MeasuredOn = measured, LiesOn = laid, Cut = cut }), Disc(60));
        Approximately.Equal(2 * radius * Math.Asin(sine), flat.Bounds.Height, within: 1e-6);
    }

    [Fact]
    public void The_flat_of_the_inside_is_drawn_as_one_looks_at_the_inside()
    {
        var panel = Panel(new() { Section = Arch(100, 90), Thickness = 1, LiesOn = PanelFace.Inside });
        Assert.True(panel.IsMirrored);
        Assert.True(panel.TryCarry(new Point(30, 20), out var p, out _));
        Approximately.Equal(new Point(-30, 99 * Math.Asin(0.2)), p, within: 1e-9);
    }

    // Square at 30° round a cylinder of 100 the view is that of its top again, turned there.
    [Fact]
    public void A_view_square_to_the_panel_somewhere_is_that_of_its_top()
    {
        var upper = Arch(100, 95).Segments[0].Part(0.45, 1); // what lies further back would be hidden
        var panel = Panel(new() { Section = new(upper), Thickness = 1, Datum = 50, SquareAt = [50] });
        Approximately.Equal(-30, panel.Tilt.Degrees, within: 1e-9);
        var flat = Carried(panel, Disc(30));
        Approximately.Equal(2 * 100 * Math.Asin(0.3), flat.Bounds.Height, within: 1e-6);
        Approximately.Equal(0, flat.Bounds.Centre.Y, within: 1e-6);
    }

    // r = c² / 8h + h / 2: 240 over a rise of 9 is 804.5. Along the panel 50 is seen as 804.5 sin(50 / 804.5).
    [Fact]
    public void Steps_along_the_panel_are_compared_with_what_is_seen()
    {
        const double radius = 240 * 240 / (8 * 9.0) + 9 / 2.0;
        var panel = Panel(new() { Section = new(Segment.Arc(new(-120, 0), new(120, 0), -2 * 9 / 240.0)), Thickness = 1 });
        var steps = panel.Steps(50);
        Assert.Equal([-100.0, -50, 50, 100], steps.Select(s => Math.Round(s.Along, 9)));
        Assert.All(steps, s => Approximately.Equal(radius * Math.Sin(s.Along / radius), s.Seen, within: 1e-9));
    }

    [Fact]
    public void A_section_may_be_drawn_from_either_end()
    {
        var (one, other) = (Arch(300, 200), Arch(300, 200).Reversed());
        Approximately.Equal(
            Carried(Panel(new() { Section = one, Thickness = 1, Datum = 60 }), Disc(50)).Bounds,
            Carried(Panel(new() { Section = other, Thickness = 1, Datum = 60 }), Disc(50)).Bounds,
            within: 1e-9);
    }

    [Fact]
    public void A_section_that_runs_back_or_stands_straight_up_is_refused()
    {
        var beyond = new Path(Segment.Arc(new(-50, 0), new(50, 0), -1), Segment.Arc(new(50, 0), new(0, -50), -Math.Tan(Math.PI / 8)));
        Assert.Equal(CurvedPanelFaultKind.RunsBack, Fault(new() { Section = beyond, Thickness = 1 }).Kind);
        var step = new Path(Segment.Line(new(-50, 0), new(0, 0)), Segment.Line(new(0, 0), new(0, 5)), Segment.Line(new(0, 5), new(50, 5)));
        var fault = Fault(new() { Section = step, Thickness = 1 });
        Assert.Equal((CurvedPanelFaultKind.RunsBack, 0.0), (fault.Kind, fault.Across));
    }

    [Fact]
    public void A_view_in_which_the_panel_hides_itself_is_refused() =>
        Assert.Equal(CurvedPanelFaultKind.Hides, Fault(new() { Section = Arch(100, 90), Thickness = 1, Tilt = Angle.FromDegrees(50) }).Kind);

    [Fact]
    public void What_reaches_past_the_section_or_too_far_down_its_side_is_refused()
    {
        Assert.False(Panel(new() { Section = Arch(100, 50), Thickness = 1 }).TryCarry(Disc(50.1), out _, out var fault));
        Assert.Equal(CurvedPanelFaultKind.PastTheEnd, fault!.Kind);
        Approximately.Equal(50, Math.Abs(fault.Limit), within: 1e-9);
        Assert.False(Panel(new() { Section = Arch(100, 99.9), Thickness = 1 }).TryCarry(new Point(0, 99), out _, out fault));
        Assert.Equal(CurvedPanelFaultKind.TooSteep, fault!.Kind);
        Assert.Equal(CurvedPanelFaultKind.PastTheEnd, Fault(new() { Section = Arch(100, 50), Thickness = 1, Datum = 60 }).Kind);
    }

    [Fact]
    public void Another_face_needs_a_section_without_sharp_corners_and_rounds_that_the_sheet_leaves()
    {
        var corner = new Path(Segment.Line(new(-50, 0), new(0, 0)), Segment.Line(new(0, 0), new(50, 20)));
        Assert.Equal(CurvedPanelFaultKind.SharpCorner, Fault(new() { Section = corner, Thickness = 1, LiesOn = PanelFace.Inside }).Kind);
        Assert.Equal(CurvedPanelFaultKind.SquareInACorner, Fault(new() { Section = corner, Thickness = 1, SquareAt = [0] }).Kind);
        Assert.True(CurvedPanel.TryOf(new() { Section = corner, Thickness = 1 }, out _, out _));
        var fault = Fault(new() { Section = Arch(3, 2), Thickness = 3, LiesOn = PanelFace.Inside });
        Assert.Equal((CurvedPanelFaultKind.RounderThanTheSheet, 3.0), (fault.Kind, fault.Limit));
        // Measured inside, the outside of the same arch is rounder by the sheet, and has room.
        Assert.True(CurvedPanel.TryOf(new() { Section = Arch(3, 2), Thickness = 3, MeasuredOn = PanelFace.Inside }, out _, out _));
    }

    [Fact]
    public void Seen_on_its_edge_the_sheet_is_as_thick_as_it_is() =>
        Approximately.Equal(
            2 * Math.Asin(0.8) * (100 * 100 - 98 * 98) / 2, Panel(new() { Section = Arch(100, 80), Thickness = 2 }).Edge.Area, within: 1e-6);
}
