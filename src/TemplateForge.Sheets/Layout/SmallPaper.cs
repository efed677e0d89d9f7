using TemplateForge.Drawing;
using TemplateForge.Geometry;

namespace TemplateForge.Sheets;

/// <summary>Lists and text on paper that is too narrow for them: laid out on a page as wide as an A4, and made smaller as a whole.</summary>
public static class SmallPaper
{
    private const double Narrow = 180;
    private const double LaidOut = 210;

    /// <summary>The paper on which it is laid out.</summary>
    public static Paper LaidOutOn(Paper paper) => Scale(paper) is var scale && scale == 1 ? paper : paper with
    {
        Width = paper.Width / scale,
        Height = paper.Height / scale,
        Margins = new(paper.Margins.Left / scale, paper.Margins.Right / scale, paper.Margins.Top / scale, paper.Margins.Bottom / scale),
    };

    /// <summary>A page that was laid out there, as it is printed.</summary>
    public static Page Printed(Page page, Paper paper)
    {
        var scale = Scale(paper);
        if (scale == 1) return page;
        var smaller = Placement.Scaled(scale, Point.Origin);
        return page with
        {
            Width = page.Width * scale,
            Height = page.Height * scale,
            Views = [.. page.Views.Select(v => new View(v.Drawing, v.Placement.Then(smaller), new(smaller.Of(v.Window.Min), smaller.Of(v.Window.Max))))],
        };
    }

    private static double Scale(Paper paper) => paper.Width < Narrow ? paper.Width / LaidOut : 1;
}
