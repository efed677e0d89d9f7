using TemplateForge.Fabrication;

namespace TemplateForge.Jobs.Tests;

/// <summary>A part that is handed with some values and its own mirror image with others.</summary>
public class HandsTests
{
    [Fact]
    public void Hands_that_are_alike_are_made_once_and_say_so()
    {
        var set = Jobsite.Make(Jobsite.Request("tube-boss") with { Hand = Jobsite.Choose("both") });
        var job = Assert.Single(set.Jobs);
        Assert.Equal(Hand.Either, job.Modification.Hand);
        var record = Jobsite.RecordOf(job);
        Assert.Contains("\"hand\": \"either\"", record, StringComparison.Ordinal);
        Jobsite.AreTheSame(set.Files, Jobsite.Make(Jobsite.Read(record).Request).Files);
    }

    [Fact]
    public void With_values_that_make_it_handed_each_hand_is_made_and_none_is_called_either()
    {
        var request = Jobsite.Request("tube-boss", "offset=5");
        Assert.Equal([Hand.Left, Hand.Right], Jobsite.Plan(request with { Hand = Jobsite.Choose("both") }).Modifications.Select(m => m.Hand));
        Assert.Contains("its own mirror image", Assert.Single(Jobsite.Refuse(request with { Hand = Jobsite.Choose("either") })).Problem, StringComparison.Ordinal);
    }

    [Fact]
    public void Nobody_measures_on_either_hand_of_a_handed_profile() =>
        Assert.NotEmpty(Jobsite.Refuse(Jobsite.Request("tube-boss") with { MeasuredOn = Jobsite.Choose("either") }));

    [Theory]
    [InlineData("square-to-round-duct", "aside_along=30", Hand.Either)]
    [InlineData("square-to-round-duct", "aside_across=40", Hand.Left)]
    [InlineData("tunnel-extension", "sideways=15", Hand.Left)]
    [InlineData("tunnel-extension", "sideways=0", Hand.Either)]
    [InlineData("flanged-patch", "flanged_edges=adjoining", Hand.Left)]
    [InlineData("flanged-patch", "flanged_edges=opposite", Hand.Either)]
    public void A_shape_that_leans_to_one_side_has_a_hand(string profile, string setting, Hand hand) =>
        Assert.Equal(hand, Jobsite.Plan(Jobsite.Request(profile, setting)).Modifications[0].Hand);

    [Theory, InlineData("tube-elbow", "pieces=2.5", "2 or 3")]
    public void A_number_of_things_has_no_fractions(string profile, string setting, string remedy)
    {
        var complaints = Jobsite.Refuse(Jobsite.Request(profile, setting));
        Assert.Contains(complaints, c => c.Remedy.Contains(remedy, StringComparison.Ordinal));
    }
}
