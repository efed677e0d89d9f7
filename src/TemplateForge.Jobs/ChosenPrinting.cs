using System.Diagnostics.CodeAnalysis;
using System.Globalization;
using TemplateForge.Drawing;
using TemplateForge.Geometry;
using TemplateForge.Notation;
using TemplateForge.Sheets;
using TemplateForge.Shop;

namespace TemplateForge.Jobs;

/// <summary>How a job is printed: what somebody chose, and what the shop does where nobody did.</summary>
public static class ChosenPrinting
{
    /// <summary>The word for no printer: nothing is corrected.</summary>
    public const string None = "none";

    /// <summary>The word for a drawing that lies as it takes the fewest pages.</summary>
    public const string Fewest = "fewest";

    private const double LeastOverlap = 5;
    private const double MostOverlap = 30;

    public static bool TryChoose(JobRequest request, ShopTables shop, ICollection<Complaint> complaints, [MaybeNullWhen(false)] out PrintSetup setup)
    {
        setup = null;
        var before = complaints.Count;
        var hasPaper = TryPaper(request.Paper, shop, complaints, out var paper);
        var overlap = Length(request.Overlap, "--overlap", shop.Overlap, LeastOverlap, MostOverlap, complaints);
        var line = Length(request.Line, "--line", shop.Line, LineWidth.Least, LineWidth.Most, complaints);
        var turn = TurnOf(request.Turn, complaints);
        var name = request.Printer.IsMade ? request.Printer.Among(shop.Printers.Keys) : shop.UsualPrinter;
        var printer = PrinterSetup.Unknown;
        if (name.Length > 0 && !request.Printer.Is(None))
        {
            if (!shop.Printers.TryGetValue(name, out var known)) complaints.Add(Wordings.UnknownPrinter(request.Printer, name, shop.Printers.Keys.Order(StringComparer.Ordinal)));
            else if (hasPaper)
            {
                paper = known.On(paper!);
                if (known.Coupons.TryGetValue(paper.Size, out var coupon))
                    printer = new(name, coupon.Error, coupon.MeasuredOn.ToString(ShopReader.Day, CultureInfo.InvariantCulture));
                else if (request.Printer.IsMade && !known.Coupons.IsEmpty) complaints.Add(Wordings.NoCoupon(request.Printer, known, paper.Size));
                else printer = new(name, PrinterError.None, "");
            }
        }
        if (complaints.Count > before || paper is null) return false;
        setup = new(paper, overlap) { Line = line, Printer = printer, Turn = turn };
        if (Tiling.HasRoom(setup.Room, setup.Layout)) return true;
        complaints.Add(Wordings.PaperWithoutRoom(request.Paper, setup.Room, overlap));
        return false;
    }

    /// <summary>What must be known of a printer for which nothing was corrected; empty for one that is, and where none was named.</summary>
    public static string NoteOn(PrintSetup setup) =>
        setup.Printer.Name.Length == 0 || setup.Printer.IsCorrected ? "" : Wordings.NotCorrected(setup.Printer.Name, setup.Paper.Size);

    /// <summary>The paper that somebody named, or the shop's usual one.</summary>
    public static bool TryPaper(Choice choice, ShopTables shop, ICollection<Complaint> complaints, [MaybeNullWhen(false)] out Paper paper)
    {
        paper = shop.UsualPaper;
        return !choice.IsMade || shop.PaperWords.TryRead(choice.Word, choice.Place, complaints, out paper);
    }

    private static double Length(Choice choice, string name, double usual, double least, double most, ICollection<Complaint> complaints)
    {
        if (!choice.IsMade) return usual;
        if (!QuantityReader.TryRead(choice.Word, Unit.Millimetre, choice.Place, complaints, out var length, name)) return usual;
        if (length.Value >= least && length.Value <= most) return length.Value;
        complaints.Add(Wordings.LengthOutOfRange(choice, name, least, most));
        return usual;
    }

    private static TurnWish TurnOf(Choice choice, ICollection<Complaint> complaints)
    {
        if (!choice.IsMade || choice.Is(Fewest)) return TurnWish.Fewest;
        if (choice.Is(None)) return TurnWish.None;
        var found = new List<Complaint>();
        if (QuantityReader.TryRead(choice.Word, Unit.Degree, choice.Place, found, out var angle, "--turn") && Math.Abs(angle.Value) <= 180)
            return new(Angle.FromDegrees(angle.Value), IsFewest: false);
        complaints.Add(Wordings.NotATurn(choice));
        return TurnWish.None;
    }
}
