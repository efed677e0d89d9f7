using TemplateForge.Geometry;

namespace TemplateForge.Fabrication;

/// <summary>An arrow that stands on a piece, and what it says.</summary>
/// <param name="Text">Its word.</param>
/// <param name="Along">From its tail to its tip.</param>
/// <param name="IsFeed">Whether it is the way a tool is fed: the cutter turns the same way on either hand, so that in the mirror image the metal
/// that stays is on the same side of the feed and the arrow points the other way.</param>
public sealed record MarkedArrow(string Text, Path Along, bool IsFeed)
{
    public MarkedArrow Mirrored(Placement mirror) => this with { Along = IsFeed ? Along.Placed(mirror).Reversed() : Along.Placed(mirror) };
}
