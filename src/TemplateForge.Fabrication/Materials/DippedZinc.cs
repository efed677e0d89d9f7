namespace TemplateForge.Fabrication;

/// <summary>The zinc on a steel part that is galvanised when it is finished. It closes every hole by twice its thickness.</summary>
/// <param name="Mean">In µm on a face.</param>
/// <param name="LeastLocal">What any one place has at least, in µm.</param>
public readonly record struct DippedZinc(double Mean, double LeastLocal)
{
    /// <summary>What EN ISO 1461 asks for on steel of a thickness, not spun off in a centrifuge.</summary>
    /// <param name="thickness">In mm, more than 0.</param>
    /// <exception cref="ArgumentOutOfRangeException">The thickness is not more than 0.</exception>
    public static DippedZinc On(double thickness) => thickness switch
    {
        > 0 and < 1.5 => new(45, 35),
        >= 1.5 and <= 3 => new(55, 45),
        > 3 and <= 6 => new(70, 55),
        > 6 => new(85, 70),
        _ => throw new ArgumentOutOfRangeException(nameof(thickness), thickness, "Steel is thicker than 0."),
    };
}
