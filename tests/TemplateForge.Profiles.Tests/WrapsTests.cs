using TemplateForge.Fabrication;
using TemplateForge.Geometry;
using TemplateForge.Notation;
using TemplateForge.Testing;

namespace TemplateForge.Profiles.Tests;

/// <summary>Wraps in the language, and the profiles that are built of them: sizes by the closed forms of the textbooks, faults with their places.</summary>
public class WrapsTests
{
    private const string Head = "profile: example\nversion: 1\ntitle: Example\nabout: An example.\nhand: left\nface_up: outside\n";

    private static string Text(string wrap, string kind = "paper") =>
        $"{Head}wraps:\n  thing: {wrap}\nshapes:\n  flat: {{laid_flat: thing}}\npieces:\n  shown: {{title: Shown, {kind}: flat, wraps: thing, thickness: 2 mm}}\n";

    private static Piece Piece(string wrap) => TheLibrary.Read(new("example.yaml", Text(wrap))).Make().Pieces[0];

    private static readonly Profile Mitre = TheLibrary.Profile("tube-mitre");
    private static readonly Profile Elbow = TheLibrary.Profile("tube-elbow");
    private static readonly Profile Mouth = TheLibrary.Profile("tube-fish-mouth");
    private static readonly Profile Boss = TheLibrary.Profile("tube-boss");
    private static readonly Profile Cone = TheLibrary.Profile("cone-frustum");
    private static readonly Profile Reducer = TheLibrary.Profile("offset-reducer");

    // y = R tan m (1 − cos φ), any book; without a wall from 0 to 2 R tan m. Bounds of arcs: within 0.001.
    [Fact]
    public void Without_a_wall_a_mitre_rises_by_its_diameter_times_the_tangent()
    {
        var piece = Mitre.Make("diameter=100", "wall=0", "bend=90", "paper=0", "lap=0").Piece("wrap");
        Approximately.Equal(Math.PI * 100, piece.Shape.Bounds.Width, within: 1e-6);
        Approximately.Equal(40 + 100, piece.Shape.Bounds.Height, within: 0.001);
        // A whole wave and what stands below it.
        Approximately.Equal(Math.PI * 100 * (40 + 50), piece.Shape.Area, within: 0.001 * Math.PI * 100);
    }

    // The long side touches inside, the short one outside: (R + r) tan m.
    [Fact]
    public void With_a_wall_the_long_side_is_longer_by_the_mean_diameter_times_the_tangent() =>
        Approximately.Equal(40 + (60 - 2), Mitre.Make().Piece("wrap").Shape.Bounds.Height, within: 0.001);

    [Theory]
    [InlineData("pieces=2", 1)]
    [InlineData("pieces=4", 2)]
    public void An_elbow_of_two_pieces_has_no_middle_one(string pieces, int wraps) => Assert.Equal(wraps, Elbow.Make(pieces).Pieces.Length);

    // r tan m along the axis for a half piece; rolled from sheet it goes round in π (D − T).
    [Fact]
    public void The_pieces_of_an_elbow_add_up_to_its_middle_line()
    {
        var made = Elbow.Make("made=sheet", "diameter=100", "wall=2", "centre_radius=150", "pieces=4", "straight=0");
        var (end, middle) = (made.Piece("end-blank"), made.Piece("middle-blank"));
        Assert.Equal((2, 2), (end.Quantity, middle.Quantity));
        Approximately.Equal(Math.PI * 98, end.Shape.Bounds.Width, within: 1e-6);
        // Of a mitre cut square to a wall, the outside touches where it is short and the inside where it is long: R / π and r / π more and less.
        var half = 150 * Math.Tan(Math.PI / 12) - (50 - 48) * Math.Tan(Math.PI / 12) / Math.PI;
        Approximately.Equal(half * Math.PI * 98, end.Shape.Area, within: 0.4);
        Approximately.Equal(2 * half * Math.PI * 98, middle.Shape.Area, within: 0.8);
    }

    // R 50, r 25, ψ 45°, worked out from z = (√(R² − r² sin² φ) + r cos φ cos ψ) / sin ψ: 95.711 at 0°, 45.711 at 180°.
    [Fact]
    public void A_mouth_at_45_degrees_is_shorter_at_0_than_at_180_by_the_textbooks_difference()
    {
        var checks = Mouth.Make("diameter=50", "wall=0", "other=100", "angle=45").Piece("wrap").Checks;
        Approximately.Equal(95.711 - 45.711, checks.Single(c => c.Label == "Length at 180°").Distance - checks.Single(c => c.Label == "Length at 0°").Distance, within: 0.0005);
    }

