using SkiaSharp;
using TemplateForge.Geometry;

namespace TemplateForge.Drawing;

/// <summary>Draws on a Skia canvas that is scaled to mm.</summary>
/// <param name="canvas">Where to draw; its origin is the upper left corner.</param>
/// <param name="height">Height of the canvas in mm.</param>
/// <param name="leastWidth">Pens draw at least this wide, in mm.</param>
internal sealed class Painter(SKCanvas canvas, double height, double leastWidth)
{
    public void Draw(LineDrawing drawing, Placement placement, Box window)
    {
        canvas.Save();
        canvas.ClipRect(new((float)window.Min.X, (float)(height - window.Max.Y), (float)window.Max.X, (float)(height - window.Min.Y)));
        foreach (var layer in drawing.Layers)
        {
            foreach (var mark in layer.Marks) Draw(mark.Placed(placement), layer.Pen, window);
        }
        canvas.Restore();
    }

    private void Draw(Mark mark, Pen pen, Box window)
    {
        var seen = window.Grown(Math.Max(pen.Width, leastWidth) / 2);
        switch (mark)
        {
            case OpenStroke open when open.Bounds.Touches(seen):
                Stroke(pen, seen, pen.Dash.IsEmpty ? [open.Path] : Dashes.Along(open.Path, pen));
                break;
            case ClosedStroke closed when closed.Bounds.Touches(seen):
                if (pen.Dash.IsEmpty) Stroke(pen, closed.Contour);
                else Stroke(pen, seen, Dashes.Along(closed.Contour, pen));
                break;
            case Lettering words:
                Stroke(pen, seen, Alphabet.Strokes(words));
                break;
            case Fill { Region.IsEmpty: false } fill when fill.Bounds.Touches(seen):
                Paint(fill);
                break;
        }
    }

    private void Stroke(Pen pen, Box seen, IEnumerable<Path> paths)
    {
        using var builder = new SKPathBuilder();
        var any = false;
        foreach (var path in paths.Where(p => p.Bounds.Touches(seen)))
        {
            builder.Add(path.Segments, height, closed: false);
            any = true;
        }
        if (any) Stroke(pen, builder);
    }

    private void Stroke(Pen pen, Contour contour)
    {
        using var builder = new SKPathBuilder();
        builder.Add(contour.Segments, height, closed: true);
        Stroke(pen, builder);
    }

    private void Stroke(Pen pen, SKPathBuilder builder)
    {
        using var path = builder.Detach();
        using var paint = new SKPaint
        {
            Style = SKPaintStyle.Stroke,
            StrokeWidth = (float)Math.Max(pen.Width, leastWidth),
            StrokeCap = SKStrokeCap.Round,
            StrokeJoin = SKStrokeJoin.Round,
            Color = Of(pen.Colour),
            IsAntialias = true,
        };
        canvas.DrawPath(path, paint);
    }

    private void Paint(Fill fill)
    {
        using var builder = new SKPathBuilder();
        foreach (var contour in fill.Region.Contours) builder.Add(contour.Segments, height, closed: true);
        using var path = builder.Detach();
        using var paint = new SKPaint { Style = SKPaintStyle.Fill, Color = Of(fill.Colour), IsAntialias = true };
        canvas.DrawPath(path, paint);
    }

    private static SKColor Of(Colour colour) => new(colour.Red, colour.Green, colour.Blue);
}
