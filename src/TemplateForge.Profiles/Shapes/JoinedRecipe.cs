using System.Collections.Immutable;
using TemplateForge.Geometry;
using TemplateForge.Notation;

namespace TemplateForge.Profiles;

/// <summary>What lies in any of several shapes.</summary>
internal sealed record JoinedRecipe(Place Place, ImmutableArray<ShapeName> Shapes) : ShapeRecipe(Place)
{
    public override bool TryMake(Evaluation from, out Region region)
    {
        region = Region.Empty;
        if (!from.TryShapes(Shapes, out var shapes)) return false;
        region = Combination.Union(shapes);
        return true;
    }
}
