namespace TemplateForge.Drawing;

/// <summary>How wide the lines to work to may be on paper, in mm. ISO 128 draws them 0.35 mm wide on sheets of this size.</summary>
public static class LineWidth
{
    public const double Usual = 0.35;
    public const double Least = 0.18;
    public const double Most = 0.5;
}
