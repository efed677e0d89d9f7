using System.Collections.Immutable;
using System.Diagnostics.CodeAnalysis;
using TemplateForge.Fabrication;
using TemplateForge.Geometry;
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

/// <summary>What all folds of a section have in common.</summary>
internal sealed record FoldedSheet(double Thickness, double InsideRadius, BendRule Rule, MeasuredBy Measured);

/// <summary>How a fold is made.</summary>
internal abstract record FoldRecipe(Place Place, bool IsUp)
{
    protected BendWay Way => IsUp ? BendWay.Up : BendWay.Down;

    public abstract bool TryMake(Evaluation from, FoldedSheet sheet, out ImmutableArray<Fold> folds);

    /// <summary>A bend by the section's rule; complains where the rule says nothing of so much.</summary>
    protected static bool TryBend(Evaluation from, FoldedSheet sheet, Place place, Angle angle, double radius, [MaybeNullWhen(false)] out Bend bend)
    {
        bend = null;
        if (!sheet.Rule.Covers(angle)) return from.Refuse(Wordings.RuleDoesNotCover(place, sheet.Rule, angle));
        bend = new(angle, radius, sheet.Thickness, sheet.Rule);
        return true;
    }
}

/// <summary>A bend, and the leg after it.</summary>
internal sealed record BendRecipe(Place Place, bool IsUp, Term Turned, ImmutableArray<Term> InsideRadius, Term Leg) : FoldRecipe(Place, IsUp)
{
    public override bool TryMake(Evaluation from, FoldedSheet sheet, out ImmutableArray<Fold> folds)
    {
        folds = [];
        var radius = sheet.InsideRadius;
        if (!(from.TryTurn(Turned, 0, 180, out var angle)
            & from.TrySize(Leg, out var leg)
            & (InsideRadius.IsEmpty || from.TryAtLeastZero(InsideRadius[0], out radius)))) return false;
        if (sheet.Measured == MeasuredBy.MouldLine && angle.Degrees > 179) return from.Refuse(Wordings.NoMouldLine(Turned.Place));
        if (!TryBend(from, sheet, Turned.Place, angle, radius, out var bend)) return false;
        folds = [new(bend, Way, new(leg, sheet.Measured))];
        return true;
    }
}

/// <summary>A step.</summary>
internal sealed record JoggleRecipe(Place Place, bool IsUp, Term Depth, Term Turned, Term Leg) : FoldRecipe(Place, IsUp)
{
    public override bool TryMake(Evaluation from, FoldedSheet sheet, out ImmutableArray<Fold> folds)
    {
        folds = [];
        if (!(from.TrySize(Depth, out var depth) & from.TryTurn(Turned, 0, 90, out var angle) & from.TrySize(Leg, out var leg))) return false;
        var steepest = Joggle.Steepest(depth, sheet.InsideRadius, sheet.Thickness);
        if (angle > steepest) return from.Refuse(Wordings.JoggleTooSteep(Turned.Place, depth, angle, steepest));
        if (!TryBend(from, sheet, Turned.Place, angle, sheet.InsideRadius, out var bend)) return false;
        folds = new Joggle(depth, bend).Folds(Way, new(leg, MeasuredBy.TangentLine));
        return true;
    }
}

/// <summary>An edge folded flat.</summary>
internal sealed record ClosedHemRecipe(Place Place, bool IsUp, Term Width) : FoldRecipe(Place, IsUp)
{
    public override bool TryMake(Evaluation from, FoldedSheet sheet, out ImmutableArray<Fold> folds)
    {
        folds = [];
        if (!from.TrySize(Width, out var width)) return false;
        folds = Hem.Closed(width, sheet.Thickness, Way);
        return true;
    }
}

/// <summary>An edge folded back with air between.</summary>
internal sealed record OpenHemRecipe(Place Place, bool IsUp, Term Gap, Term Width) : FoldRecipe(Place, IsUp)
{
    public override bool TryMake(Evaluation from, FoldedSheet sheet, out ImmutableArray<Fold> folds)
    {
        folds = [];
        if (!(from.TrySize(Gap, out var gap) & from.TrySize(Width, out var width))) return false;
        if (!sheet.Rule.Covers(Angle.HalfTurn)) return from.Refuse(Wordings.RuleDoesNotCover(Place, sheet.Rule, Angle.HalfTurn));
        folds = Hem.Open(width, gap, sheet.Thickness, Way, sheet.Rule);
        return true;
    }
}

/// <summary>An edge rolled up.</summary>
internal sealed record RolledEdgeRecipe(Place Place, bool IsUp, Term Radius, Term Turned) : FoldRecipe(Place, IsUp)
{
    public override bool TryMake(Evaluation from, FoldedSheet sheet, out ImmutableArray<Fold> folds)
    {
        folds = [];
        if (!(from.TrySize(Radius, out var radius) & from.TryTurn(Turned, 180, 360, out var angle))) return false;
        if (!sheet.Rule.Covers(angle)) return from.Refuse(Wordings.RuleDoesNotCover(Turned.Place, sheet.Rule, angle));
        folds = Hem.Rolled(angle, radius, sheet.Thickness, Way, sheet.Rule);
        return true;
    }
}
