using System.Collections.Immutable;
using System.Globalization;
using System.IO;
using System.Text;
using System.Xml;
using TemplateForge.Geometry;

namespace TemplateForge.Drawing;

/// <summary>Writes a picture of a drawing in millimetres, a group for each layer.</summary>
/// <remarks>Coordinates in the file are the drawing's own, but for y, which runs downwards in SVG and so changes its sign.</remarks>
public static class SvgWriter
{
    private const string Namespace = "http://www.w3.org/2000/svg";

    /// <param name="drawing">What is shown.</param>
    /// <param name="title">What a viewer says that it is.</param>
    /// <param name="margin">White border in mm.</param>
    /// <exception cref="ArgumentException">There is nothing to show, or no room for it.</exception>
    public static byte[] Write(LineDrawing drawing, string title, double margin)
    {
        var frame = Frame.Of(drawing, margin);
        using var stream = new MemoryStream();
        using (var xml = XmlWriter.Create(stream, new() { Encoding = new UTF8Encoding(false), Indent = true, NewLineChars = "\n" }))
        {
            xml.WriteStartElement("svg", Namespace);
            xml.WriteAttributeString("width", Written.Length(frame.Width) + "mm");
            xml.WriteAttributeString("height", Written.Length(frame.Height) + "mm");
            xml.WriteAttributeString("viewBox", string.Join(' ',
                Written.Length(frame.Min.X), Written.Length(-frame.Max.Y), Written.Length(frame.Width), Written.Length(frame.Height)));
            xml.WriteElementString("title", Namespace, title);
            WriteBackground(frame, xml);
            var ids = new HashSet<string>(StringComparer.Ordinal);
            foreach (var layer in drawing.Layers) Write(layer, isFirstOfItsName: ids.Add(layer.Name), xml);
            xml.WriteEndElement();
        }
        stream.WriteByte((byte)'\n');
        return stream.ToArray();
    }

    private static void WriteBackground(Box frame, XmlWriter xml)
    {
        xml.WriteStartElement("rect", Namespace);
        xml.WriteAttributeString("x", Written.Length(frame.Min.X));
        xml.WriteAttributeString("y", Written.Length(-frame.Max.Y));
        xml.WriteAttributeString("width", Written.Length(frame.Width));
        xml.WriteAttributeString("height", Written.Length(frame.Height));
        xml.WriteAttributeString("fill", Of(Colour.White));
        xml.WriteEndElement();
    }

    private static void Write(Layer layer, bool isFirstOfItsName, XmlWriter xml)
    {
        xml.WriteStartElement("g", Namespace);
        // An id stands once in a file.
        xml.WriteAttributeString(isFirstOfItsName ? "id" : "class", layer.Name);
        xml.WriteAttributeString("fill", "none");
        xml.WriteAttributeString("stroke", Of(layer.Pen.Colour));
        xml.WriteAttributeString("stroke-width", Written.Length(layer.Pen.Width));
        // Round ends would eat into the gaps of a dashed line.
        xml.WriteAttributeString("stroke-linecap", layer.Pen.Dash.IsEmpty ? "round" : "butt");
        xml.WriteAttributeString("stroke-linejoin", "round");
        if (!layer.Pen.Dash.IsEmpty) xml.WriteAttributeString("stroke-dasharray", string.Join(' ', layer.Pen.Dash.Select(Written.Length)));
        foreach (var mark in layer.Marks) Write(mark, layer.Pen, xml);
        xml.WriteEndElement();
    }

    private static void Write(Mark mark, Pen pen, XmlWriter xml)
    {
        switch (mark)
        {
            case OpenStroke open:
                WritePath(Data(open.Path.Segments, closed: false), xml);
                break;
            case ClosedStroke closed:
                WritePath(Data(closed.Contour.Segments, closed: true), xml);
                break;
            case Fill fill when !fill.Region.IsEmpty:
                WritePath(string.Concat(fill.Region.Contours.Select(c => Data(c.Segments, closed: true))), xml,
                    ("fill", Of(fill.Colour)), ("fill-rule", "evenodd"), ("stroke", "none"));
                break;
            case Lettering words:
                xml.WriteStartElement("g", Namespace);
                xml.WriteAttributeString("role", "img");
                xml.WriteAttributeString("aria-label", words.Text);
                if (!pen.Dash.IsEmpty)
                {
                    xml.WriteAttributeString("stroke-dasharray", "none");
                    xml.WriteAttributeString("stroke-linecap", "round");
                }
                xml.WriteElementString("title", Namespace, words.Text);
                WritePath(string.Concat(Alphabet.Strokes(words).Select(p => Data(p.Segments, closed: false))), xml);
                xml.WriteEndElement();
                break;
        }
    }

    private static void WritePath(string data, XmlWriter xml, params ReadOnlySpan<(string Name, string Value)> more)
    {
        xml.WriteStartElement("path", Namespace);
        foreach (var (name, value) in more) xml.WriteAttributeString(name, value);
        xml.WriteAttributeString("d", data);
        xml.WriteEndElement();
    }

    private static string Data(ImmutableArray<Segment> segments, bool closed)
    {
        var data = new StringBuilder().Append(CultureInfo.InvariantCulture, $"M{At(segments[0].Start)}");
        for (var i = 0; i < segments.Length; i++)
        {
            var segment = segments[i];
            // The closing line is drawn by Z, once.
            if (closed && i == segments.Length - 1 && segment.IsLine) break;
            if (segment.IsLine) data.Append(CultureInfo.InvariantCulture, $"L{At(segment.End)}");
            else data.Append(CultureInfo.InvariantCulture, $"A{Radii(segment)} 0 0 {(segment.Bulge > 0 ? 0 : 1)} {At(segment.End)}");
        }
        return data.Append(closed ? "Z" : "").ToString();
    }

    private static string Radii(Segment arc)
    {
        // Half a circle whose radius is rounded up has its centre off the chord by √(2 r · rounding), which is 0.001 mm at
        // r = 50 mm. Where the radius is too small for the chord, a reader must take half the chord: exactly what is meant.
        var radius = Math.Abs(arc.Bulge) > 1 - 1e-9 ? arc.Radius - 2e-8 : arc.Radius;
        return $"{Written.Length(radius)} {Written.Length(radius)}";
    }

    private static string At(Point p) => $"{Written.Length(p.X)} {Written.Length(-p.Y)}";

    private static string Of(Colour colour) => string.Create(CultureInfo.InvariantCulture, $"#{colour.Red:x2}{colour.Green:x2}{colour.Blue:x2}");
}
