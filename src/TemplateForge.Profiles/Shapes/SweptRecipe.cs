using TemplateForge.Geometry;
using TemplateForge.Notation;

namespace TemplateForge.Profiles;

/// <summary>Everything that a shape passes over when it moves.</summary>
internal sealed record SweptRecipe(Place Place, ShapeName Shape, Term By, Term Towards) : ShapeRecipe(Place)
{
    public override bool TryMake(Evaluation from, out Region region)
    {
        if (!(from.TryShape(Shape, out region) & from.TryLength(By, out var by) & from.TryAngle(Towards, out var towards))) return false;
        region = region.Swept(Vector.Polar(by, towards));
        return true;
    }
}
