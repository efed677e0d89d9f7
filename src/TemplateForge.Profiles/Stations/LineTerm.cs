using System.Collections.Immutable;
using System.Diagnostics.CodeAnalysis;
using TemplateForge.Geometry;
using TemplateForge.Notation;

namespace TemplateForge.Profiles;

/// <summary>How a line is found along which places are told by their distance.</summary>
internal abstract record LineTerm(Place Place)
{
    public abstract bool TryFind(Evaluation from, [MaybeNullWhen(false)] out Run run);
}

/// <summary>Straight from one point to another.</summary>
internal sealed record LineBetween(Place Place, PointTerm From, PointTerm To) : LineTerm(Place)
{
    public override bool TryFind(Evaluation from, [MaybeNullWhen(false)] out Run run)
    {
        run = null;
        if (!(from.TryPoint(From, out var a) & from.TryPoint(To, out var b))) return false;
        if (a.DistanceTo(b) <= Tolerance.Length) return from.Refuse(Wordings.StepWithoutLength(To.Place, b));
        run = Run.Of(Path.Line(a, b));
        return true;
    }
}

/// <summary>Along a path, from its start to its end.</summary>
internal sealed record LineOfPath(Place Place, string Path) : LineTerm(Place)
{
    public override bool TryFind(Evaluation from, [MaybeNullWhen(false)] out Run run)
    {
        var found = from.TryPath(Path, Place, out var path);
        run = found ? Run.Of(path!) : null;
        return found;
    }
}

/// <summary>Once round the outline of a shape.</summary>
internal sealed record LineRound(Place Place, ShapeName Shape, ImmutableArray<PointTerm> StartingAt, bool Clockwise) : LineTerm(Place)
{
    public override bool TryFind(Evaluation from, [MaybeNullWhen(false)] out Run run)
    {
        run = null;
        Point? start = null;
        if (!StartingAt.IsEmpty)
        {
            if (!from.TryPoint(StartingAt[0], out var point)) return false;
            start = point;
        }
        if (!from.TryOutline(Shape, out var outline)) return false;
        run = Run.Round(outline, Clockwise, start);
        return true;
    }
}
