using System.IO;

namespace TemplateForge.Cli.Tests.Commands;

/// <summary>A coupon that is printed, measured, entered and used.</summary>
public sealed class CouponCommandTests
{
    private static readonly string[] Measured =
        ["coupon", "office-laser", "--paper", "a4", "--level", "169.7", "--upright", "250.4 mm", "--rising", "302.4", "--falling", "302.5", "--shop", "ours"];

    [Fact]
    public void A_coupon_is_printed_once_and_the_same_one_again()
    {
        using var typed = Typed.Run("coupon", "office-laser", "--paper", "a3");
        Assert.Equal(ExitCode.Done, typed.Code);
        Assert.Equal(["out/coupon-office-laser-a3.pdf"], typed.Files);
        Assert.Contains("A to B 250 mm, A to D 380 mm", typed.Output, StringComparison.Ordinal);
        Assert.Equal(ExitCode.Done, typed.Again("coupon", "office-laser", "--paper", "a3"));
        File.WriteAllText(typed["out/coupon-office-laser-a3.pdf"], "something else");
        Assert.Equal(ExitCode.Refused, typed.Again("coupon", "office-laser", "--paper", "a3"));
    }

    [Fact]
    public void What_was_measured_is_entered_said_and_corrected_from_then_on()
    {
        using var typed = new Typed();
        Directory.CreateDirectory(typed["ours"]);
        Assert.Equal(ExitCode.Done, typed.Again([.. Measured, "--measured-on", "2026-11-28"]));
        Assert.Contains("prints 99.82 % across the sheet, 100.16 % along it", typed.Output, StringComparison.Ordinal);
        Assert.Contains("measured_on: 2026-11-28", File.ReadAllText(typed["ours/printers.yaml"]), StringComparison.Ordinal);
        Assert.Equal(ExitCode.Done, typed.Again("make", "hole-plug-patch", "--shop", "ours", "--printer", "office-laser", "--out", "job"));
        Assert.Contains("corrected for office-laser", typed.Output, StringComparison.Ordinal);
        Assert.Equal(ExitCode.Refused, typed.Again("make", "hole-plug-patch", "--shop", "ours", "--printer", "office-laser", "--paper", "a3", "--out", "other"));
        Assert.Contains("coupon office-laser --paper a3", typed.Errors, StringComparison.Ordinal);
    }

    [Fact]
    public void A_usual_printer_that_was_measured_on_other_paper_only_is_said_not_to_be_corrected()
    {
        using var typed = Typed.Run(Measured);
        File.WriteAllText(typed["ours/habits.yaml"], "printer: office-laser\n");
        Assert.Equal(ExitCode.Done, typed.Again("make", "hole-plug-patch", "--shop", "ours", "--out", "small"));
        Assert.DoesNotContain("NOT CORRECTED", typed.Output, StringComparison.Ordinal);
        Assert.Equal(ExitCode.Done, typed.Again("make", "hole-plug-patch", "--shop", "ours", "--paper", "a3 across", "--out", "large"));
        Assert.Contains("NOT CORRECTED for office-laser", typed.Output, StringComparison.Ordinal);
        Assert.Contains("coupon office-laser --paper a3.", typed.Output, StringComparison.Ordinal);
        File.WriteAllText(typed["values.csv"], "job,diameter\na,31\n");
        Assert.Equal(ExitCode.Done, typed.Again("make", "hole-plug-patch", "--shop", "ours", "--paper", "a3", "--from", "values.csv"));
        Assert.Contains("NOT CORRECTED for office-laser", typed.Output, StringComparison.Ordinal);
    }

