using TemplateForge.Geometry;

namespace TemplateForge.Drawing;

/// <summary>Marks by which two pages are laid together, in the drawing's coordinates.</summary>
/// <remarks>
/// <code>
///     the page below           the page laid over it
///
///         |    /\    +             /\    +
///      under  /  \                |  \
///         |   \  /                |  /
///         |    \/                  \/
///              ^ edge of the page laid over: its half of the diamond must complete the other
/// </code>
/// The cross and the inner half of the diamond are on both pages, at the same place in the drawing: held against a window, they
/// coincide. The outer half shows beside the trimmed edge on the page below.
/// </remarks>
internal static class Registration
{
    /// <summary>What both pages show of a seam.</summary>
    public static IEnumerable<Mark> Shared(Seam seam) => seam.Places.SelectMany(place =>
    {
        var (edge, size) = (seam.Start + seam.Along * place, Size(seam));
        var middle = edge + seam.Inwards * (seam.Overlap / 2);
        return new Mark[]
        {
            HalfDiamond(edge, seam.Along * size, seam.Inwards * size),
            new OpenStroke(Path.Line(middle - seam.Along * size, middle + seam.Along * size)),
            new OpenStroke(Path.Line(middle - seam.Inwards * (size * 0.7), middle + seam.Inwards * (size * 0.7))),
        };
    });

    /// <summary>What only the page below shows, beside the edge of the other.</summary>
    public static IEnumerable<Mark> BesideEdge(Seam seam) => seam.Places.Select(place =>
        HalfDiamond(seam.Start + seam.Along * place, seam.Along * Size(seam), -seam.Inwards * Size(seam)));

    private static double Size(Seam seam) => Math.Min(3, seam.Overlap / 5);

    private static OpenStroke HalfDiamond(Point edge, Vector along, Vector aside) => new(new Path(
        Segment.Line(edge - along, edge + aside),
        Segment.Line(edge + aside, edge + along)));
}
