using System.Collections.Immutable;
using System.Text.Json.Nodes;
using TemplateForge.Notation;
using TemplateForge.Shop;
using TemplateForge.Testing;

namespace TemplateForge.Profiles.Tests;

/// <summary>What a profile takes from the shop's tables: each value as the table has it, each fault with its place.</summary>
public class ShopValuesTests
{
    private const string Head = "profile: example\nversion: 1\ntitle: Example\nabout: An example.\nhand: left\nface_up: outer face\n";
    private const string Choices = """
        parameters:
          metal: {label: Metal, choices: {dc01: steel, en_aw_5052_h32: aluminium}, default: dc01, shop: S.}
          sheet: {label: Sheet, unit: mm, default: 1, range: 0.1 to 30, measured: M.}
        values:

        """;
    private const string Foot = "\nshapes:\n  shown:\n    rectangle: {from: [0, 0], to: [100 mm, 100 mm]}\npieces:\n  shown: {title: Shown, blank: shown, material: metal, thickness: sheet, notes: [\"{v}\"]}\n";

    // Sources stand beside the numbers in profiles/shop and in the tests of the tables; here it is that each word finds its own.
    [Theory]
    [InlineData("density, of: metal", "7850")]
    [InlineData("least_inside_radius, of: stainless-1-4301", "2")]
    [InlineData("k_factor, of: dc04", "0.44")]
    [InlineData("stretch_limit, of: metal, thickness: sheet", "0.28")]
    [InlineData("stretch_limit, of: metal, thickness: 0.5 mm", "0.24")]
    [InlineData("greatest_yield, of: metal", "280")]
    [InlineData("zinc_both_faces, of: dx51-z275", "275")]
    [InlineData("zinc_both_faces, of: dc01", "0")]
    [InlineData("dipped_zinc, of: metal, thickness: 2 mm", "0.055 mm")]
    [InlineData("springback, of: metal, inside_radius: 4 * sheet, thickness: sheet", "0.97")]
    [InlineData("springback, of: metal, inside_radius: 0, thickness: sheet", "0.99")]
    [InlineData("next_thickness, of: metal, thickness: 1.9 mm", "2 mm")]
    [InlineData("brake_length, of: finger-brake", "1250 mm")]
    [InlineData("brake_thickness, of: finger_brake", "4 mm")]
    [InlineData("nose_radius, of: finger-brake", "1 mm")]
    [InlineData("kerf, of: router", "6 mm")]
    [InlineData("least_hole, of: router", "6 mm")]
    [InlineData("weld_gap, of: tig, thickness: sheet", "0 mm")]
    [InlineData("weld_gap, of: mig, thickness: 1.3 mm", "1.5 mm")]
    [InlineData("plug_hole, of: mig, thickness: sheet", "8 mm")]
    [InlineData("tack_pitch, of: mig, thickness: sheet", "30 mm")]
    [InlineData("weld_run, of: mig, thickness: sheet", "20 mm")]
    [InlineData("zinc_strip, of: gas", "25 mm")]
    [InlineData("clearance_hole_fine, of: M5", "5.3 mm")]
    [InlineData("clearance_hole, of: {by: metal, dc01: M5, en_aw_5052_h32: M6}", "5.5 mm")]
    [InlineData("clearance_hole_coarse, of: M5", "5.8 mm")]
    [InlineData("tapping_drill, of: m5", "4.2 mm")]
    [InlineData("rivet_hole, of: inch_1_8", "3.264 mm")]
    public void A_value_is_that_of_the_table(string value, string expected) =>
        Assert.Equal(expected, Read(value).Make().Pieces[0].Notes.Single());

    [Fact]
    public void Every_word_is_tried_above() =>
        Assert.Equal(
            JsonNode.Parse(ProfileSchema.Text)!["properties"]!["values"]!["additionalProperties"]!["anyOf"]!.AsArray()
                .Select(any => any!["properties"]?["from_shop"]?["enum"]).OfType<JsonArray>().SelectMany(words => words)
                .Select(word => word!.GetValue<string>()).Order(StringComparer.Ordinal),
            typeof(ShopValuesTests).GetMethod(nameof(A_value_is_that_of_the_table))!.GetCustomAttributes(typeof(InlineDataAttribute), inherit: false)
                .Select(a => $"{((InlineDataAttribute)a).Data[0]}".Split(',')[0]).Distinct().Order(StringComparer.Ordinal));

    // Closed form: a tenth of a metre square, 1 mm thick, is 10⁻⁵ m³.
    [Theory]
    [InlineData("dc01", 0.0785)]
    [InlineData("en_aw_5052_h32", 0.0268)]
    public void A_piece_weighs_what_the_metal_that_was_chosen_weighs(string metal, double kilograms)
    {
        var piece = Read("density, of: metal").Make($"metal={metal}").Pieces[0];
        Assert.Equal(metal.Replace('_', '-'), piece.Material.Name);
        Approximately.Equal(kilograms, piece.Weight, within: 1e-12);
    }

