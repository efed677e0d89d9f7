using TemplateForge.Geometry;

namespace TemplateForge.Fabrication;

/// <summary>The old rule of thumb: take half a radius and one and a half thicknesses off the outside lengths for every square bend.</summary>
/// <remarks>It is printed for 90° only, and scaling it would be our own invention: no other angle is covered.</remarks>
public sealed record ThumbRule : BendRule
{
    private static readonly Angle Slack = Angle.FromDegrees(1e-6);

    public override string Name => "rule of thumb";

    public override string Source => "Austrian school text, ch. 16.8: 0.5 r + 1.5 t off for a bend of 90°";

    public override bool Covers(Angle angle) => angle > Angle.QuarterTurn - Slack && angle < Angle.QuarterTurn + Slack;

    protected override double Reckon(Angle angle, double insideRadius, double thickness) =>
        2 * (insideRadius + thickness) - (0.5 * insideRadius + 1.5 * thickness);
}
