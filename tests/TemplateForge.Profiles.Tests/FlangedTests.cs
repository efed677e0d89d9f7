using TemplateForge.Fabrication;
using TemplateForge.Geometry;
using TemplateForge.Notation;
using TemplateForge.Testing;

namespace TemplateForge.Profiles.Tests;

/// <summary>Flanged sheets in a profile: each length by a closed form, each fault with its place.</summary>
public class FlangedTests
{
    // R 1, T 1 by the rule of thumb: 2 is taken off for each bend of 90°.
    private const string Tray = """
        profile: example
        version: 1
        title: Example
        about: An example.
        hand: left
        face_up: outer face
        parameters:
          edge: {label: Edge, choices: {plain: plain, hemmed: hemmed}, default: plain, shop: Taste.}
        flanged:
          tray:
            base: plan
            thickness: 1 mm
            material: dc01
            inside_radius: 1 mm
            reckoned_by: rule_of_thumb
            corners: mitred
            flanges:
              - edge_at: [50 mm, 0]
                folds:
                  - {turned: 90 deg, way: up, leg: 20 mm}
                  - {closed_hem: 6 mm, way: up, when: edge is hemmed}
              - edges: all
                folds:
                  - {turned: 90 deg, way: up, leg: 30 mm}
        shapes:
          plan:
            rectangle: {from: [0, 0], to: [100 mm, 60 mm]}
          blank:
            laid_flat: tray
        pieces:
          part: {title: Part, blank: blank, bends: tray, thickness: 1 mm}
        """;

    private static string Changed(params (string There, string Instead)[] changes) => changes.Aggregate(Tray, (text, change) =>
    {
        Assert.Contains(change.There, text, StringComparison.Ordinal);
        return text.Replace(change.There, change.Instead, StringComparison.Ordinal);
    });

    private static Piece Made(string[] given, params (string There, string Instead)[] changes) =>
        TheLibrary.Read(new("example.yaml", Changed(changes))).Make(given).Pieces[0];

    [Fact]
    public void A_tray_grows_by_each_flange_less_what_the_rule_takes_off()
    {
        var bounds = Made([]).Shape.Bounds;
        Approximately.Equal(100 + 2 * (30 - 2), bounds.Width, within: 1e-9);
        Approximately.Equal(60 + 20 - 2 + 30 - 2, bounds.Height, within: 1e-9);
    }

    [Fact]
    public void A_fold_is_there_only_when_its_condition_holds()
    {
        var hemmed = Made(["edge=hemmed"]);
        Approximately.Equal(60 + 20 - 2 + 6 + 30 - 2, hemmed.Shape.Bounds.Height, within: 1e-9);
        Assert.Equal(5, hemmed.Bends.Length);
        Assert.Equal(Angle.HalfTurn, hemmed.BendLines[0].Bend);
        Assert.Equal(4, Made([]).Bends.Length);
    }

    [Fact]
    public void Measured_on_the_inside_a_base_lies_between_the_inner_faces()
    {
        // The inner faces stand R from the tangent lines: 1 there and 1 on the leg, and the rule of thumb's bend is 2 × 2 − 2 = 2 long.
        var bounds = Made([], ("reckoned_by: rule_of_thumb", "reckoned_by: rule_of_thumb\n    measured: inside")).Shape.Bounds;
        Approximately.Equal(100 + 2 * (-1 + 2 + 30 - 1), bounds.Width, within: 1e-9);
    }

    // Near the free edge of the flange below. A mitred one ends a thickness before each corner and, square to the plane that halves it, half a gap
    // before that; one that is written first laps and runs to the corner; one that is open ends at its bend, 2 before.
    [Theory]
    [InlineData("corners: mitred", 98)]
    [InlineData("corners: mitred\n    gap: 0.5 mm", 98 - 0.5 * 1.4142135623730951)]
    [InlineData("corners: closed", 100)]
    [InlineData("corners: open", 96)]
    public void Corners_and_gaps_are_as_the_words_say(string corners, double length)
    {
        var shape = Made([], ("corners: mitred", corners)).Shape;
        var at = shape.Bounds.Min.Y + 2;
        Approximately.Equal(length, Path.Line(new(-500, at), new(500, at)).PartsInside(shape).Sum(p => p.Length), within: 1e-6);
    }

