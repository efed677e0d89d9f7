using TemplateForge.Geometry;

namespace TemplateForge.Fabrication;

/// <summary>A straight line of a tube or cone as it lies on its pattern, from the lower end to the upper: to line up by, to roll along.</summary>
/// <param name="Label">What it is called; empty for one between the named ones.</param>
/// <param name="At">Where it stands round the tube or cone.</param>
/// <param name="Along">The line.</param>
public sealed record Generator(string Label, Angle At, Path Along);

/// <summary>What an edge is called, written inside of it so that it stays on the piece when that is cut out.</summary>
/// <param name="Label">The words.</param>
/// <param name="Along">The edge; the piece lies to the left of it.</param>
public sealed record EdgeName(string Label, Path Along)
{
    /// <summary>The same edge on the piece for the other hand; the piece still lies to the left.</summary>
    public EdgeName Mirrored(Placement mirror) => this with { Along = Along.Placed(mirror).Reversed() };
}
