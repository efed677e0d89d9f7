using System.Collections.Immutable;
using TemplateForge.Fabrication;
using TemplateForge.Geometry;

namespace TemplateForge.Profiles;

/// <summary>A number at every part of a shape, as at the holes of plug welds: from their middle, then each far from those before it.</summary>
internal sealed record TacksAtHoles(ShapeName Holes, Term Pitch) : TackRecipe(Pitch)
{
    public override bool TryMake(Evaluation from, out ImmutableArray<Tack> tacks)
    {
        tacks = [];
        if (!from.TryShape(Holes, out var holes)) return false;
        if (holes.IsEmpty) return from.Refuse(Wordings.ShapeIsEmpty(Holes));
        if (holes.Contours.Length > Evaluation.MostRepeats) return from.Refuse(Wordings.TooManyRepeats(Holes.Place, holes.Contours.Length));
        tacks = TackPlan.FromTheMiddle([.. holes.Contours.Where(c => c.IsCounterClockwise).Select(c => c.TryAsCircle(out var centre, out _) ? centre : c.Bounds.Centre)]);
        return true;
    }
}

/// <summary>Several seams one after the other, their numbers going on.</summary>
internal sealed record TacksOfSeams(ImmutableArray<Conditional<TackRecipe>> Seams, Term Pitch) : TackRecipe(Pitch)
{
    public override bool TryMake(Evaluation from, out ImmutableArray<Tack> tacks)
    {
        var made = from.TryMany(Seams, (TackRecipe seam, out ImmutableArray<Tack> own) => seam.TryMake(from, out own), out var all);
        tacks = [.. all.SelectMany(t => t).Select((tack, i) => tack with { Number = i + 1 })];
        return made;
    }
}
