using System.Collections.Immutable;
using TemplateForge.Geometry;

namespace TemplateForge.Fabrication;

/// <summary>A part of a transition on the flat without its laps, turned so that its lower edge ends as high as it begins.</summary>
internal sealed class TransitionBody
{
    public TransitionBody(TransitionStrip strip, Transition transition)
    {
        var (first, last) = (strip.Flat[0], strip.Flat[^1]);
        var across = first.Lower.DistanceTo(last.Lower) > Tolerance.Length ? first.Lower - last.Lower : first.Upper - last.Upper;
        Strip = strip.Placed(Placement.Turned(-across.Direction, Point.Origin));
        var rolled = transition.Work == TransitionWork.Rolled;
        (LowerRuns, UpperRuns) = (Strip.LowerRuns(rolled), Strip.UpperRuns(rolled));
        Bends = TransitionBends.Of(Strip, transition);
        Shape = Region.Of(new Contour([
            .. LowerRuns.SelectMany(r => r.Path.Segments),
            Segment.Line(Last.Lower, Last.Upper),
            .. UpperRuns.Reverse().SelectMany(r => r.Path.Reversed().Segments),
            Segment.Line(First.Upper, First.Lower),
        ]));
    }

    public TransitionStrip Strip { get; }

    /// <summary>The lower edge from the right to the left, in runs without a corner.</summary>
    public ImmutableArray<TransitionRun> LowerRuns { get; }

    /// <summary>The upper edge from the right to the left.</summary>
    public ImmutableArray<TransitionRun> UpperRuns { get; }
    public ImmutableArray<TransitionBends.Found> Bends { get; }
    public Region Shape { get; }
    public (Point Lower, Point Upper) First => Strip.Flat[0];
    public (Point Lower, Point Upper) Last => Strip.Flat[^1];

    /// <summary>What lies twice on the flat counts once in its outline's area.</summary>
    public bool LiesOverItself
    {
        get
        {
            var laid = 0.0;
            for (var i = 1; i < Strip.Flat.Length; i++)
            {
                var (before, next) = (Strip.Flat[i - 1], Strip.Flat[i]);
                var corner = next.Lower == before.Lower ? next.Upper : next.Lower;
                laid += Math.Abs((before.Upper - before.Lower).Cross(corner - before.Lower)) / 2;
            }
            var corners = Strip.Flat.Select(f => f.Lower).Concat(Strip.Flat.Reverse().Select(f => f.Upper)).ToList();
            var apart = corners.Where((p, i) => p.DistanceTo(corners[(i + 1) % corners.Count]) >= Tolerance.Merge).ToList();
            var outline = Outline.Polygon(apart);
            return Shape.Contours.Length != 1 || laid - Region.Of(outline).Area > Tolerance.Area(outline.Length);
        }
    }
}
