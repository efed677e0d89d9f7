using TemplateForge.Fabrication;
using TemplateForge.Notation;

namespace TemplateForge.Shop.Tests;

/// <summary>The tables of metals and machines, which a shop may do without.</summary>
public class MaterialsTests
{
    // Carbon steel 7.85 kg/m² for each mm (EN 1991-1-1 practice, from memory); stainless 1.4301, 1.4401 and 1.4016 7.9, 8.0 and 7.7 (EN 10088-1,
    // from memory); aluminium 3003, 5052 and 6061 2.73, 2.68 and 2.7 (Aluminum Association, Aluminum Standards and Data, from memory).
    [Theory]
    [InlineData("dc01", 7.85)]
    [InlineData("dc03", 7.85)]
    [InlineData("dc04", 7.85)]
    [InlineData("dc05", 7.85)]
    [InlineData("dc06", 7.85)]
    [InlineData("dx51-z275", 7.85)]
    [InlineData("dx51-z120", 7.85)]
    [InlineData("stainless-1-4301", 7.9)]
    [InlineData("stainless-1-4401", 8.0)]
    [InlineData("stainless-1-4016", 7.7)]
    [InlineData("en-aw-3003-o", 2.73)]
    [InlineData("en-aw-5052-h32", 2.68)]
    [InlineData("en-aw-6061-t6", 2.7)]
    public void A_square_metre_a_millimetre_thick_weighs_what_the_books_say(string name, double kilograms) =>
        Assert.Equal(kilograms, Shipped.Tables.Materials[name].WeightOf(1e6, 1), 1e-9);

    // Densities that mills print for 1.4301, 1.4401 and the 4xx family (read): 7.93, 7.98, 7.75. A sheet comes out within 0.7 % either way.
    [Theory]
    [InlineData("stainless-1-4301", 7.93)]
    [InlineData("stainless-1-4401", 7.98)]
    [InlineData("stainless-1-4016", 7.75)]
    public void Stainless_sheet_weighs_what_mills_print_within_0_7_per_cent(string name, double kilograms) =>
        Assert.Equal(kilograms, Shipped.Tables.Materials[name].WeightOf(1e6, 1), 0.007 * kilograms);

    // 20 ga of the Manufacturers' Standard is 1.5 lb on the square foot by its basis of 41.82 lb/ft² for each inch, 0.2904 lb/in³ (AISC handbook,
    // 7th edition). Steel is 0.2836 lb/in³ at 7850 kg/m³, so such a sheet weighs less than its gauge says.
    [Fact]
    public void A_gauged_sheet_is_lighter_than_the_basis_of_its_gauge()
    {
        var (foot, pound) = (304.8 * 304.8, 0.45359237);
        var weight = Shipped.Tables.Materials["dc01"].WeightOf(foot, GaugeSystem.Steel.Thickness(20)) / pound;
        Assert.Equal(1.5 * 0.2836 / 0.2904, weight, 0.001);
    }

    // EN 10130:1999 (read): A80 at least, 2 points less over 0.5 to 0.7 mm, 4 up to 0.5 mm; Re at most, N/mm².
    [Theory]
    [InlineData("dc01", 0.28, 280)]
    [InlineData("dc03", 0.34, 240)]
    [InlineData("dc04", 0.38, 210)]
    [InlineData("dc05", 0.40, 180)]
    [InlineData("dc06", 0.38, 180)]
    public void An_edge_stretches_no_further_than_the_sheet_is_sold_to(string name, double limit, double yield)
    {
        var material = Shipped.Tables.Materials[name];
        foreach (var (thickness, less) in new[] { (3.0, 0.0), (0.701, 0.0), (0.7, 0.02), (0.501, 0.02), (0.5, 0.04), (0.3, 0.04) })
            Assert.Equal(limit - less, material.StretchLimitAt(thickness), 1e-12);
        Assert.Equal(yield, material.GreatestYield);
    }

    // A steel mill's data sheet has 41 % for DC06, by the issue of 2006 (read): the older figure is the safer.
    [Fact]
    public void DC06_is_reckoned_by_the_stricter_of_two_issues() => Assert.InRange(Shipped.Tables.Materials["dc06"].StretchLimitAt(1), 0, 0.41);

    [Fact]
    public void Where_nothing_is_said_of_thin_sheet_it_stretches_as_any()
    {
        var aluminium = Shipped.Tables.Materials["en-aw-5052-h32"];
        Assert.Equal(aluminium.StretchLimit, aluminium.StretchLimitAt(0.3));
        Assert.Equal(double.PositiveInfinity, aluminium.GreatestYield);
    }

