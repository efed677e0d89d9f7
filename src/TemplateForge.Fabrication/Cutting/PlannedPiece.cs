using System.Globalization;

namespace TemplateForge.Fabrication;

/// <summary>A piece with the plan of its cutting, and what a foreman would say of that.</summary>
public static class PlannedPiece
{
    /// <summary>Metal that stays in an inside corner is a foreman's business from here on, in mm; less goes with the burr.</summary>
    public const double LeastCornerToWarnOf = 1;

    private const string Source = "worked out from the cutter's own figures";

    /// <summary>Plans the cutting and adds what cannot be cut as drawn to the piece's warnings.</summary>
    /// <param name="piece">Any but paper.</param>
    /// <param name="cutter">What cuts it.</param>
    /// <param name="kerf">Width of its slot in mm, 0 or more.</param>
    /// <param name="isGiven">Whether the kerf was given for this job.</param>
    /// <param name="runOut">How far an open cut begins and ends past the panel's edge, in mm, more than 0.</param>
    public static Piece CutBy(this Piece piece, Cutter cutter, double kerf, bool isGiven, double runOut)
    {
        var plan = CutPlan.Of(piece, cutter, kerf, runOut) with { KerfIsGiven = isGiven };
        return piece with { Planned = plan, Warnings = [.. piece.Warnings, .. plan.Troubles.SelectMany(t => WarningsOf(t, plan))] };
    }

    private static IEnumerable<Warning> WarningsOf(CutTrouble trouble, CutPlan plan)
    {
        var size = trouble.Size.ToString("0.##", CultureInfo.InvariantCulture);
        var half = (plan.Kerf / 2).ToString("0.##", CultureInfo.InvariantCulture);
        if (trouble.Kind == CutTroubleKind.NotReached && trouble.Size < LeastCornerToWarnOf) yield break;
        var (rule, text) = trouble.Kind switch
        {
            CutTroubleKind.NotReached => ("corner not reached", $"the cut leaves a radius of {half} mm and metal up to {size} mm deep; file it out, or draw a larger radius"),
            CutTroubleKind.HoleTooNarrow => ("narrower than the kerf", $"nothing is cut here with a kerf of {size} mm; drill it, or take another tool"),
            CutTroubleKind.NoRoomToPierce => ("no room to pierce", "there is no place in the waste to begin, so this is not cut; shorten least_lead in the shop's table, or take another tool"),
            CutTroubleKind.NoRoomForTab => ("no room for a tab", $"a tab of {size} mm is left out here; ask for it elsewhere"),
            CutTroubleKind.NoRoomForStopHole => ("no room for a stop hole", $"a stop hole of {size} mm does not fit into this corner; take a smaller one"),
            CutTroubleKind.NarrowerThanTheProcessLikes => ("narrow opening", $"it is narrower than {size} mm, the least hole that the {plan.Cutter.Title} cuts well in this sheet"),
            _ => ("run-out touches", "where the cut runs on or off past the panel's edge its slot comes into the part; begin it by hand"),
        };
        yield return new(rule, text, trouble.At, Source);
    }
}
