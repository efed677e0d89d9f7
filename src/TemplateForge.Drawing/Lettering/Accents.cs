namespace TemplateForge.Drawing;

/// <summary>The accents and the letters that bear them.</summary>
/// <remarks>
/// A row is an accent in the notation of <see cref="StrokeNotation"/>, then pairs of a bare letter and the letter with the
/// accent. The accent's origin comes to lie over the middle of the letter, clear of its top, or on the base line below.
/// </remarks>
internal static class Accents
{
    /// <summary>From the top of a letter to the foot of its accent, in tenths; of that the pen leaves 0.6 clear.</summary>
    private const double Clear = 1.6;

    private const string Above = """
        -0.9,2 0.8,0 : AÀ EÈ IÌ NǸ OÒ UÙ WẀ YỲ aà eè ıì nǹ oò uù wẁ yỳ
        -0.8,0 0.9,2 : AÁ CĆ EÉ IÍ LĹ NŃ OÓ RŔ SŚ UÚ WẂ YÝ ZŹ aá cć eé ıí lĺ nń oó rŕ sś uú wẃ yý zź ÆǼ æǽ ØǾ øǿ
        -1.6,0 0,2 1.6,0 : AÂ CĈ EÊ GĜ HĤ IÎ JĴ OÔ SŜ UÛ WŴ YŶ aâ cĉ eê gĝ hĥ ıî ȷĵ oô sŝ uû wŵ yŷ
        -1.6,2 0,0 1.6,2 : CČ DĎ EĚ GǦ NŇ RŘ SŠ TŤ ZŽ cč eě gǧ nň rř sš zž
        -1.9,0.3@65 0,0.9@-35 1.9,1.5@65 : AÃ IĨ NÑ OÕ UŨ aã ıĩ nñ oõ uũ
        -1.3,0.4 | 1.3,0.4 : AÄ EË IÏ OÖ UÜ WẄ YŸ aä eë ıï oö uü wẅ yÿ
        0,0@e 0,2.2@w 0,0@e : AÅ UŮ aå uů
        0,0.4 : CĊ EĖ GĠ Iİ ZŻ cċ eė gġ zż
        -1.6,0.6 1.6,0.6 : AĀ EĒ IĪ OŌ UŪ aā eē ıī oō uū
        -1.5,2@s 0,0.4@e 1.5,2@n : AĂ EĔ GĞ IĬ OŎ UŬ aă eĕ gğ ıĭ oŏ uŭ
        -1.5,0 -0.3,2 | 0.7,0 1.9,2 : OŐ UŰ oő uű
        """;

    private const string Below = """
        0.1,0 -0.1,-1 -0.1,-1@10 0.9,-1.9@s -0.2,-2.8@w -0.9,-2.6 : CÇ SŞ TŢ cç sş tţ
        0.4,-1.6 -0.3,-3 : GĢ KĶ LĻ NŅ RŖ SȘ TȚ kķ lļ nņ rŗ sș tț
        """;

    public static void Read(Dictionary<char, Glyph> glyphs)
    {
        foreach (var row in Above.Split('\n')) Read(row, glyphs, top => top + Clear / 10);
        foreach (var row in Below.Split('\n')) Read(row, glyphs, _ => 0);
    }

    private static void Read(string row, Dictionary<char, Glyph> glyphs, Func<double, double> heightOver)
    {
        var (notation, pairs) = row.Split(" : ") is [var first, var second] ? (first, second) : throw new FormatException(row);
        var accent = StrokeNotation.Strokes(notation, glyphs);
        foreach (var pair in pairs.Split(' ')) glyphs.Add(pair[1], glyphs[pair[0]].With(accent, heightOver));
    }
}
