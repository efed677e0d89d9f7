using TemplateForge.Drawing;
using TemplateForge.Geometry;

namespace TemplateForge.Sheets;

/// <summary>How a template is printed.</summary>
/// <param name="Paper">What it is printed on, with the margins of its printer.</param>
/// <param name="Overlap">How far neighbouring pages lie over each other, in mm.</param>
public sealed record PrintSetup(Paper Paper, double Overlap)
{
    /// <summary>How wide the lines to work to are, in mm.</summary>
    public double Line { get; init; } = LineWidth.Usual;

    /// <summary>Its printer, and what it does to a sheet.</summary>
    public PrinterSetup Printer { get; init; } = PrinterSetup.Unknown;

    /// <summary>How the drawing lies on its pages.</summary>
    public TurnWish Turn { get; init; } = TurnWish.Fewest;

    /// <summary>The paper with room for what the correction moves.</summary>
    public Paper Room => Printer.Error.Fitted(Paper);

    /// <summary>What is kept free on every page.</summary>
    public PageLayout Layout => new(PageLayout.Usual.SideStrip, PageLayout.Usual.FootStrip, Overlap);

    /// <summary>A page as it is sent to the printer.</summary>
    /// <param name="page">The page.</param>
    /// <param name="across">Whether its paper lies on its side.</param>
    internal Page Corrected(Page page, bool across) => Printer.Error.IsNone ? page : page with { Correction = Printer.Error.Correction(across) };
}

/// <summary>The printer of a template.</summary>
/// <param name="Name">Its name; empty where nobody has said.</param>
/// <param name="Error">What it does to a sheet of this paper.</param>
/// <param name="MeasuredOn">The day on which that was measured, as year-month-day; empty where it was not.</param>
public sealed record PrinterSetup(string Name, PrinterError Error, string MeasuredOn)
{
    public static PrinterSetup Unknown { get; } = new("", PrinterError.None, "");

    public bool IsCorrected => MeasuredOn.Length > 0;
}

/// <summary>How a drawing is turned on its pages.</summary>
/// <param name="By">By how much, anticlockwise.</param>
/// <param name="IsFewest">Whether the program may turn it so that it takes the fewest pages.</param>
public readonly record struct TurnWish(Angle By, bool IsFewest)
{
    public static TurnWish Fewest => new(Angle.Zero, IsFewest: true);

    /// <summary>As the profile draws it.</summary>
    public static TurnWish None => new(Angle.Zero, IsFewest: false);
}
