using TemplateForge.Geometry;
using TemplateForge.Notation;

namespace TemplateForge.Profiles;

/// <summary>The place of what stays, or of all round an opening, that is nearest to a component.</summary>
internal sealed record ClearancePoint(Place Place, ShapeName Shape, bool IsOpening, ComponentName Component) : PointTerm(Place)
{
    public override bool TryFind(Evaluation from, out Point point)
    {
        var found = from.TryClearance(Shape, IsOpening, Component, out var least);
        point = found ? least!.At : Point.Origin;
        return found;
    }
}
