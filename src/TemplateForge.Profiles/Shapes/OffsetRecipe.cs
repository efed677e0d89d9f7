using TemplateForge.Geometry;
using TemplateForge.Notation;

namespace TemplateForge.Profiles;

/// <summary>A shape grown all round, or shrunk.</summary>
internal sealed record OffsetRecipe(Place Place, ShapeName Shape, Term By) : ShapeRecipe(Place)
{
    public override bool TryMake(Evaluation from, out Region region)
    {
        if (!(from.TryShape(Shape, out region) & from.TryLength(By, out var by))) return false;
        region = region.Offset(by);
        return !region.IsEmpty || from.Refuse(Wordings.NothingLeftOfOffset(By.Place, Shape.Name, by));
    }
}
