using System.Collections.Immutable;
using TemplateForge.Geometry;
using TemplateForge.Notation;

namespace TemplateForge.Profiles;

/// <summary>What lies in all of several shapes.</summary>
internal sealed record CommonRecipe(Place Place, ImmutableArray<ShapeName> Shapes) : ShapeRecipe(Place)
{
    public override bool TryMake(Evaluation from, out Region region)
    {
        region = Region.Empty;
        if (!from.TryShapes(Shapes, out var shapes)) return false;
        region = shapes.Skip(1).Aggregate(shapes[0], (a, b) => a.Intersect(b));
        return true;
    }
}
