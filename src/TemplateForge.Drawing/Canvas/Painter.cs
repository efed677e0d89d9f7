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
            foreach (var mark in layer.Marks)
                if (IsSeen(mark, placement, seen)) Draw(mark.Placed(placement), pen, layer.Pen, seen);
        }
        canvas.Unclip();
    }

    /// <summary>Whether any of a mark may show where it is put.</summary>
    private static bool IsSeen(Mark mark, Placement placement, Box seen)
    {
        if (mark is Fill { Region.IsEmpty: true }) return false;
        var reach = mark is Lettering words ? Alphabet.Reach(words) : mark.Bounds;
        return placement.Around(reach).Touches(seen);
    }

    private void Draw(Mark mark, Pen pen, Pen dashes, Box seen)
    {
        switch (mark)
        {
            case OpenStroke open:
                Stroke(pen, seen, pen.Dash.IsEmpty ? [open.Path] : Dashes.Along(open.Path, dashes));
                break;
            case ClosedStroke closed:
                if (pen.Dash.IsEmpty) canvas.Stroke(pen, [closed.Contour.Segments], closed: true);
                else Stroke(pen, seen, Dashes.Along(closed.Contour, dashes));
                break;
            case Lettering words:
                canvas.Letter(pen, words);
                break;
            case Fill fill:
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
