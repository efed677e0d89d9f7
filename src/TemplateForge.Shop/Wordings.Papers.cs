using System.Globalization;
using TemplateForge.Drawing;
using TemplateForge.Notation;

namespace TemplateForge.Shop;

/// <summary>What is said of papers and printers.</summary>
public static partial class Wordings
{
    public static Complaint PaperNotUnderstood(Place place, string word, IEnumerable<string> known) => place.Complain(
        word.Trim().Length == 0 ? "No paper is named." : word.Trim() == "roll" ? "A roll is named by its width." : $"There is no paper called '{word}' in the shop's table.",
        (Spelling.Nearest(word, known, out var nearest) ? $"Did you mean {nearest}? " : $"It can be {string.Join(", ", known)}. ")
        + "A size of your own is written as 500x700mm, a roll as \"roll 610mm\"; the words upright or across behind it say how it lies.");

    public static Complaint UnknownPrinter(Place place, string name, IEnumerable<string> known) => place.Complain(
        $"There is no printer {name} in the shop's table.",
        Spelling.Nearest(name, known, out var nearest) ? $"Did you mean {nearest}?"
            : known.Any() ? $"Choose one of {string.Join(", ", known)}, or print and measure a coupon for it."
            : "The table is empty: print and measure a coupon, and it is entered.");

    public static Complaint NotADay(Place place, string text) => place.Complain(
        $"'{text}' is no day.", "Write it as year-month-day: 2026-11-28.");

    public static Complaint NoPrintersLengths(Place place, CouponLengths lengths) => lengths.Fault switch
    {
        CouponFault.Level => place.Complain(Off("level, A to B", lengths.Level, lengths.DrawnLevel), FitToPage),
        CouponFault.Upright => place.Complain(Off("upright, A to D", lengths.Upright, lengths.DrawnUpright), FitToPage),
        CouponFault.Diagonals => place.Complain(
            string.Create(CultureInfo.InvariantCulture, $"The diagonals do not go with the sides: with these sides they are {lengths.ExpectedDiagonal:0.0} mm in the middle, but they were measured as {lengths.MeanDiagonal:0.0} mm."),
            "One of the four was read wrong: measure all of them again, the paper flat, from cross to cross."),
        _ => place.Complain(
            string.Create(CultureInfo.InvariantCulture, $"The diagonals differ by {Math.Abs(lengths.Rising - lengths.Falling):0.0} mm: no printer is so far out of square."),
            "The sheet ran in askew, or a diagonal was read wrong: print the coupon again and measure it."),
    };

    private const string FitToPage =
        "It was probably printed fit to page, or a wrong number was entered: print the coupon again at 100 %, and check the number.";

    private static string Off(string what, double measured, double drawn) => string.Create(CultureInfo.InvariantCulture,
        $"{what}, was drawn as {drawn:0.##} mm and measured as {measured:0.##} mm: {Math.Abs(measured / drawn - 1) * 100:0.0} % off, and no printer errs by more than {PrinterError.MostScale * 100:0} %.");
}
