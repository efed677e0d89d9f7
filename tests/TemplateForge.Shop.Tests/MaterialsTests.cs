using TemplateForge.Fabrication;
using TemplateForge.Notation;

namespace TemplateForge.Shop.Tests;

/// <summary>The tables of metals and machines, which a shop may do without.</summary>
public class MaterialsTests
{
    // Carbon steel 7.85 kg/m² for each mm (EN 1991-1-1 practice, from memory); aluminium 5052 2680 kg/m³ (Aluminum Association, from
    // memory); stainless 1.4301 7900 kg/m³ (EN 10088-1, from memory).
    [Theory]
    [InlineData("dc01", 7.85)]
    [InlineData("dx51-z275", 7.85)]
    [InlineData("stainless-1-4301", 7.9)]
    [InlineData("en-aw-5052-h32", 2.68)]
    public void A_square_metre_a_millimetre_thick_weighs_what_the_books_say(string name, double kilograms) =>
        Assert.Equal(kilograms, Shipped.Tables.Materials[name].WeightOf(1e6, 1), 1e-9);

    // EN 10130:1999 (read): A80 at least 28 % for DC01 and 38 % for DC04.
    [Theory]
    [InlineData("dc01", 0.28)]
    [InlineData("dc04", 0.38)]
    public void An_edge_stretches_no_further_than_the_sheet_is_sold_to(string name, double limit) =>
        Assert.Equal(limit, Shipped.Tables.Materials[name].StretchLimit, 1e-12);

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
        var shop = Shipped.Read(Shipped.Files.Select(f => f with { Text = Without(f.Text, "thicknesses:", "coating:", "springback:", "thickness:", "nose_radius:") }));
        Assert.Empty(shop.Materials["dc01"].Thicknesses);
        Assert.Equal(ZincCoating.None, shop.Materials["dx51-z275"].Zinc);
        Assert.Equal(double.PositiveInfinity, shop.Brakes[0].GreatestThickness);

        static string Without(string text, params string[] keys) =>
            string.Join('\n', text.Split('\n').Where(line => !keys.Any(key => line.TrimStart().StartsWith(key, StringComparison.Ordinal))));
    }

    // ASTM A653 table 1 (read): g/m², both faces by three spots, and the least of one face. G90 is Z275. 275 / 2 / 7.14 = 19.3 µm a face;
    // EN 10346 states 20 µm as typical (from memory).
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
    [InlineData("materials.yaml", "density: 7850", "density: 7850 mm", 11, 14)]
    [InlineData("materials.yaml", "density: 7850", "density: 78", 11, 14)]
    [InlineData("materials.yaml", "family: steel", "family: steal", 10, 13)]
    [InlineData("materials.yaml", "zinc: no", "zinc: some", 15, 11)]
    [InlineData("materials.yaml", "k_factor: 0.44", "k_factor: 0.6", 13, 15)]
    [InlineData("materials.yaml", "title: mild", "titel: mild", 9, 5)]
    [InlineData("materials.yaml", "springback: DC01", "springback: DC02", 16, 17)]
    [InlineData("materials.yaml", "22 ga steel, 20 ga steel", "22 ga steel, 20 ga", 17, 106)]
    [InlineData("materials.yaml", "zinc: yes\n    coating", "zinc: no\n    coating", 40, 14)]
    [InlineData("materials.yaml", "least_on_one_face: 94", "least_on_one_face: 200", 40, 14)]
    [InlineData("machines.yaml", "kerf: 6 mm", "kerf: 30 mm", 28, 11)]
    [InlineData("processes.yaml", "plug_hole: {0.9 mm: 5 mm", "plug_hole: {3 mm: 5 mm", 10, 29)]
    [InlineData("processes.yaml", "tack_pitch: 30 mm", "tack_pitch: 30 deg", 8, 17)]
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
