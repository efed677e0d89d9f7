using TemplateForge.Drawing;
using TemplateForge.Shop;

namespace TemplateForge.Jobs;

/// <summary>The paper of the job sheet: A4, or letter where the shop prints on US sizes. A plotter's sheet is no sheet for a bench.</summary>
public static class BenchPaper
{
    /// <summary>US sheets are whole half inches long and wide, sheets of ISO 216 are not; within this, in mm.</summary>
    private const double SameSize = 0.2;

    private static readonly Paper A4 = new("a4", 210, 297, 8);
    private static readonly Paper Letter = new("letter", 215.9, 279.4, 8);

    /// <summary>What the template is on where that is A4 or letter; else what is usually in the shop's printer where that is; else the
    /// one of the template's family. A size that the shop's table has comes with the table's margin.</summary>
    /// <param name="template">What the template is printed on.</param>
    /// <param name="shop">The shop's papers.</param>
    public static Paper For(Paper template, ShopTables shop)
    {
        var wanted = new[] { template, shop.UsualPaper }.FirstOrDefault(p => IsSize(p, A4) || IsSize(p, Letter));
        return wanted ?? InTable(IsInInches(template) ? Letter : A4, shop);
    }

    private static Paper InTable(Paper size, ShopTables shop) => shop.Papers.FirstOrDefault(p => IsSize(p, size)) ?? size;

    private static bool IsSize(Paper paper, Paper size) =>
        Math.Abs(paper.Width - size.Width) < SameSize && Math.Abs(paper.Height - size.Height) < SameSize;

    private static bool IsInInches(Paper paper) => IsWhole(paper.Width) && IsWhole(paper.Height);

    private static bool IsWhole(double length) => Math.Abs(length - 12.7 * Math.Round(length / 12.7)) < SameSize;
}