    [Theory]
    [InlineData("relief: round\n    relief_size: 4 mm", Math.PI * 4 * 0.75)]
    [InlineData("relief: square\n    relief_size: 4 mm", 16 * 0.75)]
    public void A_relief_takes_three_quarters_of_its_size_from_each_open_corner(string relief, double area)
    {
        var torn = Made([], ("corners: mitred", "corners: open\n    relief: tear")).Shape.Area;
        Approximately.Equal(4 * area, torn - Made([], ("corners: mitred", $"corners: open\n    {relief}")).Shape.Area, within: 0.01);
    }

    [Fact]
    public void A_run_goes_on_as_far_as_there_is_no_corner() =>
        Assert.Equal(4, Made([], ("edge_at: [50 mm, 0]", "run_at: [50 mm, 0]")).Bends.Length);

    [Fact]
    public void A_piece_may_be_bent_to_one_thing_or_another_by_a_choice()
    {
        var text = Changed(("bends: tray", "bends: {by: edge, plain: tray, hemmed: other}"), ("shapes:\n", """
              other:
                base: plan
                thickness: 1 mm
                material: dc01
                inside_radius: 1 mm
                reckoned_by: k_factor
                flanges:
                  - edges: all
                    folds: [{turned: 60 deg, way: down, leg: 30 mm}]
            shapes:

            """.ReplaceLineEndings("\n")));
        var profile = TheLibrary.Read(new("example.yaml", text));
        Assert.Equal(90, profile.Make().Pieces[0].BendLines[0].Bend.Degrees, 1e-9);
        Assert.Equal(60, profile.Make("edge=hemmed").Pieces[0].BendLines[0].Bend.Degrees, 1e-9);
    }

    [Theory]
    [InlineData("leg: 20 mm", "leg: 1 mm", 18, 9, "leg 2 is 1 mm too short")]
    [InlineData("base: plan", "base: plam", 11, 11, "plam is no shape")]
    [InlineData("laid_flat: tray", "laid_flat: trey", 29, 16, "Did you mean tray?")]
    [InlineData("bends: tray", "bends: trey", 31, 44, "no section, flanged sheet or transition")]
    [InlineData("corners: mitred", "corners: mitered", 16, 14, "mitred")]
    [InlineData("edges: all", "edges: some", 22, 16, "all")]
    [InlineData("edges: all", "edge_at: [50 mm, 0]", 22, 18, "has a flange already")]
    public void A_fault_is_told_where_it_stands(string there, string instead, int line, int column, string words)
    {
        var complaints = new List<Complaint>();
        if (Profile.TryRead(new("example.yaml", Changed((there, instead))), TheLibrary.Shop, complaints, out var profile))
            Assert.False(profile.TryMake([], profile.Hand, profile.Hand, complaints, out _));
        Assert.Contains(complaints, c => (c.Line, c.Column) == (line, column) && $"{c}".Contains(words, StringComparison.Ordinal));
    }

    [Fact]
    public void Relief_cuts_may_be_none()
    {
        var cuts = Made([], ("- edges: all", "- edges: all\n        relief_cuts: 0"));
        Assert.Equal(Made([]).Shape.Area, cuts.Shape.Area, 1e-9);
    }

    [Fact]
    public void A_flange_that_every_condition_takes_away_is_told()
    {
        var complaints = new List<Complaint>();
        var text = Changed(("- edge_at: [50 mm, 0]", "- edge_at: [50 mm, 0]\n        when: edge is hemmed"), ("- edges: all", "- edges: all\n        when: edge is hemmed"));
        Assert.True(Profile.TryRead(new("example.yaml", text), TheLibrary.Shop, complaints, out var profile), string.Join('\n', complaints));
        Assert.False(profile.TryMake([], profile.Hand, profile.Hand, complaints, out _));
        Assert.Contains(complaints, c => c.Problem.Contains("no edge has a flange", StringComparison.Ordinal));
    }
}
