using System.Collections.Immutable;
using TemplateForge.Geometry;

namespace TemplateForge.Fabrication;

/// <summary>Tells whether the slot that a torch cuts keeps off the part.</summary>
internal sealed class KeptClear
{
    /// <summary>How far a slot may come into the part by rounding, in mm.</summary>
    private const double Slack = 1e-4;

    /// <summary>The share of a lead that must be clear of the part even where the kerf is not known: all but its end on the path.</summary>
    private const double AllButTheEnd = 0.9;

    private readonly ImmutableArray<(Segment Segment, Box Bounds)> edge;
    private readonly double radius;

    /// <param name="part">What stays.</param>
    /// <param name="radius">Half the kerf in mm; 0 where the controller allows for it.</param>
    public KeptClear(Region part, double radius)
    {
        this.radius = radius;
        edge = [.. part.Contours.SelectMany(c => c.Segments).Select(s => (s, s.Bounds.Grown(radius + 1)))];
    }

    /// <summary>Whether a disc of half the kerf that moves along these segments stays off the part.</summary>
    public bool Of(IEnumerable<Segment> path) => path.All(s => Holds(s, radius - Slack));

    /// <summary>Whether a lead stays off the part and touches it nowhere before it reaches the path.</summary>
    /// <param name="lead">From the pierce to the path.</param>
    public bool OfLead(Segment lead) => Holds(lead, radius - Slack) && Holds(lead.Part(0, AllButTheEnd), radius + Tolerance.Length);

    /// <summary>Whether a pierce stands so far from where the slot's edge may be, in mm.</summary>
    public bool OfPierce(Point pierce, double least) =>
        edge.All(e => e.Segment.DistanceTo(pierce) >= radius + least - Slack);

    private bool Holds(Segment segment, double least)
    {
        var bounds = segment.Bounds;
        foreach (var (other, box) in edge)
        {
            if (box.Touches(bounds) && segment.DistanceTo(other) < least) return false;
        }
        return true;
    }
}
