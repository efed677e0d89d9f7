using TemplateForge.Notation;

namespace TemplateForge.Shop.Tests;

/// <summary>Steps of the work that are the same in many profiles.</summary>
public class StepsTests
{
    [Fact]
    public void Every_step_is_a_sentence_and_its_cautions_are_the_shops() => Assert.All(Shipped.Tables.Steps.Values, step =>
    {
        Assert.EndsWith(".", step.Text, StringComparison.Ordinal);
        Assert.All(step.Cautions, name => Assert.Contains(name, Shipped.Tables.Cautions.Keys));
    });

    [Fact]
    public void What_burns_and_what_rusts_is_warned_of_at_its_step()
    {
        Assert.Equal(["fire", "fuel"], Shipped.Tables.Steps["clear_for_welding"].Cautions);
        Assert.Equal(["recoating"], Shipped.Tables.Steps["recoat"].Cautions);
    }

    // A job's record from before there was such a table does without it.
    [Fact]
    public void A_shop_may_do_without_the_table() => Assert.Empty(Shipped.Read(Shipped.Files.Where(f => f.Name != "shop/steps.yaml")).Steps);

    [Fact]
    public void A_shops_own_step_replaces_the_librarys()
    {
        var own = new TextFile("my-shop/steps.yaml", "steps:\n  recoat: {text: As the paint maker says., caution: [recoating, fire], source: own}\n");
        var steps = Shipped.Read(Shipped.Files.Append(own)).Steps;
        Assert.Equal("As the paint maker says.", steps["recoat"].Text);
        Assert.Equal(Shipped.Tables.Steps.Count, steps.Count);
    }
}
