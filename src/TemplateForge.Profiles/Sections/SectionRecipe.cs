using System.Collections.Immutable;
using System.Diagnostics.CodeAnalysis;
using TemplateForge.Fabrication;
using TemplateForge.Notation;

namespace TemplateForge.Profiles;

/// <summary>How a bent section is made from values, and laid flat.</summary>
internal sealed record SectionRecipe
{
    public const int MostFolds = 40;

    public required Place Place { get; init; }
    public required Term Thickness { get; init; }
    public required Term InsideRadius { get; init; }
    public required string Rule { get; init; }
    public required ImmutableArray<Term> KFactor { get; init; }
    public required Chosen<Material> Material { get; init; }

    /// <summary>The shop's; the first is the one that is used.</summary>
    public required ImmutableArray<Brake> Brakes { get; init; }
    public required Term Springback { get; init; }
    public required string Measured { get; init; }
    public required Term FirstLeg { get; init; }
    public required ImmutableArray<FoldRecipe> Folds { get; init; }

    public bool TryMake(Evaluation from, [MaybeNullWhen(false)] out BentSection section)
    {
        section = null;
        if (!(from.TrySize(Thickness, out var thickness)
            & from.TryAtLeastZero(InsideRadius, out var radius)
            & from.TryPick(Material, out var material)
            & from.TryWithin(Springback, 0.3, 1, out var springback)
            & from.TrySize(FirstLeg, out var first))) return false;
        var factor = material!.NeutralLine;
        if (!KFactor.IsEmpty && !from.TryWithin(KFactor[0], 0, 0.5, out factor)) return false;
        var sheet = new FoldedSheet(thickness, radius, BendRules.Of(Rule, factor), Measured switch
        {
            "inside" => MeasuredBy.Inside,
            "mould_line" => MeasuredBy.MouldLine,
            _ => MeasuredBy.Outside,
        });
        var (folds, sound) = (ImmutableArray.CreateBuilder<Fold>(), true);
        foreach (var recipe in Folds)
        {
            if (recipe.TryMake(from, sheet, out var made)) folds.AddRange(made);
            else sound = false;
        }
        if (!sound) return false;
        var bent = new Section(thickness, new(first, sheet.Measured), folds);
        foreach (var leg in bent.TooShort) from.Refuse(Wordings.LegTooShort(Place, leg, bent.Straights[leg - 1]));
        if (!bent.TryUnfold(out var flat)) return false;
        section = new(flat, sheet.Rule, material, Brakes, new Springback(springback, springback < 1 ? "the profile" : "not stated"));
        return true;
    }
}

/// <summary>A bent section, called by its name.</summary>
internal sealed record SectionName(string Name, Place Place);
