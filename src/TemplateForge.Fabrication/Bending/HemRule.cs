using TemplateForge.Geometry;

namespace TemplateForge.Fabrication;

/// <summary>The sheet-metal worker's allowance for a hem: the blank grows by the whole width of the hem, and nothing is taken off.</summary>
/// <remarks>
/// Only for sheet folded flat on itself. A fold round other layers is allowed these too, so that a double hem takes twice its width:
/// BA = 2 (T + 2 R). A neutral line in the middle would take some 0.6 T less for a closed fold.
/// </remarks>
public sealed record HemRule : BendRule
{
    private static readonly Angle Slack = Angle.FromDegrees(1e-6);

    public override string Name => "hem allowance";

    public override string Source => "US Navy Steelworker, volume 2 (NAVEDTRA 14251), ch. 2: single hem its width, double hem twice";

    public override bool Covers(Angle angle) => angle > Angle.HalfTurn - Slack && angle < Angle.HalfTurn + Slack;

    protected override double Reckon(Angle angle, double insideRadius, double thickness) => 2 * (thickness + 2 * insideRadius);
}
