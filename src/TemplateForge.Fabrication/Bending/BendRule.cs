using TemplateForge.Geometry;

namespace TemplateForge.Fabrication;

/// <summary>A way of reckoning how much flat sheet a bend uses up. What was used is printed: <see cref="Name"/>, <see cref="Source"/>.</summary>
/// <remarks>The formulas stand side by side, with the figures they are tested against, in docs/sheet-metal.md.</remarks>
public abstract record BendRule
{
    /// <summary>As it is printed: <c>K-factor 0.44</c>.</summary>
    public abstract string Name { get; }

    /// <summary>The book, standard or custom that it comes from.</summary>
    public abstract string Source { get; }

    /// <summary>Whether the rule says anything about a bend through this angle.</summary>
    public virtual bool Covers(Angle angle) => angle > Angle.Zero && angle <= Angle.FullTurn;

    /// <summary>Length of flat sheet from tangent line to tangent line, in mm.</summary>
    /// <param name="angle">Angle bent through, from flat: more than 0, at most a full turn (a curl).</param>
    /// <param name="insideRadius">In mm, 0 or more.</param>
    /// <param name="thickness">In mm, more than 0.</param>
    /// <exception cref="ArgumentOutOfRangeException">A value lies outside the range beside it, or the rule does not cover the angle.</exception>
    public double Allowance(Angle angle, double insideRadius, double thickness)
    {
        if (!(insideRadius >= 0 && double.IsFinite(insideRadius)))
            throw new ArgumentOutOfRangeException(nameof(insideRadius), insideRadius, "An inside radius is 0 or more.");
        if (!(thickness > 0 && double.IsFinite(thickness)))
            throw new ArgumentOutOfRangeException(nameof(thickness), thickness, "A sheet is thicker than 0.");
        if (!Covers(angle))
        {
            throw new ArgumentOutOfRangeException(
                nameof(angle), angle.Degrees, FormattableString.Invariant($"{Name} says nothing of a bend through {angle.Degrees:0.###}°."));
        }
        return Reckon(angle, insideRadius, thickness);
    }

    /// <summary>The allowance of values that have been checked.</summary>
    protected abstract double Reckon(Angle angle, double insideRadius, double thickness);
}
