using System.IO;
using System.Text.Json.Nodes;

namespace TemplateForge.Cli.Tests.Commands;

public sealed class MakeCommandTests
{
    private const string Notch = "booster-clearance-notch";
    private const string Patch = "hole-plug-patch";

    [Fact]
    public void A_profile_is_made_in_a_folder_of_its_name_with_tables_of_what_was_made_and_what_to_check()
    {
        using var typed = Typed.Run("make", Notch);

        Assert.Equal((ExitCode.Done, ""), (typed.Code, typed.Errors));
        Assert.Equal(
            ((string[])["job-sheet.pdf", "job.json", "panel-cut.dxf", "preview.png", "preview.svg", "template.pdf"]).Select(f => $"out/{Notch}/{f}"),
            typed.Files);
        Assert.Contains(Path.Combine("out", Notch), typed.Output, StringComparison.Ordinal);
        foreach (var name in (string[])["template.pdf", "panel-cut.dxf"]) Assert.Contains(name, typed.Output, StringComparison.Ordinal);
        // The profile's own default: 300 mm from A to B.
        Assert.Contains(Lines(typed.Output), l => l.Contains("Datum A to datum B", StringComparison.Ordinal) && l.EndsWith("300.0", StringComparison.Ordinal));
        Assert.Contains("Brakes", typed.Output, StringComparison.Ordinal);

        // What another program reads has no colour, no broken line and nothing but words at the end of one.
        Assert.DoesNotContain('\u001b', typed.Output);
        Assert.Contains(Lines(typed.Output), l =>
            l.Contains("--set tilt_direction=…", StringComparison.Ordinal)
            && l.EndsWith("0 is along the edge from A to B, 90 is in from the edge.", StringComparison.Ordinal));
        Assert.DoesNotContain(" \n", typed.Output, StringComparison.Ordinal);
    }

    // Drawing is what takes the time, so what can be seen of one run is looked at in one test.
    [Fact]
    public void Measured_values_that_nobody_gave_make_a_demonstration_and_another_job_is_not_written_over_it()
    {
        using var typed = Typed.Run("make", Patch, "--set", "diameter=32");

        Assert.Contains("DEMONSTRATION, DO NOT CUT", typed.Output, StringComparison.Ordinal);
        Assert.Contains("--set sheet=…", typed.Output, StringComparison.Ordinal);
        Assert.DoesNotContain("--set diameter=…", typed.Output, StringComparison.Ordinal);
        Assert.DoesNotContain("--set weld_gap=…", typed.Output, StringComparison.Ordinal);

        var before = File.ReadAllBytes(typed[$"out/{Patch}/job.json"]);
        Assert.Equal(ExitCode.Refused, typed.Again("make", Patch, "--set", "diameter=40"));
        Assert.StartsWith("command line:1:1: ", typed.Errors, StringComparison.Ordinal);
        Assert.Equal(before, File.ReadAllBytes(typed[$"out/{Patch}/job.json"]));

        Assert.Equal(ExitCode.Done, typed.Again("make", Patch, "--set", "diameter=40", "--replace"));
        Assert.NotEqual(before, File.ReadAllBytes(typed[$"out/{Patch}/job.json"]));
    }

    [Fact]
    public void Both_hands_are_one_set_and_the_one_that_was_not_measured_says_so()
    {
        using var typed = Typed.Run("make", Notch, "--hand", "both", "--out", "pair");

        Assert.Equal(12, typed.Files.Count());
        Assert.Contains("pair/left/template.pdf", typed.Files);
        Assert.Contains("Left hand, from values taken on this hand.", typed.Output, StringComparison.Ordinal);
        Assert.Contains("Right hand: NOT MEASURED", typed.Output, StringComparison.Ordinal);
        Assert.Contains("right/panel-cut.dxf", typed.Output, StringComparison.Ordinal);
    }

    [Fact]
    public void A_job_is_made_again_from_its_record_byte_for_byte_and_a_changed_record_is_told()
    {
        using var typed = Typed.Run("make", Patch, "--set", "diameter=1 1/4 in", "--paper", "letter", "--out", "first");
        Assert.Equal(ExitCode.Done, typed.Again("make", "--job", "first/job.json", "--out=second"));

        Assert.Equal("", typed.Errors);
        Assert.Contains("the same as before", typed.Output, StringComparison.Ordinal);
        foreach (var name in typed.Files.Where(f => f.StartsWith("first/", StringComparison.Ordinal)))
            Assert.Equal(File.ReadAllBytes(typed[name]), File.ReadAllBytes(typed[name.Replace("first/", "second/", StringComparison.Ordinal)]));

        // A record that was changed by hand is made too, and said to be another.
        var record = File.ReadAllText(typed["first/job.json"]);
        File.WriteAllText(typed["changed.json"], record.Replace("\"area\": ", "\"area\": 1", StringComparison.Ordinal));

        Assert.Equal(ExitCode.Done, typed.Again("make", "--job", "changed.json", "--out", "third"));
        Assert.Contains("not the same", typed.Errors, StringComparison.Ordinal);
    }

