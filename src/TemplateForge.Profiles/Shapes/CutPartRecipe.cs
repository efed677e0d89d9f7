using TemplateForge.Geometry;
using TemplateForge.Notation;

namespace TemplateForge.Profiles;

/// <summary>The part of a shape, cut through along a path, in which a point lies.</summary>
internal sealed record CutPartRecipe(Place Place, ShapeName Shape, string Along, Place AlongPlace, PointTerm PartAt) : ShapeRecipe(Place)
{
    public override bool TryMake(Evaluation from, out Region region)
    {
        if (!(from.TryShape(Shape, out region) & from.TryPath(Along, AlongPlace, out var path) & from.TryPoint(PartAt, out var at))) return false;
        var parts = region.SplitBy(path!);
        if (parts.Length == region.Parts().Length) return from.Refuse(Wordings.CutsNothing(AlongPlace, Along, Shape.Name));
        return PartRecipe.TryFind(from, parts, at, PartAt.Place, Shape, out region);
    }
}
