using TemplateForge.Geometry;
using TemplateForge.Notation;

namespace TemplateForge.Profiles;

/// <summary>An ellipse by its centre and half-axes, turned or not.</summary>
internal sealed record EllipseRecipe(Place Place, PointTerm Centre, Term HalfAxisX, Term HalfAxisY, Term Turned) : ShapeRecipe(Place)
{
    // An arc-made ellipse longer than this no longer keeps to its tolerance with a sensible number of arcs.
    private const double LongestRatio = 50;

    public override bool TryMake(Evaluation from, out Region region)
    {
        region = Region.Empty;
        if (!(from.TryPoint(Centre, out var centre)
            & from.TrySize(HalfAxisX, out var a)
            & from.TrySize(HalfAxisY, out var b)
            & from.TryAngle(Turned, out var turned))) return false;
        if (Math.Max(a, b) > LongestRatio * Math.Min(a, b))
            return from.Refuse(Wordings.EllipseTooLong(Place, a, b, LongestRatio));
        region = Region.Of(Outline.Ellipse(centre, a, b, turned));
        return true;
    }
}
