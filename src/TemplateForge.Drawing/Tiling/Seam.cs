using System.Collections.Immutable;
using TemplateForge.Geometry;

namespace TemplateForge.Drawing;

/// <summary>Where two pages are joined: the upper or right one is trimmed along its window's edge and laid over the other.</summary>
/// <param name="Number">Tells the seams of a plan apart.</param>
/// <param name="Under">The page below or to the left; its overlap gets the glue.</param>
/// <param name="Over">The page above or to the right.</param>
public sealed record Seam(int Number, Tile Under, Tile Over)
{
    /// <summary>The trimmed edge lies here, in the drawing's coordinates.</summary>
    public Point Start => Over.Window.Min;

    public Point End => Start + Along * Length;

    /// <summary>Length of the edge in mm.</summary>
    public double Length => IsUpright ? Over.Window.Height : Over.Window.Width;

    /// <summary>Depth of the overlap in mm, from the edge into the page that lies over the other.</summary>
    public double Overlap => IsUpright ? Under.Window.Max.X - Start.X : Under.Window.Max.Y - Start.Y;

    /// <summary>Whether the pages lie side by side.</summary>
    public bool IsUpright => Over.Column != Under.Column;

    /// <summary>Unit vector along the edge.</summary>
    public Vector Along => IsUpright ? new(0, 1) : new(1, 0);

    /// <summary>Unit vector from the edge into the page that lies over the other.</summary>
    public Vector Inwards => IsUpright ? new(1, 0) : new(0, 1);

    /// <summary>
    /// Two places along the edge, in mm from its start, at which registration marks stand. No two of a plan's first hundreds of
    /// seams have the same pair, so that the wrong pages do not meet.
    /// </summary>
    public ImmutableArray<double> Places
    {
        get
        {
            // Clear of the corners, where other seams have their marks, and of the middle, where the seam is lettered.
            var (first, last) = (Overlap + MarkPitch, Length / 2 - ClearMiddle);
            var slots = Math.Max(1, 1 + (int)Math.Floor((last - first) / MarkPitch));
            var (one, other) = (Number % slots, (Number + Number / slots) % slots);
            return [Math.Min(first, Length / 4) + one * MarkPitch, Length - Math.Min(first, Length / 4) - other * MarkPitch];
        }
    }

    private const double MarkPitch = 8;
    private const double ClearMiddle = 28;
}
