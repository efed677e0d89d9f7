using TemplateForge.Fabrication;
using TemplateForge.Geometry;
using TemplateForge.Notation;
using TemplateForge.Testing;

namespace TemplateForge.Profiles.Tests;

/// <summary>The words for joining: runs of weld, stripped zinc, plug welds, patterns of holes, steps of the shop. The plans and rules
/// themselves are tried in Fabrication.</summary>
public class JoiningTests
{
    private const string Head = "profile: example\nversion: 1\ntitle: Example\nabout: An example.\nhand: left\nface_up: outer face\n";

    private const string Plate = """
        parameters:
          metal: {label: Metal, choices: {dc01: steel, dx51_z275: galvanised}, default: dx51_z275, shop: S.}
        paths:
          seam:
            - start: [0, 0]
            - line_to: [100 mm, 0]
        shapes:
          plate:
            rectangle: {from: [0, 0], to: [100 mm, 60 mm]}
          holes:
            holes_over: {shape: plate, diameter: 8 mm, pitch: 32 mm, edge_distance: 12 mm}
          plugged:
            subtracted: {from: plate, take: [holes]}
        pieces:
          plate:
            title: Plate
            blank: plugged
            material: metal
            thickness: 1 mm

        """;

    private static Profile Read(string words, string more = "") => TheLibrary.Read(new("example.yaml", Head + Plate.TrimEnd() + "\n" + words + more));

    private static Piece Piece(string words, params string[] given) => Read(words).Make(given).Pieces[0];

    [Theory]
    [InlineData("{along: seam, run_length: 25 mm}", 4, WeldOrder.BackStep)]
    [InlineData("{between: [[0, 0], [100 mm, 0]], run_length: 24 mm, order: skip}", 5, WeldOrder.Skip)]
    [InlineData("{between: [[0, 0], [100 mm, 0]], run_length: 24 mm, order: back_step}", 5, WeldOrder.BackStep)]
    [InlineData("{round: plate, run_length: 40 mm}", 8, WeldOrder.BackStep)]
    [InlineData("{round: plate, run_length: 40 mm, most_apart: 40 mm}", 8, WeldOrder.BackStep)] // 320 mm round, so eight gaps of 40
    [InlineData("{along: seam, run_length: 30 mm, most_apart: 26 mm}", 4, WeldOrder.BackStep)]  // four gaps of 25
    public void A_seam_is_taken_apart_into_runs(string word, int runs, WeldOrder order)
    {
        var seam = Assert.Single(Piece($"    weld_runs:\n      - {word}\n").WeldSeams);
        Assert.Equal((runs, order), (seam.Runs.Length, seam.Order));
    }

    [Fact]
    public void Numbers_go_on_from_one_seam_to_the_next_and_a_seam_may_be_there_only_in_some_cases()
    {
        const string words = "    weld_runs:\n      - {along: seam, run_length: 25 mm}\n      - {between: [[100 mm, 60 mm], [0, 60 mm]], run_length: 50 mm, when: metal is dc01}\n";
        Assert.Equal([1, 2, 3, 4], Piece(words).WeldSeams.SelectMany(s => s.Runs).Select(r => r.Number));
        Assert.Equal([1, 2, 3, 4, 5, 6], Piece(words, "metal=dc01").WeldSeams.SelectMany(s => s.Runs).Select(r => r.Number));
    }

    [Fact]
    public void Tacks_of_several_seams_are_numbered_on()
    {
        var tacks = Piece("    tacks:\n      - {along: seam, most_apart: 50 mm}\n      - {between: [[0, 60 mm], [100 mm, 60 mm]], most_apart: 50 mm, when: metal is dx51_z275}\n").Tacks;
        Assert.Equal([1, 2, 3, 4, 5, 6], tacks.Select(t => t.Number));
        Assert.Equal([0, 0, 0, 60, 60, 60], tacks.Select(t => t.At.Y));
    }

    [Fact]
    public void Plugs_are_numbered_from_their_middle_at_every_hole()
    {
        var tacks = Piece("    tacks: {holes: holes}\n").Tacks;
        Assert.Equal(6, tacks.Length); // 76 / 32 + 1 by 36 / 32 + 1
        Approximately.Equal(50, tacks[0].At.X, within: 1e-9);
    }

