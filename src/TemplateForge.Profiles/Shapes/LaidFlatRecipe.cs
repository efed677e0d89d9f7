using TemplateForge.Geometry;
using TemplateForge.Notation;

namespace TemplateForge.Profiles;

/// <summary>A flanged sheet laid flat: its base where it was, its flanges round it.</summary>
internal sealed record LaidFlatRecipe(Place Place, FlangedName Flanged) : ShapeRecipe(Place)
{
    public override bool TryMake(Evaluation from, out Region region)
    {
        region = Region.Empty;
        if (!from.TryFlanged(Flanged, out var bent)) return false;
        region = bent.Blank.Shape;
        return true;
    }
}
