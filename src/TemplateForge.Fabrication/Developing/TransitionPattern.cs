using System.Collections.Immutable;
using TemplateForge.Geometry;

namespace TemplateForge.Fabrication;

/// <summary>A transition laid flat: its parts side by side, the inside up, their upper edges upwards.</summary>
public sealed class TransitionPattern
{
    private const double Between = 20;

    private TransitionPattern(Transition transition, ImmutableArray<TransitionPart> parts, double twist) =>
        (Transition, Parts, Twist) = (transition, parts, twist);

    public Transition Transition { get; }

    /// <summary>From the seam on round, the first at the left; none reaches below or left of the origin.</summary>
    public ImmutableArray<TransitionPart> Parts { get; }

    /// <summary>How far in all, in degrees, a rolled sheet would have to be bent to and fro: 0 where it unrolls without being stretched.</summary>
    public double Twist { get; }

    /// <summary>Lays a transition flat.</summary>
    /// <param name="transition">The transition.</param>
    /// <param name="pattern">Its pattern.</param>
    /// <param name="fault">Why there is none.</param>
    public static bool TryLayFlat(Transition transition, out TransitionPattern pattern, out TransitionFault fault)
    {
        pattern = null!;
        if (!TransitionSurface.TryOf(transition, out var surface, out fault)) return false;
        var strips = Enumerable.Range(0, surface.Breaks.Length - 1).Select(k => TransitionStrip.Of(surface, surface.Breaks[k], surface.Breaks[k + 1])).ToList();
        var bodies = strips.Select(strip => new TransitionBody(strip, transition)).ToList();
        if (bodies.Exists(body => body.LiesOverItself))
        {
            fault = TransitionFault.LiesOverItself;
            return false;
        }
        var parts = ImmutableArray.CreateBuilder<TransitionPart>();
        var right = 0.0;
        for (var k = 0; k < bodies.Count; k++)
        {
            var isLast = k == bodies.Count - 1;
            ImmutableArray<TransitionBody> next = isLast && !transition.IsClosed ? [] : [bodies[(k + 1) % bodies.Count]];
            var part = TransitionPart.Of(bodies[k], next, transition);
            var bounds = part.Shape.Bounds;
            part = part.Placed(Placement.Moved(new Vector(right - bounds.Min.X, -bounds.Min.Y)));
            right = part.Shape.Bounds.Max.X + Between;
            parts.Add(part);
        }
        pattern = new(transition, parts.ToImmutable(), transition.Work == TransitionWork.Rolled ? strips.Sum(TransitionBends.Twist) : 0);
        return true;
    }
}
