using System.Collections.Immutable;
using SkiaSharp;
using TemplateForge.Geometry;

namespace TemplateForge.Drawing;

/// <summary>A Skia canvas that is scaled to mm; Skia's y runs down, so a point lands at <c>height − y</c>.</summary>
/// <param name="canvas">Where to draw; its origin is the upper left corner.</param>
/// <param name="height">Height of the canvas in mm.</param>
internal sealed class SkiaCanvas(SKCanvas canvas, double height) : ICanvas
{
    public void Clip(Box window)
    {
        canvas.Save();
        canvas.ClipRect(new((float)window.Min.X, (float)(height - window.Max.Y), (float)window.Max.X, (float)(height - window.Min.Y)));
    }

    public void Unclip() => canvas.Restore();

    public void Stroke(Pen pen, IReadOnlyCollection<ImmutableArray<Segment>> runs, bool closed)
    {
        using var path = PathOf(runs, closed);
        using var paint = new SKPaint
        {
            Style = SKPaintStyle.Stroke,
            StrokeWidth = (float)pen.Width,
            StrokeCap = SKStrokeCap.Round,
            StrokeJoin = SKStrokeJoin.Round,
            Color = Of(pen.Colour),
            IsAntialias = true,
        };
        canvas.DrawPath(path, paint);
    }

    public void Letter(Pen pen, Lettering words)
    {
        if (Alphabet.Strokes(words) is { IsEmpty: false } strokes) Stroke(pen, [.. strokes.Select(s => s.Segments)], closed: false);
    }

    public void Fill(Colour colour, IReadOnlyCollection<ImmutableArray<Segment>> runs)
    {
        using var path = PathOf(runs, closed: true);
        using var paint = new SKPaint { Style = SKPaintStyle.Fill, Color = Of(colour), IsAntialias = true };
        canvas.DrawPath(path, paint);
    }

    private SKPath PathOf(IReadOnlyCollection<ImmutableArray<Segment>> runs, bool closed)
    {
        using var builder = new SKPathBuilder();
        foreach (var segments in runs)
        {
            builder.MoveTo(On(segments[0].Start));
            for (var i = 0; i < segments.Length; i++)
            {
                // The closing line is drawn by Close, once.
                if (closed && i == segments.Length - 1 && segments[i].IsLine) break;
                if (segments[i].IsLine) builder.LineTo(On(segments[i].End));
                else foreach (var cubic in Curves.Of(segments[i])) builder.CubicTo(On(cubic.First), On(cubic.Second), On(cubic.End));
            }
            if (closed) builder.Close();
        }
        return builder.Detach();
    }

    private SKPoint On(Point p) => new((float)p.X, (float)(height - p.Y));

    private static SKColor Of(Colour colour) => new(colour.Red, colour.Green, colour.Blue);
}
