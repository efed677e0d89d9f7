using System.Collections.Immutable;
using TemplateForge.Fabrication;

namespace TemplateForge.Profiles;

/// <summary>Where a piece is tacked, and in which order.</summary>
/// <param name="Pitch">From tack to tack.</param>
internal abstract record TackRecipe(Term Pitch)
{
    public abstract bool TryMake(Evaluation from, out ImmutableArray<Tack> tacks);

    protected bool IsNotTooMany(Evaluation from, double length, double pitch) =>
        length / pitch <= Evaluation.MostRepeats || from.Refuse(Wordings.TooManyRepeats(Pitch.Place, length / pitch));
}

/// <summary>Round an outline.</summary>
/// <param name="Round">The shape whose outline is tacked.</param>
/// <param name="Pitch">From tack to tack.</param>
/// <param name="Quartered">Quartered like a clock with no more than the pitch between neighbours, or just as near to the pitch as
/// may be, as holes along the same outline are.</param>
internal sealed record TacksRound(ShapeName Round, Term Pitch, bool Quartered) : TackRecipe(Pitch)
{
    public override bool TryMake(Evaluation from, out ImmutableArray<Tack> tacks)
    {
        tacks = [];
        if (!from.TryOutline(Round, out var outline) || !from.TrySize(Pitch, out var pitch)) return false;
        if (!IsNotTooMany(from, outline.Length, pitch)) return false;
        tacks = Quartered
            ? TackPlan.Quartered(outline, pitch)
            : TackPlan.Numbered(EvenSpacing.FromTheTop(outline, EvenSpacing.CountNearest(outline, pitch)));
        return true;
    }
}

/// <summary>Along a seam: its ends, its middle, then halving.</summary>
internal sealed record TacksAlong(LineTerm Seam, Term Pitch) : TackRecipe(Pitch)
{
    public override bool TryMake(Evaluation from, out ImmutableArray<Tack> tacks)
    {
        tacks = [];
        if (!from.TrySize(Pitch, out var pitch) || !Seam.TryFind(from, out var seam)) return false;
        if (!IsNotTooMany(from, seam.Length, pitch)) return false;
        var parts = TackPlan.GapsOfStrip(seam.Length, pitch);
        tacks = TackPlan.OfStrip([.. Enumerable.Range(0, parts + 1).Select(i => seam.At(seam.Length * i / parts))]);
        return true;
    }
}
