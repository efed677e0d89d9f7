using System.Globalization;
using TemplateForge.Drawing;
using TemplateForge.Notation;
using TemplateForge.Shop;

namespace TemplateForge.Jobs;

/// <summary>What is said of paper and printers.</summary>
internal static partial class Wordings
{
    public static Complaint UnknownPrinter(Choice printer, string name, IEnumerable<string> known) =>
        Shop.Wordings.UnknownPrinter(printer.IsMade ? printer.Place : new("habits.yaml", 1, 1), Quoted(name), known);

    public static Complaint NoCoupon(Choice printer, Printer known, string paper) => printer.Place.Complain(
        $"Nobody has measured a coupon of {known.Name} on {paper}, only on {string.Join(", ", known.Coupons.Keys.Order(StringComparer.Ordinal))}: another paper may run through the other way round.",
        $"Print one and measure it: coupon {known.Name} --paper {Word(paper)}. Or leave --printer out, and nothing is corrected.");

    public static string NotCorrected(string printer, string paper) =>
        $"NOT CORRECTED for {printer}, for nobody has measured a coupon of it on {paper}. Print one and measure it: coupon {printer} --paper {Word(paper)}";

    public static Complaint PaperWithoutRoom(Choice paper, Paper known, double overlap) => (paper.IsMade ? paper.Place : new("papers.yaml", 1, 1)).Complain(
        string.Create(CultureInfo.InvariantCulture, $"The paper {known.Name} leaves no room for a drawing beside its margins and an overlap of {overlap:0.#} mm."),
        "Take larger paper, or lower the overlap.");

    public static Complaint LengthOutOfRange(Choice choice, string name, double least, double most) => choice.Place.Complain(
        string.Create(CultureInfo.InvariantCulture, $"{name} takes {least:0.##} to {most:0.##} mm, but got {Quoted(choice.Word)}."),
        string.Create(CultureInfo.InvariantCulture, $"Give a length from {least:0.##} to {most:0.##} mm, or leave it out."));

    public static Complaint NotATurn(Choice turn) => turn.Place.Complain(
        $"{Quoted(turn.Word)} is no turn of the drawing.", "Write fewest, none, or degrees anticlockwise from -180 to 180.");

    // As it is typed: a name with a space in it stands in quotes.
    private static string Word(string name) => name.Contains(' ', StringComparison.Ordinal) ? $"\"{name}\"" : name;
}
