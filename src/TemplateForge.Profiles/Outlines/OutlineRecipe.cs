using System.Collections.Immutable;
using System.Diagnostics.CodeAnalysis;
using TemplateForge.Geometry;
using TemplateForge.Notation;

namespace TemplateForge.Profiles;

/// <summary>An outline drawn line by line and arc by arc, closed by a straight line where it does not come back by itself; then its
/// corners are rounded and chamfered where a step says so.</summary>
internal sealed record OutlineRecipe(Place Place, PointTerm Start, CornerTerm AtStart, ImmutableArray<OutlineStep> Steps) : ShapeRecipe(Place)
{
    public override bool TryMake(Evaluation from, out Region region)
    {
        region = Region.Empty;
        if (!from.TryPoint(Start, out var start)) return false;
        var pen = new Pen(start);
        var (rounded, chamfered) = (new List<CutCorner>(), new List<CutCorner>());
        if (!TryCorner(AtStart, start)) return false;
        foreach (var step in Steps)
        {
            if (!step.TryDraw(from, pen) || !TryCorner(step.Corner, pen.At)) return false;
        }
        pen.Close();
        if (pen.Segments.Count < 2) return from.Refuse(Wordings.OutlineWithoutArea(Place));
        region = Region.FromContours([new Contour(pen.Segments)]);
        if (region.IsEmpty) return from.Refuse(Wordings.OutlineWithoutArea(Place));
        return TryRound(from, rounded, ref region) && TryChamfer(from, chamfered, ref region);

        bool TryCorner(CornerTerm corner, Point at)
        {
            foreach (var (terms, cuts) in new[] { (corner.Fillet, rounded), (corner.Chamfer, chamfered) })
            {
                if (terms.IsEmpty) continue;
                if (!from.TryLength(terms[0], out var size)) return false;
                if (size < 0) return from.Refuse(Wordings.SizeNotPositive(terms[0].Place, size));
                // A size of 0 leaves the corner sharp, so that a parameter may begin there.
                if (size > Tolerance.Length) cuts.Add(new(at, size, terms[0]));
            }
            return true;
        }
    }

    // Corners of one size together, so that two that share a side are told the largest that fits both.
    private static bool TryRound(Evaluation from, List<CutCorner> corners, ref Region region)
    {
        foreach (var alike in corners.GroupBy(c => c.Size))
        {
            if (!AreCorners(from, alike, region)) return false;
            var rounding = region.RoundedCorners(alike.Key, at => alike.Any(c => c.IsAt(at)));
            foreach (var unfit in rounding.Unfit)
                from.Refuse(Wordings.RoundingDoesNotFit(alike.First(c => c.IsAt(unfit.At)).Term, alike.Key, unfit));
            if (!rounding.Unfit.IsEmpty) return false;
            region = rounding.Region;
        }
        return true;
    }

    private static bool TryChamfer(Evaluation from, List<CutCorner> corners, ref Region region)
    {
        foreach (var alike in corners.GroupBy(c => c.Size))
        {
            if (!AreCorners(from, alike, region)) return false;
            var chamfering = region.ChamferedCorners(alike.Key, at => alike.Any(c => c.IsAt(at)));
            foreach (var unfit in chamfering.Unfit)
                from.Refuse(Wordings.ChamferDoesNotFit(alike.First(c => c.IsAt(unfit.At)).Term, alike.Key, unfit));
            if (!chamfering.Unfit.IsEmpty) return false;
            region = chamfering.Region;
        }
        return true;
    }

    private static bool AreCorners(Evaluation from, IEnumerable<CutCorner> cuts, Region region)
    {
        var (corners, sound) = (region.Corners(), true);
        foreach (var cut in cuts.Where(c => !corners.Any(c.IsAt))) sound = from.Refuse(Wordings.NoCornerThere(cut.Term.Place, cut.At));
        return sound;
    }

    private sealed record CutCorner(Point At, double Size, Term Term)
    {
        public bool IsAt(Point point) => point.DistanceTo(At) <= 10 * Tolerance.Length;
    }
}

/// <summary>An open run drawn line by line and arc by arc.</summary>
internal sealed record PathRecipe(Place Place, PointTerm Start, ImmutableArray<OutlineStep> Steps)
{
    public bool TryMake(Evaluation from, [MaybeNullWhen(false)] out Path path)
    {
        path = null;
        if (!from.TryPoint(Start, out var start)) return false;
        var pen = new Pen(start);
        if (!Steps.All(step => step.TryDraw(from, pen))) return false;
        path = new Path(pen.Segments);
        return from.IsWithinReach(path.Bounds.Min, Place) && from.IsWithinReach(path.Bounds.Max, Place);
    }
}
