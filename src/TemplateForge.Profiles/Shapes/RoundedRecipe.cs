using System.Collections.Immutable;
using TemplateForge.Geometry;
using TemplateForge.Notation;

namespace TemplateForge.Profiles;

/// <summary>Corners rounded: all of them, or those where the outlines of two other shapes meet.</summary>
internal sealed record RoundedRecipe(Place Place, ShapeName Shape, Term Radius, ImmutableArray<ShapeName> WhereMeet) : ShapeRecipe(Place)
{
    public override bool TryMake(Evaluation from, out Region region)
    {
        if (!(from.TryShape(Shape, out region) & from.TryLength(Radius, out var radius) & from.TryShapes(WhereMeet, out var meeting))) return false;
        if (radius < 0) return from.Refuse(Wordings.SizeNotPositive(Radius.Place, radius));
        if (radius <= Tolerance.Length) return true;
        var places = meeting.Length == 2 ? meeting[0].OutlineMeetings(meeting[1]) : [];
        var rounding = region.RoundedCorners(radius, at => meeting.IsEmpty || places.Any(p => p.DistanceTo(at) <= 10 * Tolerance.Length));
        foreach (var corner in rounding.Unfit)
            from.Refuse(Wordings.RoundingDoesNotFit(Radius, radius, corner));
        region = rounding.Region;
        return rounding.Unfit.IsEmpty;
    }
}
