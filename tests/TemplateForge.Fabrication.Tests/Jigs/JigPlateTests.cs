using System.Collections.Immutable;
using TemplateForge.Geometry;
using TemplateForge.Testing;

namespace TemplateForge.Fabrication.Tests.Jigs;

public class JigPlateTests
{
    private static readonly GuideEdge Bush = GuideEdge.Bush(17, 6);

    [Theory]
    [InlineData(0)]
    [InlineData(10)]
    public void The_guide_edge_runs_25_mm_on_past_the_panel_edge(double mouth)
    {
        var edge = Assert.Single(TrialJigs.Made(TrialJigs.Design(TrialJigs.Notch(mouth: mouth), Bush)).GuideEdges);
        Approximately.Equal(-25, edge.Start.Y, within: 1e-6);
        Approximately.Equal(-25, edge.End.Y, within: 1e-6);
    }

    [Fact]
    public void Beside_a_rounded_mouth_the_cutter_bends_away_from_the_edge_that_stays()
    {
        var plate = TrialJigs.Made(TrialJigs.Design(TrialJigs.Notch(), Bush));
        // Nothing that the tool may take lies on the panel past the mouth's ends, at 130 and 270.
        foreach (var x in (double[])[90, 110, 128, 272, 290, 310]) Assert.False(plate.Waste.Contains(new(x, 0.01)));
        Assert.False(plate.Waste.Contains(new(120, -0.5)));
    }

    [Theory]
    [InlineData(true)]
    [InlineData(false)]
    public void Clamps_stand_on_metal_that_stays_90_mm_clear_of_the_cut(bool closed)
    {
        var finished = closed ? TrialJigs.WithHole(Outline.Slot(new(160, 120), new(240, 120), 50)) : TrialJigs.Notch();
        var design = TrialJigs.Design(finished, Bush);
        var plate = TrialJigs.Made(design);
        Assert.InRange(plate.Clamps.Length, 2, 4);
        foreach (var clamp in plate.Clamps)
        {
            var foot = Region.Of(Outline.Circle(clamp, 15));
            Assert.True(foot.Subtract(plate.Shape).Area < 1e-3);
            Assert.True(clamp.Y >= 15 - 1e-6, "a foot over the edge holds nothing");
            foreach (var point in design.Work.FinishLines().SelectMany(l => l.PointsEvery(1))) Assert.True(clamp.DistanceTo(point) >= 105 - 1e-6);
        }
    }

    [Fact]
    public void A_margin_without_room_for_clamps_is_refused() =>
        Assert.Contains(TrialJigs.Refused(TrialJigs.Design(TrialJigs.Notch(), Bush) with { Margin = 60, Location = TrialJigs.PinAndSlot(Close) }), f => f.Kind == JigFaultKind.NoRoomForClamps);

    [Fact]
    public void At_a_real_edge_that_is_not_cut_the_plate_ends()
    {
        var work = TrialJigs.Work(TrialJigs.Notch()) with { Edges = [Path.Line(new(0, 0), new(400, 0)), Path.Line(new(0, 190), new(400, 190))], Before = Low, Shape = Low.Intersect(TrialJigs.Notch()) };
        Approximately.Equal(190, TrialJigs.Made(TrialJigs.Design(TrialJigs.Notch(), Bush) with { Work = work }).Outline.Bounds.Max.Y, within: 1e-6);
    }

    [Fact]
    public void A_pin_on_the_guide_edge_is_refused()
    {
        var work = TrialJigs.Work(TrialJigs.Notch());
        Assert.True(Location.TryPinAndSlot(new("A", new(132, 60), 8), work.Datums[1], new List<JigFault>(), out var location));
        Assert.Contains(TrialJigs.Refused(TrialJigs.Design(TrialJigs.Notch(), Bush) with { Location = location }), f => f.Kind == JigFaultKind.HoleTooNear);
    }

    [Fact]
    public void A_finish_line_that_ends_where_the_panel_only_seems_to_is_refused()
    {
        var work = TrialJigs.Work(TrialJigs.Notch()) with { Edges = [Path.Line(new(0, 300), new(400, 300))] };
        Assert.Contains(TrialJigs.Refused(TrialJigs.Design(TrialJigs.Notch(), Bush) with { Work = work }), f => f.Kind == JigFaultKind.EndsOnNoEdge);
    }

    // Turned over about an upright axis the plate must be the plate of the mirrored panel.
    [Fact]
    public void Turned_over_it_is_the_other_hands_plate()
    {
        var design = TrialJigs.Design(TrialJigs.WithHole(Outline.Ellipse(new(150, 120), 45, 30, Angle.FromDegrees(30), 0.001)), Bush);
        var mirror = Placement.Mirrored(Point.Origin, Angle.QuarterTurn);
        var (turned, other) = (TrialJigs.Made(design).Shape.Placed(mirror), TrialJigs.Made(design.Mirrored()).Shape);
        Assert.True(turned.Subtract(other).Area + other.Subtract(turned).Area < 1e-3);
    }

    [Fact]
    public void On_either_face_the_feed_has_the_metal_that_stays_on_its_left_for_a_cutter_that_turns_clockwise()
    {
        foreach (var finished in (Region[])[TrialJigs.Notch(), TrialJigs.WithHole(Outline.Slot(new(160, 120), new(240, 120), 50))])
        {
            var plate = TrialJigs.Made(TrialJigs.Design(finished, Bush));
            foreach (var face in JigPieces.Of(plate, TrialJigs.Left).Take(2)) IsOnItsSide(face, face.Name.EndsWith("-b", StringComparison.Ordinal), plate.Waste, side: 1);
        }
    }

