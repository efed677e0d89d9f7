using System.Collections.Immutable;
using TemplateForge.Geometry;

namespace TemplateForge.Fabrication;

/// <summary>What is cut in one go: a closed path or an open one, with the places where it may be begun.</summary>
/// <param name="Role">What it makes.</param>
/// <param name="Around">The closed path; empty of an open cut.</param>
/// <param name="Starts">For each place the cuts: one, or one from tab to tab. At least one.</param>
internal sealed record CutNode(CutRole Role, Region Around, ImmutableArray<ImmutableArray<PlannedCut>> Starts)
{
    public Point Begin(int start) => Starts[start][0].Pierce;

    public Point End(int start) => Starts[start][^1].Path.End;

    /// <summary>Moves from tab to tab.</summary>
    public double MovesWithin(int start) => Starts[start].Zip(Starts[start].Skip(1)).Sum(pair => pair.First.Path.End.DistanceTo(pair.Second.Pierce));
}
