using TemplateForge.Geometry;
using TemplateForge.Notation;

namespace TemplateForge.Profiles;

/// <summary>What of a shape lies on one side of a straight line.</summary>
internal sealed record SideRecipe(Place Place, ShapeName Shape, PointTerm From, PointTerm To, bool Left) : ShapeRecipe(Place)
{
    public override bool TryMake(Evaluation from, out Region region)
    {
        if (!(from.TryShape(Shape, out region) & from.TryPoint(From, out var a) & from.TryPoint(To, out var b))) return false;
        if (a.DistanceTo(b) <= Tolerance.Length) return from.Refuse(Wordings.StepWithoutLength(To.Place, b));
        if (region.IsEmpty) return from.Refuse(Wordings.ShapeIsEmpty(Shape));
        // The side is a square that lies along the line abreast of the shape and reaches past all of it.
        var (bounds, way) = (region.Bounds, (b - a).Unit);
        var aside = Left ? way.Left : -way.Left;
        var abreast = a + way * (bounds.Centre - a).Dot(way);
        var reach = bounds.Width + bounds.Height + abreast.DistanceTo(bounds.Centre) + 1;
        region = region.Intersect(Region.Of(Outline.Polygon(
            abreast - way * reach, abreast + way * reach, abreast + way * reach + aside * reach, abreast - way * reach + aside * reach)));
        return !region.IsEmpty || from.Refuse(Wordings.NothingOnThisSide(Place, Shape.Name, Left));
    }
}
