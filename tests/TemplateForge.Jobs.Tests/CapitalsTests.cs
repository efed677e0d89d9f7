using System.Collections.Immutable;
using TemplateForge.Fabrication;

namespace TemplateForge.Jobs.Tests;

/// <summary>A word that is chosen from a list is understood with capitals, and means what it means without.</summary>
public class CapitalsTests
{
    [Fact]
    public void A_choice_with_capitals_makes_the_files_that_it_makes_without()
    {
        var request = Jobsite.Request(Jobsite.Patch) with { Cutter = Jobsite.Choose("plasma-table"), Kerf = Jobsite.Choose("1.5"), Dxf = Jobsite.Choose("r12"), Turn = Jobsite.Choose("none") };
        var small = Jobsite.Make(request);
        var capital = Jobsite.Make(Jobsite.Request(Jobsite.Patch) with
        {
            Cutter = Jobsite.Choose("Plasma-Table"),
            Kerf = request.Kerf,
            Dxf = Jobsite.Choose("R12"),
            Turn = Jobsite.Choose("None"),
        });
        Jobsite.AreTheSame(ButForTheRecord(small), ButForTheRecord(capital));
        // The cutter and the DXF are recorded under the names that they have.
        Assert.Equal(Jobsite.RecordOf(small.Jobs[0]), Jobsite.RecordOf(capital.Jobs[0]).Replace("\"None\"", "\"none\"", StringComparison.Ordinal));

        static ImmutableArray<NamedBytes> ButForTheRecord(JobSet set) => [.. set.Files.Where(f => f.Name != JobRecord.FileName)];
    }

    [Fact]
    public void A_choice_of_a_profile_may_have_capitals()
    {
        Assert.Equal(Joint("lap"), Joint("LAP"));
        Assert.NotEqual(Joint("butt"), Joint("LAP"));

        static (string, double) Joint(string word)
        {
            var made = Jobsite.Plan(Jobsite.Request(Jobsite.Patch, $"joint={word}")).Modifications[0];
            return (made.Values.Single(v => v.Name == "joint").Text, made.Pieces[0].Shape.Area);
        }
    }

    [Theory]
    [InlineData("Left", "RIGHT", new[] { Hand.Left })]
    [InlineData("Right", "Left", new[] { Hand.Right })]
    [InlineData("Both", "left", new[] { Hand.Left, Hand.Right })]
    public void A_hand_may_have_capitals(string hand, string measuredOn, Hand[] made)
    {
        var plan = Jobsite.Plan(Jobsite.Request(Jobsite.Notch) with { Hand = Jobsite.Choose(hand), MeasuredOn = Jobsite.Choose(measuredOn) });
        Assert.Equal(made, plan.Modifications.Select(m => m.Hand));
        Assert.All(plan.Modifications, m => Assert.Equal(m.Hand.ToString().Equals(measuredOn, StringComparison.OrdinalIgnoreCase), m.HandWasMeasured));
    }

    [Fact]
    public void Where_two_entries_differ_in_capitals_only_the_one_that_is_so_written_is_meant()
    {
        Assert.Equal("Attic", Jobsite.Choose("Attic").Among(["attic", "Attic"]));
        Assert.Equal("attic", Jobsite.Choose("attic").Among(["attic", "Attic"]));
        Assert.Equal("attic", Jobsite.Choose("ATTIC").Among(["cellar", "attic"]));
        Assert.Equal("loft", Jobsite.Choose("loft").Among(["cellar", "attic"]));
    }
}
