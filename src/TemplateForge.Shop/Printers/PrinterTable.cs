using System.Collections.Immutable;
using System.Globalization;
using TemplateForge.Drawing;
using TemplateForge.Notation;

namespace TemplateForge.Shop;

/// <summary>Reads <c>printers.yaml</c>: what the shop prints with, and how true each is.</summary>
internal static class PrinterTable
{
    public const string Day = "yyyy-MM-dd";

    private const double LeastLength = 50;
    private const double MostLength = 6000;

    public static ImmutableDictionary<string, Printer> Read(Fields table, IEnumerable<Paper> papers, ICollection<Complaint> complaints)
    {
        var printers = ImmutableDictionary.CreateBuilder<string, Printer>(StringComparer.Ordinal);
        var words = new PaperWords([.. papers], default);
        foreach (var (name, entry) in ShopFields.Entries(table, "printers", "printer", complaints))
        {
            var printer = new Printer(name.Text, Coupons(entry, words, complaints));
            printers[name.Text] = entry.Optional("margins", out _) ? printer.With(PaperTable.MarginsOf(entry, "margins", complaints)) : printer;
            entry.OptionalText("source", out _); // for whoever reads the table
            entry.Done();
        }
        table.Done();
        return printers.ToImmutable();
    }

    private static ImmutableDictionary<string, Coupon> Coupons(Fields printer, PaperWords papers, ICollection<Complaint> complaints)
    {
        var coupons = ImmutableDictionary.CreateBuilder<string, Coupon>(StringComparer.Ordinal);
        if (!printer.OptionalGroup("coupons", out var group)) return coupons.ToImmutable();
        foreach (var (paper, node) in group.Entries)
        {
            if (!papers.TryRead(paper.Text, paper.Place, complaints, out var known)) continue;
            if (!Fields.TryOpen(node, $"The coupon on {paper.Text}", complaints, out var entry)) continue;
            var before = complaints.Count;
            var day = DayOf(entry, complaints);
            var (drawnLevel, level) = Side(entry, "level", complaints);
            var (drawnUpright, upright) = Side(entry, "upright", complaints);
            var lengths = new CouponLengths(drawnLevel, drawnUpright, level, upright, Length(entry, "rising", complaints), Length(entry, "falling", complaints));
            entry.Done();
            if (complaints.Count > before) continue;
            if (lengths.Fault != CouponFault.None) complaints.Add(Wordings.NoPrintersLengths(paper.Place, lengths));
            else coupons[known.Name] = new(day, lengths);
        }
        return coupons.ToImmutable();
    }

    private static (double Drawn, double Measured) Side(Fields coupon, string key, ICollection<Complaint> complaints)
    {
        if (!coupon.RequiredGroup(key, out var group) || !Fields.TryOpen(group, key, complaints, out var side)) return (1, 1);
        var lengths = (Length(side, "drawn", complaints), Length(side, "measured", complaints));
        side.Done();
        return lengths;
    }

    private static double Length(Fields fields, string key, ICollection<Complaint> complaints) =>
        ShopFields.Length(fields, key, LeastLength, MostLength, complaints);

    private static DateOnly DayOf(Fields coupon, ICollection<Complaint> complaints)
    {
        if (!coupon.RequiredText("measured_on", out var text)) return default;
        if (!TryDay(text.Text, out var day)) complaints.Add(Wordings.NotADay(text.Place, text.Text));
        return day;
    }

    public static bool TryDay(string text, out DateOnly day) =>
        DateOnly.TryParseExact(text.Trim(), Day, CultureInfo.InvariantCulture, DateTimeStyles.None, out day);
}
