using TemplateForge.Geometry;
using TemplateForge.Testing;

namespace TemplateForge.Fabrication.Tests;

/// <summary>The folding up itself, on blanks whose bend lines are worked out by hand. General geometry, no printed figures.</summary>
public class FoldedBlankTests
{
    // R 2, T 1, allowance 4: an outside leg is its flat and 3 mm more for every square bend.
    private static BendLine Line(double x, double height = 30, double degrees = 90, BendWay way = BendWay.Up) =>
        new(1, new(x, 0), new(x, height), Angle.FromDegrees(degrees), Angle.FromDegrees(degrees), way, InsideRadius: 2, Allowance: 4);

    private static Region Strip(double length) => Region.Of(Outline.Rectangle(new(Point.Origin, new(length, 30))));

    // What is held lies to the left of a line that runs up. Tangent lines at 20 and 24, then 10 mm flat.
    [Fact]
    public void An_L_stands_as_high_as_its_flat_and_its_radius_and_thickness()
    {
        var bend = new FoldedBlank(Strip(34), [Line(22)], thickness: 1).Bends[0];
        Approximately.Equal(90, bend.Degrees, within: 1e-9);
        Assert.True(bend.Rises);
        Approximately.Equal(23, bend.EndOfHeld(outside: true), within: 1e-9);
        Approximately.Equal(22, bend.EndOfHeld(outside: false), within: 1e-9);
        Approximately.Equal(12, bend.Turned.Corners.Max(c => c.Z), within: 1e-9);
        Approximately.Equal(22, bend.Turned.Corners.Min(c => c.X), within: 1e-9);
        Approximately.Equal(23, bend.Turned.Corners.Max(c => c.X), within: 1e-9);
        Approximately.Equal(-1, bend.StartOfTurned(outside: true), within: 1e-9);
    }

    [Fact]
    public void An_L_bent_down_hangs_as_far_below_the_drawn_face()
    {
        var bend = new FoldedBlank(Strip(34), [Line(22, way: BendWay.Down)], thickness: 1).Bends[0];
        Assert.False(bend.Rises);
        Approximately.Equal(-13, bend.Turned.Corners.Min(c => c.Z), within: 1e-9);
        Approximately.Equal(23, bend.EndOfHeld(outside: true), within: 1e-9);
    }

    // Bent by 60° the tangent line comes to R sin 60° and R - R cos 60°; the mould line lies (R + T) tan 30° on from the tangent line.
    [Fact]
    public void A_leaning_leg_begins_where_its_arc_ends()
    {
        var bend = new FoldedBlank(Strip(34), [Line(22, degrees: 60)], thickness: 1).Bends[0];
        Approximately.Equal(60, bend.Degrees, within: 1e-9);
        var (sin, cos) = (Math.Sin(Math.PI / 3), 0.5);
        var top = bend.Turned.Corners.MaxBy(c => c.Z);
        Approximately.Equal(2 - 2 * cos + 10 * sin, top.Z, within: 1e-9);
        Approximately.Equal(20 + 2 * sin + 10 * cos, top.X, within: 1e-9);
        Approximately.Equal(20 + 3 * Math.Tan(Math.PI / 6), bend.EndOfHeld(outside: true), within: 1e-9);
    }

    // Past 90° a caliper touches the round: one outside radius on from the tangent line.
    [Fact]
    public void A_leg_that_leans_back_is_measured_over_the_round()
    {
        var bend = new FoldedBlank(Strip(34), [Line(22, degrees: 120)], thickness: 1).Bends[0];
        Approximately.Equal(120, bend.Degrees, within: 1e-9);
        Approximately.Equal(23, bend.EndOfHeld(outside: true), within: 1e-9);
        Approximately.Equal(13, bend.Turned.Corners.Max(c => c.Dot(bend.Going)) - bend.StartOfTurned(outside: true), within: 1e-9);
    }

    // 20 flat, up, 15 flat, down, 10 flat. The upper face of the last leg lies 15 flat and both radii to the face above the first: 2 + 15 + 3.
    [Fact]
    public void A_Z_steps_up_by_its_middle_leg()
    {
        var folded = new FoldedBlank(Strip(20 + 4 + 15 + 4 + 10), [Line(22), Line(41, way: BendWay.Down)], thickness: 1);
        Approximately.Equal(0, (folded.Bends[1].Turned.Normal - Vector3.Up).Length, within: 1e-9);
        Approximately.Equal(20, folded.Bends[1].Turned.Corners.Max(c => c.Z), within: 1e-9);
        Approximately.Equal(20 + 2 + 3 + 10, folded.Bends[1].Turned.Corners.Max(c => c.X), within: 1e-9);
        Assert.All(folded.Panels, a => Assert.All(folded.Panels, b => Assert.True(a == b || a.DeepIn(b) == 0)));
    }

