using System.Collections.Immutable;
using System.Diagnostics.CodeAnalysis;
using TemplateForge.Fabrication;
using TemplateForge.Geometry;
using TemplateForge.Notation;

namespace TemplateForge.Profiles;

/// <summary>A flange, and on which edges of the base it stands.</summary>
/// <param name="Place">Where it is written.</param>
/// <param name="At">A point that its edge lies nearest to; none for every edge of the outer outline that is left.</param>
/// <param name="IsRun">Whether it goes on along all edges that follow without a corner.</param>
/// <param name="Folds">What is folded up.</param>
/// <param name="Cuts">How many relief cuts every arc has.</param>
internal sealed record FlangeRecipe(
    Place Place, ImmutableArray<PointTerm> At, bool IsRun, ImmutableArray<Conditional<FoldRecipe>> Folds, ImmutableArray<Term> Cuts)
{
    private const int MostCuts = 100;

    /// <param name="from">The values that are put in.</param>
    /// <param name="sheet">What is folded.</param>
    /// <param name="outline">The base.</param>
    /// <param name="free">Its edges that have no flange yet; those of this one are taken out.</param>
    /// <param name="flange">The flange.</param>
    public bool TryMake(Evaluation from, FoldedSheet sheet, Region outline, HashSet<Segment> free, [MaybeNullWhen(false)] out Flange flange)
    {
        flange = null;
        var cuts = 0;
        if (!(FoldRecipe.TryMany(from, sheet, Folds, out var folds) & (Cuts.IsEmpty || from.TryCount(Cuts[0], MostCuts, out cuts, least: 0)))) return false;
        ImmutableArray<Segment> edges;
        if (At.IsEmpty) edges = [.. outline.Contours.Where(c => c.IsCounterClockwise).SelectMany(c => c.Segments).Where(free.Contains)];
        else if (!from.TryPoint(At[0], out var at)) return false;
        else edges = EdgesAt(outline, at);
        if (edges.IsEmpty) return from.Refuse(Wordings.NoEdgeLeft(Place));
        if (!edges.All(free.Contains)) return from.Refuse(Wordings.EdgeHasAFlange(At[0].Place));
        free.ExceptWith(edges);
        flange = new Flange(edges, folds) { ReliefCuts = cuts };
        return true;
    }

    private ImmutableArray<Segment> EdgesAt(Region outline, Point at)
    {
        var (contour, nearest) = outline.Contours.SelectMany(c => c.Segments.Select(s => (Contour: c, Segment: s))).MinBy(s => s.Segment.DistanceTo(at));
        return IsRun ? FlangedSheet.RunAlong(contour, nearest) : [nearest];
    }
}
