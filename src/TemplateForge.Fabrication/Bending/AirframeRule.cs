using TemplateForge.Geometry;

namespace TemplateForge.Fabrication;

/// <summary>The airframe handbook's empirical formula: BA = (0.01743 R + 0.0078 T) for each degree.</summary>
/// <remarks>
/// It puts the neutral line at 0.447 T. The first constant is π / 180 cut short, by 0.13 %; the Navy's manual of aviation structural
/// mechanics, chapter 13, prints 0.0173.
/// </remarks>
public sealed record AirframeRule : BendRule
{
    public override string Name => "airframe handbook";

    public override string Source => "FAA-H-8083-31, volume 1, chapter 4: (0.01743 R + 0.0078 T) for each degree";

    protected override double Reckon(Angle angle, double insideRadius, double thickness) =>
        (0.01743 * insideRadius + 0.0078 * thickness) * angle.Degrees;
}
