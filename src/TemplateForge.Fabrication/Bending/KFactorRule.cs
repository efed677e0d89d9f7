using TemplateForge.Geometry;

namespace TemplateForge.Fabrication;

/// <summary>The line that keeps its length lies a fixed share of the thickness below the inside face: BA = A (R + K T).</summary>
public sealed record KFactorRule : BendRule
{
    /// <param name="kFactor">Depth of that line in thicknesses, 0 to 0.5.</param>
    /// <exception cref="ArgumentOutOfRangeException">The factor lies outside its range.</exception>
    public KFactorRule(double kFactor)
    {
        if (!(kFactor is >= 0 and <= 0.5)) throw new ArgumentOutOfRangeException(nameof(kFactor), kFactor, "A K-factor is 0 to 0.5.");
        KFactor = kFactor;
    }

    public double KFactor { get; }

    public override string Name => FormattableString.Invariant($"K-factor {KFactor:0.####}");

    public override string Source => "length of the neutral line, an arc; the factor is the shop's own or its material's";

    protected override double Reckon(Angle angle, double insideRadius, double thickness) =>
        angle.Radians * (insideRadius + KFactor * thickness);
}
