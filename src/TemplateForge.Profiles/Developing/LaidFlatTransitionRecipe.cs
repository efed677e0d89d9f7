using System.Collections.Immutable;
using TemplateForge.Geometry;
using TemplateForge.Notation;

namespace TemplateForge.Profiles;

/// <summary>A transition laid flat: all its parts side by side, or one of them where it lies among the others.</summary>
internal sealed record LaidFlatTransitionRecipe(Place Place, TransitionName Transition, ImmutableArray<Term> Part) : ShapeRecipe(Place)
{
    private const int Most = 1000;

    public override bool TryMake(Evaluation from, out Region region)
    {
        region = Region.Empty;
        if (!from.TryTransition(Transition, out var bent)) return false;
        var parts = bent.Pattern.Parts;
        if (Part.IsEmpty)
        {
            region = Combination.Union(parts.Select(p => p.Shape));
            return true;
        }
        if (!from.TryCount(Part[0], Most, out var number)) return false;
        if (number > parts.Length) return from.Refuse(Wordings.NoSuchPart(Part[0].Place, number, parts.Length));
        region = parts[number - 1].Shape;
        return true;
    }
}
