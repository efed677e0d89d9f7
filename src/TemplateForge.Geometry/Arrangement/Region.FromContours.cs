namespace TemplateForge.Geometry;

public sealed partial class Region
{
    /// <summary>
    /// The region that contours enclose. They may cross and touch themselves and one another, be turned either way or run twice.
    /// </summary>
    public static Region FromContours(IEnumerable<Contour> contours, FillRule rule = FillRule.NonZero)
    {
        using var arrangement = Arrangement.Rent();
        foreach (var contour in contours) arrangement.Add(contour, count: 1);
        return rule switch
        {
            FillRule.NonZero => arrangement.Where(winding => winding != 0),
            FillRule.EvenOdd => arrangement.Where(winding => winding % 2 != 0),
            _ => throw new ArgumentOutOfRangeException(nameof(rule), rule, "There is no such fill rule."),
        };
    }

    /// <summary>What is inside one contour, whichever way it was drawn.</summary>
    public static Region Of(Contour contour) => FromContours([contour]);
}
