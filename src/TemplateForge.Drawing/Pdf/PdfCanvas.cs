using System.Collections.Immutable;
using TemplateForge.Geometry;

namespace TemplateForge.Drawing;

/// <summary>A page's content, in mm: what is asked for as the operators of ISO 32000-1, 8.</summary>
internal sealed class PdfCanvas : ICanvas
{
    private const double PointsPerMm = 72 / 25.4;

    private readonly PdfText text = new();
    private double width = double.NaN;
    private Colour? line;
    private Colour? area;

    public PdfCanvas()
    {
        // Eight decimals: an error in the scale grows over the whole page. Then round ends and corners for every line.
        text.Put(FormattableString.Invariant($"{PointsPerMm:F8} 0 0 {PointsPerMm:F8} 0 0 cm\n1 J 1 j\n"));
    }

    public ReadOnlySpan<byte> Content => text.Bytes;

    /// <summary>Draws all that follows so that a printer's error is undone.</summary>
    /// <param name="by">How much.</param>
    /// <param name="middle">The place of the page that stays where it is.</param>
    public void Correct(PageCorrection by, Point middle)
    {
        var aside = new Vector(middle.X - by.X * middle.X - by.Skew * middle.Y, middle.Y - by.Skew * middle.X - by.Y * middle.Y);
        text.Put(FormattableString.Invariant($"{by.X:F10} {by.Skew:F10} {by.Skew:F10} {by.Y:F10} {aside.X:F8} {aside.Y:F8} cm\n"));
    }

    public void Clip(Box window) =>
        text.Put("q\n"u8).Put(window.Min.X).Put(window.Min.Y).Put(window.Width).Put(window.Height).Put("re W n\n"u8);

    public void Unclip()
    {
        text.Put("Q\n"u8);
        // What was set inside is forgotten.
        (width, line, area) = (double.NaN, null, null);
    }

    public void Stroke(Pen pen, IReadOnlyCollection<ImmutableArray<Segment>> runs, bool closed)
    {
        if (pen.Width != width) text.Put(width = pen.Width).Put("w\n"u8);
        if (line != pen.Colour) Put(pen.Colour).Put("RG\n"u8);
        line = pen.Colour;
        Put(runs, closed);
        text.Put("S\n"u8);
    }

    public void Fill(Colour colour, IReadOnlyCollection<ImmutableArray<Segment>> runs)
    {
        if (area != colour) Put(colour).Put("rg\n"u8);
        area = colour;
        Put(runs, closed: true);
        text.Put("f\n"u8);
    }

    private void Put(IReadOnlyCollection<ImmutableArray<Segment>> runs, bool closed)
    {
        foreach (var segments in runs)
        {
            Put(segments[0].Start).Put("m\n"u8);
            for (var i = 0; i < segments.Length; i++)
            {
                // The closing line is drawn by h, once.
                if (closed && i == segments.Length - 1 && segments[i].IsLine) break;
                if (segments[i].IsLine) Put(segments[i].End).Put("l\n"u8);
                else foreach (var cubic in Curves.Of(segments[i])) Put(cubic);
            }
            if (closed) text.Put("h\n"u8);
        }
    }

    private void Put(Cubic cubic)
    {
        Put(cubic.First);
        Put(cubic.Second);
        Put(cubic.End).Put("c\n"u8);
    }

    private PdfText Put(Point p) => text.Put(p.X).Put(p.Y);

    private PdfText Put(Colour c) => text.Put(c.Red / 255.0).Put(c.Green / 255.0).Put(c.Blue / 255.0);
}