    [Fact]
    public void Without_a_day_it_is_today_s()
    {
        using var typed = new Typed();
        Directory.CreateDirectory(typed["ours"]);
        Assert.Equal(ExitCode.Done, typed.Again(Measured, terminal => terminal with { Today = new(2027, 2, 3) }));
        Assert.Contains("measured_on: 2027-02-03", File.ReadAllText(typed["ours/printers.yaml"]), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("--level", "160", "fit to page")]
    [InlineData("--level", "0", "fit to page")]
    [InlineData("--upright", "-250", "fit to page")]
    [InlineData("--rising", "310", "diagonals")]
    [InlineData("--falling", "long", "long")]
    [InlineData("--measured-on", "yesterday", "2026-11-28")]
    public void What_cannot_be_is_refused_and_nothing_is_entered(string option, string value, string said)
    {
        using var typed = new Typed();
        Directory.CreateDirectory(typed["ours"]);
        var words = Measured.Append("--measured-on").Append("2026-11-28").ToList();
        words[words.IndexOf(option) + 1] = value;
        Assert.Equal(ExitCode.Refused, typed.Again([.. words]));
        Assert.Contains(said, typed.Errors, StringComparison.Ordinal);
        Assert.Empty(typed.Files);
    }

    [Fact]
    public void Lengths_are_entered_in_inches_too()
    {
        using var typed = Typed.Run(
            "coupon", "office-laser", "--paper", "a3", "--level", "9 13/16 in", "--upright", "14 15/16 in", "--rising", "17 7/8 in", "--falling", "17 7/8 in", "--shop", "s2");
        Assert.Equal((ExitCode.Done, ""), (typed.Code, typed.Errors));
        // 9 13/16 in are 249.2375 mm, 17 7/8 in 454.025 mm.
        var entered = File.ReadAllText(typed["s2/printers.yaml"]);
        Assert.Contains("measured: 249.2375 mm", entered, StringComparison.Ordinal);
        Assert.Contains("rising: 454.025 mm", entered, StringComparison.Ordinal);
    }

    [Fact]
    public void What_its_help_shows_can_be_typed_as_it_stands()
    {
        using var typed = Typed.Run("coupon", "--help");
        var examples = typed.Output.Split('\n').Select(l => l.Trim().Split(' ')).Where(w => w is [_, "coupon", ..] && w.Contains("office-laser")).ToList();
        Assert.Equal(2, examples.Count);
        foreach (var example in examples)
            Assert.True(typed.Again(example[1..]) == ExitCode.Done, typed.Errors);
        Assert.Contains("my-shop/printers.yaml", typed.Files);
    }

    [Fact]
    public void A_folder_that_is_not_there_is_made_for_lengths_and_one_that_cannot_be_is_told()
    {
        using var typed = Typed.Run([.. Measured[..^1], "new/shop"]);
        Assert.Equal(ExitCode.Done, typed.Code);
        Assert.Equal(["new/shop/printers.yaml"], typed.Files);
        Assert.Equal(ExitCode.Refused, typed.Again([.. Measured[..^1], "new/shop/printers.yaml/more"]));
        Assert.StartsWith("command line:1:", typed.Errors, StringComparison.Ordinal);
        Assert.Equal(["new/shop/printers.yaml"], typed.Files);
    }

    [Theory]
    [InlineData("2026-11-28", ExitCode.Done)]
    [InlineData("2026-11-29", ExitCode.Refused)]
    [InlineData("2099-01-01", ExitCode.Refused)]
    public void A_day_that_has_not_come_is_refused(string day, int code)
    {
        using var typed = new Typed();
        typed.Again([.. Measured, "--measured-on", day], terminal => terminal with { Today = new(2026, 11, 28) });
        Assert.Equal(code, typed.Code);
        Assert.Equal(code == ExitCode.Done, typed.Files.Any());
        if (code == ExitCode.Refused) Assert.Contains("2026-11-28", typed.Errors, StringComparison.Ordinal);
    }

    [Fact]
    public void A_coupon_that_is_half_measured_or_belongs_nowhere_is_refused()
    {
        using var typed = Typed.Run("coupon", "office-laser", "--level", "169.7");
        Assert.Equal(ExitCode.Refused, typed.Code);
        Assert.Contains("--upright is missing", typed.Errors, StringComparison.Ordinal);
        typed.Again(Measured[..^2]);
        Assert.Contains("--shop", typed.Errors, StringComparison.Ordinal);
        typed.Again("coupon", "no/name");
        Assert.Contains("cannot be the name of a printer", typed.Errors, StringComparison.Ordinal);
        typed.Again("coupon", "office-laser", "--shop", "nowhere");
        Assert.Equal(ExitCode.Refused, typed.Code);
    }
}
