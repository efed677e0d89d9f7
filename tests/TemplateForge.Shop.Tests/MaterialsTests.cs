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
        Assert.Equal(kilograms, TheShop.Read(TheShop.Shipped).Materials[name].WeightOf(1e6, 1), 1e-9);

    // EN 10130:1999 (read): A80 at least 28 % for DC01 and 38 % for DC04.
    [Theory]
    [InlineData("dc01", 0.28)]
    [InlineData("dc04", 0.38)]
    public void An_edge_stretches_no_further_than_the_sheet_is_sold_to(string name, double limit) =>
        Assert.Equal(limit, TheShop.Read(TheShop.Shipped).Materials[name].StretchLimit, 1e-12);

    [Fact]
    public void Zinc_and_family_are_known()
    {
        var materials = TheShop.Read(TheShop.Shipped).Materials;
        Assert.Equal(["dx51-z275"], materials.Values.Where(m => m.IsZincCoated).Select(m => m.Name));
        Assert.Equal(MetalFamily.StainlessSteel, materials["stainless-1-4301"].Family);
        Assert.Equal(MetalFamily.Aluminium, materials["en-aw-6061-t6"].Family);
        Assert.All(materials.Values, m => Assert.InRange(m.NeutralLine, 0.3, 0.5));
    }

    [Fact]
    public void A_shop_may_have_neither_metals_nor_machines()
    {
        var shop = TheShop.Read(TheShop.Shipped.Where(f => !f.Name.EndsWith("materials.yaml", StringComparison.Ordinal) && !f.Name.EndsWith("machines.yaml", StringComparison.Ordinal)));
        Assert.Empty(shop.Materials);
        Assert.Empty(shop.Brakes);
    }

    [Theory]
    [InlineData("materials.yaml", "density: 7850", "density: 7850 mm", 8, 14)]
    [InlineData("materials.yaml", "density: 7850", "density: 78", 8, 14)]
    [InlineData("materials.yaml", "family: steel", "family: steal", 7, 13)]
    [InlineData("materials.yaml", "zinc: no", "zinc: some", 12, 11)]
    [InlineData("materials.yaml", "k_factor: 0.44", "k_factor: 0.6", 10, 15)]
    [InlineData("materials.yaml", "title: mild", "titel: mild", 6, 5)]
    [InlineData("machines.yaml", "nose_angle: 45 deg", "nose_angle: 45 mm", 11, 17)]
    [InlineData("machines.yaml", "length: 1250 mm", "length: 1 mm", 6, 13)]
    public void A_fault_in_a_table_is_told_with_its_place(string file, string there, string instead, int line, int column)
    {
        var complaints = new List<Complaint>();
        Assert.False(ShopReader.TryRead(TheShop.With(file, there, instead), complaints, out _));
        Assert.Contains(complaints, c => c.File == $"shop/{file}" && (c.Line, c.Column) == (line, column));
    }

    [Fact]
    public void Three_thousand_mutilated_tables_are_refused_with_places_or_read()
    {
        var random = new Random(20261125);
        for (var i = 0; i < 3_000; i++)
        {
            var one = random.Next(TheShop.Shipped.Length);
            var text = Mutilated(TheShop.Shipped[one].Text, random);
            var complaints = new List<Complaint>();
            var sound = ShopReader.TryRead(TheShop.Shipped.SetItem(one, TheShop.Shipped[one] with { Text = text }), complaints, out _);
            Assert.NotEqual(sound, complaints.Count > 0);
            Assert.All(complaints, c => Assert.True(c.Line >= 1 && c.Column >= 1 && c.Problem.Length > 0, $"{c}"));
        }
    }

    private static string Mutilated(string text, Random random)
    {
        var at = random.Next(text.Length);
        return random.Next(4) switch
        {
            0 => text.Remove(at, 1),
            1 => text.Insert(at, "{}[]:,*&!-# 0123abc\n".Substring(random.Next(20), 1)),
            2 => text.Remove(at, Math.Min(random.Next(1, 200), text.Length - at)),
            _ => text.Insert(random.Next(text.Length), text.Substring(at, Math.Min(random.Next(1, 60), text.Length - at))),
        };
    }
}