    // Along the tube's straight line a bar of radius a at ψ cuts 2 a / sin ψ; the wall T shifts it by T cot ψ, and the hole takes both.
    [Fact]
    public void A_hole_at_an_angle_is_longer_by_what_the_wall_shifts_it()
    {
        var tube = Boss.Make("tube=76", "tube_wall=3", "hole=20", "angle=60", "paper=0").Piece("tube");
        var hole = tube.Shape.Contours.Single(c => !c.IsCounterClockwise).Bounds;
        Approximately.Equal(20 / Math.Sin(Math.PI / 3) + 3 / Math.Tan(Math.PI / 3), hole.Height, within: 0.05);
        // Across, the inside of the wall is what is widest for an angle round the tube.
        Approximately.Equal(76 * Math.Asin(10 / 35.0), hole.Width, within: 0.002);
        Assert.Single(tube.GuideLines);
    }

    [Fact]
    public void A_boss_and_its_tube_are_the_mirror_image_for_the_other_hand()
    {
        var complaints = new List<Complaint>();
        Assert.True(Boss.TryMake(TheLibrary.Settings("offset=10"), Hand.Right, Hand.Right, complaints, out var right));
        var left = Boss.Make("offset=10").Piece("tube");
        var mirrored = right.Piece("tube");
        Approximately.Equal(left.Shape.Area, mirrored.Shape.Area, within: 1e-6);
        Assert.Equal(left.Generators.Select(g => g.Label), mirrored.Generators.Select(g => g.Label));
        // The piece still lies to the left of each of its edges, so that their names stand inside.
        Assert.All(mirrored.EdgeNames, e => Assert.True(mirrored.Shape.Contains(e.Along.Segments[0].At(0.5) + e.Along.Segments[0].DirectionAt(0.5).Left * 0.5)));
    }

    // Sector and slant; the middle of the sheet is T cos α narrower.
    [Fact]
    public void A_cone_s_blank_is_two_arcs_about_one_point()
    {
        var blank = Cone.Make("base_diameter=120", "top_diameter=60", "height=100", "sheet=2").Piece("cone").Shape;
        var slant = Math.Sqrt(30 * 30 + 100 * 100);
        var narrower = 2 * 100 / slant;
        Approximately.Equal(Math.PI * slant * (60 + 30 - narrower), blank.Area, within: 1e-6);
        var radii = blank.Contours.Single().Segments.Where(s => !s.IsLine).Select(s => s.Radius).ToList();
        Approximately.Equal((60 - narrower / 2) * slant / 30, radii.Max(), within: 1e-6);
        Approximately.Equal((30 - narrower / 2) * slant / 30, radii.Min(), within: 1e-6);
    }

    [Fact]
    public void A_reducer_that_is_aside_by_half_the_difference_has_one_side_square_to_its_ends()
    {
        var checks = Reducer.Make("base_diameter=100", "top_diameter=60", "height=110", "aside=20").Piece("reducer").Checks;
        Approximately.Equal(110, checks.Single(c => c.Label == "Seam edge").Distance, within: 1e-6);
        Approximately.Equal(Math.Sqrt(110 * 110 + 40 * 40), checks.Single(c => c.Label.StartsWith("Across", StringComparison.Ordinal)).Distance, within: 1e-6);
    }

    [Fact]
    public void The_ends_the_seam_and_the_quarters_have_names()
    {
        var piece = Piece("{round_tube: 60 mm, wall: 2 mm, length: 90 mm, lower: {mitre: 30 deg, turned: 90 deg}, upper: {fish_mouth: 80 mm, angle: 60 deg}, lap: 10 mm}");
        Assert.Equal(["lower end: mitre 30°", "upper end: sits on 80 mm at 60°", "seam at 180°"], piece.EdgeNames.Select(e => e.Label));
        Assert.Equal(
            ["270° below long side, above point", "0° above acute side", "90° below short side, above point", "lay the seam edge here, 180°"],
            piece.Generators.Where(g => g.Label.Length > 0).Select(g => g.Label));
        Assert.Contains(piece.Notes, n => n.Contains("60 mm: a tape round the tube says 188.5 mm", StringComparison.Ordinal));
    }

