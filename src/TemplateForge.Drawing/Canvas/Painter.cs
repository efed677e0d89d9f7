using System.Collections.Immutable;
using TemplateForge.Geometry;

namespace TemplateForge.Drawing;

/// <summary>Draws on a canvas what is seen of a drawing: dashes and lettering as the strokes that they are made of.</summary>
/// <param name="canvas">Where to draw.</param>
/// <param name="leastWidth">Pens draw at least this wide, in mm.</param>
internal sealed class Painter(ICanvas canvas, double leastWidth)
{
    public void Draw(LineDrawing drawing, Placement placement, Box window)
    {
        canvas.Clip(window);
        foreach (var layer in drawing.Layers)
        {
            var pen = layer.Pen.Width < leastWidth ? layer.Pen with { Width = leastWidth } : layer.Pen;
            var seen = window.Grown(pen.Width / 2);
            // A dash is as long as its own pen makes it.
            foreach (var mark in layer.Marks) Draw(mark.Placed(placement), pen, layer.Pen, seen);
        }
        canvas.Unclip();
    }

    private void Draw(Mark mark, Pen pen, Pen dashes, Box seen)
    {
        switch (mark)
        {
            case OpenStroke open when open.Bounds.Touches(seen):
                Stroke(pen, seen, pen.Dash.IsEmpty ? [open.Path] : Dashes.Along(open.Path, dashes));
                break;
            case ClosedStroke closed when closed.Bounds.Touches(seen):
                if (pen.Dash.IsEmpty) canvas.Stroke(pen, [closed.Contour.Segments], closed: true);
                else Stroke(pen, seen, Dashes.Along(closed.Contour, dashes));
                break;
            case Lettering words:
                Stroke(pen, seen, Alphabet.Strokes(words));
                break;
            case Fill { Region.IsEmpty: false } fill when fill.Bounds.Touches(seen):
                canvas.Fill(fill.Colour, [.. fill.Region.Contours.Select(c => c.Segments)]);
                break;
        }
    }

    private void Stroke(Pen pen, Box seen, ImmutableArray<Path> paths)
    {
        var runs = new List<ImmutableArray<Segment>>(paths.Length);
        foreach (var path in paths)
            if (path.Bounds.Touches(seen)) runs.Add(path.Segments);
        if (runs.Count > 0) canvas.Stroke(pen, runs, closed: false);
    }
}
