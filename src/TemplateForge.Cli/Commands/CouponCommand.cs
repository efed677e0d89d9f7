using System.CommandLine;
using System.Globalization;
using System.IO;
using System.Text;
using TemplateForge.Cli.Printing;
using TemplateForge.Drawing;
using TemplateForge.Jobs;
using TemplateForge.Notation;
using TemplateForge.Sheets;
using TemplateForge.Shop;

namespace TemplateForge.Cli.Commands;

/// <summary>Prints a page of known distances, and enters what a printer made of them.</summary>
internal sealed class CouponCommand
{
    public const string Name = "coupon";
    private const int LongestTable = 200_000;

    private readonly Terminal terminal;
    private readonly Asked asked;
    private readonly List<Complaint> complaints = [];

    private CouponCommand(Asked asked, Terminal terminal) => (this.asked, this.terminal) = (asked, terminal);

    private sealed record Asked(
        Choice Printer, Choice Paper, Choice Level, Choice Upright, Choice Rising, Choice Falling, Choice Day, Choice Shop, Choice Out, bool Replace, bool Json)
    {
        public Choice[] Lengths => [Level, Upright, Rising, Falling];
    }

    public static Command Create(Terminal terminal)
    {
        var printer = new Argument<string>("printer") { Description = "What the shop calls it: letters, digits and hyphens." };
        var paper = Valued("--paper", "name|size|roll", "The paper in it; each paper has a coupon of its own. Without it, the shop's usual one.");
        var level = Valued("--level", "length", "A to B, as you measured it.");
        var upright = Valued("--upright", "length", "A to D, as you measured it.");
        var rising = Valued("--rising", "length", "A to C, as you measured it.");
        var falling = Valued("--falling", "length", "D to B, as you measured it.");
        var day = Valued("--measured-on", "day", "The day of the measurement, as 2026-11-28; without it, today.");
        var (shop, json) = (CommonOptions.Shop(), CommonOptions.Json());
        var target = Valued("--out", "file", "The PDF; without it, out/ and the printer's and the paper's name.");
        var replace = new Option<bool>("--replace") { Description = "Let a PDF of that name go." };
        var command = new Command(Name, "Print a page of known distances; enter what you measured on it, and the printer's error is corrected from then on.")
        {
            printer, paper, level, upright, rising, falling, day, shop, target, replace, json,
        };
        command.SetAction(parsed =>
        {
            Option<string>[] valued = [paper, level, upright, rising, falling, day, shop, target];
            var line = new CommandLine([.. parsed.Tokens.Select(t => t.Value)], [.. valued.Select(o => o.Name)]);
            var named = parsed.GetRequiredValue(printer);
            return new CouponCommand(
                new(new(named, line.PlaceOf(named)), line.Single(paper.Name), line.Single(level.Name), line.Single(upright.Name), line.Single(rising.Name),
                    line.Single(falling.Name), line.Single(day.Name), line.Single(shop.Name), line.Single(target.Name), parsed.GetValue(replace), parsed.GetValue(json)),
                terminal).Run();
        });
        return command;

        static Option<string> Valued(string name, string help, string description) => new(name) { Description = description, HelpName = help };
    }

    /// <summary>Lengths that somebody may well measure on the coupon of a paper, as they are entered.</summary>
    public static string LengthsFor(string paper, Terminal terminal)
    {
        if (!Bench.TryOpen(terminal, Choice.Open, [], out var bench)
            || !ChosenPrinting.TryPaper(new(paper, CommandLine.Start), bench.Shop, [], out var known)) return "--level … --upright … --rising … --falling …";
        var (level, upright) = CouponSheet.Drawn(known);
        (level, upright) = (level - 0.6, upright - 0.4);
        var diagonal = Math.Sqrt(level * level + upright * upright);
        return string.Create(CultureInfo.InvariantCulture, $"--level {level:0.0} --upright {upright:0.0} --rising {diagonal - 0.3:0.0} --falling {diagonal + 0.3:0.0}");
    }

    private bool IsMeasured => asked.Lengths.Any(l => l.IsMade);