    // Closed forms: 100 by 6 beside a seam along the lower edge; all 100 by 60 of the plate less six holes.
    [Theory]
    [InlineData("{along: seam, width: 6 mm}", 600)]
    [InlineData("{over: plate, width: 10 mm}", 6000 - 6 * Math.PI * 16)]
    public void Zinc_comes_off_a_coated_piece_and_no_other(string word, double area)
    {
        Approximately.Equal(area, Assert.Single(Piece($"    strip_zinc:\n      - {word}\n").ZincStrips).Zone.Area, within: 1e-3);
        Assert.Empty(Piece($"    strip_zinc:\n      - {word}\n", "metal=dc01").ZincStrips);
    }

    // Closed form: round a rectangle of 100 by 60, 10 mm outwards with round corners and 10 mm inwards with sharp ones.
    [Theory]
    [InlineData("round: plate", 100 * 60 + 2 * 160 * 10 + Math.PI * 100 - 80 * 40)]
    [InlineData("over: plate", 100 * 60 + 2 * 160 * 10 + Math.PI * 100)]
    public void The_zone_beside_a_seam_is_a_shape_on_the_sheet_that_is_named(string seam, double area)
    {
        var shapes = "shapes:\n  panel:\n    rectangle: {from: [-50 mm, -50 mm], to: [150 mm, 110 mm]}\n  zone:\n    beside_seam: {" + seam + ", width: 10 mm, within: panel}\n  plate:";
        var text = Head + Plate.TrimEnd().Replace("shapes:\n  plate:", shapes, StringComparison.Ordinal).Replace("blank: plugged", "blank: zone", StringComparison.Ordinal);
        Approximately.Equal(area, TheLibrary.Read(new("example.yaml", text)).Make().Pieces[0].Shape.Area, within: 1e-3);
        var piece = TheLibrary.Read(new("example.yaml", text.Replace("blank: zone", "blank: plugged", StringComparison.Ordinal) + "\n    strip_zinc:\n      - {" + seam + ", width: 10 mm, within: panel}\n")).Make().Pieces[0];
        Approximately.Equal(area, piece.ZincStrips[0].Zone.Area, within: 1e-3);
    }

    [Fact]
    public void A_mirrored_piece_keeps_its_numbers_and_its_zone()
    {
        var piece = Piece("    weld_runs:\n      - {along: seam, run_length: 25 mm}\n    strip_zinc:\n      - {along: seam, width: 10 mm}\n");
        var mirrored = piece.Mirrored();
        Approximately.Equal(new Point(-25, 0), mirrored.WeldSeams[0].Runs[0].Along.Start, within: 1e-9);
        Approximately.Equal(piece.ZincStrips[0].Zone.Area, mirrored.ZincStrips[0].Zone.Area, within: 1e-6);
        Approximately.Equal(-100, mirrored.ZincStrips[0].Zone.Bounds.Min.X, within: 1e-6);
    }

    [Theory]
    [InlineData("32 mm, edge_distance: 12 mm", "")]
    [InlineData("31 mm, edge_distance: 12 mm", "")] // two gaps of 38, rows 36 apart
    [InlineData("32 mm, edge_distance: 11 mm", "plug weld too near the edge")]
    [InlineData("20 mm, edge_distance: 12 mm", "plug welds too near each other")]
    public void Plug_welds_are_looked_at(string pattern, string rule)
    {
        var text = (Head + Plate.TrimEnd() + "\n    plug_welds:\n      - {holes: holes}\n").Replace("32 mm, edge_distance: 12 mm", pattern, StringComparison.Ordinal);
        var warnings = TheLibrary.Read(new("example.yaml", text)).Make().Pieces[0].Warnings;
        Assert.Equal(rule.Length == 0 ? [] : [rule], warnings.Select(w => w.Rule));
    }

    // 100 mm less two margins of 10 has 80 / 30 = two gaps of 40; 12 mm to the left of a line to the right is up.
    [Theory]
    [InlineData("along: seam, inset: 12 mm", 12)]
    [InlineData("between: [[0, 60 mm], [100 mm, 60 mm]], inset: 12 mm, side: right", 48)]
    [InlineData("between: [[0, 20 mm], [100 mm, 20 mm]]", 20)]
    public void Holes_stand_in_a_row_beside_an_edge(string edge, double up)
    {
        var row = "shapes:\n  row:\n    holes_along: {" + edge + ", diameter: 5 mm, pitch: 30 mm, margin: 10 mm}\n  plate:";
        var text = Head + Plate.Replace("shapes:\n  plate:", row, StringComparison.Ordinal).Replace("take: [holes]", "take: [row]", StringComparison.Ordinal);
        var holes = TheLibrary.Read(new("example.yaml", text)).Make().Pieces[0].Shape.Contours.Where(c => !c.IsCounterClockwise).ToList();
        var centres = holes.Select(h => h.TryAsCircle(out var centre, out _) ? centre : default).OrderBy(c => c.X).ToList();
        Approximately.Equal([new(10, up), new(50, up), new(90, up)], centres, within: 1e-6);
    }

