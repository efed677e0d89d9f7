using System.Collections.Immutable;
using TemplateForge.Fabrication;
using TemplateForge.Geometry;
using TemplateForge.Notation;

namespace TemplateForge.Profiles;

/// <summary>How a fold is made.</summary>
internal abstract record FoldRecipe(Place Place, bool IsUp)
{
    protected BendWay Way => IsUp ? BendWay.Up : BendWay.Down;

    public const int MostInARow = 40;

    public abstract bool TryMake(Evaluation from, FoldedSheet sheet, out ImmutableArray<Fold> folds);

    /// <summary>The folds that are there now, one after the other.</summary>
    public static bool TryMany(Evaluation from, FoldedSheet sheet, ImmutableArray<Conditional<FoldRecipe>> recipes, out ImmutableArray<Fold> folds)
    {
        var sound = from.TryMany(recipes, (FoldRecipe recipe, out ImmutableArray<Fold> made) => recipe.TryMake(from, sheet, out made), out var found);
        folds = [.. found.SelectMany(f => f)];
        return sound;
    }

    /// <summary>Whether the section's rule says anything of a bend through this angle; complains where it does not.</summary>
    protected static bool IsCovered(Evaluation from, FoldedSheet sheet, Place place, Angle angle) =>
        sheet.Rule.Covers(angle) || from.Refuse(Wordings.RuleDoesNotCover(place, sheet.Rule, angle));
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
        if (!IsCovered(from, sheet, Turned.Place, angle)) return false;
        folds = [new(new(angle, radius, sheet.Thickness, sheet.Rule), Way, new(leg, sheet.Measured))];
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
        if (!IsCovered(from, sheet, Turned.Place, angle)) return false;
        folds = new Joggle(depth, new(angle, sheet.InsideRadius, sheet.Thickness, sheet.Rule)).Folds(Way, new(leg, MeasuredBy.TangentLine));
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
        if (!IsCovered(from, sheet, Place, Angle.HalfTurn)) return false;
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
        if (!IsCovered(from, sheet, Turned.Place, angle)) return false;
        folds = Hem.Rolled(angle, radius, sheet.Thickness, Way, sheet.Rule);
        return true;
    }
}
