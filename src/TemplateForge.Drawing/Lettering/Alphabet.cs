using System.Collections.Frozen;
using System.Collections.Immutable;
using System.Text;
using TemplateForge.Geometry;

namespace TemplateForge.Drawing;

/// <summary>The project's single-stroke alphabet, upright, with the proportions of ISO 3098 type B: lines and true arcs.</summary>
/// <remarks>
/// <code>
///     10  |                            /\        capitals, figures, ascenders
///      7  |___     ____               /  \       small letters
///         |   |   |    |             /----\
///      0  |   |   |____|            /      \     base line
///     -3          |                              descenders
///              3              7                  between neighbouring letters, and words
/// </code>
/// All in tenths of the height h of the capitals, measured along the middle of the strokes. The pen that the standard gives
/// to type B is h/10 wide; beside it the clear spaces are the standard's 2/10 h between characters and 6/10 h between words.
/// A character that the alphabet does not have is drawn as a small open box.
/// </remarks>
public static class Alphabet
{
    /// <summary>Distance between the strokes of neighbouring characters as a share of the height.</summary>
    private const double Gap = 0.3;

    /// <summary>What a space adds to the two gaps beside it, as a share of the height.</summary>
    private const double Space = 0.1;

    private static readonly Lazy<FrozenDictionary<char, Glyph>> Glyphs = new(Read);

    public static bool Has(char character) => Glyphs.Value.ContainsKey(character);

    /// <summary>Length of a line of text in mm, from the left of its first character to the right of its last.</summary>
    /// <param name="text">One line of text; no text has no length.</param>
    /// <param name="height">Height of the capitals in mm.</param>
    /// <remarks>
    /// Width(a + b) = Width(a) + 0.3 height + Width(b). All figures are of one width, so that columns of them line up.
    /// </remarks>
    public static double Width(string text, double height)
    {
        var (width, characters) = (0.0, 0);
        foreach (var character in text.EnumerateRunes())
        {
            width += GlyphOf(character).Width;
            characters++;
        }
        return (width + Gap * Math.Max(characters - 1, 0)) * height;
    }

    /// <summary>How much longer two words are in one line than both by themselves, in mm.</summary>
    public static double BetweenWords(double height) => (2 * Gap + Space) * height;

    /// <summary>The strokes of a line of text in mm, in the order of writing.</summary>
    public static ImmutableArray<Path> Strokes(Lettering lettering)
    {
        var placed = Line(lettering);
        var strokes = ImmutableArray.CreateBuilder<Path>();
        var x = 0.0;
        foreach (var character in lettering.Text.EnumerateRunes())
        {
            var glyph = GlyphOf(character);
            var onTheLine = Placement.Moved(new(x, 0)).Then(placed);
            foreach (var stroke in glyph.Strokes) strokes.Add(stroke.Placed(onTheLine));
            x += Advance(glyph);
        }
        return strokes.DrainToImmutable();
    }

    /// <summary>Bounds of the strokes in mm; where there are none, the place of the anchor.</summary>
    internal static Box Bounds(Lettering lettering) =>
        // Turned by whole quarters the reach is the bounds.
        lettering.Turn.Sin is 0 or 1 or -1 ? Reach(lettering)
        : Strokes(lettering) is { IsEmpty: false } strokes ? Box.Around(strokes.Select(s => s.Bounds))
        : new(lettering.At, lettering.At);

    /// <summary>A box in mm out of which no stroke reaches; where there are none, the place of the anchor.</summary>
    internal static Box Reach(Lettering lettering)
    {
        var (x, reach, isBlank) = (0.0, default(Box), true);
        foreach (var character in lettering.Text.EnumerateRunes())
        {
            var glyph = GlyphOf(character);
            if (!glyph.Strokes.IsEmpty)
            {
                var along = new Vector(x, 0);
                var there = new Box(glyph.Bounds.Min + along, glyph.Bounds.Max + along);
                (reach, isBlank) = (isBlank ? there : reach.Joined(there), false);
            }
            x += Advance(glyph);
        }
        return isBlank ? new(lettering.At, lettering.At) : Line(lettering).Around(reach);
    }

    /// <summary>From a line with capitals 1 high, that begins at the origin and runs along x, to where the text stands.</summary>
    internal static Placement Line(Lettering lettering) =>
        Placement.Scaled(lettering.Height, Point.Origin)
            .Then(Placement.Moved(-AnchorOf(lettering)))
            .Then(Placement.Turned(lettering.Turn, Point.Origin))
            .Then(Placement.Moved(lettering.At - Point.Origin));

    /// <summary>From where a character begins to where the next does, with capitals 1 high.</summary>
    internal static double Advance(Glyph glyph) => glyph.Width + Gap;

    internal static Glyph GlyphOf(Rune rune) =>
        rune.IsBmp && Glyphs.Value.TryGetValue((char)rune.Value, out var glyph) ? glyph : Glyph.Unknown;

    private static Vector AnchorOf(Lettering lettering)
    {
        var width = Width(lettering.Text, lettering.Height);
        var middle = lettering.Height / 2;
        return lettering.Anchor switch
        {
            Anchor.BaseStart => Vector.Zero,
            Anchor.BaseMiddle => new(width / 2, 0),
            Anchor.BaseEnd => new(width, 0),
            Anchor.MiddleStart => new(0, middle),
            Anchor.Middle => new(width / 2, middle),
            Anchor.MiddleEnd => new(width, middle),
            _ => throw new ArgumentException($"{lettering.Anchor} is no anchor.", nameof(lettering)),
        };
    }

    private static FrozenDictionary<char, Glyph> Read()
    {
        var glyphs = new Dictionary<char, Glyph> { [' '] = Glyph.Blank(Space), ['\u00A0'] = Glyph.Blank(Space) };
        foreach (var table in (ReadOnlySpan<string>)[Capitals.Table, SmallLetters.Table, Signs.Table])
            StrokeNotation.Read(table, glyphs);
        Figures.Read(glyphs);
        Accents.Read(glyphs);
        return glyphs.ToFrozenDictionary();
    }
}
