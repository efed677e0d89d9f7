using TemplateForge.Fabrication;
using TemplateForge.Geometry;
using TemplateForge.Notation;
using TemplateForge.Testing;

namespace TemplateForge.Profiles.Tests;

/// <summary>Curved panels in a profile: each length by its closed form, each fault with its place.</summary>
public class CurvedPanelsTests
{
    // Chord 160 and rise 40: r = 160² / 320 + 20 = 100.
    private const string Tank = """
        profile: example
        version: 1
        title: Example
        about: An example.
        hand: left
        face_up: outer face
        arrows: {FRONT: 30 deg}
        parameters:
          face: {label: Face, choices: {outside: outside, inside: inside}, default: outside, shop: Taste.}
        paths:
          arch:
            - start: [-80 mm, -40 mm]
            - {arc_to: [80 mm, -40 mm], through: [0, 0]}
          low:
            - start: [-80 mm, 0]
            - smooth_through: [[-40 mm, 1 mm], [0, 0], [40 mm, -2 mm], [80 mm, 0]]
        curved_panels:
          tank:
            section: arch
            thickness: 2 mm
            lies_on: {by: face, outside: outside, inside: inside}
        shapes:
          lamp:
            circle: {centre: [10 mm, 0], diameter: 120 mm}
          flat:
            carried_onto: {panel: tank, shape: lamp}
        points:
          top_of_lamp: {carried_onto: tank, point: [10 mm, 60 mm]}
        pieces:
          part:
            title: Part
            paper: flat
            on_panel: {panel: tank, steps: 25 mm}
            thickness: 2 mm
            notes:
              - "{y(top_of_lamp)}"
        """;

    private static Piece Made(string[] given, params (string There, string Instead)[] changes) =>
        TheLibrary.Read(new("example.yaml", Changed(changes))).Make(given).Pieces[0];

    private static string Changed(params (string There, string Instead)[] changes) => changes.Aggregate(Tank, (text, change) =>
    {
        Assert.Contains(change.There, text, StringComparison.Ordinal);
        return text.Replace(change.There, change.Instead, StringComparison.Ordinal);
    });

    [Fact]
    public void A_circle_and_a_point_are_carried_onto_a_cylinder_of_that_chord_and_rise()
    {
        var part = Made([]);
        Approximately.Equal(2 * 100 * Math.Asin(0.6), part.Shape.Bounds.Height, within: 1e-6);
        Assert.Equal("64.35 mm", part.Notes[0]); // 100 asin 0.6
    }

    [Theory]
    [InlineData("", 98, 0.6)]
    [InlineData("\n    cut: straight", 98, 60 / 98.0)]
    [InlineData("\n    measured_on: inside", 100, 60 / 102.0)]
    public void The_flat_of_the_inside_goes_by_face_and_cut_and_its_arrows_are_turned(string more, double radius, double sine)
    {
        var part = Made(["face=inside"], ("thickness: 2 mm\n    lies_on", $"thickness: 2 mm{more}\n    lies_on"));
        Approximately.Equal(2 * radius * Math.Asin(sine), part.Shape.Bounds.Height, within: 1e-6);
        Approximately.Equal(-10, part.Shape.Bounds.Centre.X, within: 1e-6);
        Approximately.Equal(150, part.Arrows[0].Direction.Degrees, within: 1e-9);
        Approximately.Equal(30, Made([]).Arrows[0].Direction.Degrees, within: 1e-9);
    }

    [Fact]
    public void Its_notes_name_face_view_and_cut_and_list_steps_along_the_panel()
    {
        var notes = string.Join('\n', Made([]).Notes);
        Assert.Contains("curved onto the outside", notes, StringComparison.Ordinal);
        Assert.Contains("square at the straight edge", notes, StringComparison.Ordinal);
        Assert.Contains("square to the sheet", notes, StringComparison.Ordinal);
        Assert.Contains("25 is 24.7, 50 is 47.9, 75 is 68.2", notes, StringComparison.Ordinal); // 100 sin(0.25), sin(0.5), sin(0.75)
        Assert.Contains("along the line of sight", string.Join('\n', Made([], ("section: arch", "section: arch\n    cut: straight")).Notes), StringComparison.Ordinal);
    }

    [Fact]
    public void Seen_square_at_the_panel_the_view_is_turned_to_it()
    {
        // Where the arch leans by asin 0.3; a section that is hidden from there is cut short.
        (string, string)[] seen = [("start: [-80 mm, -40 mm]", "start: [-50 mm, -13.397459621556141 mm]"), ("through: [0, 0]", "through: [60 mm, -20 mm]"),
            ("section: arch", "section: arch\n    datum: 30 mm\n    seen: panel"), ("diameter: 120 mm", "diameter: 60 mm"), ("[10 mm, 60 mm]", "[0, 30 mm]")];
        Assert.Contains("17.5° off square", string.Join('\n', Made([], seen).Notes), StringComparison.Ordinal);
        Approximately.Equal(2 * 100 * Math.Asin(0.3), Made([], seen).Shape.Bounds.Height, within: 1e-6);
    }

    [Fact]
    public void A_smooth_curve_goes_through_its_points_without_a_corner()
    {
        var drawn = Made([], ("section: arch", "section: low")).EdgeViews[0].Sheet;
        Point[] points = [new(-80, 0), new(-40, 1), new(0, 0), new(40, -2), new(80, 0)];
        Assert.All(points, p => Approximately.Equal(0, drawn.BoundaryDistanceTo(p), within: 0.001));
    }

    [Theory]
    [InlineData("carried_onto: {panel: tank, shape: lamp}", "carried_onto: {panel: tonk, shape: lamp}", 26, 27, "Did you mean tank?")]
    [InlineData("section: arch", "section: orch", 19, 14, "Did you mean arch?")]
    [InlineData("diameter: 120 mm", "diameter: 170 mm", 26, 40, "the section has ended")]
    [InlineData("section: arch", "section: arch\n    datum: 90 mm", 19, 5, "past the end of the section")]
    [InlineData("section: arch", "section: arch\n    tilted: 60 deg", 19, 5, "hides a part of itself")]
    [InlineData("section: arch", "section: arch\n    seen: pannel", 20, 11, "edge or panel")]
    [InlineData("section: arch", "section: arch\n    square_at: 0 mm\n    tilted: 3 deg", 21, 13, "Give square_at or tilted")]
    [InlineData("thickness: 2 mm\n    lies_on", "thickness: 0 mm\n    lies_on", 20, 16, "more than 0")]
    [InlineData("steps: 25 mm", "steps: 1 mm", 33, 36, "longer ones")]
    [InlineData("through: [0, 0]}", "through: [0, 90 mm]}", 19, 5, "runs back")]
    [InlineData("[-40 mm, 1 mm], ", "[-80 mm, 0], ", 16, 24, "ends where it began")]
    public void A_fault_is_told_where_it_stands(string there, string instead, int line, int column, string words)
    {
        var complaints = new List<Complaint>();
        var text = Changed((there, instead));
        if (words.Contains("began", StringComparison.Ordinal)) text = text.Replace("section: arch", "section: low", StringComparison.Ordinal);
        if (Profile.TryRead(new("example.yaml", text), TheLibrary.Shop, complaints, out var profile))
            Assert.False(profile.TryMake([], profile.Hand, profile.Hand, complaints, out _));
        Assert.Contains(complaints, c => (c.Line, c.Column) == (line, column) && $"{c}".Contains(words, StringComparison.Ordinal));
    }
}
