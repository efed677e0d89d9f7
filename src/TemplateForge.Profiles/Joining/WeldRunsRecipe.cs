using System.Collections.Immutable;
using TemplateForge.Fabrication;

namespace TemplateForge.Profiles;

/// <summary>A seam that is welded in short runs.</summary>
/// <param name="Seam">Where it goes.</param>
/// <param name="RunLength">The longest run.</param>
/// <param name="Order">In which order they are laid.</param>
/// <param name="MostApart">The most between its tacks, where runs go from tack to tack; none where they do not.</param>
internal sealed record WeldRunsRecipe(SeamRecipe Seam, Term RunLength, WeldOrder Order, ImmutableArray<Term> MostApart)
{
    public bool TryMake(Evaluation from, out WeldSeam seam)
    {
        seam = null!;
        var apart = 0.0;
        var sound = from.TrySize(RunLength, out var longest);
        if (!MostApart.IsEmpty) sound &= from.TrySize(MostApart[0], out apart);
        if (!sound || !Seam.TryFind(from, outline => outline.Length, path => path.Length, out var length)) return false;
        if (!IsFew(RunLength, longest) || (apart > 0 && !IsFew(MostApart[0], apart))) return false;
        return Seam.TryFind(
            from,
            outline => WeldPlan.Round(outline, longest, Order, apart),
            path => WeldPlan.Along(path, longest, Order, apart),
            out seam);

        bool IsFew(Term term, double each) =>
            length / each <= Evaluation.MostRepeats || from.Refuse(Wordings.TooManyRepeats(term.Place, length / each));
    }

    /// <summary>The same seams with numbers that go on from one to the next.</summary>
    public static ImmutableArray<WeldSeam> NumberedOn(ImmutableArray<WeldSeam> seams)
    {
        var before = 0;
        var numbered = ImmutableArray.CreateBuilder<WeldSeam>();
        foreach (var seam in seams)
        {
            numbered.Add(seam with { Runs = [.. seam.Runs.Select(r => r with { Number = r.Number + before })] });
            before += seam.Runs.Length;
        }
        return numbered.ToImmutable();
    }
}
