namespace TemplateForge.Drawing;

/// <summary>The accents and the letters that bear them.</summary>
internal static class Accents
{
    public static void Read(Dictionary<char, Glyph> glyphs) { }
}
