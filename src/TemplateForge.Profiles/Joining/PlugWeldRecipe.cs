using System.Collections.Immutable;
using TemplateForge.Fabrication;
using TemplateForge.Geometry;

namespace TemplateForge.Profiles;

/// <summary>Plug welds by the shape of their holes, round or slots, all of them whole holes of the piece.</summary>
internal sealed record PlugWeldRecipe(ShapeName Holes)
{
    // Holes that are one and the same, in mm: shape and piece are worked out each for itself.
    private const double Alike = 10 * Tolerance.Length;

    /// <summary>Finds the holes.</summary>
    /// <param name="from">The values that are put in.</param>
    /// <param name="piece">The piece with its holes; empty where it could not be made.</param>
    /// <param name="plugs">The plug welds.</param>
    public bool TryMake(Evaluation from, Region piece, out ImmutableArray<PlugWeld> plugs)
    {
        plugs = [];
        if (!from.TryShape(Holes, out var holes) || piece.IsEmpty) return false;
        if (holes.IsEmpty) return from.Refuse(Wordings.ShapeIsEmpty(Holes));
        var there = piece.Contours.Where(c => !c.IsCounterClockwise).ToList();
        var found = ImmutableArray.CreateBuilder<PlugWeld>();
        foreach (var hole in holes.Contours)
        {
            if (!hole.IsCounterClockwise || !PlugWeld.TryOf(hole, out var plug))
                return from.Refuse(Wordings.PlugHolesAreRound(Holes.Place, Holes.Name, hole.Bounds.Centre));
            if (!there.Exists(h => IsAlike(h, hole))) return from.Refuse(Wordings.NoSuchRivetHole(Holes.Place, Holes.Name, plug.Middle));
            found.Add(plug);
        }
        plugs = found.ToImmutable();
        return true;
    }

    private static bool IsAlike(Contour a, Contour b) =>
        a.Bounds.Min.DistanceTo(b.Bounds.Min) <= Alike && a.Bounds.Max.DistanceTo(b.Bounds.Max) <= Alike
        && Math.Abs(a.Area - b.Area) <= Alike * a.Length;
}
