using TemplateForge.Drawing;
using TemplateForge.Notation;

namespace TemplateForge.Shop.Tests;

/// <summary>How paper is named, and what a printer does to it.</summary>
public class PapersTests
{
    private static readonly Place There = new("command line", 1, 9);

    private static (Paper? Paper, List<Complaint> Complaints) Read(string word)
    {
        var complaints = new List<Complaint>();
        var known = Shipped.Tables.PaperWords.TryRead(word, There, complaints, out var paper);
        Assert.Equal(known, complaints.Count == 0);
        return (paper, complaints);
    }

    // ANSI/ASME Y14.1 A to E; the architects' sizes from memory.
    [Theory]
    [InlineData("a5", 148, 210)]
    [InlineData("ledger", 279.4, 431.8)]
    [InlineData("ansi-a", 215.9, 279.4)]
    [InlineData("ANSI B", 279.4, 431.8)]
    [InlineData("ansi-c", 431.8, 558.8)]
    [InlineData("ansi-d", 558.8, 863.6)]
    [InlineData("ansi-e", 863.6, 1117.6)]
    [InlineData("arch-a", 228.6, 304.8)]
    [InlineData("arch-b", 304.8, 457.2)]
    [InlineData("arch-c", 457.2, 609.6)]
    [InlineData("ARCH D", 609.6, 914.4)]
    [InlineData("arch-e", 914.4, 1219.2)]
    [InlineData("500x700mm", 500, 700)]
    [InlineData("700 x 500", 500, 700)]
    [InlineData("20x30in", 508, 762)]
    [InlineData("17 1/2 in x 22 in", 444.5, 558.8)]
    [InlineData("50cm×700mm", 500, 700)]
    public void A_paper_is_named_by_its_standard_or_by_its_sides(string word, double width, double height)
    {
        var paper = Read(word).Paper!;
        Assert.Equal((width, height), (Math.Round(paper.Width, 6), Math.Round(paper.Height, 6)));
        Assert.False(paper.IsRoll);
    }

    [Theory]
    [InlineData("roll 610mm", 610)]
    [InlineData("Roll 24 in", 609.6)]
    public void A_roll_is_named_by_its_width(string word, double width)
    {
        var paper = Read(word).Paper!;
        Assert.True(paper.IsRoll);
        Assert.Equal(width, paper.Width, 1e-9);
    }

    [Theory]
    [InlineData("a3 across", PaperLay.Across, "a3 across", "a3")]
    [InlineData("A3 upright", PaperLay.Upright, "a3 upright", "a3")]
    [InlineData("500x700mm across", PaperLay.Across, "500x700mm across", "500x700mm")]
    [InlineData("roll 610 mm", PaperLay.Either, "roll 610mm", "roll 610mm")]
    public void A_paper_is_recorded_under_one_name_that_reads_the_same_again(string word, PaperLay lay, string name, string size)
    {
        var paper = Read(word).Paper!;
        Assert.Equal((lay, name, size), (paper.Lay, paper.Name, paper.Size));
        Assert.Equal(paper, Read(name).Paper);
    }

    [Theory]
    [InlineData("a33", "a3")]
    [InlineData("", "paper")]
    [InlineData("roll", "width")]
    [InlineData("roll -610mm", "-610 mm")]
    [InlineData("roll 3000mm", "2000 mm")]
    [InlineData("500xx700", "500x700mm")]
    [InlineData("50x700mm", "140 mm")]
    [InlineData("0x0", "140 mm")]
    [InlineData("500x7000mm", "5000 mm")]
    [InlineData("500x30deg", "500")]
    [InlineData("across", "paper")]
    public void What_is_no_paper_is_refused_with_what_would_be(string word, string said)
    {
        var complaint = Assert.Single(Read(word).Complaints);
        Assert.Contains(said, complaint.ToString(), StringComparison.Ordinal);
        Assert.Equal(There, new Place(complaint.File, complaint.Line, complaint.Column));
    }

