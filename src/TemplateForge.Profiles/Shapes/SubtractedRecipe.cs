using System.Collections.Immutable;
using TemplateForge.Geometry;
using TemplateForge.Notation;

namespace TemplateForge.Profiles;

/// <summary>What lies in one shape and in none of some others. What is to be taken must lie on the shape: a hole beside its plate
/// is a mistake; only what may miss may.</summary>
internal sealed record SubtractedRecipe(Place Place, ShapeName From, ImmutableArray<ShapeName> Take, ImmutableArray<ShapeName> MayMiss) : ShapeRecipe(Place)
{
    public override bool TryMake(Evaluation from, out Region region)
    {
        if (!(from.TryShape(From, out region) & from.TryShapes(Take, out var taken) & from.TryShapes(MayMiss, out var more))) return false;
        var (whole, sound) = (region, true);
        foreach (var (shape, name) in taken.Zip(Take))
        {
            if (!whole.IsEmpty && (shape.IsEmpty || whole.Intersect(shape).IsEmpty)) sound = from.Refuse(Wordings.TakesNothing(name, From.Name));
        }
        region = whole.Subtract([.. taken, .. more]);
        return sound;
    }
}
