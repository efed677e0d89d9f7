using System.Globalization;
using TemplateForge.Drawing;
using TemplateForge.Geometry;

namespace TemplateForge.Sheets;

/// <summary>What is said of paper and printers.</summary>
internal static partial class Wording
{
    public static string PagesOf(int count) => count == 1 ? "1 page" : count.ToString(CultureInfo.InvariantCulture) + " pages";

    public static string TurnedBy(Angle turn) =>
        string.Create(CultureInfo.InvariantCulture, $"turned {Math.Abs(turn.Degrees):0.#}° {(turn > Angle.Zero ? "anticlockwise" : "clockwise")}");

    /// <summary>By how much a piece was turned and what that saved; nothing for one that was not.</summary>
    public static string TurnOf(PieceTemplate template) => !template.Laid.IsTurned ? ""
        : $", {TurnedBy(template.Laid.Turn)}{(template.PagesSaved > 0 ? $", which saves {PagesOf(template.PagesSaved)}" : "")}";

    public static string CorrectedFor(PrinterSetup printer) => $"Corrected for {printer.Name}, measured {printer.MeasuredOn}";

    /// <summary>What the cover says of the printer.</summary>
    public static string OfPrinter(PrinterSetup printer, Paper paper) => printer.Name.Length == 0
        ? ""
        : !printer.IsCorrected
            ? $"Printer {printer.Name}: not corrected, for nobody has measured a coupon of it on {paper.Name}."
            : string.Create(CultureInfo.InvariantCulture,
                $"Corrected for the printer {printer.Name} by the coupon measured {printer.MeasuredOn}: it prints {printer.Error.Across * 100:0.00} % across the sheet, "
                + $"{printer.Error.Along * 100:0.00} % along it, and {Math.Abs(printer.Error.OutOfSquare(300)):0.00} mm out of square in 300 mm. Print this on {paper.Name} with that printer and no other.");

    public const string Damp =
        "Paper moves 0.1 to 0.3 % with damp, 0.3 to 0.9 mm in 300: let it lie in the shop before it is measured, and mark from it the same day.";
}
