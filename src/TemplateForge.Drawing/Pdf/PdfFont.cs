using System.Globalization;
using System.Text;
using TemplateForge.Geometry;

namespace TemplateForge.Drawing;

/// <summary>Characters of the alphabet drawn with one pen, as a font whose characters are strokes (Type 3, ISO 32000-1, 9.6.5).</summary>
/// <remarks>
/// Not every reader hands the pen and colour of the page on to a character, so each brings its own. A character of ASCII has its own code,
/// another the next from 128 on.
/// </remarks>
/// <param name="name">What pages call it.</param>
/// <param name="weight">Width of the pen in hundredths of the height of the capitals.</param>
/// <param name="colour">Colour of the pen.</param>
internal sealed class PdfFont(string name, int weight, Colour colour)
{
    /// <summary>A hundredth of the height of the capitals is 1: an arc's cubics then stray from it by a millionth of the height at most.</summary>
    private const double UnitsPerHeight = 100;

    private const int FirstOther = 128;
    private const int Most = 256;

    /// <summary>More than the alphabet's farthest stroke and the widest pen reach, in heights.</summary>
    private const double Reach = 2;

    private static readonly Placement InUnits = Placement.Scaled(UnitsPerHeight, Point.Origin);

    private readonly Dictionary<Rune, int> codes = [];
    private int next = FirstOther;

    public string Name => name;

    /// <summary>What draws a character, whatever the pen.</summary>
    /// <param name="character">A character; what the alphabet does not have is a box.</param>
    public static PdfText StrokesOf(Rune character)
    {
        var strokes = Alphabet.GlyphOf(character).Strokes;
        return strokes.IsEmpty ? new(expected: 1) : new PdfText(expected: 256).Put([.. strokes.Select(s => s.Placed(InUnits).Segments)], closed: false).Put("S"u8);
    }

    /// <summary>The code of a character, its own from now on; none when all codes are taken.</summary>
    public bool TryCode(Rune character, out byte code)
    {
        if (!codes.TryGetValue(character, out var found))
        {
            found = character.Value is >= ' ' and <= '~' ? character.Value : next < Most ? next++ : Most;
            if (found < Most) codes.Add(character, found);
        }
        code = (byte)found;
        return found < Most;
    }

    /// <summary>Adds all that the font is made of to a file.</summary>
    /// <param name="file">The file.</param>
    /// <param name="strokesOf">What draws each character.</param>
    /// <returns>The number of the object that is the font.</returns>
    public int AddTo(PdfFile file, Func<Rune, PdfText> strokesOf)
    {
        var drawn = codes.OrderBy(c => c.Value).Select(c => (Character: c.Key, Code: c.Value, Object: file.AddStream(Drawn(c.Key, strokesOf(c.Key))))).ToList();
        var meanings = file.AddPackedStream(Meanings([.. drawn.Select(d => (d.Character, d.Code))]));
        var (first, last) = (drawn[0].Code, drawn[^1].Code);
        var widths = new double[last - first + 1];
        foreach (var (character, code, _) in drawn) widths[code - first] = UnitsPerHeight * Alphabet.Advance(Alphabet.GlyphOf(character));
        var reach = Reach * UnitsPerHeight;
        return file.Add(new PdfText(expected: 4096)
            .Put(string.Create(CultureInfo.InvariantCulture,
                $"<</Type /Font /Subtype /Type3 /FontMatrix [{1 / UnitsPerHeight} 0 0 {1 / UnitsPerHeight} 0 0] /FontBBox [{-reach} {-reach} {reach} {reach}]\n"))
            .Put(string.Create(CultureInfo.InvariantCulture, $"/Resources <<>> /FirstChar {first} /LastChar {last} /Widths ["))
            .Put(widths)
            .Put("]\n/Encoding <</Type /Encoding /Differences [")
            .Put(string.Join(' ', drawn.Select(d => string.Create(CultureInfo.InvariantCulture, $"{d.Code} /c{d.Code}"))))
            .Put("]>>\n/CharProcs <<")
            .Put(string.Join(' ', drawn.Select(d => string.Create(CultureInfo.InvariantCulture, $"/c{d.Code} {d.Object} 0 R"))))
            .Put(string.Create(CultureInfo.InvariantCulture, $">>\n/ToUnicode {meanings} 0 R>>")));
    }

    private PdfText Drawn(Rune character, PdfText strokes) =>
        new PdfText(expected: 64 + strokes.Length)
            .Put(UnitsPerHeight * Alphabet.Advance(Alphabet.GlyphOf(character))).Put("0 d0\n"u8)
            .Put(weight * (UnitsPerHeight / 100)).Put("w 1 J 1 j "u8).Put(colour).Put("RG\n"u8)
            .Put(strokes.Bytes);

    /// <summary>What each code means, so that words can be searched and copied (ISO 32000-1, 9.10.3).</summary>
    private static PdfText Meanings(List<(Rune Character, int Code)> characters)
    {
        var text = new PdfText(expected: 4096).Put("""
            /CIDInit /ProcSet findresource begin
            12 dict begin
            begincmap
            /CMapName /Meanings def
            /CMapType 2 def
            1 begincodespacerange
            <00> <FF>
            endcodespacerange

            """.ReplaceLineEndings("\n"));
        foreach (var some in characters.Chunk(100))
        {
            text.Put(string.Create(CultureInfo.InvariantCulture, $"{some.Length} beginbfchar\n"));
            foreach (var (character, code) in some)
                text.Put($"<{code:X2}> <{Convert.ToHexString(Encoding.BigEndianUnicode.GetBytes(character.ToString()))}>\n");
            text.Put("endbfchar\n");
        }
        return text.Put("endcmap\nCMapName currentdict /CMap defineresource pop\nend\nend");
    }
}
