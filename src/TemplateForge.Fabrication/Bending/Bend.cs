using TemplateForge.Geometry;

namespace TemplateForge.Fabrication;

/// <summary>One straight bend, and how much flat sheet it uses up by a rule.</summary>
/// <remarks>
/// <code>
///         setback
///       :---------:  mould line: where the outer faces would meet
///     ==+=====. . +
///       :       `. |     allowance: along the neutral line, from tangent line to tangent line
///    tangent      \|     deduction: two setbacks less the allowance
///      line    ....|
///                  |
/// </code>
/// Lengths in mm.
/// </remarks>
public sealed record Bend
{
    /// <param name="angle">Angle bent through, from flat: more than 0, at most a full turn (a curl).</param>
    /// <param name="insideRadius">0 or more.</param>
    /// <param name="thickness">More than 0.</param>
    /// <param name="rule">By which the allowance is reckoned; it covers the angle.</param>
    /// <exception cref="ArgumentOutOfRangeException">A value lies outside the range beside it.</exception>
    public Bend(Angle angle, double insideRadius, double thickness, BendRule rule)
    {
        (Angle, InsideRadius, Thickness, Rule) = (angle, insideRadius, thickness, rule);
        Allowance = rule.Allowance(angle, insideRadius, thickness);
    }

    /// <summary>Angle bent through, from flat.</summary>
    public Angle Angle { get; }
    public double InsideRadius { get; }
    public double Thickness { get; }
    public BendRule Rule { get; }

    /// <summary>Flat sheet that the bend uses up, from tangent line to tangent line.</summary>
    public double Allowance { get; }

    public double OutsideRadius => InsideRadius + Thickness;

    /// <summary>From tangent line to mould line, (R + T) tan(A / 2); infinite from 180° on, where the faces never meet.</summary>
    public double Setback => Angle < Angle.HalfTurn ? OutsideRadius * (Angle / 2).Tan : double.PositiveInfinity;

    /// <summary>What is taken off the sum of two lengths that are measured to the mould line.</summary>
    public double Deduction => 2 * Setback - Allowance;

    /// <summary>From tangent line to where a caliper over the outside of the leg touches.</summary>
    /// <remarks>Up to 90° that is the mould line; past it the round of the bend stands out furthest, one outside radius on.</remarks>
    public double OutsideSetback => OutsideRadius * Reach;

    /// <summary>The same on the inside of the leg, to where the inner faces would meet, or to the bottom of the round.</summary>
    public double InsideSetback => InsideRadius * Reach;

    /// <summary>What is taken off the sum of two outside lengths; DIN 6935 calls it v.</summary>
    public double OutsideDeduction => 2 * OutsideSetback - Allowance;

    private double Reach => Angle <= Angle.QuarterTurn ? (Angle / 2).Tan : 1;
}
