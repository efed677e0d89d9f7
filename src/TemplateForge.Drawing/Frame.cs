using TemplateForge.Geometry;

namespace TemplateForge.Drawing;

/// <summary>The rectangle that a picture of a drawing shows.</summary>
internal static class Frame
{
    /// <exception cref="ArgumentException">There is nothing to show, or no room for it.</exception>
    public static Box Of(LineDrawing drawing, double margin)
    {
        if (!(margin >= 0 && double.IsFinite(margin)))
            throw new ArgumentOutOfRangeException(nameof(margin), margin, "A margin is 0 or more.");
        if (!drawing.Layers.Any(l => !l.Marks.IsEmpty)) throw new ArgumentException("There is nothing on the drawing.", nameof(drawing));
        var frame = drawing.Bounds.Grown(margin);
        if (!(frame.Width > 0 && frame.Height > 0))
            throw new ArgumentException($"A picture of {frame.Width} × {frame.Height} mm shows nothing: give it a margin.", nameof(margin));
        return frame;
    }
}
