using System.Collections.Immutable;

namespace TemplateForge.Cli.Tests.Commands;

public sealed class SuggestCommandTests
{
    private static ImmutableArray<string> After(string line)
    {
        using var typed = Typed.Run("suggest", line);
        Assert.Equal((ExitCode.Done, ""), (typed.Code, typed.Errors));
        return [.. typed.Output.Split('\n', StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries)];
    }

    [Fact]
    public void A_line_with_nothing_but_the_programs_name_goes_on_with_a_command_but_not_with_one_that_is_hidden()
    {
        var words = After("templateforge ");
        Assert.Superset(new HashSet<string> { "list", "show", "make", "check-profile", "check-dxf", "completion" }, words.ToHashSet());
        Assert.DoesNotContain("suggest", words);
    }

    [Theory]
    [InlineData("templateforge ma", "make")]
    [InlineData("templateforge make boos", "booster-clearance-notch")]
    [InlineData("templateforge show hole-p", "hole-plug-patch")]
    [InlineData("templateforge make --paper a3 hole-p", "hole-plug-patch")]
    [InlineData("templateforge make hole-plug-patch --rep", "--replace")]
    [InlineData("templateforge make hole-plug-patch --paper lett", "letter")]
    [InlineData("templateforge make hole-plug-patch --cutter plas", "plasma-table")]
    [InlineData("templateforge make hole-plug-patch --hand b", "both")]
    [InlineData("templateforge make hole-plug-patch --set diam", "diameter=")]
    [InlineData("templateforge make hole-plug-patch --set hole=rounded", "hole=rounded_rectangle")]
    [InlineData("templateforge make hole-plug-patch --set \"hole=rounded", "hole=rounded_rectangle")]
    [InlineData("templateforge check-dxf part.dxf --unit i", "in")]
    [InlineData("templateforge completion pow", "powershell")]
    public void A_word_that_was_begun_is_ended(string line, string word) => Assert.Equal([word], After(line));

    [Theory]
    [InlineData("templateforge make hole-plug-patch --out ")] // a folder: the shell knows it
    [InlineData("templateforge make hole-plug-patch --set diameter=")] // to be measured
    [InlineData("templateforge make nothing-called-so --set ")]
    [InlineData("templateforge nothing ")]
    [InlineData("templateforge make hole-plug-patch zz")]
    public void Where_there_is_nothing_to_say_nothing_is_said(string line) => Assert.Empty(After(line));

    // degrees is what the help says, not what is typed.
    [Fact]
    public void A_turn_is_one_of_two_words_or_a_number_of_ones_own() => Assert.Equal(["fewest", "none"], After("templateforge make hole-plug-patch --turn "));

    [Theory]
    [InlineData("templateforge check-dxf ")]
    [InlineData("templateforge check-dxf --unit in ")]
    [InlineData("templateforge check-profile ")]
    [InlineData("templateforge check-profile first.yaml ")]
    public void Where_a_file_is_meant_nothing_is_said_so_that_the_shell_offers_files(string line) => Assert.Empty(After(line));

    [Fact]
    public void Once_there_is_a_file_or_a_hyphen_options_are_offered()
    {
        Assert.Contains("--repair", After("templateforge check-dxf part.dxf "));
        Assert.Contains("--repair", After("templateforge check-dxf --"));
        Assert.Contains("--json", After("templateforge check-profile --"));
    }

    [Fact]
    public void The_shops_printers_are_offered_where_one_is_meant()
    {
        using var typed = new Typed();
        typed.Again("coupon", "office-laser", "--paper", "a4", "--level", "169.7", "--upright", "250.4", "--rising", "302.4", "--falling", "302.5", "--shop", "ours");
        typed.Again("suggest", "templateforge make hole-plug-patch --shop ours --printer ");
        Assert.Equal("none\noffice-laser\n", typed.Output);
        typed.Again("suggest", "templateforge coupon --shop ours off");
        Assert.Equal("office-laser\n", typed.Output);
        Assert.Equal(["none"], After("templateforge make hole-plug-patch --printer "));
    }

    [Fact]
    public void What_was_given_is_not_offered_again_but_for_set()
    {
        var words = After("templateforge make hole-plug-patch --paper a3 --set diameter=30 --");
        Assert.DoesNotContain("--paper", words);
        Assert.Contains("--set", words);
        Assert.DoesNotContain("diameter=", After("templateforge make hole-plug-patch --set diameter=30 --set "));
    }

    [Theory]
    [InlineData("bash", "complete ")]
    [InlineData("zsh", "#compdef templateforge")]
    [InlineData("powershell", "Register-ArgumentCompleter")]
    [InlineData("BASH", "complete ")]
    public void There_is_a_script_for_each_shell_which_asks_the_program(string shell, string part)
    {
        using var typed = Typed.Run("completion", shell);
        Assert.Equal((ExitCode.Done, ""), (typed.Code, typed.Errors));
        Assert.Contains(part, typed.Output, StringComparison.Ordinal);
        Assert.Contains("templateforge suggest", typed.Output, StringComparison.Ordinal);
    }

    [Fact]
    public void Another_shell_is_refused_with_those_that_there_are()
    {
        using var typed = Typed.Run("completion", "ksh");
        Assert.Equal(ExitCode.Refused, typed.Code);
        Assert.Contains("bash, zsh, powershell", typed.Errors, StringComparison.Ordinal);
    }
}
