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
