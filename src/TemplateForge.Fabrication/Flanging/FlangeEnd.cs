using System.Collections.Immutable;
using TemplateForge.Geometry;

namespace TemplateForge.Fabrication;

/// <summary>Where a flange ends, as far past the end of its edge at the outline; below 0 before it.</summary>
/// <param name="Bends">At each bend.</param>
/// <param name="Panels">Where each panel begins and where it ends; straight between.</param>
/// <param name="Clear">How far the base is cut away beside the end of the first bend, which else would hang on it; no further than the bend: not at all.</param>
internal sealed record FlangeEnd(ImmutableArray<double> Bends, ImmutableArray<(double Start, double End)> Panels, double Clear)
{
    /// <summary>Square to the edge at its end, where the same flange goes on.</summary>
    public static FlangeEnd Square(int folds) => new(
        [.. Enumerable.Repeat(0.0, folds)],
        [.. Enumerable.Repeat((0.0, 0.0), folds)],
        0);

    /// <summary>Beside an edge that has no flange.</summary>
    /// <remarks>
    /// Where the base is wider inside its outline, it is cut away beside the bend, so far as a relief is wide. At an inner corner the flange
    /// would lie against the base, and keeps a slot from it.
    /// </remarks>
    /// <param name="sheet">The sheet.</param>
    /// <param name="flange">The flange that ends.</param>
    /// <param name="turn">How far the outline turns, in radians; above 0 at an outer corner.</param>
    public static FlangeEnd Alone(FlangedSheet sheet, FoldedFlange flange, double turn)
    {
        if (turn > -FlangeCorner.Smooth)
        {
            // Where the edge goes on without a corner the base is wider all along.
            var wider = turn < FlangeCorner.Smooth ? sheet.ReliefSize : -flange.FirstTangent * Math.Cos(turn) / Math.Sin(turn);
            return Square(flange.Folds.Length) with { Clear = Math.Clamp(wider, 0, sheet.ReliefSize) };
        }
        var slot = Math.Max(sheet.ReliefSize, sheet.Gap);
        // An inner corner of less than a quarter turn comes back over the flat of the flange.
        var lean = Math.Max(0, Math.Tan(-turn - Math.PI / 2));
        var panels = flange.Panels.Select(p => (-slot - Math.Max(0, p.FlatStart) * lean, -slot - Math.Max(0, p.FlatEnd) * lean)).ToImmutableArray();
        return new([.. panels.Select((p, i) => i == 0 ? p.Item1 : panels[i - 1].Item2)], panels, 0);
    }

    /// <summary>How far it spreads on the flat, in radians from square to its edge, as seen from a place on its first tangent line.</summary>
    public double Spread(FoldedFlange flange, double from) => Corners(flange)
        .Max(c => Math.Atan2(Math.Abs(c.Past - from) < Tolerance.Length ? 0 : c.Past - from, Math.Max(0, c.Outwards - flange.FirstTangent)));

    /// <summary>Cut back so that it spreads no further.</summary>
    public FlangeEnd Within(FoldedFlange flange, double from, double spread)
    {
        if (spread >= Math.PI / 2 || Spread(flange, from) <= spread) return this;
        var panels = Panels.Select((p, i) => (Limited(p.Start, flange.Panels[i].FlatStart), Limited(p.End, flange.Panels[i].FlatEnd))).ToImmutableArray();
        return this with { Panels = panels, Bends = [.. Bends.Select((b, i) => Math.Min(b, i == 0 ? panels[0].Item1 : Math.Min(panels[i].Item1, panels[i - 1].Item2)))] };

        double Limited(double past, double outwards) => Math.Min(past, from + Math.Max(0, outwards - flange.FirstTangent) * Math.Tan(spread));
    }

    private IEnumerable<(double Past, double Outwards)> Corners(FoldedFlange flange) =>
        Panels.SelectMany((p, i) => new[] { (p.Start, flange.Panels[i].FlatStart), (p.End, flange.Panels[i].FlatEnd) });

    /// <summary>What all of it keeps to: of a flange along an arc, which ends on a ray.</summary>
    public FlangeEnd Straightened()
    {
        var least = Bends.Concat(Panels.Select(p => Math.Min(p.Start, p.End))).Min();
        return new([.. Bends.Select(_ => least)], [.. Panels.Select(_ => (least, least))], Clear);
    }
}
