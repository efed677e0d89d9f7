using System.Collections.Immutable;
using System.Diagnostics.CodeAnalysis;
using TemplateForge.Fabrication;
using TemplateForge.Geometry;
using TemplateForge.Notation;

namespace TemplateForge.Profiles;

/// <summary>How a transition is made from values, and laid flat.</summary>
internal sealed record TransitionRecipe
{
    private const int MostParts = 12;
    private const int MostDivisions = 30;

    public required Place Place { get; init; }
    public required TransitionEndRecipe Lower { get; init; }
    public required TransitionEndRecipe Upper { get; init; }
    public required Term Thickness { get; init; }
    public required Chosen<Material> Material { get; init; }
    public required string Measured { get; init; }
    public required bool IsPressed { get; init; }
    public required Term Divisions { get; init; }
    public required ImmutableArray<PointTerm> SeamAt { get; init; }
    public required Term Parts { get; init; }

    /// <summary>The sheet that each part must fit; none where the parts are counted.</summary>
    public required ImmutableArray<(Term Length, Term Width)> Fits { get; init; }
    public required Term Lap { get; init; }
    public required Term LowerLap { get; init; }
    public required Term UpperLap { get; init; }

    public bool TryMake(Evaluation from, [MaybeNullWhen(false)] out BentTransition bent)
    {
        bent = null;
        if (!(from.TrySize(Thickness, out var thickness)
            & from.TryPick(Material, out var material)
            & from.TryCount(Divisions, MostDivisions, out var divisions)
            & from.TryCount(Parts, MostParts, out var parts)
            & from.TryAtLeastZero(Lap, out var lap)
            & from.TryAtLeastZero(LowerLap, out var lowerLap)
            & from.TryAtLeastZero(UpperLap, out var upperLap))) return false;
        var outwards = Measured switch { "inside" => thickness / 2, "middle" => 0, _ => -thickness / 2 };
        if (!(Lower.TryMake(from, outwards, out var lower) & Upper.TryMake(from, outwards, out var upper))) return false;
        if (lower!.IsClosed != upper!.IsClosed) return from.Refuse(Wordings.OneEndCloses(Upper.Outline.Place, Lower.Outline.Name, Upper.Outline.Name));
        Point seam = default;
        if (!SeamAt.IsEmpty && !from.TryPoint(SeamAt[0], out seam)) return false;
        if (!SeamAt.IsEmpty && !lower.IsClosed) return from.Refuse(Wordings.NoSeamToPlace(SeamAt[0].Place));
        var transition = new Transition(lower, upper)
        {
            Work = IsPressed ? TransitionWork.Pressed : TransitionWork.Rolled,
            Divisions = divisions,
            SeamAt = SeamAt.IsEmpty ? [] : [seam],
            Parts = parts,
            Lap = lap,
            LowerLap = lowerLap,
            UpperLap = upperLap,
        };
        if (!TryLayFlat(from, transition, out var pattern)) return false;
        bent = new(pattern, new FoldedSheet(thickness, 0, new KFactorRule(0.5), MeasuredBy.MouldLine)
        {
            Material = material!,
            Brakes = [],
            Springback = Springback.Unstated,
        });
        return true;
    }

    private bool TryLayFlat(Evaluation from, Transition transition, [MaybeNullWhen(false)] out TransitionPattern pattern)
    {
        if (Fits.IsEmpty) return TransitionPattern.TryLayFlat(transition, out pattern, out var fault) || from.Refuse(Wordings.TransitionFault(Place, fault));
        pattern = null;
        if (!(from.TrySize(Fits[0].Length, out var length) & from.TrySize(Fits[0].Width, out var width))) return false;
        for (var parts = 1; parts <= MostParts; parts++)
        {
            if (!TransitionPattern.TryLayFlat(transition with { Parts = parts }, out pattern, out var fault))
            {
                // More parts may lie beside themselves what one laid over itself.
                if (fault == Fabrication.TransitionFault.LiesOverItself) continue;
                return from.Refuse(Wordings.TransitionFault(Place, fault));
            }
            if (pattern.Parts.All(part => part.FitsOn(length, width))) return true;
        }
        return from.Refuse(Wordings.FitsNoSheet(Fits[0].Length.Place, length, width, MostParts));
    }
}

/// <summary>A transition, called by its name.</summary>
internal sealed record TransitionName(string Name, Place Place);
