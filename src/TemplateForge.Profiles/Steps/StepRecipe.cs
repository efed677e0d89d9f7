using System.Collections.Immutable;
using TemplateForge.Fabrication;
using TemplateForge.Notation;
using TemplateForge.Shop;

namespace TemplateForge.Profiles;

/// <summary>One step of the work.</summary>
/// <param name="Text">What is done, or checked.</param>
/// <param name="IsHold">Whether the work stops here until somebody has signed.</param>
/// <param name="Cautions">Names of the cautions that bite here.</param>
internal sealed record StepRecipe(Chosen<FilledText> Text, bool IsHold, ImmutableArray<string> Cautions)
{
    public bool TryMake(Evaluation from, ShopTables shop, out WorkStep step)
    {
        var found = from.TryChosenText(Text, out var text);
        step = new(text, IsHold, [.. Cautions.Select(name => shop.Cautions[name])]);
        return found;
    }
}
