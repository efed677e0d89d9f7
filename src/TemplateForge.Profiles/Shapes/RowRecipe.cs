using TemplateForge.Geometry;
using TemplateForge.Notation;

namespace TemplateForge.Profiles;

/// <summary>A shape and its copies in a straight row.</summary>
internal sealed record RowRecipe(Place Place, ShapeName Shape, Term Count, Term Pitch, Term Towards) : ShapeRecipe(Place)
{
    public override bool TryMake(Evaluation from, out Region region)
    {
        region = Region.Empty;
        if (!(from.TryCount(Count, Evaluation.MostRepeats, out var count)
            & from.TrySize(Pitch, out var pitch)
            & from.TryAngle(Towards, out var towards))) return false;
        return from.TryCopies(Place, Shape, [.. Enumerable.Range(0, count).Select(i => Placement.Moved(Vector.Polar(i * pitch, towards)))], out region);
    }
}
