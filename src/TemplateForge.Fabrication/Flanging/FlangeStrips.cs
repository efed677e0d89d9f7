using System.Collections.Immutable;
using TemplateForge.Geometry;

namespace TemplateForge.Fabrication;

/// <summary>Every flange of a sheet on its edge, each cut where it meets its neighbours.</summary>
internal static class FlangeStrips
{
    public static bool TryLay(
        FlangedSheet sheet, out ImmutableArray<FlangeStrip> strips, out ImmutableArray<FlangeCorner> corners, out ImmutableArray<FlangeFault> faults)
    {
        var (laid, met, wrong) = (ImmutableArray.CreateBuilder<FlangeStrip>(), ImmutableArray.CreateBuilder<FlangeCorner>(), ImmutableArray.CreateBuilder<FlangeFault>());
        var runs = 0;
        foreach (var contour in sheet.Base.Contours)
        {
            var edges = contour.Segments.Select(s => Turned(sheet, s, wrong)).ToList();
            if (wrong.Count == 0) Lay(sheet, edges, laid, met, wrong, ref runs);
        }
        foreach (var strip in laid.Where(s => !ReliefCuts.HaveRoom(s))) wrong.Add(strip.Fault(FlangeFaultKind.NoRoomForCuts));
        foreach (var strip in laid.Where(s => s.IsPastCentre)) wrong.Add(strip.Fault(FlangeFaultKind.ArcTooTight));
        foreach (var strip in laid.Where(s => !s.HasWidth)) wrong.Add(strip.Fault(FlangeFaultKind.NothingLeft));
        (strips, corners, faults) = (laid.ToImmutable(), met.ToImmutable(), wrong.ToImmutable());
        return faults.IsEmpty;
    }

    private static void Lay(
        FlangedSheet sheet, List<Turned> edges, ImmutableArray<FlangeStrip>.Builder laid, ImmutableArray<FlangeCorner>.Builder met,
        ImmutableArray<FlangeFault>.Builder wrong, ref int runs)
    {
        var (starts, ends) = (new FlangeEnd[edges.Count], new FlangeEnd[edges.Count]);
        var goesOn = new bool[edges.Count];
        for (var i = 0; i < edges.Count; i++)
        {
            var (before, next) = (edges[i], (i + 1) % edges.Count);
            var after = edges[next];
            ends[i] = FlangeEnd.Square(before.Folds);
            starts[next] = FlangeEnd.Square(after.Folds);
            if (before.Folds == 0 || after.Folds == 0)
            {
                var turn = FlangeCorner.TurnOf(before.Edge, after.Edge);
                if (before.Folds > 0) ends[i] = FlangeEnd.Alone(sheet, before.Folded!, turn);
                if (after.Folds > 0) starts[next] = FlangeEnd.Alone(sheet, after.Folded!, turn);
                continue;
            }
            if (FlangeCorner.IsSmooth(before.Edge, after.Edge))
            {
                goesOn[i] = IsSameBend(before, after);
                if (!goesOn[i]) wrong.Add(new(FlangeFaultKind.NeighbourDiffers, after.Index, after.Edge.Side.Start));
                continue;
            }
            var corner = new FlangeCorner(sheet, (before.Edge, before.Folded!), (after.Edge, after.Folded!), before.Index <= after.Index);
            (ends[i], starts[next]) = (corner.EndOfBefore, corner.StartOfAfter);
            met.Add(corner);
        }
        // Counted from an edge that does not go on from the one before, so that a run has one number.
        var first = (Array.FindLastIndex(goesOn, g => !g) + 1) % edges.Count;
        for (var k = 0; k < edges.Count; k++)
        {
            var i = (first + k) % edges.Count;
            var edge = edges[i];
            if (edge.Folds > 0) laid.Add(new(edge.Index, sheet.Flanges[edge.Index], edge.Edge, edge.Folded!, starts[i], ends[i], runs));
            if (!goesOn[i]) runs++;
        }
        runs++;
    }

    // Legs may differ: their ends are then a step.
    private static bool IsSameBend(Turned a, Turned b) =>
        a.Folds == b.Folds && Enumerable.Range(0, a.Folds).All(i => a.Folded!.IsLike(b.Folded!, i));

    private static Turned Turned(FlangedSheet sheet, Segment side, ImmutableArray<FlangeFault>.Builder wrong)
    {
        var (edge, index) = (new BaseEdge(side), sheet.Flanges.TakeWhile(f => !f.Edges.Contains(side)).Count());
        if (index == sheet.Flanges.Length) return new(edge, -1, 0, null);
        var folds = sheet.Flanges[index].Folds;
        if (!side.IsLine && edge.RadiusAt(-sheet.Measured.SetbackOf(folds[0].Bend)) < BaseEdge.LeastRadius)
        {
            wrong.Add(new(FlangeFaultKind.ArcTooTight, index, edge.At(edge.Length / 2, 0)));
            return new(edge, -1, 0, null);
        }
        if (FoldedFlange.TryFold(folds, sheet.Measured, Depth(sheet.Base, edge), out var folded, out var tooShort)) return new(edge, index, folds.Length, folded);
        wrong.Add(new(FlangeFaultKind.LegTooShort, index, edge.At(edge.Length / 2, 0), tooShort.Leg, tooShort.Straight));
        return new(edge, index, 0, null);
    }

    // From the middle of the edge straight in to where the base ends.
    private static double Depth(Region shape, BaseEdge edge)
    {
        var (middle, far) = (edge.At(edge.Length / 2, 0), shape.Bounds.Width + shape.Bounds.Height);
        var inside = Path.Line(middle, edge.At(edge.Length / 2, edge.Side.IsLine || !edge.IsConvex ? -far : -2 * edge.Side.Radius)).PartsInside(shape);
        return inside.IsEmpty ? 0 : inside.MinBy(p => p.Start.DistanceTo(middle))!.Length;
    }
}

/// <summary>An edge and what is turned on it.</summary>
/// <param name="Edge">The edge.</param>
/// <param name="Index">Of its flange, -1 for none.</param>
/// <param name="Folds">How many folds; 0 for none.</param>
/// <param name="Folded">The flange, where there is one.</param>
internal sealed record Turned(BaseEdge Edge, int Index, int Folds, FoldedFlange? Folded);
