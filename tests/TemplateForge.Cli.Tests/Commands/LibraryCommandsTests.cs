using System.IO;
using System.Text.Json.Nodes;

namespace TemplateForge.Cli.Tests.Commands;

public sealed class LibraryCommandsTests
{
    [Fact]
    public void Every_profile_is_listed_with_what_it_is()
    {
        using var typed = Typed.Run("list");
        Assert.Equal(ExitCode.Done, typed.Code);
        Assert.Contains("booster-clearance-notch", typed.Output, StringComparison.Ordinal);
        Assert.Contains("Patch for a hole that should not be there", typed.Output, StringComparison.Ordinal);
    }

    [Fact]
    public void Only_profiles_with_all_the_words_are_listed()
    {
        using var typed = Typed.Run("list", "PATCH", "weld");
        Assert.Contains("hole-plug-patch", typed.Output, StringComparison.Ordinal);
        Assert.DoesNotContain("booster", typed.Output, StringComparison.Ordinal);
    }

    // At its defaults a square duct is its own mirror image, and its sheets say EITHER HAND; offset to a side it is not.
    [Theory]
    [InlineData("square-to-round-duct", "left hand or either", "left hand, or either where")]
    [InlineData("booster-clearance-notch", "left hand", "left hand.")]
    [InlineData("hole-plug-patch", "either hand", "either hand.")]
    public void For_which_hand_a_profile_is_drawn_is_what_its_sheets_say(string profile, string listed, string shown)
    {
        using var typed = Typed.Run("list", profile);
        Assert.EndsWith(listed, typed.Output.TrimEnd(), StringComparison.Ordinal);
        Assert.Equal(ExitCode.Done, typed.Again("show", profile));
        Assert.Contains($"Drawn for: {shown}", typed.Output, StringComparison.Ordinal);
    }

    [Fact]
    public void Output_that_cannot_be_written_is_told_without_a_word_of_a_fault_in_the_program()
    {
        using var typed = new Typed();
        var code = typed.Again(["list"], terminal => terminal with { Output = new FullDisk() });
        Assert.Equal(ExitCode.Refused, code);
        Assert.StartsWith("command line:1:1: ", typed.Errors, StringComparison.Ordinal);
        Assert.Contains("no room", typed.Errors, StringComparison.Ordinal);
        Assert.Equal(ExitCode.Refused, typed.Again(["list"], terminal => terminal with { Output = new FullDisk(), Errors = new FullDisk() }));
    }

    private sealed class FullDisk : StringWriter
    {
        public override void Write(string? value) => throw new NotPrintedException(new("no room"));

        public override void WriteLine(string? value) => Write(value);
    }

    [Fact]
    public void Words_that_no_profile_has_are_told()
    {
        using var typed = Typed.Run("list", "gearbox");
        Assert.Equal((ExitCode.Refused, ""), (typed.Code, typed.Output));
        Assert.Contains("gearbox", typed.Errors, StringComparison.Ordinal);
    }

    [Fact]
    public void A_profile_is_shown_with_every_value_its_range_and_how_it_is_measured()
    {
        using var typed = Typed.Run("show", "booster-clearance-notch");
        Assert.Equal(ExitCode.Done, typed.Code);
        foreach (var words in (string[])["diameter", "girth", "20 to 320", "measured", "shop", "Calipers across the widest part"])
            Assert.Contains(words, typed.Output, StringComparison.Ordinal);
    }

    [Fact]
    public void A_misspelt_profile_is_told_with_the_right_name()
    {
        using var typed = Typed.Run("show", "hole-plug-pach");
        Assert.Equal(ExitCode.Refused, typed.Code);
        Assert.StartsWith("command line:1:6: ", typed.Errors, StringComparison.Ordinal);
        Assert.Contains("hole-plug-patch", typed.Errors, StringComparison.Ordinal);
    }

    [Fact]
    public void Other_programs_read_what_is_listed_shown_and_checked()
    {
        using var typed = Typed.Run("list", "--json");
        Assert.Equal(AllShipped().Length, JsonNode.Parse(typed.Output)!["profiles"]!.AsArray().Count);

        typed.Again("show", "hole-plug-patch", "--json");
        Assert.Contains("weld_gap", JsonNode.Parse(typed.Output)!["parameters"]!.AsArray().Select(p => p!["name"]!.GetValue<string>()));

        typed.Again("check-profile", Shipped("patches", "hole-plug-patch.yaml"), "--json");
        Assert.True(JsonNode.Parse(typed.Output)!["files"]![0]!["is_sound"]!.GetValue<bool>());
    }

