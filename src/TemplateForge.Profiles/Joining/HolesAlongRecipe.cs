using System.Collections.Immutable;
using TemplateForge.Fabrication;
using TemplateForge.Geometry;
using TemplateForge.Notation;

namespace TemplateForge.Profiles;

/// <summary>Equal round holes in a row along an edge.</summary>
/// <param name="Place">Where it stands.</param>
/// <param name="Edge">The edge.</param>
/// <param name="Inset">From the edge to the middle of the row.</param>
/// <param name="ToTheLeft">The side of the edge on which the row runs, as one goes along it.</param>
/// <param name="Diameter">Of the holes.</param>
/// <param name="Pitch">The least from one to the next.</param>
/// <param name="Margin">From both ends of the row to the first and the last.</param>
internal sealed record HolesAlongRecipe(
    Place Place, LineTerm Edge, Term Inset, bool ToTheLeft, Term Diameter, Term Pitch, Term Margin) : ShapeRecipe(Place)
{
    public override bool TryMake(Evaluation from, out Region region)
    {
        region = Region.Empty;
        if (!(from.TryAtLeastZero(Inset, out var inset) & from.TrySize(Diameter, out var diameter)
            & from.TrySize(Pitch, out var pitch) & from.TryAtLeastZero(Margin, out var margin))) return false;
        if (!Edge.TryFind(from, out var run) || !HolesRecipe.IsSound(from, Pitch, pitch, diameter)) return false;
        ImmutableArray<Path> beside = inset <= Tolerance.Length ? [run.Path] : ToTheLeft ? run.Path.OffsetToLeft(inset) : run.Path.OffsetToRight(inset);
        if (beside is not [var row]) return from.Refuse(Wordings.NoRowBeside(Inset.Place, inset));
        if (margin > row.Length / 2) return from.Refuse(Wordings.MarginTooLarge(Margin.Place, margin, row.Length));
        if (row.Length / pitch > Evaluation.MostRepeats) return from.Refuse(Wordings.TooManyRepeats(Pitch.Place, row.Length / pitch));
        region = HolesRecipe.At(HolePattern.Along(row, pitch, margin), diameter);
        return true;
    }
}
