using TemplateForge.Fabrication;
using TemplateForge.Geometry;
using TemplateForge.Notation;

namespace TemplateForge.Profiles;

/// <summary>Equal round holes, evenly spaced round an outline, the first straight above its middle.</summary>
internal sealed record CirclesAlongRecipe(Place Place, ShapeName Outline, Term Diameter, Term Pitch) : ShapeRecipe(Place)
{
    public override bool TryMake(Evaluation from, out Region region)
    {
        region = Region.Empty;
        if (!from.TryOutline(Outline, out var outline)
            || !(from.TrySize(Diameter, out var diameter) & from.TrySize(Pitch, out var pitch))) return false;
        if (outline.Length / pitch > Evaluation.MostRepeats) return from.Refuse(Wordings.TooManyRepeats(Pitch.Place, outline.Length / pitch));
        var places = EvenSpacing.FromTheTop(outline, EvenSpacing.CountNearest(outline, pitch));
        region = Combination.Union(places.Select(p => Region.Of(Geometry.Outline.Circle(p, diameter / 2))));
        return true;
    }
}
