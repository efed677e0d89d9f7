using System.Collections.Immutable;
using TemplateForge.Geometry;

namespace TemplateForge.Fabrication;

/// <summary>How the torch comes to a path and leaves it again, in the waste.</summary>
/// <remarks>
/// <code>
///      waste                N
///        P ___              │        arc: from P = S + r N − r T a quarter of a circle about S + r N; it joins the path on its tangent
///             ' .           │        slanting: a line from P = S + l (N − T)
///      part ─────' S ───────┴──▶ T   square: a line from P = S + l N; beside a tab, for any other would cut into the tab
/// </code>
/// </remarks>
internal sealed class Leads(Cutter cutter, double wayToWaste, KeptClear clear)
{
    /// <summary>A quarter of a circle: tan(90° / 4).</summary>
    private static readonly double Quarter = Math.Tan(Math.PI / 8);

    /// <summary>Ways to come in, the best first: where there is no room for an arc it is shortened, then it is a line, then one square to the path.</summary>
    public ImmutableArray<(LeadWay Way, double Reach)> Ways { get; } = WaysOf(cutter);

    /// <summary>A lead-in to a place on the path.</summary>
    /// <param name="to">The place.</param>
    /// <param name="along">The way that the torch travels there, a unit vector.</param>
    /// <param name="way">One of <see cref="Ways"/>.</param>
    /// <param name="lead">The lead.</param>
    /// <returns>Whether it stays in the waste.</returns>
    public bool TryIn(Point to, Vector along, (LeadWay Way, double Reach) way, out Segment lead)
    {
        var aside = along.Left * wayToWaste;
        lead = way.Way switch
        {
            LeadWay.Arc => Segment.Arc(to + (aside - along) * way.Reach, to, wayToWaste * Quarter),
            LeadWay.Slanting => Segment.Line(to + (aside - along) * way.Reach, to),
            _ => Segment.Line(to + aside * way.Reach, to),
        };
        return clear.OfPierce(lead.Start, Least) && clear.OfLead(lead);
    }

    /// <summary>A lead-in square to the path, as a tab beside its start needs it.</summary>
    public bool TrySquareIn(Point to, Vector along, out Segment lead)
    {
        foreach (var way in Ways.Where(w => w.Way == LeadWay.Square))
        {
            if (TryIn(to, along, way, out lead)) return true;
        }
        lead = default;
        return false;
    }

    /// <summary>The curve on which the torch leaves; none where there is no room for any.</summary>
    public ImmutableArray<Segment> Out(Point from, Vector along)
    {
        if (cutter.LeadOut <= 0) return [];
        var aside = along.Left * wayToWaste;
        foreach (var share in (ReadOnlySpan<double>)[1, 0.7, 0.5, 0.35, 0.25])
        {
            var reach = cutter.LeadOut * share;
            var lead = Segment.Arc(from, from + (aside + along) * reach, wayToWaste * Quarter);
            if (clear.OfLead(lead.Reversed())) return [lead];
        }
        return [];
    }

    private double Least => Math.Min(cutter.LeastLead, cutter.LeadIn);

    private static ImmutableArray<(LeadWay Way, double Reach)> WaysOf(Cutter cutter)
    {
        var least = Math.Min(cutter.LeastLead, cutter.LeadIn);
        var reaches = ((double[])[1, 0.8, 0.6, 0.45, 0.33, 0.25, 0.18, 0.12, 0.08]).Select(share => share * cutter.LeadIn)
            .Where(reach => reach > least).Append(least).ToArray();
        return
        [
            .. reaches.Where(_ => cutter.Lead == LeadKind.Arc).Select(reach => (LeadWay.Arc, reach)),
            .. reaches.Select(reach => (LeadWay.Slanting, reach)),
            .. reaches.Select(reach => (LeadWay.Square, reach)),
        ];
    }
}

/// <summary>How a lead meets the path.</summary>
internal enum LeadWay
{
    Arc,
    Slanting,
    Square,
}
