using TemplateForge.Notation;

namespace TemplateForge.Shop.Tests;

/// <summary>A shop's own tables, laid over those that ship.</summary>
public class OwnTablesTests
{
    private const string OwnBrake =
        "    title: our brake\n    length: 2040 mm\n    table_depth: 12 mm\n    leaf_width: 12 mm\n    nose_depth: 25 mm\n    nose_height: 25 mm\n    nose_angle: 45 deg\n    source: measured\n";

    [Fact]
    public void An_entry_of_the_same_name_replaces_the_one_that_ships_and_the_others_stay()
    {
        var own = With("materials.yaml", "materials:\n  dc01: {title: our steel, family: steel, density: 7860, least_inside_radius: 1, k_factor: 0.4, stretch_limit: 0.2, zinc: no, source: bent and measured}\n");
        Assert.Equal("our steel", own.Materials["dc01"].Title);
        Assert.Equal(7860, own.Materials["dc01"].Density);
        Assert.Empty(own.Materials["dc01"].Thicknesses); // the whole entry, not one number of it
        Assert.Equal(Shipped.Tables.Materials["dc04"].Density, own.Materials["dc04"].Density);
    }

    [Fact]
    public void A_new_entry_comes_to_those_that_ship()
    {
        var own = With("fasteners.yaml", "bolts:\n  M16: {clearance_medium: 17.5 mm, source: ISO 273}\n");
        Assert.Equal(Shipped.Tables.Bolts.Count + 1, own.Bolts.Count);
        Assert.Equal(Shipped.Tables.Rivets.Count, own.Rivets.Count);
    }

    [Fact]
    public void A_shops_own_brake_is_the_one_that_is_used() => Assert.Equal("our brake", With("machines.yaml", $"brakes:\n  ours:\n{OwnBrake}").Brakes[0].Name);

    [Fact]
    public void A_habit_is_changed_without_writing_the_others()
    {
        var own = With("habits.yaml", "paper: letter\n");
        Assert.Equal(("Copperbeck Works", "letter"), (own.Name, own.UsualPaper.Name));
    }

    [Fact]
    public void A_fault_is_told_where_it_stands()
    {
        var complaints = new List<Complaint>();
        Assert.False(ShopReader.TryRead(
            [.. Shipped.Files, new("ours/fasteners.yaml", "bolts:\n  M8: {clearance_medium: 9 deg, source: a guess}\n"), new("ours/habits.yaml", "paper: a9\n")], complaints, out _));
        Assert.Equal([("ours/fasteners.yaml", 2, 26), ("ours/habits.yaml", 1, 8)], complaints.Select(c => (c.File, c.Line, c.Column)));
    }

    [Fact]
    public void An_empty_file_is_told_of() => Refused("");

    [Fact]
    public void A_list_is_told_of() => Refused("- dc01\n");

    private static void Refused(string text)
    {
        var complaints = new List<Complaint>();
        Assert.False(ShopReader.TryRead([.. Shipped.Files, new("ours/materials.yaml", text)], complaints, out _));
        Assert.All(complaints, c => Assert.Equal("ours/materials.yaml", c.File));
    }

    private static ShopTables With(string name, string text) => Shipped.Read([.. Shipped.Files, new($"ours/{name}", text)]);
}
