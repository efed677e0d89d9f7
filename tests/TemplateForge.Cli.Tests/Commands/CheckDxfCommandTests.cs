using System.IO;
using System.Text.Json.Nodes;

namespace TemplateForge.Cli.Tests.Commands;

public sealed class CheckDxfCommandTests
{
    private const string Head = "0\nSECTION\n2\nHEADER\n9\n$INSUNITS\n70\n4\n0\nENDSEC\n0\nSECTION\n2\nENTITIES\n";
    private const string Tail = "0\nENDSEC\n0\nEOF\n";

    [Fact]
    public void A_sound_file_is_told_to_be_so()
    {
        using var typed = new Typed();
        File.WriteAllText(typed["part.dxf"], Head + Line(0, 0, 50, 0) + Line(50, 0, 50, 40) + Line(50, 40, 0, 40) + Line(0, 40, 0, 0) + Tail);
        typed.Again("check-dxf", "part.dxf");
        Assert.Equal((ExitCode.Done, ""), (typed.Code, typed.Errors));
        Assert.Contains("A table would take it as it is.", typed.Output, StringComparison.Ordinal);
        Assert.Contains("2000.0", typed.Output, StringComparison.Ordinal);
    }

    [Fact]
    public void What_is_wrong_is_told_with_its_place_and_repaired_into_another_file()
    {
        using var typed = new Typed();
        File.WriteAllText(typed["part.dxf"], Head + Line(0, 0, 50, 0) + Line(0, 0, 50, 0) + Line(50, 0, 50, 40) + Line(50, 40, 0, 40) + Line(0, 39.9, 0, 0) + Tail);
        typed.Again("check-dxf", "part.dxf", "--json");
        Assert.Equal(ExitCode.Refused, typed.Code);
        Assert.Equal(["doubled", "gap"], JsonNode.Parse(typed.Output)!["findings"]!.AsArray().Select(f => f!["kind"]!.GetValue<string>()).Order());

        typed.Again("check-dxf", "part.dxf", "--repair", "mended.dxf");
        Assert.Equal(ExitCode.Done, typed.Code);
        Assert.Contains("1 gap in an outline", typed.Output, StringComparison.Ordinal);
        typed.Again("check-dxf", "mended.dxf");
        Assert.Equal(ExitCode.Done, typed.Code);
    }

    [Theory, InlineData("r12"), InlineData("r12-in"), InlineData("r2000-in")]
    public void A_repaired_file_is_what_the_controller_takes(string dxf)
    {
        using var typed = new Typed();
        File.WriteAllText(typed["part.dxf"], Head + Line(0, 0, 50, 0) + Line(50, 0, 50, 40) + Line(50, 40, 0, 40) + Line(0, 40, 0, 0) + Tail);
        typed.Again("check-dxf", "part.dxf", "--repair", "mended.dxf", "--dxf", dxf);
        Assert.Equal(ExitCode.Done, typed.Code);
        typed.Again("check-dxf", "mended.dxf");
        Assert.Equal(ExitCode.Done, typed.Code);
        Assert.Contains("2000.0", typed.Output, StringComparison.Ordinal);
    }

    [Fact]
    public void A_file_that_is_there_stays_unless_it_may_go()
    {
        using var typed = new Typed();
        File.WriteAllText(typed["part.dxf"], Head + Line(0, 0, 50, 0) + Tail);
        File.WriteAllText(typed["mine.dxf"], "mine");
        typed.Again("check-dxf", "part.dxf", "--repair", "mine.dxf");
        Assert.Equal(ExitCode.Refused, typed.Code);
        Assert.StartsWith("command line:1:29: ", typed.Errors, StringComparison.Ordinal);
        Assert.Equal("mine", File.ReadAllText(typed["mine.dxf"]));
    }

    [Theory]
    [InlineData("command line:1:11: ", "no.dxf")]
    [InlineData("text.dxf:1:1: ", "text.dxf")]
    [InlineData("command line:1:27: ", "text.dxf", "--unit", "ft")]
    [InlineData("command line:1:28: ", "text.dxf", "--close", "9")]
    [InlineData("command line:1:28: ", "text.dxf", "--close", "1")]
    [InlineData("command line:1:26: ", "text.dxf", "--dxf", "r12")]
    [InlineData("command line:1:20: ", "text.dxf", "--replace")]
    [InlineData("command line:1:26: ", "text.dxf", "--dxf", "r14")]
    public void What_cannot_be_is_told_with_its_place(string place, params string[] words)
    {
        using var typed = new Typed();
        File.WriteAllText(typed["text.dxf"], "# no DXF\n");
        typed.Again(["check-dxf", .. words]);
        Assert.Equal(ExitCode.Refused, typed.Code);
        Assert.StartsWith(place, typed.Errors, StringComparison.Ordinal);
    }

