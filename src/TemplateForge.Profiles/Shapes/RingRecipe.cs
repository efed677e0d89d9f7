using System.Collections.Immutable;
using TemplateForge.Geometry;
using TemplateForge.Notation;

namespace TemplateForge.Profiles;

/// <summary>A shape and its copies round a circle, all the way round or from the first to the last over an angle.</summary>
internal sealed record RingRecipe(Place Place, ShapeName Shape, PointTerm Centre, Term Count, ImmutableArray<Term> Over, bool Turned) : ShapeRecipe(Place)
{
    public override bool TryMake(Evaluation from, out Region region)
    {
        region = Region.Empty;
        var over = Angle.FullTurn;
        if (!(from.TryPoint(Centre, out var centre)
            & from.TryCount(Count, Evaluation.MostRepeats, out var count)
            & (Over.IsEmpty || from.TryAngle(Over[0], out over)))) return false;
        if (!from.TryShape(Shape, out var shape)) return false;
        if (shape.IsEmpty) return from.Refuse(Wordings.ShapeIsEmpty(Shape));
        var step = over / (Over.IsEmpty ? count : Math.Max(1, count - 1));
        var middle = shape.Bounds.Centre;
        return from.TryCopies(Place, Shape, [.. Enumerable.Range(0, count).Select(i => Placed(step * i))], out region);

        // What does not turn goes round with the middle of its bounds.
        Placement Placed(Angle by)
        {
            var turn = Placement.Turned(by, centre);
            return Turned ? turn : Placement.Moved(turn.Of(middle) - middle);
        }
    }
}
