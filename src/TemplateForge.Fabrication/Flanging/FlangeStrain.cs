using TemplateForge.Geometry;

namespace TemplateForge.Fabrication;

/// <summary>How far the free edge of a flange along an arc is stretched, or shrunk, when it is turned.</summary>
/// <param name="At">The middle of the flange's free edge on the flat.</param>
/// <param name="IsStretch">Whether it gets longer; else it gathers.</param>
/// <param name="Share">By <see cref="EdgeStrain"/>, as a share: where the flange is worst.</param>
/// <param name="EdgeLength">Of the free edge on the flat, in mm.</param>
/// <param name="Width">From the last tangent line to the free edge, in mm.</param>
/// <param name="Radius">Of the edge of the base, in mm.</param>
/// <param name="Cuts">Relief cuts that it has.</param>
/// <param name="MostCuts">Relief cuts that it has room for.</param>
public sealed record FlangeStrain(Point At, bool IsStretch, double Share, double EdgeLength, double Width, double Radius, int Cuts, int MostCuts)
{
    /// <summary>How many relief cuts a flange past its limit wants: none further apart than the flange is wide.</summary>
    /// <remarks>Common practice, no source.</remarks>
    public int CutsWanted => Math.Min(MostCuts, Math.Max(2, (int)Math.Ceiling(EdgeLength / Math.Max(Width, 1))));

    /// <summary>The figures in a sentence.</summary>
    public string Note => FormattableString.Invariant(
        $"The free edge of the flange on the radius {Radius:0.#} mm {(IsStretch ? "stretches" : "shrinks")} by {Share * 100:0.#} % of its length (an estimate by the radial model).");

    internal static FlangeStrain Of(FlangeStrip strip)
    {
        var (edge, flange) = (strip.Edge, strip.Flange);
        var places = flange.Panels.SelectMany(p => new[] { (Flat: p.FlatStart, Out: p.Start.X), (Flat: p.FlatEnd, Out: p.Middle(p.Length).X) });
        var strains = places.Select(p => (Flat: edge.RadiusAt(p.Flat), Folded: edge.RadiusAt(p.Out)))
            .Select(r => EdgeStrain.Share(r.Flat, r.Folded));
        var worst = strains.MaxBy(Math.Abs);
        var free = strip.FreeEdge;
        return new(free.At(0.5), worst > 0, Math.Abs(worst), free.Length, flange.FreeEdge - flange.EndOf(0), edge.Side.Radius, strip.Wanted.ReliefCuts, ReliefCuts.Most(strip));
    }

    internal IEnumerable<Warning> WarningsFor(Material material, double thickness)
    {
        var limit = material.StretchLimitAt(thickness);
        // Between enough cuts the metal is free to open or to close.
        if (Share <= limit || (Cuts > 0 && Cuts >= CutsWanted)) yield break;
        var remedy = "Make the flange lower" + (CutsWanted > 0 ? FormattableString.Invariant($", or give it {CutsWanted} relief cuts in from its edge.") : ".");
        yield return IsStretch
            ? new(
                "edge stretched too far",
                FormattableString.Invariant(
                    $"The flange's edge on the radius {Radius:0.#} mm stretches by {Share * 100:0.#} % of its length; {material.Title} splits from {limit * 100:0.#} % on. {remedy}"),
                At,
                "radial model of a curved flange, docs/sheet-metal.md; limit from the shop's tables")
            : new(
                "edge shrunk too far",
                FormattableString.Invariant(
                    $"The flange's edge on the radius {Radius:0.#} mm shrinks by {Share * 100:0.#} % of its length: it gathers in wrinkles unless it is shrunk bit by bit. {remedy}"),
                At,
                "radial model of a curved flange, docs/sheet-metal.md; past the metal's stretch limit, common practice, no source");
    }
}