    [Fact]
    public void Zinc_and_family_are_known()
    {
        var materials = Shipped.Tables.Materials;
        Assert.Equal(["dx51-z120", "dx51-z275"], materials.Values.Where(m => m.IsZincCoated).Select(m => m.Name).Order(StringComparer.Ordinal));
        Assert.Equal(MetalFamily.StainlessSteel, materials["stainless-1-4301"].Family);
        Assert.Equal(MetalFamily.Aluminium, materials["en-aw-6061-t6"].Family);
        Assert.All(materials.Values, m => Assert.InRange(m.NeutralLine, 0.3, 0.5));
    }

    [Fact]
    public void A_shop_may_do_without_metals_machines_processes_and_fasteners()
    {
        var shop = Shipped.Read(Shipped.Files.Where(f => !ShopReader.IsOptional(f.Name.Split('/')[^1])));
        Assert.Empty(shop.Materials);
        Assert.Empty(shop.Brakes);
        Assert.Empty(shop.Cutters);
        Assert.Empty(shop.Processes);
        Assert.Empty(shop.Bolts);
    }

    // Tables as they were before coatings, thicknesses and cutters were thought of: a job's record may hold them.
    [Fact]
    public void Tables_that_say_less_are_read()
    {
        var shop = Shipped.Read(Shipped.Files.Where(f => !f.Name.EndsWith("jigs.yaml", StringComparison.Ordinal)).Select(f => f with { Text = Without(f.Text, "thicknesses:", "coating:", "thin_stretch_limits:", "greatest_yield:", "springback:", "thickness:", "nose_radius:") }));
        Assert.Empty(shop.Materials["dc01"].Thicknesses);
        Assert.Equal(ZincCoating.None, shop.Materials["dx51-z275"].Zinc);
        Assert.Equal(0.28, shop.Materials["dc01"].StretchLimitAt(0.4));
        Assert.Equal(double.PositiveInfinity, shop.Brakes[0].GreatestThickness);

        static string Without(string text, params string[] keys) =>
            string.Join('\n', text.Split('\n').Where(line => !keys.Any(key => line.TrimStart().StartsWith(key, StringComparison.Ordinal))));
    }

    // Coatings as a job's record may hold them from before there were designations; a shop writes its own so.
    [Fact]
    public void A_coating_may_be_given_in_grams()
    {
        var shop = Shipped.Read(Shipped.Files.Select(f =>
            f with { Text = f.Text.Replace("coating: Z275", "coating: {both_faces: 275, least_on_one_face: 94}", StringComparison.Ordinal) }));
        Assert.Equal(new ZincCoating(275, 94), shop.Materials["dx51-z275"].Zinc);
    }

    // ASTM A653 table 1 (read): g/m², both faces by three spots, and the least of one face. 275 / 2 / 7.14 = 19.3 µm a face; EN 10346 states
    // 20 µm as typical (from memory).
    [Theory]
    [InlineData("dx51-z275", 275, 94, 19.3)]
    [InlineData("dx51-z120", 120, 36, 8.4)]
    public void The_zinc_of_a_face_is_what_the_designation_says_of_both(string name, double both, double one, double micrometres)
    {
        var zinc = Shipped.Tables.Materials[name].Zinc;
        Assert.Equal((both, one), (zinc.BothFaces, zinc.LeastOnOneFace));
        Assert.Equal(micrometres, zinc.MicrometresOnAFace, 0.05);
    }

    // Manufacturers' Standard 18 ga 0.0478 in, galvanised 18 ga 0.0516 in, U.S. Standard 18 ga 0.05 in: one number, three thicknesses.
    [Theory]
    [InlineData("dc01", "18 ga steel", 0.0478)]
    [InlineData("dx51-z275", "18 ga galvanised", 0.0516)]
    [InlineData("stainless-1-4301", "18 ga us-standard", 0.05)]
    [InlineData("en-aw-5052-h32", "0.050 in", 0.05)]
    public void A_gauge_is_that_of_the_system_that_the_metal_is_sold_by(string name, string written, double inches) =>
        Assert.Equal(inches * 25.4, Shipped.Tables.Materials[name].Thicknesses.Single(t => t.Text == written).Millimetres, 0.00005 * 25.4);