    private const string Own = """
        # ours
        printers:
          office-laser:
            margins: {left: 4 mm, right: 5 mm, top: 6 mm, bottom: 12 mm}
            coupons:
              a3: {measured_on: 2026-11-28, level: {drawn: 250 mm, measured: 249.4 mm}, upright: {drawn: 380 mm, measured: 379.6 mm},
                   rising: 453.9 mm, falling: 454.5 mm}
              # the big one
              roll 610mm: {measured_on: 2026-10-01, level: {drawn: 570 mm, measured: 570.4 mm}, upright: {drawn: 820 mm, measured: 819 mm}, rising: 998.2 mm, falling: 997.9 mm}
          attic:
            margins: 5 mm

        """;

    private static ShopTables With(string printers) => Shipped.Read([.. Shipped.Files, new("ours/printers.yaml", printers)]);

    [Fact]
    public void A_printer_has_margins_of_its_own_and_a_coupon_for_each_paper()
    {
        var printer = With(Own).Printers["office-laser"];
        Assert.Equal(new Margins(4, 5, 6, 12), printer.On(Read("a4").Paper!).Margins);
        Assert.Equal(["a3", "roll 610mm"], printer.Coupons.Keys.Order(StringComparer.Ordinal));
        var coupon = printer.Coupons["a3"];
        Assert.Equal(new DateOnly(2026, 11, 28), coupon.MeasuredOn);
        Assert.Equal(249.4 / 250, coupon.Error.Across, 1e-5);
        Assert.Equal(Margins.Alike(5), With(Own).Printers["attic"].On(Read("a4").Paper!).Margins);
    }

    [Theory]
    [InlineData("measured: 249.4 mm", "measured: 240 mm", "fit to page")]
    [InlineData("falling: 454.5 mm", "falling: 464.5 mm", "diagonals")]
    [InlineData("2026-11-28", "28.11.2026", "2026-11-28")]
    [InlineData("a3:", "a33:", "a3")]
    [InlineData("bottom: 12 mm", "bottom: 120 mm", "30 mm")]
    [InlineData("rising: 453.9 mm, ", "", "rising")]
    public void A_fault_in_the_table_of_printers_is_told(string there, string instead, string said)
    {
        var complaints = new List<Complaint>();
        Assert.False(ShopReader.TryRead([.. Shipped.Files, new("ours/printers.yaml", Own.Replace(there, instead, StringComparison.Ordinal))], complaints, out _));
        Assert.Contains(complaints, c => c.File == "ours/printers.yaml" && c.Line > 3 && c.ToString().Contains(said, StringComparison.Ordinal));
    }

    private static readonly Coupon New = new(new(2027, 1, 2), new(250, 380, 250.3, 380.2, 455.2, 455.2));

    private static string Enter(string text, string printer, string paper)
    {
        Assert.True(PrinterFile.TryEnter(text, Shipped.Tables.Papers, printer, paper, New, out var entered));
        return entered!;
    }

    [Theory]
    [InlineData("", "office-laser", "a3")]
    [InlineData("# only a remark\n", "office-laser", "a3")]
    [InlineData("printers: {}\n", "office-laser", "a3")]
    [InlineData(Own, "office-laser", "a3")]
    [InlineData(Own, "office-laser", "a4")]
    [InlineData(Own, "office-laser", "roll 610mm")]
    [InlineData(Own, "attic", "letter")]
    [InlineData(Own, "cellar", "500x700mm")]
    public void A_coupon_is_entered_and_all_else_stays_as_it_stands(string text, string printer, string paper)
    {
        var entered = Enter(text, printer, paper);
        Assert.Equal(New, With(entered).Printers[printer].Coupons[paper]);
        // Every line that was there, but for those of the coupon that it replaces.
        var gone = text.Split('\n').Except(entered.Split('\n')).ToList();
        Assert.All(gone, l => Assert.True(l.Contains($"{paper}:", StringComparison.Ordinal) || l.Contains("rising: 453.9", StringComparison.Ordinal) || l.Contains("{}", StringComparison.Ordinal), l));
        Assert.Equal(entered, Enter(entered, printer, paper));
    }

