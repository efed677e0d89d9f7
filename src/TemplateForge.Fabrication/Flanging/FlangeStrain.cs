using TemplateForge.Geometry;

namespace TemplateForge.Fabrication;

/// <summary>How far the free edge of a flange along an arc is stretched, or shrunk, when it is turned.</summary>
/// <param name="At">The middle of the flange's free edge on the flat.</param>
/// <param name="IsStretch">Whether it gets longer; else it gathers.</param>
/// <param name="Share">By <see cref="EdgeStrain"/>, as a share: where the flange is worst.</param>
/// <param name="EdgeLength">Of the free edge on the flat, in mm.</param>
/// <param name="Width">From the last tangent line to the free edge, in mm.</param>
/// <param name="Radius">Of the edge of the base, in mm.</param>
public sealed record FlangeStrain(Point At, bool IsStretch, double Share, double EdgeLength, double Width, double Radius)
{
    /// <summary>How many relief cuts a flange past its limit wants: none further apart than the flange is wide.</summary>
    /// <remarks>Common practice, no source.</remarks>
    public int CutsWanted => Math.Max(2, (int)Math.Ceiling(EdgeLength / Math.Max(Width, 1)));

    /// <summary>The figures in a sentence.</summary>
    public string Note => FormattableString.Invariant(
        $"The free edge of the flange on the radius {Radius:0.#} mm {(IsStretch ? "stretches" : "shrinks")} by {Share * 100:0.#} % (radial model).");

    internal static FlangeStrain Of(FlangeStrip strip)
    {
        var (edge, flange) = (strip.Edge, strip.Flange);
        // Between cuts the metal is free to open or to close; with them the whole flange is no longer one ring.
        var places = flange.Panels.SelectMany(p => new[] { (Flat: p.FlatStart, Out: p.Start.X), (Flat: p.FlatEnd, Out: p.Middle(p.Length).X) });
        var strains = places.Select(p => (Flat: edge.RadiusAt(p.Flat), Folded: edge.RadiusAt(p.Out)))
            .Select(r => r.Folded >= r.Flat ? EdgeStrain.Stretch(r.Folded, r.Folded - r.Flat) : -EdgeStrain.Shrink(r.Folded, r.Flat - r.Folded));
        var worst = strains.MaxBy(Math.Abs);
        var free = strip.FreeEdge;
        return new(free.At(0.5), worst > 0, strip.Wanted.ReliefCuts > 0 ? 0 : Math.Abs(worst), free.Length, flange.FreeEdge - flange.EndOf(0), edge.Side.Radius);
    }

    internal IEnumerable<Warning> WarningsFor(Material material, double thickness)
    {
        var limit = material.StretchLimitAt(thickness);
        if (Share <= limit) yield break;
        yield return new(
            IsStretch ? "edge stretched too far" : "edge shrunk too far",
            FormattableString.Invariant(
                $"The flange's edge on the radius {Radius:0.#} mm {(IsStretch ? "stretches" : "shrinks")} by {Share * 100:0.#} %; {material.Title} takes {limit * 100:0.#} %. ")
            + FormattableString.Invariant($"Lower it, or relieve it by {CutsWanted} cuts from its edge."),
            At,
            "radial model of a curved flange, docs/sheet-metal.md; limit from the shop's tables");
    }
}
