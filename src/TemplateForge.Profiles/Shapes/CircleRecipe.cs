using TemplateForge.Geometry;
using TemplateForge.Notation;

namespace TemplateForge.Profiles;

/// <summary>A circle by its centre and diameter.</summary>
internal sealed record CircleRecipe(Place Place, PointTerm Centre, Term Diameter) : ShapeRecipe(Place)
{
    public override bool TryMake(Evaluation from, out Region region)
    {
        region = Region.Empty;
        if (!(from.TryPoint(Centre, out var centre) & from.TrySize(Diameter, out var diameter))) return false;
        region = Region.Of(Outline.Circle(centre, diameter / 2));
        return true;
    }
}
