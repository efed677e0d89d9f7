using System.Collections.Immutable;
using TemplateForge.Geometry;

namespace TemplateForge.Drawing;

/// <summary>Where two pages are joined: the upper or right one is trimmed along its window's edge and laid over the other.</summary>
/// <param name="Number">Tells the seams of a plan apart that run the same way.</param>
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
    /// Two places along the edge, in mm from its start, at which registration marks stand. Among the first hundred seams that run
    /// the same way no two have the same pair, so that the wrong pages do not meet.
    /// </summary>
    public ImmutableArray<double> Places
    {
        get
        {
            var first = Math.Min(Overlap + ClearCorner, Length / 4);
            var slots = 1 + (int)Math.Max(0, (Length / 2 - ClearMiddle - first) / Pitch);
            return [first + Number % slots * Pitch, Length - first - (Number + Number / slots) % slots * Pitch];
        }
    }

    /// <summary>Other seams have their marks in the corners, in mm.</summary>
    private const double ClearCorner = 8;

    /// <summary>The seam is lettered in the middle: half the room for that, in mm.</summary>
    private const double ClearMiddle = 28;

    /// <summary>Marks this far apart, in mm, are seen not to meet.</summary>
    private const double Pitch = 4;
}
