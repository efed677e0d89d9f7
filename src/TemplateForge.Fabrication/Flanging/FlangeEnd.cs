using System.Collections.Immutable;

namespace TemplateForge.Fabrication;

/// <summary>Where a flange ends, as far past the end of its edge at the outline; below 0 before it.</summary>
/// <param name="Bends">At each bend.</param>
/// <param name="Panels">Where each panel begins and where it ends; straight between.</param>
internal sealed record FlangeEnd(ImmutableArray<double> Bends, ImmutableArray<(double Start, double End)> Panels)
{
    /// <summary>Square to the edge at its end.</summary>
    public static FlangeEnd Square(int folds) => new(
        [.. Enumerable.Repeat(0.0, folds)],
        [.. Enumerable.Repeat((0.0, 0.0), folds)]);

    /// <summary>What all of it keeps to: of a flange along an arc, which ends on a ray.</summary>
    public FlangeEnd Straightened()
    {
        var least = Bends.Concat(Panels.Select(p => Math.Min(p.Start, p.End))).Min();
        return new([.. Bends.Select(_ => least)], [.. Panels.Select(_ => (least, least))]);
    }
}