    // Columns counted by hand over the words with one space between them.
    [Theory]
    [InlineData("make boster-clearance-notch", 6, Notch)]
    [InlineData("make booster-clearance-notch --set diamter=190", 36, "diameter")]
    [InlineData("make booster-clearance-notch --set=diamter=190", 36, "diameter")]
    [InlineData("make booster-clearance-notch --paper leter", 38, "letter")]
    [InlineData("make booster-clearance-notch --cutter ruoter", 39, "router")]
    [InlineData("make booster-clearance-notch --kerf 1.5", 37, "Add --cutter")]
    [InlineData("make booster-clearance-notch --cutter plasma-table", 39, "Give it with --kerf")]
    [InlineData("make booster-clearance-notch --hand rigth", 37, "right")]
    [InlineData("make booster-clearance-notch --measured-on lefft", 44, "left")]
    [InlineData("make booster-clearance-notch --set diameter", 36, "name=value")]
    [InlineData("make hole-plug-patch --hand left", 29, "Leave the hand out")]
    [InlineData("make booster-clearance-notch --set tilt=8 --set tilt=9", 49, "")]
    [InlineData("make --job nothing.json", 12, "")]
    [InlineData("make no/such/profile.yaml", 6, "")]
    public void What_is_wrong_on_the_command_line_is_told_with_its_column_and_nothing_is_written(string words, int column, string remedy)
    {
        using var typed = Typed.Run(words.Split(' '));

        Assert.Equal(ExitCode.Refused, typed.Code);
        Assert.StartsWith($"command line:1:{column}: ", typed.Errors, StringComparison.Ordinal);
        Assert.Contains(remedy, typed.Errors, StringComparison.Ordinal);
        Assert.Equal(2, Lines(typed.Errors).Length);
        Assert.Equal("", typed.Output);
        Assert.Empty(typed.Files);
    }

