using System.Collections.Immutable;
using System.Diagnostics.CodeAnalysis;
using TemplateForge.Fabrication;

namespace TemplateForge.Profiles;

/// <summary>What all bends of a section or of a flanged sheet have in common.</summary>
internal sealed record BentSheetRecipe
{
    public required Term Thickness { get; init; }
    public required Term InsideRadius { get; init; }
    public required string Rule { get; init; }
    public required ImmutableArray<Term> KFactor { get; init; }
    public required Chosen<Material> Material { get; init; }

    /// <summary>The shop's; the first is the one that is used.</summary>
    public required ImmutableArray<Brake> Brakes { get; init; }
    public required Term Springback { get; init; }
    public required string Measured { get; init; }

    public bool TryMake(Evaluation from, [MaybeNullWhen(false)] out FoldedSheet sheet)
    {
        sheet = null;
        if (!(from.TrySize(Thickness, out var thickness)
            & from.TryAtLeastZero(InsideRadius, out var radius)
            & from.TryPick(Material, out var material)
            & from.TryWithin(Springback, 0.3, 1, out var springback))) return false;
        var factor = material!.NeutralLine;
        if (!KFactor.IsEmpty && !from.TryWithin(KFactor[0], 0, 0.5, out factor)) return false;
        var measured = Measured switch { "inside" => MeasuredBy.Inside, "mould_line" => MeasuredBy.MouldLine, _ => MeasuredBy.Outside };
        sheet = new(thickness, radius, BendRules.Of(Rule, factor), measured)
        {
            Material = material,
            Brakes = Brakes,
            Springback = new(springback, springback < 1 ? "the profile" : "not stated"),
        };
        return true;
    }
}

/// <summary>A sheet that is to be folded. Lengths in mm.</summary>
internal sealed record FoldedSheet(double Thickness, double InsideRadius, BendRule Rule, MeasuredBy Measured)
{
    public required Material Material { get; init; }

    /// <summary>The shop's; the first is the one that is used.</summary>
    public required ImmutableArray<Brake> Brakes { get; init; }
    public required Springback Springback { get; init; }

    /// <summary>Which rule was used: a blank that does not come out is put right there.</summary>
    public string Note => $"Flat lengths by {Rule.Name} ({Rule.Source}).";
}
