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
    [InlineData("command line:1:26: ", "text.dxf", "--dxf", "r14")]
    public void What_cannot_be_is_told_with_its_place(string place, params string[] words)
    {
        using var typed = new Typed();
        File.WriteAllText(typed["text.dxf"], "# no DXF\n");
        typed.Again(["check-dxf", .. words]);
        Assert.Equal(ExitCode.Refused, typed.Code);
        Assert.StartsWith(place, typed.Errors, StringComparison.Ordinal);
    }

    private static string Line(double x1, double y1, double x2, double y2) =>
        FormattableString.Invariant($"0\nLINE\n8\nCUT\n10\n{x1}\n20\n{y1}\n11\n{x2}\n21\n{y2}\n");
}
