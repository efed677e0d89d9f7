using TemplateForge.Geometry;
using TemplateForge.Notation;

namespace TemplateForge.Profiles;

/// <summary>A slot with round ends; without length it is a circle.</summary>
internal sealed record SlotRecipe(Place Place, PointTerm From, PointTerm To, Term Width) : ShapeRecipe(Place)
{
    public override bool TryMake(Evaluation from, out Region region)
    {
        region = Region.Empty;
        if (!(from.TryPoint(From, out var a) & from.TryPoint(To, out var b) & from.TrySize(Width, out var width))) return false;
        region = a.DistanceTo(b) > Tolerance.Length
            ? Region.Of(Outline.Slot(a, b, width))
            : Region.Of(Outline.Circle(a, width / 2));
        return true;
    }
}
