using System.Collections.Immutable;
using System.Diagnostics.CodeAnalysis;
using TemplateForge.Fabrication;
using TemplateForge.Geometry;
using TemplateForge.Notation;

namespace TemplateForge.Profiles;

/// <summary>A round tube with its ends and holes.</summary>
internal sealed record TubeRecipe(WrapCommon Common, Term Diameter, Term Wall, Term Length) : WrapRecipe(Common)
{
    public required Chosen<TubeEndRecipe> Lower { get; init; }
    public required Chosen<TubeEndRecipe> Upper { get; init; }
    public required ImmutableArray<Conditional<TubeHoleRecipe>> Holes { get; init; }
    public required ImmutableArray<Conditional<TubeHoleRecipe>> Footprints { get; init; }

    /// <summary>Whether it is rolled from sheet as thick as its wall.</summary>
    public required bool IsRolled { get; init; }

    public override bool TryMake(Evaluation from, [MaybeNullWhen(false)] out WrapPattern pattern)
    {
        pattern = null;
        if (!(Common.TryMake(from, out var common) & from.TrySize(Diameter, out var diameter) & from.TryAtLeastZero(Wall, out var wall) & from.TrySize(Length, out var length)))
            return false;
        if (2 * wall >= diameter - Tolerance.Length) return from.Refuse(Wordings.TubeIsNotHollow(Wall.Place, wall, diameter));
        if (!(TryEnd(Lower, out var lower) & TryEnd(Upper, out var upper)
            & from.TryMany(Holes, (TubeHoleRecipe h, out TubeHole hole) => h.TryMake(from, out hole), out var holes)
            & from.TryMany(Footprints, (TubeHoleRecipe f, out (string, TubeHole) print) => TryFootprint(f, out print), out var footprints))) return false;
        var tube = new TubeWrap(diameter, wall, length, lower, upper, new(IsRolled, IsRolled ? wall : common.Paper))
        {
            Seam = common.Seam,
            Lap = common.Lap,
            Divisions = common.Divisions,
            Holes = holes,
            Footprints = footprints,
        };
        if (common.Lap > tube.Girth / 2) return from.Refuse(Wordings.LapTooWide(Common.Lap.Place, common.Lap, tube.Girth / 2));
        return tube.TryLayFlat(out pattern, out var fault) || from.Refuse(Wordings.WrapFault(Common.Place, fault, tube.Shortest));

        bool TryEnd(Chosen<TubeEndRecipe> chosen, out TubeEnd end)
        {
            end = new SquareCut();
            return from.TryPick(chosen, out var recipe) && recipe.TryMake(from, diameter, out end);
        }

        bool TryFootprint(TubeHoleRecipe recipe, out (string, TubeHole) print)
        {
            var made = recipe.TryMake(from, out var outline);
            print = (recipe.Label, outline);
            return made;
        }
    }
}

/// <summary>How a tube ends.</summary>
internal abstract record TubeEndRecipe
{
    /// <param name="from">The values that are put in.</param>
    /// <param name="diameter">Outside diameter of the tube.</param>
    /// <param name="end">The end.</param>
    public abstract bool TryMake(Evaluation from, double diameter, out TubeEnd end);
}

internal sealed record SquareRecipe : TubeEndRecipe
{
    public override bool TryMake(Evaluation from, double diameter, out TubeEnd end)
    {
        end = new SquareCut();
        return true;
    }
}

internal sealed record MitreRecipe(Term Mitre, Term Turned) : TubeEndRecipe
{
    public override bool TryMake(Evaluation from, double diameter, out TubeEnd end)
    {
        end = new SquareCut();
        var most = Fabrication.Mitre.Steepest.Degrees;
        if (!(from.TryAngle(Mitre, out var angle) & from.TryAngle(Turned, out var turned))) return false;
        if (angle.Degrees < -1e-9 || angle.Degrees > most + 1e-9) return from.Refuse(Wordings.AngleBetweenWanted(Mitre.Place, angle.Degrees, 0, most));
        end = new Mitre(Angle.FromDegrees(Math.Clamp(angle.Degrees, 0, most)), turned);
        return true;
    }
}

internal sealed record FishMouthRecipe(Place Place, Term Other, Term Between, Term Offset, Term Turned) : TubeEndRecipe
{
    public override bool TryMake(Evaluation from, double diameter, out TubeEnd end)
    {
        end = new SquareCut();
        if (!(from.TrySize(Other, out var other) & from.TryAngle(Between, out var angle) & from.TryLength(Offset, out var offset) & from.TryAngle(Turned, out var turned))) return false;
        var (least, most) = FishMouth.Angles;
        if (angle.Degrees < least.Degrees - 1e-9 || angle.Degrees > most.Degrees + 1e-9)
            return from.Refuse(Wordings.AngleBetweenWanted(Between.Place, angle.Degrees, least.Degrees, most.Degrees));
        var mouth = new FishMouth(other / 2, angle, offset, turned);
        end = mouth;
        return mouth.Takes(diameter / 2) || from.Refuse(Wordings.StandsOutPastTheOther(Place, diameter, offset, other));
    }
}

/// <summary>A hole in a tube, or where something stands on it.</summary>
internal sealed record TubeHoleRecipe(Place Place, string Label, Term Diameter, Term Along, Term Round, Term Between, Term Offset)
{
    public bool TryMake(Evaluation from, out TubeHole hole)
    {
        hole = new(1, 0, Angle.Zero, Angle.QuarterTurn, 0);
        if (!(from.TrySize(Diameter, out var diameter) & from.TryLength(Along, out var along) & from.TryAngle(Round, out var round)
            & from.TryAngle(Between, out var angle) & from.TryLength(Offset, out var offset))) return false;
        var (least, most) = FishMouth.Angles;
        hole = new(diameter, along, round, angle, offset);
        return (angle.Degrees >= least.Degrees - 1e-9 && angle.Degrees <= most.Degrees + 1e-9)
            || from.Refuse(Wordings.AngleBetweenWanted(Between.Place, angle.Degrees, least.Degrees, most.Degrees));
    }
}
