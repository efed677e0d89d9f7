using TemplateForge.Fabrication;
using TemplateForge.Geometry;
using TemplateForge.Testing;

namespace TemplateForge.Profiles.Tests;

/// <summary>Transitions in a profile: what its words do, each fault with its place.</summary>
public class TransitionsTests
{
    private const string Tube = """
        profile: example
        version: 1
        title: Example
        about: An example.
        hand: left
        face_up: inner face
        paths:
          arch:
            - start: [-50 mm, 0]
            - {arc_to: [50 mm, 0], radius: 50 mm, turning: right}
        shapes:
          low_ring:
            circle: {centre: [0, 0], diameter: 100 mm}
          high_ring:
            circle: {centre: [0, 0], diameter: 100 mm}
          blank:
            laid_flat: tube
        transitions:
          tube:
            lower: {outline: low_ring, title: foot}
            upper: {outline: high_ring, height: 60 mm}
            thickness: 1 mm
            material: dc01
            lap: 0 mm
        pieces:
          part: {title: Part, blank: blank, bends: tube, thickness: 1 mm}
        """;

    private static string Changed(params (string There, string Instead)[] changes) => changes.Aggregate(Tube, (text, change) =>
    {
        Assert.Contains(change.There, text, StringComparison.Ordinal);
        return text.Replace(change.There, change.Instead, StringComparison.Ordinal);
    });

    private static Piece Made(params (string There, string Instead)[] changes) =>
        TheLibrary.Read(new("example.yaml", Changed(changes))).Make().Pieces[0];

    // General mechanics: a tube of outside diameter D and sheet T is π (D − T) long on the flat.
    [Theory, InlineData("outside", 99), InlineData("middle", 100), InlineData("inside", 101)]
    public void The_flat_is_as_long_as_the_middle_of_the_sheet(string measured, double diameter) =>
        Approximately.Equal(Math.PI * diameter, Made(("lap: 0 mm", $"measured: {measured}")).Shape.Bounds.Width, within: 0.01);

    [Fact]
    public void A_lap_makes_it_wider_and_is_scribed()
    {
        var piece = Made(("lap: 0 mm", "lap: 8 mm"));
        Approximately.Equal(Math.PI * 99 + 8, piece.Shape.Bounds.Width, within: 0.01);
        Assert.Single(piece.ScribeLines);
    }

    [Fact]
    public void Its_press_lines_turn_it_once_round_and_its_edges_are_named()
    {
        var piece = Made();
        Approximately.Equal(360, piece.BendLines.Sum(b => b.Bend.Degrees), within: 1);
        Assert.All(piece.BendLines, b => Assert.Equal(BendWay.Up, b.Way));
        Assert.Equal(["foot, 311.0 long", "upper edge, 311.0 long"], piece.Labels.Select(l => l.Text));
    }

    [Fact]
    public void Its_weight_comes_with_its_metal() =>
        // DC01: 7850 kg/m³.
        Approximately.Equal(Math.PI * 99 * 60 * 1 * 7850e-9, Made().Weight, within: 1e-4);

    [Fact]
    public void One_of_its_parts_is_cut_alone_and_has_its_own_lines()
    {
        var piece = Made(("laid_flat: tube", "laid_flat: {transition: tube, part: 2}"), ("lap: 0 mm", "parts: 3"));
        Approximately.Equal(Math.PI * 99 / 3, piece.Shape.Bounds.Width, within: 0.01);
        Assert.Equal(1, piece.BendLines[0].Number);
        // What turns at its two joints is neither part's: half a fine step at each.
        Approximately.Equal(120, piece.BendLines.Sum(b => b.Bend.Degrees), within: 1.5);
    }

    [Fact]
    public void It_goes_into_as_few_parts_as_fit_the_sheet() =>
        // 311 long: two of 155.5 do not fit into 120 by 70, three of 103.7 do.
        Assert.Equal(3, Made(("lap: 0 mm", "fits: [120 mm, 70 mm]")).Shape.Parts().Length);

    [Theory]
    [InlineData("lower: {outline: low_ring", "lower: {outline: low_rng", "low_rng")]
    [InlineData("upper: {outline: high_ring", "upper: {outline: arch", "open path")]
    [InlineData("height: 60 mm", "height: -60 mm", "cannot be joined")]
    [InlineData("height: 60 mm", "height: 60 mm, tilt: 80 deg", "cannot be joined")]
    [InlineData("lap: 0 mm", "lap: -1 mm", "-1")]
    [InlineData("lap: 0 mm", "parts: 2\n    fits: [10 mm, 10 mm]", "parts and fits")]
    [InlineData("lap: 0 mm", "fits: [10 mm, 10 mm]", "does not fit")]
    [InlineData("lap: 0 mm", "divisions: 0", "divisions")]
    [InlineData("thickness: 1 mm\n    material", "thickness: 0 mm\n    material", "")]
    [InlineData("thickness: 1 mm\n    material", "thickness: 120 mm\n    material", "low_ring")]
    [InlineData("laid_flat: tube", "laid_flat: {transition: tube, part: 2}", "no part 2")]
    [InlineData("laid_flat: tube", "laid_flat: {transition: tub, part: 1}", "tub")]
    [InlineData("laid_flat: tube", "laid_flat: tub", "tub")]
    public void What_is_wrong_is_complained_of_where_it_stands(string there, string instead, string says)
    {
        var text = Changed((there.Replace("\n    ", "\n    ", StringComparison.Ordinal), instead));
        var complaints = new List<Notation.Complaint>();
        if (Profile.TryRead(new("example.yaml", text), TheLibrary.Shop, complaints, out var profile))
            profile.TryMake([], Hand.Left, Hand.Left, complaints, out _);
        Assert.NotEmpty(complaints);
        Assert.All(complaints, c => Assert.True(c.Line > 1 && c.Column > 0 && c.Remedy.Length > 0));
        Assert.Contains(complaints, c => says is "" or "divisions" || $"{c.Problem} {c.Remedy}".Contains(says, StringComparison.Ordinal));
    }

    // Half a circle to half a circle: a sheet without a seam, half as long.
    [Fact]
    public void Two_paths_make_a_sheet_that_does_not_close()
    {
        var piece = Made(("lower: {outline: low_ring", "lower: {outline: arch"), ("upper: {outline: high_ring", "upper: {outline: arch"));
        Approximately.Equal(Math.PI * 99 / 2, piece.Shape.Bounds.Width, within: 0.01);
        Approximately.Equal(60 * Math.PI * 99 / 2, piece.Shape.Area, within: 0.5);
    }
}
