using TemplateForge.Drawing;
using TemplateForge.Fabrication;
using TemplateForge.Geometry;
using TemplateForge.Notation;
using TemplateForge.Sheets;
using TemplateForge.Testing;

namespace TemplateForge.Profiles.Tests;

public class JigsTests
{
    private static readonly Profile Filler = TheLibrary.Profile("filler-neck-opening");
    private static readonly Profile Moving = TheLibrary.Profile("hole-moving-jig");
    private static readonly Profile Notch = TheLibrary.Profile("booster-clearance-notch");

    // Plane through a round cylinder: half axes r and r / cos(tilt); the drift of the axis adds sheet · tan(tilt) along the tilt.
    [Fact]
    public void A_neck_at_a_slant_takes_a_longer_hole_and_its_jig_one_larger_by_the_offset_all_round()
    {
        var made = Filler.Make("neck=60", "tilt=30", "tilt_direction=0", "sheet=2", "clearance=5");
        var hole = made.Piece("panel").Shape.Contours.Single(c => !c.IsCounterClockwise).Bounds;
        var (cos, tan) = (Math.Cos(Math.PI / 6), Math.Tan(Math.PI / 6));
        Approximately.Equal(70 / cos + 2 * tan, hole.Width, within: 0.003);
        Approximately.Equal(70, hole.Height, within: 0.003);
        var open = made.Piece("opening-jig").Shape.Contours.Where(c => !c.IsCounterClockwise).MaxBy(c => c.Area)!.Bounds;
        Approximately.Equal(hole.Width + 11, open.Width, within: 1e-6); // bush 17, cutter 6
        Approximately.Equal(hole.Height + 11, open.Height, within: 1e-6);
    }

    [Theory]
    [InlineData("router", 5.5, 6)]
    [InlineData("router_once", 5.5, 10)]
    [InlineData("torch", 10.25, 3)]
    [InlineData("scriber", 0, 3)]
    public void Each_kind_of_edge_has_its_offset_and_its_plate(string edge, double offset, double thickness)
    {
        var made = Filler.Make($"edge={edge}");
        var plate = made.Piece("opening-jig");
        Assert.Equal(thickness, plate.Thickness);
        var hole = made.Piece("panel").Shape.Contours.Single(c => !c.IsCounterClockwise).Bounds;
        Approximately.Equal(hole.Width + 2 * offset, plate.Shape.Contours.Where(c => !c.IsCounterClockwise).MaxBy(c => c.Area)!.Bounds.Width, within: 1e-6);
    }

    [Fact]
    public void Without_a_jig_the_notch_is_the_panel_alone()
    {
        Assert.Equal(["panel"], Notch.Make().Pieces.Select(p => p.Name));
        Assert.Equal(["panel", "notch-jig", "notch-jig-face-b", "notch-jig-gauge"], Notch.Make("jig=router").Pieces.Select(p => p.Name));
        Assert.Equal(4, Notch.Make("jig=torch").Pieces.Length);
        Assert.Equal(4, Notch.Make("jig=scriber").Pieces.Length);
    }

    [Fact]
    public void A_bush_too_large_for_the_mouth_is_refused_with_one_that_goes()
    {
        var complaint = Notch.Refuse("jig=router", "guide=40")[0];
        Assert.Contains("rolls round the corner", complaint.Problem, StringComparison.Ordinal);
        Assert.StartsWith("Take a bush of 25.9", complaint.Remedy, StringComparison.Ordinal); // 6 and twice the mouth's 10, rounded down
        Notch.Make("jig=router", "guide=25.9");
    }

    [Fact]
    public void For_the_other_hand_the_plate_is_lettered_for_that_hand_and_its_other_face_for_the_measured_one()
    {
        Assert.True(Filler.TryMake([], Hand.Right, Hand.Left, new List<Complaint>(), out var right));
        var (a, b) = (right.Piece("opening-jig"), right.Piece("opening-jig-face-b"));
        Assert.Contains("RIGHT HAND, FACE A UP, NOT MEASURED on this hand", a.Lettering);
        Assert.Contains("LEFT HAND, FACE B UP", b.Lettering);
        Assert.Equal(Filler.Make().Piece("opening-jig").Shape.Area, a.Shape.Area, 1e-3);
    }

