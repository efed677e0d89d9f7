using TemplateForge.Geometry;
using TemplateForge.Notation;

namespace TemplateForge.Profiles;

/// <summary>A shape turned about a point.</summary>
internal sealed record TurnedRecipe(Place Place, ShapeName Shape, Term By, PointTerm About) : ShapeRecipe(Place)
{
    public override bool TryMake(Evaluation from, out Region region)
    {
        if (!(from.TryShape(Shape, out region) & from.TryAngle(By, out var by) & from.TryPoint(About, out var about))) return false;
        region = region.Placed(Placement.Turned(by, about));
        return true;
    }
}
