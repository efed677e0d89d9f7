using System.Collections.Immutable;
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

/// <summary>One of several points, by the word that a choice parameter has.</summary>
internal sealed record ChosenPoint(Place Place, Chosen<PointTerm> Choice) : PointTerm(Place)
{
    public override bool TryFind(Evaluation from, out Point point)
    {
        point = default;
        return from.TryPick(Choice, out var chosen) && chosen.TryFind(from, out point);
    }
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

/// <summary>A point so far along a line, from its start or from its end; where nothing is said, its middle.</summary>
internal sealed record PointAlong(Place Place, LineTerm Line, ImmutableArray<Term> At, ImmutableArray<Term> FromEnd) : PointTerm(Place)
{
    public override bool TryFind(Evaluation from, out Point point)
    {
        point = default;
        if (!Line.TryFind(from, out var run)) return false;
        var distance = run.Length / 2;
        if (!At.IsEmpty && !from.TryLength(At[0], out distance)) return false;
        if (!FromEnd.IsEmpty)
        {
            if (!from.TryLength(FromEnd[0], out var back)) return false;
            distance = run.Length - back;
        }
        if (!run.Reaches(distance)) return from.Refuse(Wordings.PastTheEnd((At.IsEmpty ? FromEnd[0] : At[0]).Place, distance, run.Length));
        point = run.At(distance);
        return true;
    }
}

/// <summary>One of a row of stations by its number, the first being 1.</summary>
internal sealed record StationPoint(Place Place, Term Number, StationsName Row) : PointTerm(Place)
{
    public override bool TryFind(Evaluation from, out Point point)
    {
        point = default;
        if (!from.TryStations(Row, out var row)) return false;
        if (!from.TryCount(Number, row.Stations.Length, out var number)) return false;
        point = row.Stations[number - 1].At;
        return true;
    }
}
