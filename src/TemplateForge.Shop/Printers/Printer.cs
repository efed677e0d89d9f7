using System.Collections.Immutable;
using TemplateForge.Drawing;

namespace TemplateForge.Shop;

/// <summary>One of the shop's printers: where it cannot print, and what was measured on its coupons.</summary>
/// <param name="Name">Its name in the table.</param>
/// <param name="Coupons">By the name of the paper that each was printed on; a printer may take another paper the other way round.</param>
public sealed record Printer(string Name, ImmutableDictionary<string, Coupon> Coupons)
{
    private readonly Margins margins;
    private readonly bool hasMargins;

    /// <summary>The same with margins of its own.</summary>
    public Printer With(Margins own) => new(this, own);

    private Printer(Printer printer, Margins own) : this(printer.Name, printer.Coupons) => (margins, hasMargins) = (own, true);

    /// <summary>The paper as this printer prints on it.</summary>
    public Paper On(Paper paper) => hasMargins ? paper with { Margins = margins } : paper;
}

/// <summary>A coupon that was measured.</summary>
/// <param name="MeasuredOn">The day.</param>
/// <param name="Lengths">What was drawn and what was measured.</param>
public sealed record Coupon(DateOnly MeasuredOn, CouponLengths Lengths)
{
    public PrinterError Error => PrinterError.Of(Lengths);
}