    [Fact]
    public void The_thinnest_sheet_that_is_thick_enough_is_found()
    {
        var dc01 = Shipped.Tables.Materials["dc01"];
        Assert.True(dc01.TryThickness(1.0, out var same));
        Assert.Equal("1 mm", same.Text);
        Assert.True(dc01.TryThickness(1.21, out var next));
        Assert.Equal("18 ga steel", next.Text); // 1.215 mm, where 1.2 mm would be too thin
        Assert.False(dc01.TryThickness(3.1, out _));
    }

    // German trade tables (read): DC01 comes back to 0.97 of the tool's angle at r = 4 t, stainless to 0.89 at 10 t.
    [Theory]
    [InlineData("dc01", 4, 0.97)]
    [InlineData("stainless-1-4301", 10, 0.89)]
    public void A_metal_springs_back_as_its_row_of_the_trade_tables(string name, double ratio, double factor)
    {
        Assert.True(Springback.TryFromTable(Shipped.Tables.Materials[name].SpringbackRow, ratio, out var springback));
        Assert.Equal(factor, springback.Factor, 1e-12);
    }

    [Theory]
    [InlineData("materials.yaml", "density: 7850", "density: 7850 mm", 18, 14)]
    [InlineData("materials.yaml", "density: 7850", "density: 78", 18, 14)]
    [InlineData("materials.yaml", "family: steel", "family: steal", 17, 13)]
    [InlineData("materials.yaml", "zinc: no", "zinc: some", 24, 11)]
    [InlineData("materials.yaml", "k_factor: 0.44", "k_factor: 0.6", 20, 15)]
    [InlineData("materials.yaml", "title: mild", "titel: mild", 16, 5)]
    [InlineData("materials.yaml", "{0.5 mm: 0.24, ", "{0.5 mm: 0.24 mm, ", 22, 35)]
    [InlineData("materials.yaml", "{0.5 mm: 0.24, ", "{0.70 mm: 0.24, ", 22, 42)]
    [InlineData("materials.yaml", "greatest_yield: 280", "greatest_yield: 280 mm", 23, 21)]
    [InlineData("materials.yaml", "springback: DC01", "springback: DC02", 25, 17)]
    [InlineData("materials.yaml", "22 ga steel, 20 ga steel", "22 ga steel, 20 ga", 26, 106)]
    [InlineData("materials.yaml", "zinc: yes\n    coating", "zinc: no\n    coating", 87, 14)]
    [InlineData("materials.yaml", "coating: Z275", "coating: Z276", 87, 14)]
    [InlineData("materials.yaml", "coating: Z275", "coating: [Z275]", 87, 14)]
    [InlineData("materials.yaml", "coating: Z275", "coating: {both_faces: 275, least_on_one_face: 200}", 87, 14)]
    [InlineData("processes.yaml", "plug_hole: {0.9 mm: 5 mm", "plug_hole: {3 mm: 5 mm", 12, 29)]
    [InlineData("processes.yaml", "tack_pitch: {0.8 mm: 25 mm", "tack_pitch: {0.8 mm: 25 deg", 9, 26)]
    [InlineData("steps.yaml", "caution: recoating", "caution: repainting", 18, 14)]
    [InlineData("steps.yaml", "caution: [fire, fuel]", "caution: [fire, full]", 8, 21)]
    [InlineData("machines.yaml", "kerf: 6 mm", "kerf: 30 mm", 50, 11)]
    [InlineData("machines.yaml", "cuts: [aluminium, other]", "cuts: [aluminium, wood]", 59, 23)]
    [InlineData("steps.yaml", "text: Sealer", "tekst: Sealer", 21, 5)]
    [InlineData("fasteners.yaml", "clearance_medium: 4.5 mm", "clearence_medium: 4.5 mm", 7, 5)]
    [InlineData("fasteners.yaml", "{drill: 0.098 in, source: ", "{source: ", 60, 3)]
    [InlineData("machines.yaml", "nose_angle: 45 deg", "nose_angle: 45 mm", 15, 17)]
    [InlineData("machines.yaml", "length: 1250 mm", "length: 1 mm", 8, 13)]
    public void A_fault_in_a_table_is_told_with_its_place(string file, string there, string instead, int line, int column)
    {
        var complaints = new List<Complaint>();
        Assert.False(ShopReader.TryRead(
            [.. Shipped.Files.Select(f => f.Name == $"shop/{file}" ? f with { Text = f.Text.Replace(there, instead, StringComparison.Ordinal) } : f)], complaints, out _));
        Assert.Contains(complaints, c => c.File == $"shop/{file}" && (c.Line, c.Column) == (line, column));
    }
}
