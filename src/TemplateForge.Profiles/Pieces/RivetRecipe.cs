using System.Collections.Immutable;
using TemplateForge.Fabrication;
using TemplateForge.Geometry;

namespace TemplateForge.Profiles;

/// <summary>A row of rivets by the shape of its holes.</summary>
/// <param name="Holes">Round holes, all of them whole holes of the piece.</param>
/// <param name="Diameter">Of the rivets; of the largest hole where there is none.</param>
/// <param name="ThickestSheet">The thickest sheet that they join; none where nobody has said.</param>
internal sealed record RivetRecipe(ShapeName Holes, ImmutableArray<Term> Diameter, ImmutableArray<Term> ThickestSheet)
{
    // Holes that are one and the same, in mm: shape and piece are worked out each for itself.
    private const double Alike = 10 * Tolerance.Length;

    /// <summary>Makes the row.</summary>
    /// <param name="from">The values that are put in.</param>
    /// <param name="piece">The piece with its holes; empty where it could not be made.</param>
    /// <param name="row">The row.</param>
    public bool TryMake(Evaluation from, Region piece, out RivetRow row)
    {
        row = null!;
        var (diameter, sheet) = (0.0, 0.0);
        var sound = from.TryShape(Holes, out var holes);
        if (!Diameter.IsEmpty) sound &= from.TrySize(Diameter[0], out diameter);
        if (!ThickestSheet.IsEmpty) sound &= from.TrySize(ThickestSheet[0], out sheet);
        if (!sound || piece.IsEmpty) return false;
        if (holes.IsEmpty) return from.Refuse(Wordings.ShapeIsEmpty(Holes));

        var found = ImmutableArray.CreateBuilder<(Point Centre, double Radius)>();
        foreach (var hole in holes.Contours)
        {
            if (!hole.IsCounterClockwise || !hole.TryAsCircle(out var centre, out var radius))
                return from.Refuse(Wordings.RivetHolesAreRound(Holes.Place, Holes.Name, hole.Bounds.Centre));
            found.Add((centre, radius));
        }
        var there = piece.Contours.Where(c => !c.IsCounterClockwise)
            .Select(c => c.TryAsCircle(out var centre, out var radius) ? (Centre: centre, Radius: radius) : (c.Bounds.Centre, 0)).ToList();
        foreach (var (centre, radius) in found)
        {
            if (!there.Exists(h => h.Centre.DistanceTo(centre) <= Alike && Math.Abs(h.Radius - radius) <= Alike))
                return from.Refuse(Wordings.NoSuchRivetHole(Holes.Place, Holes.Name, centre));
        }
        var bore = 2 * found.Max(h => h.Radius);
        if (diameter > bore + Tolerance.Length) return from.Refuse(Wordings.RivetThroughItsHole(Diameter[0].Place, diameter, bore));
        row = new([.. found.Select(h => h.Centre)], Diameter.IsEmpty ? bore : diameter, sheet);
        return true;
    }
}