    private int Run()
    {
        if (!Bench.TryOpen(terminal, IsNew(asked.Shop) ? Choice.Open : asked.Shop, complaints, out var bench)) return Refuse();
        if (!IsName(asked.Printer.Word)) complaints.Add(Wordings.NotAPrintersName(asked.Printer));
        if (!ChosenPrinting.TryPaper(asked.Paper, bench.Shop, complaints, out var paper) || complaints.Count > 0) return Refuse();
        if (bench.Shop.Printers.TryGetValue(asked.Printer.Word, out var known)) paper = known.On(paper);
        return IsMeasured ? Enter(bench, paper) : Print(bench, paper);
    }

    private int Print(Bench bench, Paper paper)
    {
        var file = asked.Out.IsMade ? asked.Out.Word : $"out/coupon-{asked.Printer.Word}-{paper.Size.Replace(' ', '-')}.pdf";
        var path = terminal.PathOf(file);
        if (!asked.Out.IsMade) Directory.CreateDirectory(System.IO.Path.GetDirectoryName(path)!);
        var pdf = PdfWriter.Write(CouponSheet.Of(asked.Printer.Word, paper, bench.Shop.Name));
        // The same coupon once more is no other one.
        var replace = asked.Replace || (File.Exists(path) && File.ReadAllBytes(path).AsSpan().SequenceEqual(pdf));
        if (!SavedFile.TrySave(path, pdf, replace, asked.Out.IsMade ? asked.Out.Place : CommandLine.Start, complaints)) return Refuse();
        var (level, upright) = CouponSheet.Drawn(paper);
        var report = new CouponReport(asked.Printer.Word, paper.Size, file, "", level, upright, 0, 0, 0);
        if (asked.Json) Reports.Print(report, ReportText.Default.CouponReport, terminal);
        else
        {
            var page = new Printing.Page(terminal);
            page.Line($"Saved {file}, a coupon for {report.Printer} on {report.Paper}: A to B {level} mm, A to D {upright} mm.");
            page.Line("Print it at 100 %, measure it from cross to cross, and enter what you measured:");
            page.Line($"  coupon {report.Printer} --paper {Quoted(report.Paper)} --level … --upright … --rising … --falling … --shop your-shop");
        }
        return ExitCode.Done;
    }

    private int Enter(Bench bench, Paper paper)
    {
        foreach (var (length, name) in asked.Lengths.Zip((string[])["--level", "--upright", "--rising", "--falling"]))
            if (!length.IsMade) complaints.Add(Wordings.LengthMissing(CommandLine.Start, name));
        if (complaints.Count > 0) return Refuse();
        var (level, upright) = CouponSheet.Drawn(paper);
        var lengths = new CouponLengths(level, upright, Length(asked.Level, "--level"), Length(asked.Upright, "--upright"), Length(asked.Rising, "--rising"), Length(asked.Falling, "--falling"));
        var day = terminal.Today;
        if (asked.Day.IsMade && !PrinterFile.TryDay(asked.Day.Word, out day)) complaints.Add(Shop.Wordings.NotADay(asked.Day.Place, asked.Day.Word));
        else if (day > terminal.Today) complaints.Add(Wordings.DayToCome(asked.Day, terminal.Today));
        if (complaints.Count == 0 && lengths.Fault != CouponFault.None) complaints.Add(PrinterFile.Fault(Guilty(lengths.Fault).Place, lengths));
        if (complaints.Count > 0) return Refuse();
        var coupon = new Coupon(day, lengths);
        if (!TrySave(bench, paper, coupon, out var file)) return Refuse();

        var error = coupon.Error;
        var report = new CouponReport(
            asked.Printer.Word, paper.Size, file, day.ToString(ShopReader.Day, CultureInfo.InvariantCulture), level, upright,
            Math.Round(error.Across, 6), Math.Round(error.Along, 6), Math.Round(error.OutOfSquare(300), 4));
        if (asked.Json) Reports.Print(report, ReportText.Default.CouponReport, terminal);
        else
        {
            var page = new Printing.Page(terminal);
            page.Line(string.Create(CultureInfo.InvariantCulture,
                $"{report.Printer} on {report.Paper} prints {report.Across * 100:0.00} % across the sheet, {report.Along * 100:0.00} % along it, and {Square(error)}."));
            page.Line(string.Create(CultureInfo.InvariantCulture,
                $"Uncorrected, 300 mm come out as {300 * report.Across:0.00} mm across and {300 * report.Along:0.00} mm along."));
            page.Line($"Entered in {file}, measured {report.MeasuredOn}. From now on: make … --printer {report.Printer} --paper {Quoted(report.Paper)} --shop {Quoted(asked.Shop.Word)}");
        }
        return ExitCode.Done;
    }

