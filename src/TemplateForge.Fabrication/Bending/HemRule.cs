using TemplateForge.Geometry;

namespace TemplateForge.Fabrication;

/// <summary>The sheet-metal worker's allowance for a hem: the blank grows by the whole width of the hem, and nothing is taken off.</summary>
/// <remarks>
/// Only for sheet folded through 180°. BA = 2 T + 5 R: a closed fold (R = 0) is allowed what its two outside lengths lose; the outer fold
/// of a double hem (R = T / 2) also what the inner layer, which ends at its tangent line, lacks of the width. So a double hem takes twice
/// its width. The neutral line of a closed fold would take some 0.6 T less.
/// </remarks>
public sealed record HemRule : BendRule
{
    private static readonly Angle Slack = Angle.FromDegrees(1e-6);

    public override string Name => "hem allowance";

    public override string Source => "US Navy Steelworker, volume 2 (NAVEDTRA 14251), ch. 2: single hem its width, double hem twice";

    public override bool Covers(Angle angle) => angle > Angle.HalfTurn - Slack && angle < Angle.HalfTurn + Slack;

    protected override double Reckon(Angle angle, double insideRadius, double thickness) => 2 * thickness + 5 * insideRadius;
}