    [Fact]
    public void A_torch_has_it_on_its_right()
    {
        var plate = TrialJigs.Made(TrialJigs.Design(TrialJigs.Notch(), GuideEdge.Shroud(20, 1.5)));
        foreach (var face in JigPieces.Of(plate, TrialJigs.Left).Take(2)) IsOnItsSide(face, face.Name.EndsWith("-b", StringComparison.Ordinal), plate.Waste, side: -1);
    }

    [Fact]
    public void One_plate_flips_and_says_so_on_both_faces()
    {
        var pieces = JigPieces.Of(TrialJigs.Made(TrialJigs.Design(TrialJigs.Notch(), Bush)), TrialJigs.Left);
        Assert.Equal(["jig", "jig-face-b", "jig-gauge"], pieces.Select(p => p.Name));
        Assert.Contains("LEFT HAND, FACE A UP", pieces[0].Lettering);
        Assert.Contains("RIGHT HAND, FACE B UP, NOT MEASURED on this hand", pieces[1].Lettering);
        Assert.Equal("RIGHT HAND, NOT MEASURED on this hand", pieces[1].ForHand);
        Approximately.Equal(180, Math.Abs(pieces[1].Arrows[0].Direction.Degrees), within: 1e-9); // FRONT
        Approximately.Equal(90, pieces[1].Arrows[1].Direction.Degrees, within: 1e-9);             // UP
    }

    [Fact]
    public void Where_pins_are_pressed_in_there_are_two_plates_and_neither_flips()
    {
        var pieces = JigPieces.Of(TrialJigs.Made(TrialJigs.Design(TrialJigs.Notch(), Bush) with { IsOneSided = true }), TrialJigs.Left);
        Assert.Equal(["jig", "jig-face-b", "jig-other-hand", "jig-other-hand-face-b", "jig-gauge"], pieces.Select(p => p.Name));
        Assert.All(pieces.Where(p => p.Name.EndsWith("face-b", StringComparison.Ordinal)), p => Assert.StartsWith("WRONG FACE UP", p.Lettering[0], StringComparison.Ordinal));
        Assert.Contains(pieces[0].Parts, p => p.Size.Contains("m6", StringComparison.Ordinal));
        Assert.Contains("RIGHT HAND, FACE A UP, NOT MEASURED on this hand", pieces[2].Lettering);
    }

    [Fact]
    public void What_is_lettered_says_name_revision_hand_edge_feed_waste_datums_thickness_and_check()
    {
        var lettering = string.Join('\n', JigPieces.Of(TrialJigs.Made(TrialJigs.Design(TrialJigs.Notch(), Bush)), TrialJigs.Left)[0].Lettering);
        foreach (var said in (string[])["jig, revision: trial, version 3", "LEFT HAND", "BUSH 17 mm, CUTTER 6 mm", "5.5 mm back", "FEED", "WASTE", "A to B 320.0 mm", "PLATE 6 mm, SHEET 1 mm", "CHECKED AGAINST GAUGE ON"])
            Assert.Contains(said, lettering, StringComparison.Ordinal);
    }

    [Fact]
    public void The_gauge_stands_back_0_2_mm_from_a_new_guide_edge_all_along()
    {
        var plate = TrialJigs.Made(TrialJigs.Design(TrialJigs.Notch(), Bush));
        var gauge = JigPieces.Of(plate, TrialJigs.Left).Single(p => p.Name == "jig-gauge").Shape;
        var edge = plate.GuideEdges[0];
        foreach (var point in edge.PointsEvery(1).Where(p => p.Y > -20)) Approximately.Equal(0.2, gauge.DistanceTo(point), within: 1e-6);
    }

    // ISO 286-2: g6 over 6 to 10 mm is −5 / −14, H7 0 / +15 (read); the dowel for a hole of 6.5 is the next size, 8.
    [Fact]
    public void Pins_are_dowels_of_the_next_size_with_their_noses_turned_to_the_panels_holes()
    {
        var parts = JigPieces.Of(TrialJigs.Made(TrialJigs.Design(TrialJigs.Notch(), Bush)), TrialJigs.Left)[0].Parts;
        var pin = parts.Single(p => p.What.StartsWith("pin B", StringComparison.Ordinal));
        Assert.Contains("8 g6 (7.986 to 7.995) in the plate's slot 8 H7 (8.000 to 8.015)", pin.Size, StringComparison.Ordinal);
        Assert.Contains("nose 6.5 g6 (6.486 to 6.495)", pin.Size, StringComparison.Ordinal);
    }

    private static Piece Close => TrialJigs.Work(TrialJigs.Notch()) with { Datums = [new("A", new(120, 60), 8), new("B", new(280, 60), 8)] };

    private static Region Low => Region.Of(Outline.Rectangle(new(new(0, 0), new(400, 190))));

    // The waste lies to the other side of the arrow; by points, 20 mm to either side.
    private static void IsOnItsSide(Piece face, bool isTurned, Region waste, int side)
    {
        var here = isTurned ? waste.Placed(Placement.Mirrored(Point.Origin, Angle.QuarterTurn)) : waste;
        var arrow = face.MarkedArrows.Single(a => a.IsFeed).Along.Segments[0];
        var aside = arrow.StartDirection.Left * (20 * side);
        Assert.True(here.DistanceTo(arrow.At(0.5) - aside) < here.DistanceTo(arrow.At(0.5) + aside) - 10);
    }
}