    private bool TrySave(Bench bench, Paper paper, Coupon coupon, out string file)
    {
        file = "";
        if (!asked.Shop.IsMade)
        {
            complaints.Add(Wordings.NoFolderForCoupon(CommandLine.Start, asked.Printer.Word, PrinterFile.LineOf(paper.Size, coupon)));
            return false;
        }
        file = $"{asked.Shop.Word.Replace('\\', '/').TrimEnd('/')}/{PrinterFile.Name}";
        var path = terminal.PathOf(file);
        var text = "";
        if (File.Exists(path))
        {
            if (!TextFiles.TryRead(path, LongestTable, asked.Shop.Place, complaints, out var there)) return false;
            text = there.Text;
        }
        if (!PrinterFile.TryEnter(text, bench.Shop.Papers, asked.Printer.Word, paper.Size, coupon, out var entered))
        {
            complaints.Add(Wordings.EnterByHand(new(file, 1, 1), asked.Printer.Word, PrinterFile.LineOf(paper.Size, coupon)));
            return false;
        }
        if (!TryMakeFolder()) return false;
        return SavedFile.TrySave(path, Encoding.UTF8.GetBytes(entered), replace: true, asked.Shop.Place, complaints);
    }

    private Choice Guilty(CouponFault fault) => fault switch
    {
        CouponFault.Level => asked.Level,
        CouponFault.Upright => asked.Upright,
        _ => asked.Rising,
    };

    private double Length(Choice choice, string name) =>
        QuantityReader.TryRead(choice.Word, Unit.Millimetre, choice.Place, complaints, out var length, name) ? length.Value : 0;

    // A folder that is still empty, or is not there yet where lengths are to be entered, may get its first table.
    private bool IsNew(Choice shop)
    {
        var folder = terminal.PathOf(shop.Word);
        if (!shop.IsMade || folder.Length == 0) return false;
        return Directory.Exists(folder) ? !Directory.EnumerateFileSystemEntries(folder).Any() : IsMeasured && !File.Exists(folder);
    }

    private bool TryMakeFolder()
    {
        try
        {
            Directory.CreateDirectory(terminal.PathOf(asked.Shop.Word));
            return true;
        }
        catch (Exception trouble) when (trouble is IOException or UnauthorizedAccessException or ArgumentException)
        {
            complaints.Add(Wordings.NoFolderMade(asked.Shop, trouble.Message));
            return false;
        }
    }

    private static string Square(PrinterError error) => Math.Abs(error.OutOfSquare(300)) < 0.005
        ? "square"
        : string.Create(CultureInfo.InvariantCulture, $"{Math.Abs(error.OutOfSquare(300)):0.00} mm out of square in 300 mm, the top to the {(error.Skew > 0 ? "right" : "left")}");

    private static string Quoted(string word) => word.Contains(' ', StringComparison.Ordinal) ? $"\"{word}\"" : word;

    private static bool IsName(string name) => name.Length is > 0 and <= 40 && char.IsAsciiLetter(name[0]) && name.All(c => char.IsAsciiLetterOrDigit(c) || c is '-' or '_')
        && !name.Equals(ChosenPrinting.None, StringComparison.OrdinalIgnoreCase);

    private int Refuse() => ComplaintPrinter.Refuse(complaints, asked.Json, terminal);
}
