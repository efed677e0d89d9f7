using TemplateForge.Fabrication;
using TemplateForge.Notation;

namespace TemplateForge.Shop.Tests;

/// <summary>What cuts: kerf by thickness, leads, and what is wrong with a table of them.</summary>
public class CuttersTests
{
    [Fact]
    public void A_kerf_by_thickness_holds_up_to_its_rows()
    {
        var torch = Read("kerf: {1 mm: 1.1 mm, 3 mm: 1.4 mm}");
        Assert.True(torch.TryKerf(2, out var kerf));
        Assert.Equal(1.4, kerf);
        Assert.False(torch.TryKerf(4, out _));
    }

    [Fact]
    public void One_kerf_holds_for_all_sheets() =>
        Assert.True(Read("kerf: 1.2 mm").TryKerf(25, out var kerf) && kerf == 1.2);

    [Fact]
    public void The_least_hole_is_the_larger_of_a_diameter_and_a_number_of_thicknesses()
    {
        var torch = Shipped.Tables.Cutters["plasma-table"];
        Assert.Equal((5.0, 9.0), (torch.LeastHoleIn(1), torch.LeastHoleIn(6)));
    }

    [Fact]
    public void Everything_that_a_table_says_of_a_cutter_is_read()
    {
        var torch = Read(
            "compensates: yes\n    part_on: right\n    lead: line\n    lead_in: 5 mm\n    lead_out: 1 mm\n    least_lead: 2 mm\n    overcut: 3 mm\n    tab: 4 mm\n"
            + "    spread: 60 mm\n    feed: {1 mm: 3000}\n    pierce_time: {1 mm: 0.3}\n    rapid: 12000");
        Assert.True(torch is { Compensates: true, PartOn: Side.Right, Lead: LeadKind.Line, LeadIn: 5, LeadOut: 1, LeastLead: 2, Overcut: 3, Tab: 4, Spread: 60, RapidFeed: 12_000 });
        Assert.True(torch.Feed.TryFind(1, out var feed) && feed == 3000 && torch.PierceTime.TryFind(1, out var time) && time == 0.3);
    }

    // No torch's kerf is shipped, nor a feed: they are the shop's own.
    [Fact]
    public void The_shipped_torch_has_neither_kerf_nor_feed() =>
        Assert.False(Shipped.Tables.Cutters["plasma-table"].TryKerf(1, out _) || Shipped.Tables.Cutters["plasma-table"].Feed.TryFind(1, out _));

    [Theory]
    [InlineData("lead: curve", 5, 11)]
    [InlineData("part_on: front", 5, 14)]
    [InlineData("least_lead: 5 mm", 3, 5)]
    [InlineData("compensates: perhaps", 5, 18)]
    [InlineData("kerf: {1 mm: 30 mm}", 5, 18)]
    [InlineData("feed: {1 mm: 3000 mm}", 5, 18)]
    [InlineData("leed_in: 3 mm", 5, 5)]
    [InlineData("cautions: [fire, smoke]", 5, 22)]
    public void A_fault_is_told_with_its_place(string line, int row, int column)
    {
        var complaints = new List<Complaint>();
        Assert.False(ShopReader.TryRead([.. Shipped.Files, Own(line)], complaints, out _));
        var complaint = complaints[0];
        Assert.Equal(("ours/machines.yaml", row, column), (complaint.File, complaint.Line, complaint.Column));
    }

    [Fact]
    public void A_usual_cutter_that_the_shop_does_not_have_is_refused()
    {
        var complaints = new List<Complaint>();
        Assert.False(ShopReader.TryRead([.. Shipped.Files, new("ours/habits.yaml", "cutter: ruoter\n")], complaints, out _));
        Assert.Equal("Did you mean router?", Assert.Single(complaints).Remedy);
    }

    private static Cutter Read(string line)
    {
        var complaints = new List<Complaint>();
        Assert.True(ShopReader.TryRead([.. Shipped.Files, Own(line)], complaints, out var shop), string.Join('\n', complaints));
        return shop.Cutters["torch"];
    }

    private static TextFile Own(string line) =>
        new("ours/machines.yaml", $"cutters:\n  torch:\n    title: torch\n    least_hole: 4 mm\n    {line}\n    source: measured\nbrakes: {{}}\n");
}
