using System.Collections.Immutable;
using System.Diagnostics.CodeAnalysis;
using TemplateForge.Fabrication;
using TemplateForge.Notation;

namespace TemplateForge.Profiles;

/// <summary>How a bent section is made from values, and laid flat.</summary>
internal sealed record SectionRecipe(Place Place, BentSheetRecipe Sheet, Term FirstLeg, ImmutableArray<Conditional<FoldRecipe>> Folds)
{
    public bool TryMake(Evaluation from, [MaybeNullWhen(false)] out BentSection section)
    {
        section = null;
        if (!(Sheet.TryMake(from, out var sheet) & from.TrySize(FirstLeg, out var first))) return false;
        if (!FoldRecipe.TryMany(from, sheet!, Folds, out var folds)) return false;
        var bent = new Section(sheet!.Thickness, new(first, sheet.Measured), folds);
        foreach (var leg in bent.TooShort) from.Refuse(Wordings.LegTooShort(Place, leg, bent.Straights[leg - 1]));
        if (!bent.TryUnfold(out var flat)) return false;
        section = new(flat, sheet);
        return true;
    }
}

/// <summary>A bent section, called by its name.</summary>
internal sealed record SectionName(string Name, Place Place);
