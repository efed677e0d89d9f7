using TemplateForge.Fabrication;
using TemplateForge.Geometry;
using TemplateForge.Notation;

namespace TemplateForge.Profiles;

/// <summary>Equal round holes over a shape.</summary>
internal sealed record HolesOverRecipe(Place Place, ShapeName Shape, Term Diameter, Term Pitch, Term EdgeDistance, bool IsStaggered) : ShapeRecipe(Place)
{
    public override bool TryMake(Evaluation from, out Region region)
    {
        region = Region.Empty;
        if (!(from.TryShape(Shape, out var shape) & from.TrySize(Diameter, out var diameter)
            & from.TrySize(Pitch, out var pitch) & from.TryAtLeastZero(EdgeDistance, out var edge))) return false;
        if (shape.IsEmpty) return from.Refuse(Wordings.ShapeIsEmpty(Shape));
        if (!HolesRecipe.IsSound(from, Pitch, pitch, diameter)) return false;
        if (edge <= diameter / 2) return from.Refuse(Wordings.HolesWouldBreakOut(EdgeDistance.Place, edge, diameter));
        var most = HolePattern.MostOver(shape, pitch);
        if (most > 2 * Evaluation.MostRepeats) return from.Refuse(Wordings.TooManyRepeats(Pitch.Place, most));
        var places = HolePattern.Over(shape, pitch, edge, IsStaggered);
        if (places.IsEmpty) return from.Refuse(Wordings.NoRoomForHoles(Place, Shape.Name, edge));
        if (places.Length > Evaluation.MostRepeats) return from.Refuse(Wordings.TooManyRepeats(Pitch.Place, places.Length));
        region = HolesRecipe.At(places, diameter);
        return true;
    }
}
