using System.Text.Json;
using TemplateForge.Notation;

namespace TemplateForge.Jobs.Tests;

/// <summary>How a job is printed: chosen, recorded, and made again alike.</summary>
public class PrintingTests
{
    private const string Printers = """
        printers:
          office-laser:
            margins: {left: 4 mm, right: 5 mm, top: 6 mm, bottom: 12 mm}
            coupons:
              a4: {measured_on: 2026-11-28, level: {drawn: 170 mm, measured: 169.7 mm}, upright: {drawn: 250 mm, measured: 250.4 mm}, rising: 302.4 mm, falling: 302.5 mm}
          attic:
            margins: 6 mm

        """;

    private static JobRequest Request() => Jobsite.Request(Jobsite.Patch) with
    {
        ShopFiles = [.. Jobsite.Library.ShopFiles, new TextFile("ours/printers.yaml", Printers)],
    };

    [Fact]
    public void All_that_was_chosen_for_paper_and_printer_is_recorded_and_makes_the_same_bytes_again()
    {
        var request = Request() with
        {
            Paper = Jobsite.Choose("A4 across"),
            Overlap = Jobsite.Choose("15 mm"),
            Printer = Jobsite.Choose("office-laser"),
            Turn = Jobsite.Choose("30"),
            Line = Jobsite.Choose("0.25 mm"),
        };
        var job = Jobsite.Make(request).Jobs[0];
        using var record = JsonDocument.Parse(Jobsite.RecordOf(job));
        string Said(string name) => record.RootElement.GetProperty(name).GetString()!;
        Assert.Equal(("a4 across", "15 mm", "office-laser", "30", "0.25 mm"), (Said("paper"), Said("overlap"), Said("printer"), Said("turn"), Said("line")));
        Assert.All(record.RootElement.GetProperty("pieces").EnumerateArray(), p => Assert.Equal(30, p.GetProperty("turned").GetDouble(), 1e-6));
        var again = Jobsite.Make(Jobsite.Read(Jobsite.RecordOf(job)).Request).Jobs[0];
        Jobsite.AreTheSame(job.Files, again.Files);
        Assert.Equal(12, job.Paper.Margins.Bottom);
        Assert.True(job.Printing.Printer.IsCorrected);
    }

    [Fact]
    public void A_job_for_which_nobody_chose_anything_records_nothing_of_it()
    {
        using var record = JsonDocument.Parse(Jobsite.RecordOf(Jobsite.SmallJob.Jobs[0]));
        Assert.All((string[])["overlap", "printer", "turn", "line"], name => Assert.False(record.RootElement.TryGetProperty(name, out _)));
    }

    [Fact]
    public void A_printer_without_a_coupon_keeps_its_margins_and_corrects_nothing()
    {
        var plan = ChosenPrinting.TryChoose(Request() with { Printer = Jobsite.Choose("attic") }, Shop(), [], out var setup);
        Assert.True(plan);
        Assert.Equal((6.0, false), (setup!.Paper.Margin, setup.Printer.IsCorrected));
    }

    [Theory]
    [InlineData("paper", "a33")]
    [InlineData("overlap", "3 mm")]
    [InlineData("overlap", "much")]
    [InlineData("overlap", "-12mm")]
    [InlineData("printer", "ofice-laser")]
    [InlineData("line", "0.1 mm")]
    [InlineData("line", "2")]
    [InlineData("turn", "sideways")]
    [InlineData("turn", "400")]
    public void What_cannot_be_printed_is_refused_where_it_was_written(string what, string word)
    {
        var choice = Jobsite.Choose(word);
        var request = Request();
        request = what switch
        {
            "paper" => request with { Paper = choice },
            "overlap" => request with { Overlap = choice },
            "printer" => request with { Printer = choice },
            "line" => request with { Line = choice },
            _ => request with { Turn = choice },
        };
        var complaints = new List<Complaint>();
        Assert.False(ChosenPrinting.TryChoose(request, Shop(), complaints, out _));
        Assert.Equal(choice.Place, new(complaints[0].File, complaints[0].Line, complaints[0].Column));
    }

    [Fact]
    public void A_coupon_on_one_paper_says_nothing_about_another()
    {
        var complaints = new List<Complaint>();
        var request = Request() with { Printer = Jobsite.Choose("office-laser"), Paper = Jobsite.Choose("roll 610mm") };
        Assert.False(ChosenPrinting.TryChoose(request, Shop(), complaints, out _));
        Assert.Contains("coupon office-laser --paper \"roll 610mm\"", Assert.Single(complaints).Remedy, StringComparison.Ordinal);
        // The usual printer is nobody's choice for this paper: it prints, and says that it is not corrected.
        Assert.True(ChosenPrinting.TryChoose(request with { Printer = Choice.Open }, Shop() with { UsualPrinter = "office-laser" }, complaints, out var setup));
        Assert.Equal(("office-laser", false), (setup!.Printer.Name, setup.Printer.IsCorrected));
    }

    private static Shop.ShopTables Shop()
    {
        Assert.True(TemplateForge.Shop.ShopReader.TryRead(Request().ShopFiles, [], out var shop));
        return shop;
    }
}
