using TemplateForge.Geometry;
using TemplateForge.Notation;

namespace TemplateForge.Profiles;

/// <summary>One of several recipes, by the word that a choice parameter has.</summary>
internal sealed record ChosenRecipe(Place Place, Chosen<ShapeRecipe> Choice) : ShapeRecipe(Place)
{
    public override bool TryMake(Evaluation from, out Region region)
    {
        region = Region.Empty;
        return from.TryPick(Choice, out var recipe) && recipe.TryMake(from, out region);
    }
}
