namespace TemplateForge.Drawing;

/// <summary>What is kept free on a page beside the drawing, in mm.</summary>
public sealed record PageLayout
{
    /// <summary>Room for all that <see cref="Furniture"/> prints, and an overlap that a glue stick holds.</summary>
    public static PageLayout Usual { get; } = new(SideStrip: 13, FootStrip: 20, Overlap: 15);

    /// <param name="SideStrip">Strip along the left for the upright scale check, 0 or more.</param>
    /// <param name="FootStrip">Strip along the bottom for the level scale check and the title, 0 or more.</param>
    /// <param name="Overlap">What neighbouring pages both show, 0 or more.</param>
    /// <exception cref="ArgumentOutOfRangeException">A width is below 0 or no number.</exception>
    public PageLayout(double SideStrip, double FootStrip, double Overlap)
    {
        Check(SideStrip, nameof(SideStrip));
        Check(FootStrip, nameof(FootStrip));
        Check(Overlap, nameof(Overlap));
        (this.SideStrip, this.FootStrip, this.Overlap) = (SideStrip, FootStrip, Overlap);
    }

    public double SideStrip { get; }
    public double FootStrip { get; }
    public double Overlap { get; }

    private static void Check(double width, string name)
    {
        if (!(width >= 0 && double.IsFinite(width))) throw new ArgumentOutOfRangeException(name, width, "A strip is 0 mm wide or more.");
    }
}
