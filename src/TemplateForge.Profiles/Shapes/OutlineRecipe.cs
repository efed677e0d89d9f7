using System.Collections.Immutable;
using TemplateForge.Geometry;
using TemplateForge.Notation;

namespace TemplateForge.Profiles;

/// <summary>An outline drawn line by line and arc by arc, closed by a straight line where it does not come back by itself.</summary>
internal sealed record OutlineRecipe(Place Place, PointTerm Start, ImmutableArray<OutlineStep> Steps) : ShapeRecipe(Place)
{
    public override bool TryMake(Evaluation from, out Region region)
    {
        region = Region.Empty;
        if (!from.TryPoint(Start, out var start)) return false;
        var segments = new List<Segment>();
        var at = start;
        foreach (var step in Steps)
        {
            if (!from.TryPoint(step.To, out var to)) return false;
            if (at.DistanceTo(to) <= Tolerance.Length) return from.Refuse(Wordings.StepWithoutLength(step.To.Place, to));
            if (!step.TrySegments(from, at, to, segments)) return false;
            at = to;
        }
        if (at.DistanceTo(start) > Tolerance.Length) segments.Add(Segment.Line(at, start));
        else if (at != start) segments[^1] = Segment.Arc(segments[^1].Start, start, segments[^1].Bulge);
        if (segments.Count < 2) return from.Refuse(Wordings.OutlineWithoutArea(Place));
        region = Region.FromContours([new Contour(segments)]);
        return !region.IsEmpty || from.Refuse(Wordings.OutlineWithoutArea(Place));
    }
}

/// <summary>One line or arc of an outline.</summary>
internal abstract record OutlineStep(PointTerm To)
{
    public abstract bool TrySegments(Evaluation from, Point start, Point end, List<Segment> segments);
}

internal sealed record LineStep(PointTerm To) : OutlineStep(To)
{
    public override bool TrySegments(Evaluation from, Point start, Point end, List<Segment> segments)
    {
        segments.Add(Segment.Line(start, end));
        return true;
    }
}

/// <summary>An arc given by a point that it goes through.</summary>
internal sealed record ArcThroughStep(PointTerm To, PointTerm Through) : OutlineStep(To)
{
    public override bool TrySegments(Evaluation from, Point start, Point end, List<Segment> segments)
    {
        if (!from.TryPoint(Through, out var through)) return false;
        if (through.DistanceTo(start) <= Tolerance.Length || through.DistanceTo(end) <= Tolerance.Length)
            return from.Refuse(Wordings.ArcThroughItsEnd(Through.Place));
        // The angle at which both ends are seen from the point between them is half a turn less half the sweep.
        var seen = Math.Atan2((start - through).Cross(end - through), (start - through).Dot(end - through));
        var sweep = 2 * (Math.PI - Math.Abs(seen)) * -Math.Sign(seen);
        segments.AddRange(Arcs(start, end, sweep));
        return true;
    }

    private static IEnumerable<Segment> Arcs(Point start, Point end, double sweep)
    {
        if (Math.Abs(sweep) < 1e-12) return [Segment.Line(start, end)];
        if (Math.Abs(sweep) <= Math.PI) return [Segment.Arc(start, end, Math.Tan(sweep / 4))];
        // A segment turns through half a circle at most, so that a wider arc is cut in its middle.
        var centre = start.MidpointTo(end) + (end - start).Left / (2 * Math.Tan(sweep / 2));
        var middle = Placement.Turned(Angle.FromRadians(sweep / 2), centre).Of(start);
        return [Segment.Arc(start, middle, Math.Tan(sweep / 8)), Segment.Arc(middle, end, Math.Tan(sweep / 8))];
    }
}

/// <summary>An arc of at most half a turn given by its radius and the way it turns.</summary>
internal sealed record ArcRadiusStep(PointTerm To, Term Radius, bool TurnsLeft) : OutlineStep(To)
{
    public override bool TrySegments(Evaluation from, Point start, Point end, List<Segment> segments)
    {
        if (!from.TrySize(Radius, out var radius)) return false;
        var half = start.DistanceTo(end) / 2;
        if (half > radius + Tolerance.Length) return from.Refuse(Wordings.ArcRadiusTooSmall(Radius.Place, radius, half));
        var sweep = 2 * Math.Asin(Math.Min(1, half / radius));
        segments.Add(Segment.Arc(start, end, Math.Min(1, Math.Tan(sweep / 4)) * (TurnsLeft ? 1 : -1)));
        return true;
    }
}
