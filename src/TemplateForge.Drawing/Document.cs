using System.Collections.Immutable;
using TemplateForge.Geometry;

namespace TemplateForge.Drawing;

/// <summary>A document to print: pages at true scale.</summary>
public sealed record Document(string Title, string Subject, ImmutableArray<Page> Pages);

/// <summary>One sheet of paper, in mm, its origin at the lower left.</summary>
public sealed record Page(double Width, double Height, ImmutableArray<View> Views)
{
    /// <summary>By what all of it is drawn, so that its printer's error is undone.</summary>
    public PageCorrection Correction { get; init; } = PageCorrection.None;
}

/// <summary>A drawing as it appears on a page.</summary>
/// <param name="Drawing">What is shown.</param>
/// <param name="Placement">From the drawing's coordinates to the page's; never a mirror image. Pens keep their width, and dashes
/// their length, whatever the scale.</param>
/// <param name="Window">The part of the page, in page coordinates, outside which nothing is shown.</param>
public sealed record View(LineDrawing Drawing, Placement Placement, Box Window);
