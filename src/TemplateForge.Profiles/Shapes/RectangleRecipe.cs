using TemplateForge.Geometry;
using TemplateForge.Notation;

namespace TemplateForge.Profiles;

/// <summary>A rectangle between two opposite corners, its corners rounded or not.</summary>
internal sealed record RectangleRecipe(Place Place, PointTerm From, PointTerm To, Term CornerRadius) : ShapeRecipe(Place)
{
    public override bool TryMake(Evaluation from, out Region region)
    {
        region = Region.Empty;
        if (!(from.TryPoint(From, out var a) & from.TryPoint(To, out var b) & from.TryLength(CornerRadius, out var radius))) return false;
        var box = Box.Around([a, b]);
        var least = Math.Min(box.Width, box.Height);
        if (!(least > Tolerance.Length)) return from.Refuse(Wordings.RectangleWithoutArea(Place, box.Width, box.Height));
        if (radius < 0 || radius > least / 2 + Tolerance.Length)
            return from.Refuse(Wordings.CornerRadiusDoesNotFit(CornerRadius.Place, radius, least / 2));
        region = Region.Of(Outline.RoundedRectangle(box, Math.Min(radius, least / 2)));
        return true;
    }
}
