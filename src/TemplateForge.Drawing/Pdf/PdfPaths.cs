using System.Collections.Immutable;
using TemplateForge.Geometry;

namespace TemplateForge.Drawing;

/// <summary>Lines, arcs and colours as operators and their operands (ISO 32000-1, 8.5 and 8.6).</summary>
internal static class PdfPaths
{
    public static PdfText Put(this PdfText text, IReadOnlyCollection<ImmutableArray<Segment>> runs, bool closed)
    {
        foreach (var segments in runs)
        {
            text.Put(segments[0].Start).Put("m\n"u8);
            for (var i = 0; i < segments.Length; i++)
            {
                // The closing line is drawn by h, once.
                if (closed && i == segments.Length - 1 && segments[i].IsLine) break;
                if (segments[i].IsLine) text.Put(segments[i].End).Put("l\n"u8);
                else foreach (var cubic in Curves.Of(segments[i])) text.Put(cubic.First).Put(cubic.Second).Put(cubic.End).Put("c\n"u8);
            }
            if (closed) text.Put("h\n"u8);
        }
        return text;
    }

    public static PdfText Put(this PdfText text, Point p) => text.Put(p.X).Put(p.Y);

    public static PdfText Put(this PdfText text, Colour c) => text.Put(c.Red / 255.0).Put(c.Green / 255.0).Put(c.Blue / 255.0);
}
