using TemplateForge.Geometry;
using TemplateForge.Notation;

namespace TemplateForge.Profiles;

/// <summary>A shape moved.</summary>
internal sealed record MovedRecipe(Place Place, ShapeName Shape, Term Along, Term Up) : ShapeRecipe(Place)
{
    public override bool TryMake(Evaluation from, out Region region)
    {
        if (!(from.TryShape(Shape, out region) & from.TryLength(Along, out var along) & from.TryLength(Up, out var up))) return false;
        region = region.Placed(Placement.Moved(new(along, up)));
        return true;
    }
}