    // Brims 10, sides 15, crown 20 held; the part that is held lies to the left of every line. Outside: 20 and twice 3 across the crown, over the
    // feet another twice 10 + 2 + 1 less... a foot's tangent line lies R + T off the outside of its side.
    [Fact]
    public void A_hat_is_as_wide_and_as_high_as_worked_out()
    {
        var (length, bends) = (10 + 4 + 15 + 4 + 20 + 4 + 15 + 4 + 10.0, new[] { 12.0, 31, 55, 74 });
        var lines = bends.Select((x, i) =>
        {
            var line = Line(x, way: i is 1 or 2 ? BendWay.Down : BendWay.Up);
            return i < 2 ? line with { From = line.To, To = line.From } : line;
        });
        var folded = new FoldedBlank(Strip(length), lines, thickness: 1);
        var feet = folded.Bends.Where(b => b.Line.Way == BendWay.Up).Select(b => b.Turned).ToList();
        Approximately.Equal(20 + 2 * (3 + 2) + 2 * 10, feet.SelectMany(f => f.Corners).Max(c => c.X) - feet.SelectMany(f => f.Corners).Min(c => c.X), within: 1e-9);
        Approximately.Equal(0, Math.Abs(feet[0].Corners.Max(c => c.Z) - feet[1].Corners.Max(c => c.Z)), within: 1e-9);
        // From the crown's upper face to the feet's lower one: T + R and 15 flat, then R + T.
        Approximately.Equal(3 + 15 + 3, folded.Base.Corners.Max(c => c.Z) - feet[0].Corners.Min(c => c.Z), within: 1e-9);
    }

    // Floor 60 × 40 over the outside, flanges 12 high, each end 1 mm back from its corner so that the inner edges meet: R 2, T 1, allowance 4.
    // Tangent lines lie 3 in from the outline, 1 out of it; 9 mm flat beyond. Square reliefs of 4 mm about where the tangent lines cross.
    private static FoldedBlank Tray(double cutBack)
    {
        var floor = Region.Of(Outline.Rectangle(new(Point.Origin, new(60, 40))));
        List<Region> parts = [Region.Of(Outline.Rectangle(new(new(3, 3), new(57, 37))))];
        var c = cutBack;
        parts.Add(Box(5, -1, 55, 3));
        parts.Add(Box(5, 37, 55, 41));
        parts.Add(Box(-1, 5, 3, 35));
        parts.Add(Box(57, 5, 61, 35));
        parts.Add(Box(c, -10, 60 - c, -1));
        parts.Add(Box(c, 41, 60 - c, 50));
        parts.Add(Box(-10, c, -1, 40 - c));
        parts.Add(Box(61, c, 70, 40 - c));
        var corners = new[] { new Point(3, 3), new Point(57, 3), new Point(57, 37), new Point(3, 37) };
        var flat = Combination.Union(parts).Subtract(corners.Select(p => Box(p.X - 2, p.Y - 2, p.X + 2, p.Y + 2)));
        return new(flat, [Bend(3, 1, 57, 1), Bend(57, 39, 3, 39), Bend(1, 37, 1, 3), Bend(59, 3, 59, 37)], thickness: 1);

        static Region Box(double left, double low, double right, double high) => Region.Of(Outline.Rectangle(new(new(left, low), new(right, high))));

        static BendLine Bend(double x, double y, double toX, double toY) => Line(0) with { From = new(x, y), To = new(toX, toY) };
    }

    [Fact]
    public void A_tray_drawn_by_hand_closes_at_its_corners()
    {
        var tray = Tray(cutBack: 1);
        Assert.Equal(5, tray.Panels.Length);
        Assert.Empty(tray.Torn);
        var (x, y) = (tray.Panels.SelectMany(p => p.Corners).Max(c => c.X), tray.Panels.SelectMany(p => p.Corners).Max(c => c.Y));
        Approximately.Equal(60, x, within: 1e-9);
        Approximately.Equal(40, y, within: 1e-9);
        Assert.All(tray.Bends, b => Approximately.Equal(11, b.Turned.Corners.Max(c => c.Z), within: 1e-9));
        Approximately.Equal(0, tray.Bends[0].Turned.EdgesFrom(tray.Bends[2].Turned), within: 1e-9);
        Assert.All(tray.Panels, a => Assert.All(tray.Panels, b => Assert.True(a == b || a.DeepIn(b) < 1e-6)));
    }

    [Theory]
    [InlineData(0.5, 0.5)]
    [InlineData(0.97, 0.03)]
    public void Flanges_that_are_too_long_are_found_to_run_through_each_other(double cutBack, double deep)
    {
        var tray = Tray(cutBack);
        Approximately.Equal(deep, tray.Bends[0].Turned.DeepIn(tray.Bends[2].Turned), within: 1e-6);
    }

    // A flange on the middle 20 mm of an edge, drawn without slits: both its ends hang on the metal beside them, from tangent line to outline.
    [Fact]
    public void Metal_beside_the_end_of_a_bend_is_found_torn()
    {
        var flat = Region.Of(Outline.Polygon(new(0, 0), new(60, 0), new(60, 30), new(40, 30), new(40, 45), new(20, 45), new(20, 30), new(0, 30)));
        var line = Line(0) with { From = new(20, 29), To = new(40, 29) };
        var torn = new FoldedBlank(flat, [line with { From = line.To, To = line.From }], thickness: 1).Torn;
        Assert.Equal(2, torn.Length);
        Assert.All(torn, t => Approximately.Equal(3, t.Length, within: 1e-9));
    }

    [Fact]
    public void A_bend_line_beside_the_metal_is_refused() =>
        Assert.Throws<InvalidOperationException>(() => new FoldedBlank(Strip(34), [Line(50)], thickness: 1));
}
