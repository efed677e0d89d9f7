using System.Collections.Immutable;
using TemplateForge.Geometry;

namespace TemplateForge.Fabrication;

/// <summary>What a foreman would say of a section that is to be bent. Places lie along the flat section, x from its first edge, y at 0.</summary>
public static class SectionWarnings
{
    /// <summary>Radii, flanges and lengths that are out of what the material and the brake take.</summary>
    /// <param name="flat">The section.</param>
    /// <param name="material">Its sheet; one that is unstated has no limits.</param>
    /// <param name="bendLength">How long its bends are, in mm.</param>
    /// <param name="brake">The shop's brake.</param>
    public static ImmutableArray<Warning> Of(FlatSection flat, Material material, double bendLength, Brake brake) =>
    [
        .. flat.Bends.SelectMany(bend => Radius(bend, material)),
        .. flat.Bends.SelectMany(Rolls),
        .. Flanges(flat),
        .. flat.Bends.Where(_ => bendLength > brake.Length).Select(bend => new Warning(
            "bend longer than the brake",
            FormattableString.Invariant($"The bend is {bendLength:0.#} mm long; {brake.Name} bends {brake.Length:0.#} mm."),
            At(bend.Middle),
            "the shop's brake")),
        .. flat.Bends.Where(_ => flat.Section.Thickness > brake.GreatestThickness + Tolerance.Length).Select(bend => new Warning(
            "sheet thicker than the brake takes",
            FormattableString.Invariant($"The sheet is {flat.Section.Thickness:0.##} mm thick; {brake.Name} bends {brake.GreatestThickness:0.##} mm."),
            At(bend.Middle),
            "the shop's brake")),
    ];

    /// <summary>What fouls in a bending order, and legs of the finished section that run through each other.</summary>
    public static ImmutableArray<Warning> Of(FlatSection flat, BendingOrder order) =>
    [
        .. order.Fouls.Select(foul => new Warning(
            "leg fouls",
            FormattableString.Invariant($"Leg {foul.Leg} fouls {foul.With} while bend {foul.Bend} is made. Bend it by hand, or in two parts."),
            At(flat.Bends[foul.Bend - 1].Middle),
            "model of a folding brake, docs/sheet-metal.md")),
        .. Through(flat),
    ];

    /// <summary>Legs of the finished section that run through each other.</summary>
    public static ImmutableArray<Warning> Through(FlatSection flat) =>
    [
        .. FoldedSection.Whole(flat.Section).Meetings().Distinct().Order().Select(legs => new Warning(
            "leg through a leg",
            FormattableString.Invariant($"Legs {legs.Item1} and {legs.Item2} of the bent section run through each other. Shorten one."),
            At(LegMiddle(flat, legs.Item2)),
            "geometry of the section")),
    ];

    private static IEnumerable<Warning> Radius(FlatBend flat, Material material)
    {
        var bend = flat.Bend;
        // Least radii are told for bends of 90°. A closed fold has none at all: soft sheet takes it, what needs a whole thickness does not.
        var closed = bend.Angle >= Angle.HalfTurn && bend.InsideRadius < bend.Thickness;
        var least = closed && material.LeastInsideRadius < 1 ? 0 : material.LeastInsideRadius * bend.Thickness;
        if (bend.InsideRadius >= least - Tolerance.Length) yield break;
        yield return new(
            "radius too small",
            FormattableString.Invariant($"The inside radius is {bend.InsideRadius:0.##} mm; {material.Title} takes {least:0.##} mm or more."),
            At(flat.Middle),
            "least inside radius of the material, in the shop's tables");
    }

    // What turns past half a circle is rolled round a rod: tighter than two thicknesses it kinks.
    private static IEnumerable<Warning> Rolls(FlatBend flat)
    {
        var (bend, least) = (flat.Bend, 2 * flat.Bend.Thickness);
        if (bend.Angle <= Angle.HalfTurn || bend.InsideRadius >= least - Tolerance.Length) yield break;
        yield return new(
            "roll too tight",
            FormattableString.Invariant($"The edge is rolled with an inside radius of {bend.InsideRadius:0.##} mm; it wants {least:0.##} mm, 2 t."),
            At(flat.Middle),
            "sheet-metal designers' handbook, curl radius at least 2 t");
    }

    // Common practice, from memory: what stands beyond the bend is at least 4 t + r over the outside, or the leaf cannot hold it.
    private static IEnumerable<Warning> Flanges(FlatSection flat)
    {
        if (flat.Bends.IsEmpty) yield break;
        (FlatBend Bend, int Leg, double Straight)[] edges =
            [(flat.Bends[0], 1, flat.Section.Straights[0]), (flat.Bends[^1], flat.Bends.Length + 1, flat.Section.Straights[^1])];
        foreach (var (flatBend, leg, straight) in edges)
        {
            var bend = flatBend.Bend;
            if (bend.Angle > Angle.HalfTurn) continue; // a roll ends in its edge
            var (there, least) = (straight + bend.OutsideSetback, 4 * bend.Thickness + bend.InsideRadius);
            if (there >= least - Tolerance.Length) continue;
            yield return new(
                "flange too short",
                FormattableString.Invariant($"Leg {leg} is {there:0.##} mm over the outside; to be held it wants {least:0.##} mm, 4 t + r."),
                At(LegMiddle(flat, leg)),
                "common practice, 4 t + r; from memory");
        }
    }

    private static double LegMiddle(FlatSection flat, int leg)
    {
        var from = leg == 1 ? 0 : flat.Bends[leg - 2].LastTangent;
        var to = leg > flat.Bends.Length ? flat.Length : flat.Bends[leg - 1].FirstTangent;
        return (from + to) / 2;
    }

    private static Point At(double along) => new(along, 0);
}
