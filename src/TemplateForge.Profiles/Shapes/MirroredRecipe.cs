using TemplateForge.Geometry;
using TemplateForge.Notation;

namespace TemplateForge.Profiles;

/// <summary>The mirror image of a shape across a line through two points.</summary>
internal sealed record MirroredRecipe(Place Place, ShapeName Shape, PointTerm From, PointTerm To) : ShapeRecipe(Place)
{
    public override bool TryMake(Evaluation from, out Region region)
    {
        if (!(from.TryShape(Shape, out region) & from.TryPoint(From, out var a) & from.TryPoint(To, out var b))) return false;
        if (a.DistanceTo(b) <= Tolerance.Length) return from.Refuse(Wordings.StepWithoutLength(To.Place, b));
        region = region.Placed(Placement.Mirrored(a, (b - a).Direction));
        return true;
    }
}
