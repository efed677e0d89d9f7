using System.Globalization;
using System.Text;

namespace TemplateForge.Drawing;

/// <summary>The fonts of a document.</summary>
internal sealed class PdfLetters
{
    // One pen has more than one font where there are more characters than codes.
    private readonly Dictionary<(int Weight, Colour Colour), List<PdfFont>> byPen = [];
    private readonly List<PdfFont> fonts = [];
    private readonly Dictionary<Rune, PdfText> strokes = [];

    /// <summary>The font that has a character in a pen, and its code there.</summary>
    /// <param name="pen">Its width is kept to a hundredth of the height.</param>
    /// <param name="height">Height of the capitals in mm.</param>
    /// <param name="character">What is written.</param>
    public (PdfFont Font, byte Code) Of(Pen pen, double height, Rune character)
    {
        var weight = Math.Max(1, (int)Math.Round(100 * pen.Width / height));
        if (!byPen.TryGetValue((weight, pen.Colour), out var some)) byPen.Add((weight, pen.Colour), some = []);
        foreach (var font in some)
            if (font.TryCode(character, out var code)) return (font, code);
        var added = new PdfFont($"F{fonts.Count + 1}", weight, pen.Colour);
        some.Add(added);
        fonts.Add(added);
        added.TryCode(character, out var first);
        return (added, first);
    }

    /// <summary>Adds every font to a file.</summary>
    /// <returns>The entries of a dictionary that names them.</returns>
    public string AddTo(PdfFile file) =>
        string.Join(' ', fonts.Select(font => string.Create(CultureInfo.InvariantCulture, $"/{font.Name} {font.AddTo(file, StrokesOf)} 0 R")));

    // Drawn once: most characters stand in several fonts.
    private PdfText StrokesOf(Rune character)
    {
        if (!strokes.TryGetValue(character, out var drawn)) strokes.Add(character, drawn = PdfFont.StrokesOf(character));
        return drawn;
    }
}
