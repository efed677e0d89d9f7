using TemplateForge.Geometry;
using TemplateForge.Notation;

namespace TemplateForge.Profiles;

/// <summary>A tube or a cone laid flat.</summary>
internal sealed record LaidFlatWrapRecipe(Place Place, WrapName Wrap) : ShapeRecipe(Place)
{
    public override bool TryMake(Evaluation from, out Region region)
    {
        region = Region.Empty;
        if (!from.TryWrap(Wrap, out var pattern)) return false;
        region = pattern.Shape;
        return true;
    }
}
