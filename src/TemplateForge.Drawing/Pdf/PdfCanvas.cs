using System.Collections.Immutable;
using TemplateForge.Geometry;

namespace TemplateForge.Drawing;

/// <summary>A page's content, in mm: what is asked for as the operators of ISO 32000-1, 8.</summary>
internal sealed class PdfCanvas : ICanvas
{
    private const double PointsPerMm = 72 / 25.4;

    private readonly PdfText text = new(expected: 64 * 1024);
    private readonly PdfLetters letters;
    private double width = double.NaN;
    private Colour? line;
    private Colour? area;

    public PdfCanvas(PdfLetters letters)
    {
        this.letters = letters;
        // Eight decimals: an error in the scale grows over the whole page. Then round ends and corners for every line.
        text.Put(FormattableString.Invariant($"{PointsPerMm:F8} 0 0 {PointsPerMm:F8} 0 0 cm\n1 J 1 j\n"));
    }

    public PdfText Content => text;

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
        if (line != pen.Colour) text.Put(pen.Colour).Put("RG\n"u8);
        line = pen.Colour;
        text.Put(runs, closed).Put("S\n"u8);
    }

    public void Fill(Colour colour, IReadOnlyCollection<ImmutableArray<Segment>> runs)
    {
        if (area != colour) text.Put(colour).Put("rg\n"u8);
        area = colour;
        text.Put(runs, closed: true).Put("f\n"u8);
    }

    public void Letter(Pen pen, Lettering words)
    {
        var placed = Alphabet.Line(words);
        var (along, start) = (placed.Of(new Vector(1, 0)), placed.Of(Point.Origin));
        text.Put("BT\n"u8).Put(along.X).Put(along.Y).Put(-along.Y).Put(along.X).Put(start).Put("Tm\n"u8);
        PdfFont? current = null;
        foreach (var character in words.Text.EnumerateRunes())
        {
            var (font, code) = letters.Of(pen, words.Height, character);
            if (font != current) text.Put(current is null ? "" : ") Tj\n").Put("/").Put(font.Name).Put(" 1 Tf ("u8);
            current = font;
            text.PutCharacter(code);
        }
        text.Put(current is null ? "" : ") Tj\n").Put("ET\n"u8);
    }
}