    [Fact]
    public void Every_profile_that_ships_is_sound()
    {
        using var typed = Typed.Run(["check-profile", .. AllShipped()]);
        Assert.Equal((ExitCode.Done, ""), (typed.Code, typed.Errors));
    }

    [Fact]
    public void A_profile_with_faults_is_told_with_file_line_and_column()
    {
        using var typed = new Typed();
        var text = File.ReadAllText(Shipped("patches", "hole-plug-patch.yaml"));
        File.WriteAllText(typed["hole-plug-patch.yaml"], text.Replace("1.5 * plug_hole ", "1.5 * plug_hoel ", StringComparison.Ordinal));

        Assert.Equal(ExitCode.Refused, typed.Again("check-profile", "hole-plug-patch.yaml"));
        Assert.Matches(@"^hole-plug-patch\.yaml:\d+:\d+: ", typed.Errors);
        Assert.Contains("plug_hole", typed.Errors, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("a: &a [x, x]\nb: &b [*a, *a, *a, *a]\nc: [*b, *b, *b, *b]\n")]
    [InlineData("\tnot: [yaml")]
    [InlineData("")]
    [InlineData("just words")]
    public void A_file_that_is_no_profile_is_refused_and_written_by_nobody(string text)
    {
        using var typed = new Typed();
        File.WriteAllText(typed["strange.yaml"], text);

        Assert.Equal(ExitCode.Refused, typed.Again("check-profile", "strange.yaml"));
        Assert.StartsWith("strange.yaml:", typed.Errors, StringComparison.Ordinal);
        Assert.Equal(ExitCode.Refused, typed.Again("make", "strange.yaml"));
        Assert.Equal(["strange.yaml"], typed.Files);
    }

    [Fact]
    public void A_strangers_words_do_not_steer_the_terminal()
    {
        using var typed = new Typed();
        File.WriteAllText(typed["strange.yaml"], "\"pro\\e[2Jfile\": x\n");
        typed.Again("check-profile", "strange.yaml");
        Assert.NotEqual("", typed.Errors);
        Assert.DoesNotContain('\u001b', typed.Errors);
    }

    [Fact]
    public void A_library_that_is_not_there_is_told()
    {
        using var typed = new Typed();
        Assert.Equal(ExitCode.Refused, typed.Again(["list"], t => t with { LibraryFolder = typed["nowhere"] }));
        Assert.Single(typed.Errors.Split('\n', StringSplitOptions.RemoveEmptyEntries), l => !l.StartsWith(' '));
    }

    [Theory, InlineData("--help"), InlineData("list --help"), InlineData("show --help"), InlineData("make --help"), InlineData("check-profile --help")]
    public void Help_ends_with_examples(string words)
    {
        using var typed = Typed.Run(words.Split(' '));
        Assert.Equal((ExitCode.Done, ""), (typed.Code, typed.Errors));
        Assert.Contains("Examples:", typed.Output, StringComparison.Ordinal);
    }

    // The examples of `make` are commands that work: this copies one out of the help and runs it.
    [Fact]
    public void An_example_from_the_help_can_be_run()
    {
        using var typed = Typed.Run("make", "--help");
        var example = typed.Output.Split('\n').First(l => l.Contains("--paper a3", StringComparison.Ordinal)).Trim();
        var words = example[(example.IndexOf(" make ", StringComparison.Ordinal) + 1)..].Replace("\"", "", StringComparison.Ordinal);
        Assert.Equal(ExitCode.Done, typed.Again(words.Split(' ')));
    }

    private static string[] AllShipped() =>
    [
        .. Directory.GetDirectories(Shipped()).Where(d => Path.GetFileName(d) != "shop").SelectMany(d => Directory.GetFiles(d, "*.yaml")).Order(StringComparer.Ordinal),
    ];

    private static string Shipped(params string[] parts) => Path.Combine([AppContext.BaseDirectory, "profiles", .. parts]);
}
