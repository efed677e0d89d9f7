using TemplateForge.Geometry;

namespace TemplateForge.Fabrication;

/// <summary>DIN 6935, cold bending of flat steel: the neutral line at k s / 2, k from the ratio of radius to thickness.</summary>
/// <remarks>
/// The standard speaks of the opening angle β = 180° − A that the legs leave, and of the compensation v that is taken off the sum of
/// the outside lengths: <see cref="Bend.OutsideDeduction"/>. Over β = 165° (bent by less than 15°) v is 0: the allowance is then
/// twice the setback, and the blank as long as the outside lengths together.
/// </remarks>
public sealed record Din6935Rule : BendRule
{
    private static readonly Angle Slight = Angle.FromDegrees(15 - 1e-9);

    public override string Name => "DIN 6935";

    public override string Source => "DIN 6935, k = 0.65 + 0.5 lg(r/s), from r/s = 5 on k = 1";

    /// <summary>Twice the depth of the neutral line below the inside face, in thicknesses; 0 to 1.</summary>
    /// <remarks>The formula would pass 1 a little after r/s = 5, and fall below 0 under r/s = 0.05; k is held at both ends.</remarks>
    public static double Correction(double insideRadius, double thickness)
    {
        var ratio = insideRadius / thickness;
        return ratio > 5 ? 1 : Math.Clamp(0.65 + 0.5 * Math.Log10(ratio), 0, 1);
    }

    protected override double Reckon(Angle angle, double insideRadius, double thickness) => angle < Slight
        ? 2 * (insideRadius + thickness) * (angle / 2).Tan
        : angle.Radians * (insideRadius + thickness / 2 * Correction(insideRadius, thickness));
}
