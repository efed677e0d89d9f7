using System.Collections.Immutable;
using TemplateForge.Geometry;
using TemplateForge.Notation;

namespace TemplateForge.Profiles;

/// <summary>A smooth curve from where the drawing is through points in their order, as arcs that join without a corner.</summary>
internal sealed record SmoothStep(Place Place, CornerTerm Corner, ImmutableArray<PointTerm> Through, ImmutableArray<Term> Within) : OutlineStep(Place, Corner)
{
    private const double Loosest = 5; // mm: further off it is no curve through these points

    public static SmoothStep Read(Reading reading, Fields fields, CornerTerm corner)
    {
        ImmutableArray<PointTerm> points = fields.Required("smooth_through", out var list) ? [.. reading.Items(list).Take(Evaluation.MostRepeats + 1).Select(reading.Point)] : [];
        if (points.IsEmpty) reading.Complain(Wordings.TooFew(list.Place, 1, "points"));
        if (points.Length > Evaluation.MostRepeats) reading.Complain(Wordings.TooManyRepeats(list.Place, points.Length));
        return new(fields.Place, corner, points, fields.Optional("within", out var within) ? [reading.Length(within)] : []);
    }

    public override bool TryDraw(Evaluation from, Pen pen)
    {
        var within = Tolerance.Curve;
        if (!Within.IsEmpty && !from.TryWithin(Within[0], Tolerance.Curve, Loosest, out within)) return false;
        List<Point> points = [pen.At];
        foreach (var term in Through)
        {
            if (!from.TryPoint(term, out var point)) return false;
            if (points[^1].DistanceTo(point) <= Tolerance.Length) return from.Refuse(Wordings.StepWithoutLength(term.Place, point));
            points.Add(point);
        }
        try
        {
            foreach (var segment in SmoothArcs.Through(points, within).Segments) pen.Draw(segment);
            return true;
        }
        catch (ArgumentException)
        {
            // Points so wild that thousands of arcs would not follow.
            return from.Refuse(Wordings.TooFineToFollow(Place, within));
        }
    }
}