    [Fact]
    public void New_holes_are_bushed_where_they_belong_from_pins_in_the_old_ones()
    {
        var made = Moving.Make("move_along=-30", "move_up=50", "swing=10", "new_spacing=100");
        var plate = made.Piece("drill-jig");
        var bushes = plate.Shape.Contours.Where(c => !c.IsCounterClockwise && Math.Abs(c.Bounds.Width - 12) < 1e-6 && Math.Abs(c.Bounds.Height - 12) < 1e-6)
            .Select(c => c.Bounds.Centre).OrderBy(p => p.X).ToList();
        Approximately.Equal(new Point(-30, 50), bushes[0], within: 1e-9);
        Approximately.Equal(new Point(-30 + 100 * Math.Cos(Math.PI / 18), 50 + 100 * Math.Sin(Math.PI / 18)), bushes[1], within: 1e-9);
        Assert.Equal(["A", "B"], plate.Datums.Select(d => d.Label));
        Assert.Equal(5, Moving.Make("bushes=headed").Pieces.Length);
    }

    // What a point engraves: words that read from the front on a layer of their own, on the plate, clear of its edges and of each other.
    [Theory]
    [InlineData("filler-neck-opening", "opening-jig", "")]
    [InlineData("booster-clearance-notch", "notch-jig", "jig=router")]
    [InlineData("hole-moving-jig", "drill-jig", "")]
    public void The_cut_file_has_the_lettering_on_a_layer_of_its_own_on_the_plate(string profile, string name, string given)
    {
        var made = TheLibrary.Profile(profile).Make(given.Length > 0 ? [given] : []);
        var plate = made.Piece(name);
        var drawing = CutSheet.Of(made, plate);
        var words = drawing.Layers.Single(l => l.Name == "SCRIBE-LETTERING").Marks.OfType<Lettering>().ToList();
        var text = string.Join(' ', words.Select(w => w.Text)).Replace('\u00A0', ' ');
        Assert.All(plate.Lettering, line => Assert.Contains(line, text, StringComparison.Ordinal));
        foreach (var said in (string[])["FRONT", "UP", .. plate.MarkedArrows.Select(a => a.Text)]) Assert.Contains(said, text, StringComparison.Ordinal);
        Assert.DoesNotContain(drawing.Layers.Single(l => l.Name == "CUT").Marks, m => m is Lettering);
        foreach (var word in words)
        {
            Approximately.Equal(0, word.Turn.Degrees, within: 0);
            foreach (var corner in (Point[])[word.Bounds.Min, word.Bounds.Max, new(word.Bounds.Min.X, word.Bounds.Max.Y), new(word.Bounds.Max.X, word.Bounds.Min.Y)])
                Assert.True(plate.Shape.Contains(corner) && plate.Shape.BoundaryDistanceTo(corner) > 1, word.Text);
            Assert.DoesNotContain(words, o => o != word && o.Bounds.Touches(word.Bounds));
        }
    }

    [Fact]
    public void Faces_are_drawn_with_the_hand_that_each_is_for()
    {
        var made = Filler.Make();
        static IEnumerable<string> Texts(LineDrawing drawing) => drawing.Layers.SelectMany(l => l.Marks).OfType<Lettering>().Select(t => t.Text);
        var page = TemplateSheet.Of(made, TheLibrary.Shop.UsualPaper, TheLibrary.Shop.Overlap).Pages
            .Where(p => p.Views.SelectMany(v => Texts(v.Drawing)).Any(t => t.StartsWith("filler-neck-opening, version 1: Jig for the opening: face B", StringComparison.Ordinal))).ToList();
        Assert.NotEmpty(page);
        Assert.Contains(made.Piece("opening-jig-face-b").Lettering, l => l.StartsWith("RIGHT HAND, FACE B UP", StringComparison.Ordinal));
        foreach (var view in page.SelectMany(p => p.Views)) Assert.DoesNotContain("LEFT HAND", Texts(view.Drawing));
    }

