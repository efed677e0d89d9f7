using System.Collections.Immutable;
using System.Diagnostics.CodeAnalysis;
using TemplateForge.Fabrication;
using TemplateForge.Notation;

namespace TemplateForge.Profiles;

/// <summary>How a flanged sheet is made from values, and laid flat.</summary>
internal sealed record FlangedRecipe
{
    public required Place Place { get; init; }
    public required ShapeName Base { get; init; }
    public required BentSheetRecipe Sheet { get; init; }
    public required CornerJoint Corners { get; init; }
    public required CornerRelief Relief { get; init; }
    public required ImmutableArray<Term> ReliefSize { get; init; }
    public required Term Gap { get; init; }
    public required ImmutableArray<Conditional<FlangeRecipe>> Flanges { get; init; }

    public bool TryMake(Evaluation from, [MaybeNullWhen(false)] out BentFlanges bent)
    {
        bent = null;
        if (!(from.TryShape(Base, out var outline) & Sheet.TryMake(from, out var sheet) & from.TryAtLeastZero(Gap, out var gap))) return false;
        var size = FlangedSheet.LeastRelief(sheet!.Thickness);
        if (!ReliefSize.IsEmpty && !from.TrySize(ReliefSize[0], out size)) return false;
        if (outline.IsEmpty) return from.Refuse(Wordings.ShapeIsEmpty(Base));

        var free = outline.Contours.SelectMany(c => c.Segments).ToHashSet();
        var recipes = new List<(FlangeRecipe Recipe, Flange Flange)>();
        foreach (var recipe in Flanges)
        {
            if (!from.TryHolds(recipe.When, out var holds)) return false;
            if (!holds) continue;
            if (!recipe.Thing.TryMake(from, sheet, outline, free, out var flange)) return false;
            if (flange.Folds.IsEmpty) continue;
            recipes.Add((recipe.Thing, flange));
        }
        if (recipes.Count == 0) return from.Refuse(Wordings.NoFlangeLeft(Place));
        var flanged = new FlangedSheet(outline, sheet.Thickness, sheet.Measured, recipes.Select(r => r.Flange))
        {
            Corners = Corners,
            Relief = Relief,
            ReliefSize = size,
            Gap = gap,
        };
        if (!FlangedBlank.TryLayFlat(flanged, out var blank, out var faults))
        {
            foreach (var fault in faults.DistinctBy(f => (f.Kind, f.Flange))) from.Refuse(Wordings.FlangeFault(recipes[fault.Flange].Recipe.Place, fault));
            return false;
        }
        bent = new(blank, sheet);
        return true;
    }
}

/// <summary>A flanged sheet, called by its name.</summary>
internal sealed record FlangedName(string Name, Place Place);
