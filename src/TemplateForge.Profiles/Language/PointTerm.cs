using TemplateForge.Geometry;
using TemplateForge.Notation;

namespace TemplateForge.Profiles;

/// <summary>How a point is found.</summary>
internal abstract record PointTerm(Place Place)
{
    public abstract bool TryFind(Evaluation from, out Point point);
}

/// <summary>A point by its distances along and up: <c>[spacing, 20 mm]</c>.</summary>
internal sealed record CoordinatePoint(Place Place, Term X, Term Y) : PointTerm(Place)
{
    public override bool TryFind(Evaluation from, out Point point)
    {
        var found = from.TryLength(X, out var x) & from.TryLength(Y, out var y);
        point = new(x, y);
        return found && from.IsWithinReach(point, Place);
    }
}

/// <summary>A point that has a name of its own.</summary>
internal sealed record NamedPoint(Place Place, string Name) : PointTerm(Place)
{
    public override bool TryFind(Evaluation from, out Point point) => from.TryNamedPoint(Name, Place, out point);
}

/// <summary>The point of a shape that lies furthest in some direction.</summary>
internal sealed record FurthestPoint(Place Place, ShapeName Shape, Term Towards) : PointTerm(Place)
{
    public override bool TryFind(Evaluation from, out Point point)
    {
        point = default;
        if (!(from.TryShape(Shape, out var shape) & from.TryAngle(Towards, out var towards))) return false;
        if (shape.IsEmpty) return from.Refuse(Wordings.ShapeIsEmpty(Shape));
        point = shape.Extreme(Vector.Polar(1, towards));
        return true;
    }
}