    [Fact]
    public void A_step_of_the_shop_comes_with_its_words_and_its_cautions()
    {
        var made = Read("", "steps:\n  - {shop_step: recoat, when: metal is dx51_z275}\n  - {shop_step: clear_for_welding}\n").Make();
        Assert.Equal(TheLibrary.Shop.Steps["recoat"].Text, made.Steps[0].Text);
        Assert.Equal(["Bare metal", "Fire", "Fuel"], made.Steps.SelectMany(s => s.Cautions).Select(c => c.Title));
        Assert.Single(Read("", "steps:\n  - {shop_step: recoat, when: metal is dx51_z275}\n  - {shop_step: clear_for_welding}\n").Make("metal=dc01").Steps);
    }

    public static TheoryData<string, string> Faults() => new()
    {
        // what stands in the piece or after it, words of the complaint
        { "    weld_runs:\n      - {along: seam, run_length: 0 mm}\n", "0 mm" },
        { "    weld_runs:\n      - {along: seam, run_length: -5 mm}\n", "-5 mm" },
        { "    weld_runs:\n      - {along: seam, run_length: 0.1 mm}\n", "500" },
        { "    weld_runs:\n      - {along: seam, run_length: 20 mm, most_apart: 0}\n", "0 mm" },
        { "    weld_runs:\n      - {along: seem, run_length: 20 mm}\n", "Did you mean seam?" },
        { "    weld_runs:\n      - {along: seam, between: [[0, 0], [1 mm, 0]], run_length: 20 mm}\n", "between" },
        { "    weld_runs:\n      - {along: seam, run_length: 20 mm, order: hop}\n", "back_step or skip" },
        { "    weld_runs:\n      - {round: plate, run_lenth: 20 mm}\n", "run_length" },
        { "    strip_zinc:\n      - {along: seam, width: 0 mm}\n", "0 mm" },
        { "    strip_zinc:\n      - {between: [[0, 900 mm], [10 mm, 900 mm]], width: 5 mm}\n", "No part of the sheet" },
        { "    strip_zinc:\n      - {width: 5 mm}\n", "round" },
        { "    plug_welds:\n      - {holes: plate}\n", "neither a round hole nor a slot" },
        { "    tacks: {holes: hoels}\n", "Did you mean holes?" },
        { "steps:\n  - {shop_step: recote}\n", "Did you mean recoat?" },
    };

    [Theory, MemberData(nameof(Faults))]
    public void A_fault_is_told_with_what_would_be_right(string words, string told)
    {
        var complaints = new List<Complaint>();
        if (Profile.TryRead(new("example.yaml", Head + Plate.TrimEnd() + "\n" + words), TheLibrary.Shop, complaints, out var profile))
            profile.TryMake([], profile.Hand, profile.Hand, complaints, out _);
        Assert.Contains(complaints, c => c.Line > 0 && $"{c}".Contains(told, StringComparison.Ordinal));
    }

    [Theory]
    [InlineData("pitch: 8 mm, edge_distance: 12 mm", "meet")]
    [InlineData("pitch: 0 mm, edge_distance: 12 mm", "0 mm")]
    [InlineData("pitch: 32 mm, edge_distance: 4 mm", "break out")]
    [InlineData("pitch: 32 mm, edge_distance: 31 mm", "No point of plate")]
    [InlineData("pitch: 32 mm, edge_distance: 12 mm, pattern: zigzag", "square or staggered")]
    [InlineData("pitch: 8.001 mm, edge_distance: 5 mm, diamter: 8 mm", "diamter")]
    public void A_pattern_that_cannot_be_is_refused_with_a_remedy(string pattern, string told)
    {
        var text = Head + Plate.TrimEnd().Replace("pitch: 32 mm, edge_distance: 12 mm", pattern, StringComparison.Ordinal);
        var complaints = new List<Complaint>();
        if (Profile.TryRead(new("example.yaml", text), TheLibrary.Shop, complaints, out var profile)) profile.TryMake([], profile.Hand, profile.Hand, complaints, out _);
        Assert.Contains(complaints, c => $"{c}".Contains(told, StringComparison.Ordinal));
    }
}