    [Theory]
    [InlineData("{round_tube: 60 mm, wall: 30 mm, length: 90 mm}", "no bore")]
    [InlineData("{round_tube: 0 mm, wall: 0 mm, length: 90 mm}", "more than 0")]
    [InlineData("{round_tube: 60 mm, wall: 2 mm, length: -5 mm}", "more than 0")]
    [InlineData("{round_tube: 60 mm, wall: 2 mm, length: 10 mm, upper: {mitre: 45 deg}}", "run into each other")]
    [InlineData("{round_tube: 60 mm, wall: 2 mm, length: 90 mm, upper: {mitre: 85 deg}}", "85°")]
    [InlineData("{round_tube: 60 mm, wall: 2 mm, length: 90 mm, upper: {mitre: -5 deg}}", "-5°")]
    [InlineData("{round_tube: 60 mm, wall: 2 mm, length: 90 mm, upper: {fish_mouth: 60 mm, offset: 1 mm}}", "stands out past")]
    [InlineData("{round_tube: 60 mm, wall: 2 mm, length: 90 mm, upper: {fish_mouth: 60 mm, angle: 5 deg}}", "5°")]
    [InlineData("{round_tube: 60 mm, wall: 2 mm, length: 90 mm, holes: [{hole: 58 mm, along: 45 mm}]}", "wider than the bore")]
    [InlineData("{round_tube: 60 mm, wall: 2 mm, length: 90 mm, holes: [{hole: 20 mm, along: 5 mm}]}", "runs out of an end")]
    [InlineData("{round_tube: 60 mm, wall: 2 mm, length: 90 mm, holes: [{hole: 20 mm, along: 40 mm}, {hole: 20 mm, along: 45 mm, round: 5 deg}]}", "run into each other")]
    [InlineData("{round_tube: 60 mm, wall: 2 mm, length: 90 mm, lap: 200 mm}", "too wide")]
    [InlineData("{round_tube: 60 mm, wall: 2 mm, length: 90 mm, divisions: 10}", "every quarter turn")]
    [InlineData("{cone: 60 mm, top: 60 mm, height: 90 mm}", "not smaller")]
    [InlineData("{cone: 60 mm, top: 40 mm, height: 0 mm}", "more than 0")]
    [InlineData("{cone: 60 mm, top: 40 mm, height: 10 mm, aside: 900 mm}", "lie down")]
    [InlineData("{cone: 60 mm, top: 4 mm, height: 50 mm, sheet: 6 mm}", "too thick")]
    public void What_cannot_be_is_refused_at_its_place(string wrap, string problem)
    {
        var complaint = Assert.Single(TheLibrary.Read(new("example.yaml", Text(wrap))).Refuse());
        Assert.Contains(problem, complaint.Problem, StringComparison.Ordinal);
        Assert.Equal(8, complaint.Line);
        Assert.NotEmpty(complaint.Remedy);
    }

    [Theory]
    [InlineData("{tube: 60 mm}", "round_tube")]
    [InlineData("{round_tube: 60 mm, wall: 2 mm, length: 90 mm, upper: {miter: 45 deg}}", "mitre")]
    [InlineData("{round_tube: 60 mm, wall: 2 mm, length: 90 mm, rolled: yes, paper: 0.1 mm}", "paper")]
    [InlineData("{cone: 60 mm, height: 90 mm, measured: inside}", "outside")]
    [InlineData("{cone: 60 mm, height: 90 deg}", "length")]
    public void What_is_misspelt_is_complained_of_when_it_is_read(string wrap, string word)
    {
        var complaints = new List<Complaint>();
        Assert.False(Profile.TryRead(new("example.yaml", Text(wrap)), TheLibrary.Shop, complaints, out _));
        Assert.Contains(word, Assert.Single(complaints).ToString(), StringComparison.Ordinal);
    }

    [Fact]
    public void A_wrap_that_is_not_there_is_complained_of_by_name()
    {
        var complaints = new List<Complaint>();
        var text = Text("{cone: 60 mm, height: 90 mm}").Replace("wraps: thing", "wraps: thin", StringComparison.Ordinal);
        Assert.False(Profile.TryRead(new("example.yaml", text), TheLibrary.Shop, complaints, out _));
        Assert.Contains("thing", Assert.Single(complaints).Remedy, StringComparison.Ordinal);
    }
}