    [Theory]
    [InlineData("dencity, of: metal", 11, 18, "density")]
    [InlineData("density, of: oak", 11, 31, "oak")]
    [InlineData("kerf, of: metal", 11, 28, "dc01")]
    [InlineData("density", 11, 6, "of")]
    [InlineData("weld_gap, of: mig", 11, 6, "thickness")]
    [InlineData("weld_gap, of: mig, thickness: 30 deg", 11, 48, "an angle")]
    [InlineData("weld_gap, of: mig, thickness: 0 mm", 11, 48, "0 mm")]
    [InlineData("weld_gap, of: mig, thickness: 5 mm", 11, 32, "nothing of the weld_gap of mig for thickness 5 mm")]
    [InlineData("zinc_strip, of: mig, thickness: sheet", 11, 39, "thickness")]
    [InlineData("weld_run, of: mig, thickness: 4 mm", 11, 32, "nothing of the weld_run of mig")]
    [InlineData("plug_hole, of: tig, thickness: sheet", 11, 33, "nothing of the plug_hole of tig")]
    [InlineData("greatest_yield, of: dx51-z275", 11, 38, "nothing of the greatest_yield")]
    [InlineData("dipped_zinc, of: en-aw-5052-h32, thickness: sheet", 11, 35, "nothing of the dipped_zinc")]
    [InlineData("tapping_drill, of: inch_1_4", 11, 37, "nothing of the tapping_drill")]
    [InlineData("springback, of: dx51-z275, inside_radius: 1 mm, thickness: sheet", 11, 34, "nothing of the springback")]
    [InlineData("next_thickness, of: metal, thickness: 20 mm", 11, 38, "nothing of the next_thickness of dc01")]
    [InlineData("density, off: metal", 11, 27, "of")]
    public void A_fault_is_told_with_its_place(string value, int line, int column, string words)
    {
        var complaints = new List<Complaint>();
        if (Profile.TryRead(Text(value), TheLibrary.Shop, complaints, out var profile)) profile.TryMake([], profile.Hand, profile.Hand, complaints, out _);
        Assert.Contains(complaints, c => (c.Line, c.Column) == (line, column) && $"{c}".Contains(words, StringComparison.Ordinal));
    }

    [Fact]
    public void A_value_may_stand_wherever_a_length_may_and_nowhere_else()
    {
        Assert.True(Profile.TryRead(Text("kerf, of: router}\n  w: {by: metal, dc01: v, en_aw_5052_h32: 2 mm"), TheLibrary.Shop, [], out _));
        var complaints = new List<Complaint>();
        Assert.False(Profile.TryRead(Text("density, of: metal}\n  w: v + 1 mm\n  x: {from_shop: kerf, of: router"), TheLibrary.Shop, complaints, out _));
        Assert.Contains(complaints, c => c.Line == 12);
    }

    // Another shop's brake: the profile stays as it is.
    [Fact]
    public void A_shops_own_table_changes_what_comes_out_and_no_profile_does()
    {
        ImmutableArray<TextFile> files = [.. TheLibrary.Library.ShopFiles, new("ours/machines.yaml", "cutters:\n  router: {title: small router, kerf: 3 mm, least_hole: 3 mm, source: measured}\nbrakes: {}\n")];
        Assert.True(ShopReader.TryRead(files, [], out var shop));
        Assert.True(Profile.TryRead(Text("kerf, of: router"), shop, [], out var profile));
        Assert.Equal("3 mm", profile.Make().Pieces[0].Notes.Single());
        Assert.Equal("6 mm", Read("kerf, of: router").Make().Pieces[0].Notes.Single());
    }

    [Fact]
    public void A_shop_without_the_table_is_told_of()
    {
        Assert.True(ShopReader.TryRead([.. TheLibrary.Library.ShopFiles.Where(f => !f.Name.EndsWith("fasteners.yaml", StringComparison.Ordinal))], [], out var shop));
        var complaints = new List<Complaint>();
        Assert.False(Profile.TryRead(Text("clearance_hole, of: M8"), shop, complaints, out _));
        Assert.Contains(complaints, c => (c.Line, c.Column) == (11, 38) && c.Remedy.Contains("none", StringComparison.Ordinal));
    }

    private static Profile Read(string value) => TheLibrary.Read(Text(value));

    private static TextFile Text(string value) => new("example.yaml", $"{Head}{Choices}  v: {{from_shop: {value}}}{Foot}");
}