    [Fact]
    public void A_unit_that_is_stated_wrongly_is_overruled_and_that_is_told()
    {
        using var typed = new Typed();
        File.WriteAllText(typed["part.dxf"], Square.Replace("$INSUNITS\n70\n4", "$INSUNITS\n70\n6", StringComparison.Ordinal));
        typed.Again("check-dxf", "part.dxf");
        Assert.Equal(ExitCode.Refused, typed.Code);
        Assert.Contains("Neither millimetres nor inches", typed.Output, StringComparison.Ordinal);
        Assert.Contains("Larger than any sheet", typed.Output, StringComparison.Ordinal);

        typed.Again("check-dxf", "part.dxf", "--unit", "mm", "--repair", "mended.dxf");
        Assert.Equal(ExitCode.Done, typed.Code);
        Assert.Contains("the file says m, --unit mm", typed.Output, StringComparison.Ordinal);
        Assert.Contains("2000.0", typed.Output, StringComparison.Ordinal);

        // In metres it would be 50 m wide still, and it is said by how much its numbers were changed.
        typed.Again("check-dxf", "part.dxf", "--repair", "huge.dxf");
        Assert.Equal(ExitCode.Refused, typed.Code);
        Assert.Contains("m to mm: each number times 1000", typed.Output, StringComparison.Ordinal);
    }

    [Fact]
    public void Of_two_units_it_is_told_which_was_taken()
    {
        using var typed = new Typed();
        File.WriteAllText(typed["part.dxf"], Square.Replace("$INSUNITS\n70\n4", "$INSUNITS\n70\n1\n9\n$MEASUREMENT\n70\n1", StringComparison.Ordinal));
        typed.Again("check-dxf", "part.dxf", "--repair", "mended.dxf");
        Assert.Contains("$INSUNITS says in, $MEASUREMENT metric; taken as in", typed.Output, StringComparison.Ordinal);
        typed.Again("check-dxf", "part.dxf", "--repair", "mended.dxf", "--replace", "--unit", "mm");
        Assert.Contains("taken as mm", typed.Output, StringComparison.Ordinal);
        Assert.Contains("2000.0", typed.Output, StringComparison.Ordinal);
    }

    [Fact]
    public void Places_in_a_file_in_inches_are_told_in_both_units_and_for_programs_with_theirs()
    {
        using var typed = new Typed();
        File.WriteAllText(typed["part.dxf"], (Head + Line(2, 1, 3, 1) + Tail).Replace("$INSUNITS\n70\n4", "$INSUNITS\n70\n1", StringComparison.Ordinal));
        typed.Again("check-dxf", "part.dxf");
        Assert.Contains("at x 50.8, y 25.4 mm (2, 1 in)", typed.Output, StringComparison.Ordinal);
        typed.Again("check-dxf", "part.dxf", "--json");
        var report = JsonNode.Parse(typed.Output)!;
        Assert.Equal(("in", "in", "mm", 25.4), (report["unit"]!.GetValue<string>(), report["taken_as"]!.GetValue<string>(), report["measured_in"]!.GetValue<string>(), report["layers"]![0]!["length"]!.GetValue<double>()));
    }

    [Fact]
    public void Layers_that_are_cut_are_named_and_a_misspelt_one_is_refused()
    {
        using var typed = new Typed();
        File.WriteAllText(typed["part.dxf"], Square.Replace(Tail, Line(5, 5, 9, 9).Replace("CUT", "PEN", StringComparison.Ordinal) + Tail, StringComparison.Ordinal));
        typed.Again("check-dxf", "part.dxf");
        Assert.Equal(ExitCode.Refused, typed.Code);
        typed.Again("check-dxf", "part.dxf", "--open-cuts");
        Assert.Equal(ExitCode.Done, typed.Code);
        typed.Again("check-dxf", "part.dxf", "--layer", "cut");
        Assert.Equal(ExitCode.Done, typed.Code);
        Assert.Matches("PEN +mark", typed.Output);
        typed.Again("check-dxf", "part.dxf", "--layer", "cut", "--repair", "mended.dxf");
        Assert.Equal(ExitCode.Done, typed.Code);
        typed.Again("check-dxf", "part.dxf", "--layer", "cutt");
        Assert.Equal(ExitCode.Refused, typed.Code);
        Assert.StartsWith("command line:1:28: ", typed.Errors, StringComparison.Ordinal);
    }

    [Fact]
    public void A_cut_file_of_the_programs_own_passes_and_comes_out_of_a_repair_as_it_was()
    {
        using var typed = Typed.Run("make", "booster-clearance-notch", "--out", "job");
        typed.Again("check-dxf", "job/panel-cut.dxf");
        Assert.Equal((ExitCode.Done, ""), (typed.Code, typed.Errors));
        typed.Again("check-dxf", "job/panel-cut.dxf", "--repair", "again.dxf");
        Assert.Equal(ExitCode.Done, typed.Code);
        Assert.Contains("Nothing had to be changed.", typed.Output, StringComparison.Ordinal);
    }

    private static string Square => Head + Line(0, 0, 50, 0) + Line(50, 0, 50, 40) + Line(50, 40, 0, 40) + Line(0, 40, 0, 0) + Tail;

    private static string Line(double x1, double y1, double x2, double y2) =>
        FormattableString.Invariant($"0\nLINE\n8\nCUT\n10\n{x1}\n20\n{y1}\n11\n{x2}\n21\n{y2}\n");
}
