using TemplateForge.Geometry;
using TemplateForge.Notation;

namespace TemplateForge.Profiles;

/// <summary>The one of a shape's separate parts in which a point lies.</summary>
internal sealed record PartRecipe(Place Place, ShapeName Shape, PointTerm At) : ShapeRecipe(Place)
{
    public override bool TryMake(Evaluation from, out Region region) =>
        from.TryShape(Shape, out region) & from.TryPoint(At, out var at) && TryFind(from, region.Parts(), at, At.Place, Shape, out region);

    public static bool TryFind(Evaluation from, IReadOnlyList<Region> parts, Point at, Place place, ShapeName shape, out Region part)
    {
        part = parts.FirstOrDefault(p => p.Contains(at)) ?? Region.Empty;
        return !part.IsEmpty || from.Refuse(Wordings.NoPartThere(place, shape.Name, at));
    }
}
