using System.Text.RegularExpressions;

namespace TemplateForge.Profiles.Tests;

/// <summary>What the steps of the library's profiles tell a person to measure can be measured.</summary>
public class StepsTests
{
    // A tape and a rule show half a millimetre, a good eye a tenth.
    [Theory]
    [InlineData("cone-frustum", "base_diameter=4.7 in")]
    [InlineData("offset-reducer", "base_diameter=100 mm")]
    [InlineData("tube-fish-mouth", "angle=51 deg")]
    public void No_step_gives_a_length_finer_than_a_tenth_of_a_millimetre(string name, string given) =>
        Assert.All(TheLibrary.Profile(name).Make(given).Steps, s => Assert.DoesNotMatch(new Regex(@"says [\d.]*\.\d\d|lies [\d.]*\.\d\d", RegexOptions.None, TimeSpan.FromSeconds(1)), s.Text));

    // π × 120 is 376.99.
    [Fact]
    public void A_tape_round_a_cone_says_its_girth() =>
        Assert.Contains(TheLibrary.Profile("cone-frustum").Make("base_diameter=120 mm").Steps, s => s.Text.Contains("says 377 mm", StringComparison.Ordinal));

    [Fact]
    public void Nobody_puts_a_plate_on_again_that_the_job_does_not_have()
    {
        var notch = TheLibrary.Profile("booster-clearance-notch");
        Assert.DoesNotContain(notch.Make("jig=none").Steps, s => s.Text.Contains("the plate", StringComparison.Ordinal));
        Assert.Contains(notch.Make("jig=scriber").Steps, s => s.Text.Contains("with the plate on again", StringComparison.Ordinal));
    }
}
