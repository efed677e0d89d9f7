using System.Collections.Immutable;
using TemplateForge.Geometry;
using TemplateForge.Notation;

namespace TemplateForge.Profiles;

/// <summary>One line or arc of an outline or path, and what becomes of the corner at its end.</summary>
internal abstract record OutlineStep(Place Place, CornerTerm Corner)
{
    public abstract bool TryDraw(Evaluation from, Pen pen);

    /// <summary>The point where a step ends, which must not be where it begins.</summary>
    protected static bool TryEnd(Evaluation from, PointTerm to, Pen pen, out Point end) =>
        from.TryPoint(to, out end) && (pen.At.DistanceTo(end) > Tolerance.Length || from.Refuse(Wordings.StepWithoutLength(to.Place, end)));

    /// <summary>The way the drawing goes, for a step that goes on from it.</summary>
    protected bool TryHeading(Evaluation from, Pen pen, out Vector heading)
    {
        heading = pen.Heading;
        return heading.Length > 0.5 || from.Refuse(Wordings.NothingToGoOnFrom(Place));
    }
}

/// <summary>What becomes of a corner: an arc of a radius, a chamfer of a setback, or nothing.</summary>
internal sealed record CornerTerm(ImmutableArray<Term> Fillet, ImmutableArray<Term> Chamfer)
{
    public static CornerTerm Sharp { get; } = new([], []);

    public bool IsSharp => Fillet.IsEmpty && Chamfer.IsEmpty;
}

/// <summary>A straight line to a point.</summary>
internal sealed record LineStep(Place Place, CornerTerm Corner, PointTerm To) : OutlineStep(Place, Corner)
{
    public override bool TryDraw(Evaluation from, Pen pen)
    {
        if (!TryEnd(from, To, pen, out var end)) return false;
        pen.LineTo(end);
        return true;
    }
}

/// <summary>A straight line so long, some way or straight on.</summary>
internal sealed record LineOnStep(Place Place, CornerTerm Corner, Term Length, ImmutableArray<Term> Towards) : OutlineStep(Place, Corner)
{
    public override bool TryDraw(Evaluation from, Pen pen)
    {
        if (!from.TrySize(Length, out var length)) return false;
        Vector way;
        if (Towards.IsEmpty)
        {
            if (!TryHeading(from, pen, out way)) return false;
        }
        else
        {
            if (!from.TryAngle(Towards[0], out var towards)) return false;
            way = Vector.Polar(1, towards);
        }
        var end = pen.At + way * length;
        if (!from.IsWithinReach(end, Place)) return false;
        pen.LineTo(end);
        return true;
    }
}

/// <summary>An arc given by a point that it goes through.</summary>
internal sealed record ArcThroughStep(Place Place, CornerTerm Corner, PointTerm To, PointTerm Through) : OutlineStep(Place, Corner)
{
    public override bool TryDraw(Evaluation from, Pen pen)
    {
        if (!TryEnd(from, To, pen, out var end) || !from.TryPoint(Through, out var through)) return false;
        if (through.DistanceTo(pen.At) <= Tolerance.Length || through.DistanceTo(end) <= Tolerance.Length)
            return from.Refuse(Wordings.ArcThroughItsEnd(Through.Place));
        // The angle at which both ends are seen from the point between them is half a turn less half the sweep.
        var (back, on) = (pen.At - through, end - through);
        var seen = Math.Atan2(back.Cross(on), back.Dot(on));
        pen.ArcTo(end, 2 * (Math.PI - Math.Abs(seen)) * -Math.Sign(seen));
        return true;
    }
}

/// <summary>An arc of at most half a turn given by its radius and the way it turns.</summary>
internal sealed record ArcRadiusStep(Place Place, CornerTerm Corner, PointTerm To, Term Radius, bool TurnsLeft) : OutlineStep(Place, Corner)
{
    public override bool TryDraw(Evaluation from, Pen pen)
    {
        if (!TryEnd(from, To, pen, out var end) || !from.TrySize(Radius, out var radius)) return false;
        var half = pen.At.DistanceTo(end) / 2;
        if (half > radius + Tolerance.Length) return from.Refuse(Wordings.ArcRadiusTooSmall(Radius.Place, radius, half));
        pen.ArcTo(end, 2 * Math.Asin(Math.Min(1, half / radius)) * (TurnsLeft ? 1 : -1));
        return true;
    }
}

/// <summary>An arc that goes on without a corner and ends at a point.</summary>
internal sealed record TangentToStep(Place Place, CornerTerm Corner, PointTerm To) : OutlineStep(Place, Corner)
{
    public override bool TryDraw(Evaluation from, Pen pen)
    {
        if (!TryHeading(from, pen, out var heading) || !TryEnd(from, To, pen, out var end)) return false;
        // Between the tangent and the chord lies half the sweep.
        var chord = end - pen.At;
        var half = Math.Atan2(heading.Cross(chord), heading.Dot(chord));
        if (Math.PI - Math.Abs(half) < 1e-3) return from.Refuse(Wordings.StraightBehind(To.Place, end));
        pen.ArcTo(end, 2 * half);
        return true;
    }
}

/// <summary>An arc that goes on without a corner, by its radius and the angle that it turns through.</summary>
internal sealed record TangentArcStep(Place Place, CornerTerm Corner, Term Turned, Term Radius, bool TurnsLeft) : OutlineStep(Place, Corner)
{
    public override bool TryDraw(Evaluation from, Pen pen)
    {
        if (!TryHeading(from, pen, out var heading) || !(from.TryAngle(Turned, out var turned) & from.TrySize(Radius, out var radius))) return false;
        if (!(turned.Degrees > 0.01 && turned.Degrees < 359.99)) return from.Refuse(Wordings.TurnNotWithinACircle(Turned.Place, turned.Degrees));
        var side = TurnsLeft ? 1 : -1;
        var end = Placement.Turned(turned * side, pen.At + heading.Left * (radius * side)).Of(pen.At);
        if (!from.IsWithinReach(end, Place)) return false;
        if (end.DistanceTo(pen.At) <= Tolerance.Length) return from.Refuse(Wordings.StepWithoutLength(Place, end));
        pen.ArcTo(end, turned.Radians * side);
        return true;
    }
}
