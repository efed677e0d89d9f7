using System.Collections.Immutable;
using TemplateForge.Notation;

namespace TemplateForge.Profiles;

/// <summary>What must hold, and the sentence that the fabricator reads when it does not.</summary>
internal sealed record Rule(Place Place, ImmutableArray<Term> When, Term Must, Chosen<FilledText> Say, Chosen<FilledText> Remedy)
{
    /// <summary>Whether the rule holds, or does not apply; a rule that is broken has been complained of.</summary>
    public bool IsKept(Evaluation from)
    {
        if (!from.TryHolds(When, out var applies)) return false;
        if (!applies) return true;
        if (!from.TryTruth(Must, out var kept)) return false;
        if (kept) return true;
        return from.TryChosenText(Say, out var problem) && from.TryChosenText(Remedy, out var remedy) && from.Refuse(Place.Complain(problem, remedy));
    }
}
