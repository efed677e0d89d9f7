using System.Collections.Immutable;
using TemplateForge.Geometry;
using TemplateForge.Notation;

namespace TemplateForge.Profiles;

/// <summary>What lies in one shape and in none of some others.</summary>
internal sealed record SubtractedRecipe(Place Place, ShapeName From, ImmutableArray<ShapeName> Take) : ShapeRecipe(Place)
{
    public override bool TryMake(Evaluation from, out Region region)
    {
        if (!(from.TryShape(From, out region) & from.TryShapes(Take, out var taken))) return false;
        region = region.Subtract(Combination.Union(taken));
        return true;
    }
}
