using TemplateForge.Geometry;
using TemplateForge.Notation;

namespace TemplateForge.Profiles;

/// <summary>How a shape is made from values and from other shapes.</summary>
internal abstract record ShapeRecipe(Place Place)
{
    /// <summary>Makes the shape; false when it cannot be made and the reason has been complained of.</summary>
    public abstract bool TryMake(Evaluation from, out Region region);
}