    // 25.4 mm to the inch, by the definition of the international inch: 9 13/16 in are 249.2375 mm, which no binary number is.
    [Theory]
    [InlineData(9 + 13 / 16.0, 14 + 15 / 16.0, 17 + 7 / 8.0)]
    [InlineData(9 + 27 / 32.0, 14 + 61 / 64.0, 17 + 29 / 32.0)]
    [InlineData(29.5 / 3, 44.9 / 3, 53.72 / 3)]
    public void What_was_measured_in_inches_is_entered_to_a_ten_thousandth_of_a_millimetre(double level, double upright, double diagonal)
    {
        var coupon = new Coupon(new(2027, 1, 2), new(250, 380, level * 25.4, upright * 25.4, diagonal * 25.4, diagonal * 25.4));
        Assert.True(PrinterFile.TryEnter("", Shipped.Tables.Papers, "office-laser", "a3", coupon, out var entered));
        var lengths = With(entered!).Printers["office-laser"].Coupons["a3"].Lengths;
        Assert.Equal(level * 25.4, lengths.Level, 0.00005001);
        Assert.Equal(upright * 25.4, lengths.Upright, 0.00005001);
        Assert.Equal(diagonal * 25.4, lengths.Rising, 0.00005001);
    }

    [Theory]
    [InlineData("printers: {office-laser: {margins: 5 mm}}\n")]
    [InlineData("printers:\n  office-laser: {margins: 5 mm}\n")]
    [InlineData("printers: [1]\n")]
    [InlineData("printers:\n\tbad\n")]
    public void A_file_that_cannot_be_changed_without_breaking_it_is_left_alone(string text) =>
        Assert.False(PrinterFile.TryEnter(text, Shipped.Tables.Papers, "office-laser", "a3", New, out _));

    [Fact]
    public void Papers_and_printers_may_say_where_their_numbers_are_from()
    {
        var shop = Shipped.Read(
        [
            .. Shipped.Files,
            new("ours/papers.yaml", "papers:\n  card: {width: 300 mm, height: 500 mm, margin: 8 mm, source: Measured on a sheet.}\n"),
            new("ours/printers.yaml", "printers:\n  attic: {margins: 5 mm, source: Measured on a page of ruled lines.}\n"),
        ]);
        Assert.Equal(500, shop.Papers.Single(p => p.Name == "card").Height);
        Assert.True(shop.Printers.ContainsKey("attic"));
    }

    [Fact]
    public void A_line_that_habits_do_not_have_is_told_with_all_that_they_have()
    {
        var complaints = new List<Complaint>();
        Assert.False(ShopReader.TryRead([.. Shipped.Files, new("ours/habits.yaml", "name: Copperbeck Works\n")], complaints, out _));
        var complaint = Assert.Single(complaints);
        Assert.Equal(("ours/habits.yaml", 1, 1), (complaint.File, complaint.Line, complaint.Column));
        Assert.All((string[])["shop", "paper", "overlap", "cutter", "dxf", "printer", "line"], name => Assert.Contains(name, complaint.Remedy, StringComparison.Ordinal));
    }

    [Fact]
    public void Habits_name_the_usual_printer_and_the_width_of_lines()
    {
        var shop = Shipped.Read([.. Shipped.Files, new("ours/printers.yaml", Own), new("ours/habits.yaml", "printer: attic\nline: 0.25 mm\n")]);
        Assert.Equal(("attic", 0.25), (shop.UsualPrinter, shop.Line));
        var complaints = new List<Complaint>();
        Assert.False(ShopReader.TryRead([.. Shipped.Files, new("ours/habits.yaml", "printer: attick\nline: 0.6 mm\n")], complaints, out _));
        Assert.Equal(2, complaints.Count);
    }
}
