using TemplateForge.Geometry;
using TemplateForge.Notation;

namespace TemplateForge.Profiles;

/// <summary>Another shape under a new name.</summary>
internal sealed record SameRecipe(Place Place, ShapeName Shape) : ShapeRecipe(Place)
{
    public override bool TryMake(Evaluation from, out Region region) => from.TryShape(Shape, out region);
}