    // A length that was taken from the vehicle is not raised to fit.
    [Theory]
    [InlineData("diameter=0", "Measure it again", "Raise")]
    [InlineData("diameter=9999", "Measure it again", "Lower")]
    [InlineData("clearance=999", "Lower it", "Measure")]
    public void A_measured_value_out_of_range_is_to_be_measured_again_and_a_shop_s_to_be_changed(string setting, string said, string unsaid)
    {
        using var typed = Typed.Run("make", Notch, "--set", setting);
        Assert.Contains(said, typed.Errors, StringComparison.Ordinal);
        Assert.DoesNotContain(unsaid, typed.Errors, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("tilt=50")]
    [InlineData("tilt=8 mm")]
    [InlineData("diameter=NaN")]
    [InlineData("diameter=1e300")]
    [InlineData("diameter=8 deg")]
    [InlineData("diameter=-190")]
    [InlineData("diameter=")]
    [InlineData("diameter=190 furlongs")]
    [InlineData("sheet=20 ga")]
    public void A_value_that_cannot_be_is_refused_in_one_message(string setting)
    {
        using var typed = Typed.Run("make", Notch, "--set", setting);

        Assert.Equal(ExitCode.Refused, typed.Code);
        Assert.StartsWith("command line:1:", typed.Errors, StringComparison.Ordinal);
        Assert.Equal(2, Lines(typed.Errors).Length);
        Assert.Empty(typed.Files);
    }

    [Fact]
    public void All_that_is_wrong_is_told_at_once()
    {
        using var typed = Typed.Run("make", Notch, "--set", "tilt", "--set", "diamter=1", "--paper", "leter", "--hand", "up");
        foreach (var column in (int[])[36, 47, 65, 78]) Assert.Contains($"command line:1:{column}: ", typed.Errors, StringComparison.Ordinal);
        Assert.Equal(8, Lines(typed.Errors).Length);
    }

    [Theory]
    [InlineData("make")]
    [InlineData("make hole-plug-patch --job out/job.json")]
    [InlineData("make --job out/job.json --set diameter=1")]
    [InlineData("make hole-plug-patch --papper a4")]
    [InlineData("make hole-plug-patch another")]
    [InlineData("make hole-plug-patch --paper")]
    [InlineData("make hole-plug-patch --paper a4 --paper a3")]
    [InlineData("mke hole-plug-patch")]
    [InlineData("[diagram] make")]
    [InlineData("")]
    public void A_command_that_is_not_understood_ends_with_2(string words)
    {
        using var typed = Typed.Run(words.Split(' ', StringSplitOptions.RemoveEmptyEntries));

        Assert.Equal(ExitCode.NotUnderstood, typed.Code);
        Assert.StartsWith("command line:1:", typed.Errors, StringComparison.Ordinal);
        Assert.Empty(typed.Files);
    }

    [Fact]
    public void A_misspelt_option_or_command_names_the_right_one()
    {
        using var typed = Typed.Run("make", Patch, "--papper", "a4");
        Assert.StartsWith("command line:1:22: ", typed.Errors, StringComparison.Ordinal);
        Assert.Contains("Did you mean --paper?", typed.Errors, StringComparison.Ordinal);

        typed.Again("mkae", Patch);
        Assert.Contains("Did you mean make?", typed.Errors, StringComparison.Ordinal);
    }

    [Fact]
    public void A_word_that_begins_with_an_at_sign_is_a_word_and_opens_no_file()
    {
        using var typed = new Typed();
        File.WriteAllText(typed["words"], $"make {Patch}");
        Assert.NotEqual(ExitCode.Done, typed.Again("@" + typed["words"]));
        Assert.Equal(["words"], typed.Files);
    }

    [Fact]
    public void A_place_that_cannot_be_written_to_is_told_and_nothing_is_left()
    {
        using var typed = new Typed();
        File.WriteAllText(typed["out"], "not a folder");

        Assert.Equal(ExitCode.Refused, typed.Again("make", Patch, "--out", "out/patch"));

        Assert.StartsWith("command line:1:28: ", typed.Errors, StringComparison.Ordinal);
        Assert.Equal(["out"], typed.Files);
    }

    [Fact]
    public void Ctrl_C_ends_with_130_and_leaves_nothing()
    {
        using var typed = new Typed();
        Assert.Equal(ExitCode.Stopped, typed.Again(["make", Patch], t => t, new CancellationToken(canceled: true)));
        Assert.Empty(typed.Files);
        Assert.Single(Lines(typed.Errors));
    }

    [Fact]
    public void A_fault_of_the_program_itself_is_one_line()
    {
        using var typed = new Typed();
        Assert.Equal(ExitCode.ProgramFailed, typed.Again(["list"], t => t with { Output = new BrokenWriter() }));
        Assert.Single(Lines(typed.Errors));
        Assert.DoesNotContain("   at ", typed.Errors, StringComparison.Ordinal);
    }

    [Fact]
    public void A_screen_has_colour_and_no_line_longer_than_it_is_wide()
    {
        using var typed = new Typed();
        typed.Again(["show", Notch], t => t with { OutputIsScreen = true, HasColour = true, Width = 100 });
        Assert.Contains('\u001b', typed.Output);

        typed.Again(["show", Notch], t => t with { OutputIsScreen = true, Width = 100 });
        Assert.DoesNotContain('\u001b', typed.Output);
        Assert.All(Lines(typed.Output), l => Assert.InRange(l.Length, 0, 100));
    }

    [Fact]
    public void Other_programs_get_the_same_as_JSON_and_what_was_measured_is_no_demonstration()
    {
        using var typed = Typed.Run("make", Patch, "--json", "--set", "hole=round", "--set", "diameter=32", "--set", "sheet=1");

        var report = JsonNode.Parse(typed.Output)!;
        var job = Assert.Single(report["jobs"]!.AsArray())!;
        Assert.False(job["demonstration"]!.GetValue<bool>());
        Assert.Empty(job["at_default"]!.AsArray());
        Assert.Equal(6, job["files"]!.AsArray().Count);
        var across = job["checks"]!.AsArray().Single(c => c!["label"]!.GetValue<string>() == "Hole across");
        Assert.Equal(32, across!["millimetres"]!.GetValue<double>(), tolerance: 1e-6);
    }

    [Fact]
    public void Other_programs_get_complaints_as_JSON_too()
    {
        using var typed = Typed.Run("make", Notch, "--json", "--set", "tilt=50");

        Assert.Equal(ExitCode.Refused, typed.Code);
        var complaint = Assert.Single(JsonNode.Parse(typed.Output)!["complaints"]!.AsArray())!;
        Assert.Equal(("command line", 1), (complaint["file"]!.GetValue<string>(), complaint["line"]!.GetValue<int>()));
        Assert.NotEqual("", typed.Errors);
    }

    private static string[] Lines(string text) => text.Split('\n', StringSplitOptions.RemoveEmptyEntries);

    private sealed class BrokenWriter : StringWriter
    {
        public override void Write(string? value) => throw new InvalidOperationException("broken");

        public override void Write(char value) => throw new InvalidOperationException("broken");

        public override void Write(char[] buffer, int index, int count) => throw new InvalidOperationException("broken");
    }
}
