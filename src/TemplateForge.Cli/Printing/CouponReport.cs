namespace TemplateForge.Cli.Printing;

/// <summary>A coupon that was printed, or entered.</summary>
/// <param name="Printer">Its printer.</param>
/// <param name="Paper">Its paper.</param>
/// <param name="File">What was saved.</param>
/// <param name="MeasuredOn">The day on which it was measured; empty for one that is still to be.</param>
/// <param name="DrawnLevel">A to B as drawn, in mm.</param>
/// <param name="DrawnUpright">A to D as drawn, in mm.</param>
/// <param name="Across">The printer's scale across the sheet; 0 while nobody has measured it.</param>
/// <param name="Along">Its scale along the sheet; 0 while nobody has measured it.</param>
/// <param name="OutOfSquare">How far the top of an upright line of 300 mm leans to the right, in mm.</param>
internal sealed record CouponReport(
    string Printer, string Paper, string File, string MeasuredOn, double DrawnLevel, double DrawnUpright, double Across, double Along, double OutOfSquare);