    private const string Example = """
        profile: example
        version: 1
        title: Example
        about: An example.
        hand: left
        face_up: outer face
        shapes:
          sheet:
            rectangle: {from: [0, 0], to: [400 mm, 300 mm]}
          hole:
            rectangle: {from: [150 mm, 100 mm], to: [250 mm, 180 mm], corner_radius: 10 mm}
          finished:
            subtracted: {from: sheet, take: [hole]}
        pieces:
          panel:
            title: Panel
            cut_away: {from: sheet, leaves: finished}
            thickness: 1 mm
            edges: [{from: [0, 0], to: [400 mm, 0]}]
            datums: {A: {at: [60 mm, 60 mm], hole: 8 mm}, B: {at: [340 mm, 60 mm], hole: 8 mm}, C: {at: [200 mm, 50 mm]}}
        jigs:
          jig:
            title: Jig
            for: panel
            guides: {bush: 17 mm, cutter: 6 mm}
            plate: aluminium-6
            located_by: {pin: A, slot: B}

        """;

    // What is changed in the example, and what is complained of, in its own words.
    [Theory]
    [InlineData("bush: 17 mm, cutter: 6 mm", "shroud: 20 mm, kerf: 1.5 mm", "A plate of aluminium plate is not one for a torch.", "Choose of steel-3.")]
    [InlineData("bush: 17 mm, cutter: 6 mm", "bush: 5 mm, cutter: 6 mm", "A cutter of 6 mm does not pass through a bush of 5 mm.", "")]
    [InlineData("cutter: 6 mm", "cutter: 0 mm", "more than 0", "")]
    [InlineData("cutter: 6 mm", "cutter: -3 mm", "more than 0", "")]
    [InlineData("bush: 17 mm", "bush: 25 mm, cuter: 3 mm", "cuter", "cutter")]
    [InlineData("bush: 17 mm, cutter: 6 mm", "bush: 30 mm, cutter: 24 mm", "The bush of 30 mm cannot follow the inside corner at", "The largest cutter that can is")]
    [InlineData("for: panel", "for: pannel", "pannel", "panel")]
    [InlineData("slot: B", "slot: D", "panel has no datum D.", "Choose of A, B, C.")]
    [InlineData("slot: B", "slot: C", "is a mere point, and a pin wants a hole", "")]
    [InlineData("plate: aluminium-6", "plate: aluminum-6", "aluminum-6", "aluminium-6")]
    [InlineData("  jig:", "  panel:", "A piece is called panel already.", "")]
    [InlineData("{pin: A, slot: B}", "{stops: [[20 mm, 0], [380 mm, 9 mm]], pin: A}", "does not stand with the other on one straight edge", "")]
    [InlineData("located_by: {pin: A, slot: B}", "located_by: {pin: A, slot: B}\n    margin: -5 mm", "-5", "")]
    public void What_cannot_be_is_refused_in_words(string instead, string written, string problem, string remedy)
    {
        var complaint = Complaints(Example.Replace(instead, written, StringComparison.Ordinal))[0];
        Assert.Contains(problem, complaint.Problem, StringComparison.Ordinal);
        Assert.Contains(remedy, complaint.Remedy, StringComparison.Ordinal);
        Assert.True(complaint.Line > 0 && complaint.Column > 0);
    }

    [Theory]
    [InlineData("mdf-10")]
    [InlineData("phenolic-10")]
    public void Wood_and_board_never_lie_under_a_torch(string plate)
    {
        var torch = Example.Replace("bush: 17 mm, cutter: 6 mm", "shroud: 20 mm, kerf: 1.5 mm", StringComparison.Ordinal);
        var complaint = Assert.Single(Complaints(torch.Replace("aluminium-6", plate, StringComparison.Ordinal)));
        Assert.Contains("burns, and this one would lie under a torch", complaint.Problem, StringComparison.Ordinal);
        Assert.Empty(Complaints(torch.Replace("aluminium-6", "steel-3", StringComparison.Ordinal)));
    }

    private static List<Complaint> Complaints(string text)
    {
        var complaints = new List<Complaint>();
        if (Profile.TryRead(new("example.yaml", text), TheLibrary.Shop, complaints, out var profile))
            profile.TryMake([], profile.Hand, profile.Hand, complaints, out _);
        return complaints;
    }
}
