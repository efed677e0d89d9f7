using System.Collections.Immutable;
using TemplateForge.Geometry;

namespace TemplateForge.Fabrication;

/// <summary>One short run of weld, laid without a stop.</summary>
/// <param name="Number">Its place in the order of welding, from 1.</param>
/// <param name="Along">From where the arc is struck to where it is broken off.</param>
public sealed record WeldRun(int Number, Path Along);

/// <summary>A seam that is welded in short runs.</summary>
/// <param name="Order">In which order they are laid.</param>
/// <param name="Runs">In the order of welding; one at least.</param>
public sealed record WeldSeam(WeldOrder Order, ImmutableArray<WeldRun> Runs)
{
    /// <summary>Of all runs together, in mm.</summary>
    public double Length => Runs.Sum(r => r.Along.Length);

    /// <summary>Length of the longest run, in mm.</summary>
    public double LongestRun => Runs.Max(r => r.Along.Length);

    public WeldSeam Placed(Placement by) => this with { Runs = [.. Runs.Select(r => r with { Along = r.Along.Placed(by) })] };
}

/// <summary>In which order the runs of a seam are laid. Each is laid against the way in which the seam is gone along.</summary>
public enum WeldOrder
{
    /// <summary>One after the other from the start of the seam.</summary>
    BackStep,

    /// <summary>Far from each other first, what lies between them after.</summary>
    Skip,
}
