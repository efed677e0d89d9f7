using System.Collections.Immutable;
using TemplateForge.Geometry;

namespace TemplateForge.Fabrication;

/// <summary>Holes so near to a bend that it draws them out of shape.</summary>
/// <remarks>
/// <code>
///     ( )  hole
///      |   2 t + r from its edge to the tangent line; 4 t + r where it is a slot that runs along the bend
///     . . . . . . . . . . . . . .  tangent line
///     ---------------------------  bend line
///     . . . . . . . . . . . . . .  tangent line
/// </code>
/// A notch is part of the outline and no hole. A hole in which a bend ends is its relief, or the opening whose edge is turned; so is a
/// hole that the whole length of a bend turns its flange to.
/// </remarks>
public static class HoleWarnings
{
    private const string Rule = "hole too near a bend";
    private const string SlotRule = "slot too near a bend";

    /// <summary>Each hole, where it is nearest to each bend that it is too near to.</summary>
    public static ImmutableArray<Warning> Of(Piece piece) =>
        [.. MetalEdge.Of(piece).Where(e => !e.Hole.IsEmpty).SelectMany(e => piece.Bends.SelectMany(bend => At(piece, e, bend)))];

    /// <summary>A hole and the stretches of one bend, of which the nearest counts.</summary>
    private static IEnumerable<Warning> At(Piece piece, MetalEdge edge, ImmutableArray<IBendOnBlank> stretches)
    {
        var reach = 4 * piece.Thickness + stretches.Max(s => s.InsideRadius + s.Allowance / 2);
        var hole = Region.Of(edge.Hole[0]);
        var near = stretches.Where(s => s.Middle.Bounds.Grown(reach).Touches(edge.Bounds) && !IsItsEnd(s, hole) && !IsItsEdge(s, hole, piece.Shape))
            .Select(s => (Stretch: s, At: edge.NearestTo(s.Middle, out var distance), Clear: distance - s.Allowance / 2))
            .OrderBy(n => n.Clear).Take(1);
        foreach (var (bend, at, clear) in near)
        {
            var slot = IsSlotAlong(bend, hole);
            var least = (slot ? 4 : 2) * piece.Thickness + bend.InsideRadius;
            if (clear >= least - Tolerance.Length) continue;
            var (what, formula) = slot ? ("slot", "4 t + r") : ("hole", "2 t + r");
            yield return new(
                slot ? SlotRule : Rule,
                clear <= Tolerance.Length
                    ? FormattableString.Invariant($"A {what} lies in bend {bend.Number} and will be drawn out of shape. Cut it after bending, or leave {least:0.##} mm, {formula}, from its edge to the tangent line.")
                    : FormattableString.Invariant($"A {what}'s edge is {clear:0.##} mm from the tangent line of bend {bend.Number}; so that bending does not draw it out of shape it wants {least:0.##} mm, {formula}."),
                at,
                slot ? "common practice, no source; 4 t + r as for a countersink" : "common practice, 2 t + r; from memory");
        }
    }

    /// <summary>Whether a bend ends in a hole or on its edge.</summary>
    private static bool IsItsEnd(IBendOnBlank bend, Region hole)
    {
        var (held, turned) = bend.TangentLines;
        return ((Point[])[held.Start, held.End, bend.Middle.Start, bend.Middle.End, turned.Start, turned.End]).Any(end => hole.DistanceTo(end) <= Tolerance.Length);
    }

    /// <summary>Whether the flange of a bend ends at a hole, from one end of the bend to the other.</summary>
    private static bool IsItsEdge(IBendOnBlank bend, Region hole, Region blank)
    {
        var (held, turned) = bend.TangentLines;
        if (bend.Allowance <= Tolerance.Length) return false;
        return ((double[])[0, 0.5, 1]).All(share =>
        {
            var (from, on) = (held.PointAlong(share * held.Length), turned.PointAlong(share * turned.Length));
            var away = (on - from).Unit * (blank.Bounds.Width + blank.Bounds.Height);
            // There a relief cut may come up to the bend.
            if (hole.DistanceTo(on) <= 10 * Tolerance.Length) return true;
            return Path.Line(on, on + away).PartsInside(blank) is [var metal, ..] && hole.BoundaryDistanceTo(metal.End) <= 10 * Tolerance.Length;
        });
    }

    /// <summary>Whether a hole is more than twice as long along the bend as across it.</summary>
    private static bool IsSlotAlong(IBendOnBlank bend, Region hole)
    {
        var along = bend.Middle.DirectionAlong(bend.Middle.Length / 2);
        return Extent(along) > 2 * Extent(along.Left) + Tolerance.Length;

        double Extent(Vector way) => (hole.Extreme(way) - hole.Extreme(-way)).Dot(way);
    }
}
